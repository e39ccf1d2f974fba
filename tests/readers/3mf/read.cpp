// Tells what lib3mf finds in a 3MF file, as JSON; refuses what its strict mode warns of.
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>
#include "Model/COM/NMR_DLLInterfaces.h"
using namespace NMR;

static void must(HRESULT result, const char* what) {
  if (result == LIB3MF_OK) return;
  std::fprintf(stderr, "%s failed: %08x\n", what, (unsigned)result);
  std::exit(1);
}
static std::string quoted(const char* text) {
  std::string out = "\"";
  for (const char* c = text; *c; c++) {
    if (*c == '"' || *c == '\\') out += '\\';
    out += *c;
  }
  return out + "\"";
}
static std::string nameOf(PLib3MFModelObjectResource* object) {
  char buffer[1024] = "";
  ULONG needed = 0;
  must(lib3mf_object_getnameutf8(object, buffer, sizeof buffer, &needed), "name");
  return buffer;
}

int main(int argc, char** argv) {
  if (argc != 2) return 2;
  PLib3MFModel* model;
  PLib3MFModelReader* reader;
  must(lib3mf_createmodel(&model), "model");
  must(lib3mf_model_queryreader(model, "3mf", &reader), "reader");
  must(lib3mf_reader_setstrictmodeactive(reader, true), "strict mode");
  must(lib3mf_reader_readfromfileutf8(reader, argv[1]), "reading");
  DWORD warnings = 0, unit = 0;
  must(lib3mf_reader_getwarningcount(reader, &warnings), "warnings");
  must(lib3mf_model_getunit(model, &unit), "unit");
  std::printf("{\"unit\":%u,\"warnings\":%u,\"objects\":[", (unsigned)unit, (unsigned)warnings);

  PLib3MFModelResourceIterator* objects;
  must(lib3mf_model_getobjects(model, &objects), "objects");
  BOOL more = false;
  const char* comma = "";
  while (lib3mf_resourceiterator_movenext(objects, &more) == LIB3MF_OK && more) {
    PLib3MFModelResource* object;
    must(lib3mf_resourceiterator_getcurrent(objects, &object), "object");
    BOOL isMesh = false, valid = false;
    DWORD id = 0;
    must(lib3mf_object_ismeshobject(object, &isMesh), "kind");
    must(lib3mf_object_isvalidobject(object, &valid), "validity");
    must(lib3mf_resource_getresourceid(object, &id), "id");
    std::printf("%s{\"id\":%u,\"name\":%s,\"valid\":%s", comma, (unsigned)id, quoted(nameOf(object).c_str()).c_str(), valid ? "true" : "false");
    if (isMesh) {
      DWORD vertices = 0, triangles = 0;
      BOOL sound = false;
      must(lib3mf_meshobject_getvertexcount(object, &vertices), "vertices");
      must(lib3mf_meshobject_gettrianglecount(object, &triangles), "triangles");
      must(lib3mf_meshobject_ismanifoldandoriented(object, &sound), "manifold");
      float low[3] = {1e30f, 1e30f, 1e30f}, high[3] = {-1e30f, -1e30f, -1e30f};
      for (DWORD v = 0; v < vertices; v++) {
        MODELMESHVERTEX vertex;
        must(lib3mf_meshobject_getvertex(object, v, &vertex), "vertex");
        for (int k = 0; k < 3; k++) {
          if (vertex.m_fPosition[k] < low[k]) low[k] = vertex.m_fPosition[k];
          if (vertex.m_fPosition[k] > high[k]) high[k] = vertex.m_fPosition[k];
        }
      }
      std::printf(",\"vertices\":%u,\"triangles\":%u,\"sound\":%s,\"low\":[%g,%g,%g],\"high\":[%g,%g,%g]}", (unsigned)vertices,
                  (unsigned)triangles, sound ? "true" : "false", low[0], low[1], low[2], high[0], high[1], high[2]);
    } else {
      DWORD count = 0;
      must(lib3mf_componentsobject_getcomponentcount(object, &count), "components");
      std::printf(",\"components\":%u}", (unsigned)count);
    }
    comma = ",";
  }

  std::printf("],\"items\":[");
  PLib3MFModelBuildItemIterator* items;
  must(lib3mf_model_getbuilditems(model, &items), "items");
  comma = "";
  while (lib3mf_builditemiterator_movenext(items, &more) == LIB3MF_OK && more) {
    PLib3MFModelBuildItem* item;
    must(lib3mf_builditemiterator_getcurrent(items, &item), "item");
    char number[1024] = "";
    ULONG needed = 0;
    DWORD object = 0;
    BOOL moved = false;
    MODELTRANSFORM t = {};
    must(lib3mf_builditem_getpartnumberutf8(item, number, sizeof number, &needed), "part number");
    must(lib3mf_builditem_getobjectresourceid(item, &object), "item's object");
    must(lib3mf_builditem_hasobjecttransform(item, &moved), "transform");
    if (moved) must(lib3mf_builditem_getobjecttransform(item, &t), "transform");
    std::printf("%s{\"object\":%u,\"partNumber\":%s,\"move\":[%g,%g,%g]}", comma, (unsigned)object, quoted(number).c_str(),
                moved ? t.m_fFields[0][3] : 0.0, moved ? t.m_fFields[1][3] : 0.0, moved ? t.m_fFields[2][3] : 0.0);
    comma = ",";
  }

  std::printf("],\"materials\":[");
  PLib3MFModelResourceIterator* groups;
  must(lib3mf_model_getbasematerials(model, &groups), "materials");
  comma = "";
  while (lib3mf_resourceiterator_movenext(groups, &more) == LIB3MF_OK && more) {
    PLib3MFModelResource* group;
    DWORD count = 0;
    must(lib3mf_resourceiterator_getcurrent(groups, &group), "material");
    must(lib3mf_basematerial_getcount(group, &count), "materials");
    for (DWORD i = 0; i < count; i++) {
      char name[256] = "";
      ULONG needed = 0;
      must(lib3mf_basematerial_getnameutf8(group, i, name, sizeof name, &needed), "material's name");
      std::printf("%s%s", comma, quoted(name).c_str());
      comma = ",";
    }
  }
  std::printf("]}\n");
  return 0;
}

"""Reads DXF files by ezdxf and prints what it found in each as a JSON list, for the tests to compare.

Usage: python3 tests/tools/read-dxf.py FILE.dxf ...
Needs Debian's python3-ezdxf.
"""

import json
import sys
from collections import Counter

import ezdxf
from ezdxf.tools.pattern import load, scale_pattern


def dimension(entity) -> dict:
    block = entity.get_geometry_block()
    return {
        "type": entity.dimtype,
        "measurement": entity.get_measurement(),
        "arcPoint": list(entity.dxf.defpoint5)[:2] if entity.dimtype == 2 else None,
        "style": entity.dxf.dimstyle,
        "override": entity.dxf.text,
        "texts": [e.plain_text() for e in block if e.dxftype() == "TEXT"],
        "strokes": sum(1 for e in block if e.dxftype() in ("LINE", "ARC")),
    }


def lines_of(definition) -> list:
    return [
        {"angle": angle % 360, "base": list(base)[:2], "offset": list(offset)[:2], "dashes": list(dashes)}
        for angle, base, offset, dashes in definition
    ]


def hatch(entity) -> dict:
    stored = [
        (line.angle, line.base_point, line.offset, line.dash_length_items)
        for line in (entity.pattern.lines if entity.pattern else [])
    ]
    # What a reader draws that goes by the name instead of the stored lines.
    named = load().get(entity.dxf.pattern_name)
    turned = scale_pattern(named, entity.dxf.pattern_scale, entity.dxf.pattern_angle) if named and stored else []
    return {
        "pattern": entity.dxf.pattern_name,
        "solid": entity.dxf.solid_fill,
        "layer": entity.dxf.layer,
        "paths": len(entity.paths),
        "bulges": sum(1 for path in entity.paths for vertex in path.vertices if vertex[2] != 0),
        "lines": lines_of(stored),
        "namedLines": lines_of(turned),
    }


def text(entity) -> dict:
    align, first, second = entity.get_pos()
    return {
        "text": entity.plain_text(),
        "align": align,
        "at": list(first if second is None else second)[:2] if align != "LEFT" else list(first)[:2],
        "height": entity.dxf.height,
        "rotation": entity.dxf.rotation,
        "layer": entity.dxf.layer,
    }


def reading(path: str) -> dict:
    document = ezdxf.readfile(path)
    auditor = document.audit()
    space = document.modelspace()
    style = document.header["$DIMSTYLE"]
    record = document.dimstyles.get(style)
    return {
        "version": document.dxfversion,
        "units": document.units,
        "errors": [error.message for error in auditor.errors],
        "fixes": [fix.message for fix in auditor.fixes],
        "dimScale": [document.header["$DIMSCALE"], record.dxf.dimscale],
        "dimTextHeight": [document.header["$DIMTXT"], record.dxf.dimtxt],
        "extents": [list(document.header["$EXTMIN"])[:2], list(document.header["$EXTMAX"])[:2]],
        "counts": dict(Counter(e.dxftype() for e in space)),
        "layers": {
            layer.dxf.name: {"weight": layer.dxf.lineweight, "lineType": layer.dxf.linetype}
            for layer in document.layers
        },
        "lineTypes": {
            line.dxf.name: [tag.value for tag in line.pattern_tags.tags if tag.code == 49]
            for line in document.linetypes
        },
        "dimensions": [dimension(e) for e in space.query("DIMENSION")],
        "lengthFactors": {s.dxf.name: s.dxf.dimlfac for s in document.dimstyles},
        "inserts": [
            {"name": e.dxf.name, "at": list(e.dxf.insert)[:2], "rotation": e.dxf.rotation}
            for e in space.query("INSERT")
        ],
        "hatches": [hatch(e) for e in space.query("HATCH")],
        "texts": [text(e) for e in space.query("TEXT")],
        "polylines": [
            {"layer": e.dxf.layer, "closed": e.closed, "points": [list(p) for p in e.get_points("xyb")]}
            for e in space.query("LWPOLYLINE")
        ],
        "arcs": [
            {"layer": e.dxf.layer, "radius": e.dxf.radius, "start": e.dxf.start_angle, "end": e.dxf.end_angle}
            for e in space.query("ARC")
        ],
    }


if __name__ == "__main__":
    if len(sys.argv) < 2:
        sys.exit(__doc__)
    print(json.dumps([reading(path) for path in sys.argv[1:]]))

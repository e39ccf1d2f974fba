import { strToU8 } from 'fflate';
import type { Mesh } from '../documents/mesh.js';
import type { Facts, Instance, Placement, Scene, SceneNode } from '../documents/scene.js';
import { auditScene } from '../documents/scene-audit.js';
import { ByteText, floatDigits } from './byte-text.js';
import { roundApart } from './float-rounding.js';
import { escaped } from './markup.js';
import { zipFiles } from './zip.js';

/** How a 3MF file is written. */
export interface ThreeMfOptions {
  /** Model mm per mm of the scene; 1 when left out. */
  readonly scale?: number;
}

/**
 * A scene as 3MF (core specification of the 3MF Consortium, 1.3): millimetres, an object for each mesh and material that
 * are used together, one of components for each group, an item for each node at the top with its name as part number.
 * Corners are rounded to float32, as readers keep them, apart from each other. Same scene, same bytes.
 * @throws DocumentError with every fault of the scene
 */
export function writeThreeMf(scene: Scene, { scale = 1 }: ThreeMfOptions = {}): Uint8Array {
  auditScene(scene);
  const parts = {
    '[Content_Types].xml': CONTENT_TYPES,
    '_rels/.rels': RELATIONSHIPS,
    '3D/3dmodel.model': modelOf(scene, scale),
  };
  return zipFiles(Object.entries(parts).map(([name, text]) => [name, strToU8(text)]));
}

const HEAD = '<?xml version="1.0" encoding="UTF-8"?>\n';
const CONTENT_TYPES = `${HEAD}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>\n`;
const RELATIONSHIPS = `${HEAD}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/3D/3dmodel.model" Id="model" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>\n`;
const NAMESPACE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
const MATERIALS_ID = 1;

function modelOf(scene: Scene, scale: number): string {
  const objects: string[] = [];
  let next = MATERIALS_ID + 1;
  const known = new Map<string, number>();
  const rounded = new Map<number, string>();
  const meshObject = ({ mesh, material }: Instance): number => {
    const key = `${mesh} ${material}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    const id = next++;
    const body = rounded.get(mesh) ?? meshXml(scene.meshes[mesh] as Mesh, scale);
    rounded.set(mesh, body);
    const { name } = scene.meshes[mesh] as Mesh;
    objects.push(
      `<object id="${id}" type="model" name="${escaped(name)}" pid="${MATERIALS_ID}" pindex="${material}">${body}</object>`,
    );
    known.set(key, id);
    return id;
  };
  const objectOf = (node: SceneNode): number => {
    if (node.kind === 'instance') return meshObject(node);
    const components = node.nodes.map(
      (child) => `<component objectid="${objectOf(child)}"${transform(child.place, scale)}/>`,
    );
    const id = next++;
    objects.push(
      `<object id="${id}" type="model" name="${escaped(node.name)}"><components>${components.join('\n')}</components></object>`,
    );
    return id;
  };
  const items = scene.nodes.map(
    (node) => `<item objectid="${objectOf(node)}"${transform(node.place, scale)} partnumber="${escaped(node.name)}"/>`,
  );
  const bases = scene.materials.map(
    ({ name, colour }) => `<base name="${escaped(name)}" displaycolor="${hex(colour)}"/>`,
  );
  return `${HEAD}<model unit="millimeter" xml:lang="en" xmlns="${NAMESPACE}">
<metadata name="Title">${escaped(scene.title)}</metadata>
<metadata name="Description">${escaped(told(scene.facts))}</metadata>
<metadata name="Application">ringcourse</metadata>
<resources>
<basematerials id="${MATERIALS_ID}">${bases.join('')}</basematerials>
${objects.join('\n')}
</resources>
<build>
${items.join('\n')}
</build>
</model>
`;
}

const told = (facts: Facts): string =>
  Object.entries(facts)
    .map(([name, value]) => `${name}: ${value}`)
    .join('; ');

const hex = (colour: readonly number[]): string =>
  `#${colour.map((c) => c.toString(16).padStart(2, '0').toUpperCase()).join('')}`;

function meshXml({ positions, triangles }: Mesh, scale: number): string {
  const at = roundApart(scale === 1 ? positions : positions.map((x) => x * scale));
  const text = new ByteText();
  text.ascii('<mesh><vertices>\n');
  addTriples(text, ['<vertex x="', '" y="', '" z="'], at.length, (i) => text.float32(at[i] as number));
  text.ascii('</vertices><triangles>\n');
  addTriples(text, ['<triangle v1="', '" v2="', '" v3="'], triangles.length, (i) =>
    text.integer(triangles[i] as number),
  );
  text.ascii('</triangles></mesh>');
  return new TextDecoder().decode(text.written());
}

/** An element for each three numbers, of which `add` writes one, each behind its label. */
function addTriples(text: ByteText, labels: readonly string[], count: number, add: (i: number) => void): void {
  for (let i = 0; i < count; i += 3) {
    for (let k = 0; k < 3; k++) {
      text.ascii(labels[k] as string);
      add(i + k);
    }
    text.ascii('"/>\n');
  }
}

/** Rows of the matrix: where the axes point, then the move. */
function transform({ x, y, z, move }: Placement, scale: number): string {
  const numbers = [...x, ...y, ...z, ...move.map((m) => m * scale)];
  if (numbers.every((n, i) => n === (i === 0 || i === 4 || i === 8 ? 1 : 0))) return '';
  return ` transform="${numbers.map((n) => floatDigits(n + 0)).join(' ')}"`;
}

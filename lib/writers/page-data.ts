import { deflateSync } from 'fflate';
import type { Mesh } from '../documents/mesh.js';
import type { ModelPage } from '../documents/model-page.js';
import { PACKED_STEP, type PagePayload } from '../documents/page-payload.js';
import { instancesOf, type Placement } from '../documents/scene.js';

/** Decimals of a turn and of a length (mm) that are kept: 0.01 mm at 10 m. */
const TURN = 1e6;
const LENGTH = 1e2;

/** A model page's data in letters that need no escaping: deflated, then base64. */
export const packPage = (page: ModelPage): string => base64(deflateSync(pageBytes(page), { level: 9 }));

function pageBytes(page: ModelPage): Uint8Array {
  const json = new TextEncoder().encode(JSON.stringify(payloadOf(page)));
  const { meshes } = page.scene;
  const numbers = meshes.reduce((sum, mesh) => sum + mesh.positions.length + mesh.triangles.length, 0);
  const all = new Uint8Array(4 + json.length + numbers * LONGEST);
  new DataView(all.buffer).setUint32(0, json.length, true);
  all.set(json, 4);
  let end = 4 + json.length;
  for (const mesh of meshes) end = addMesh(all, end, mesh);
  return all.subarray(0, end);
}

function payloadOf(page: ModelPage): PagePayload {
  const { scene, pieces } = page;
  const placed = instancesOf(scene);
  const places = new Shared<readonly number[]>();
  const lifts = new Shared<readonly number[]>();
  const facts = new Shared<readonly [string, string]>();
  return {
    title: page.title,
    meshes: scene.meshes.map((m) => [m.positions.length / 3, m.triangles.length / 3] as const),
    names: placed.map((p) => p.instance.name),
    mesh: placed.map((p) => p.instance.mesh),
    place: placed.map((p) => places.index(numbersOf(p.place))),
    step: pieces.map((p) => p.step),
    lift: pieces.map((p) => lifts.index(p.lift.map((v) => rounded(v, LENGTH)))),
    opening: pieces.map((p) => p.opening),
    told: placed.map((p) => Object.entries(p.instance.facts ?? {}).map(([n, v]) => facts.index([n, String(v)]))),
    places: places.all,
    lifts: lifts.all,
    facts: facts.all,
    steps: page.steps,
    colourings: page.colourings,
    rooms: page.rooms,
    openings: page.openings,
    northRad: page.northRad,
  };
}

const rounded = (value: number, by: number): number => Math.round(value * by) / by + 0;

const numbersOf = ({ x, y, z, move }: Placement): number[] => [
  ...[...x, ...y, ...z].map((v) => rounded(v, TURN)),
  ...move.map((v) => rounded(v, LENGTH)),
];

/** Values that stand once and are told by their index. */
class Shared<T> {
  readonly all: T[] = [];
  private readonly known = new Map<string, number>();

  index(value: T): number {
    const key = JSON.stringify(value);
    const index = this.known.get(key) ?? this.all.push(value) - 1;
    this.known.set(key, index);
    return index;
  }
}

/** Bytes that a whole number takes at most, seven of its 53 bits and its sign in each. */
const LONGEST = 8;

/** Writes a mesh from a place on, and tells where it ends. */
function addMesh(bytes: Uint8Array, at: number, { positions, triangles }: Mesh): number {
  let end = at;
  for (let axis = 0; axis < 3; axis++) {
    let last = 0;
    for (let i = axis; i < positions.length; i += 3) {
      const value = Math.round((positions[i] as number) / PACKED_STEP);
      end = addSigned(bytes, end, value - last);
      last = value;
    }
  }
  let last = 0;
  for (let i = 0; i < triangles.length; i++) {
    const corner = triangles[i] as number;
    end = addSigned(bytes, end, corner - last);
    last = corner;
  }
  return end;
}

/** Seven bits a byte, low first, the sign in the lowest. */
function addSigned(bytes: Uint8Array, at: number, value: number): number {
  let end = at;
  let rest = value < 0 ? -2 * value - 1 : 2 * value;
  while (rest >= 128) {
    bytes[end++] = (rest % 128) + 128;
    rest = Math.floor(rest / 128);
  }
  bytes[end++] = rest;
  return end;
}

const LETTERS = new TextEncoder().encode('ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/');
const FILL = '='.charCodeAt(0);

/** Base64 as RFC 4648 has it. */
export function base64(bytes: Uint8Array): string {
  const text = new Uint8Array(4 * Math.ceil(bytes.length / 3));
  for (let i = 0, at = 0; i < bytes.length; i += 3, at += 4) {
    const word = ((bytes[i] as number) << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    text[at] = LETTERS[word >> 18] as number;
    text[at + 1] = LETTERS[(word >> 12) & 63] as number;
    text[at + 2] = i + 1 < bytes.length ? (LETTERS[(word >> 6) & 63] as number) : FILL;
    text[at + 3] = i + 2 < bytes.length ? (LETTERS[word & 63] as number) : FILL;
  }
  return new TextDecoder().decode(text);
}

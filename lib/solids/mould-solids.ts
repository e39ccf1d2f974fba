import type { Mesh } from '../documents/mesh.js';
import { type CastShape, LINING } from '../masonry/moulds/shape.js';
import { hypot } from '../math/elementary.js';
import type { Vec3 } from '../math/vec.js';

export interface MouldSolidOptions {
  /** Greatest distance of a facet from its surface, mm. */
  readonly surface?: number;
}

/** Facets on a mould are finer than on a house. */
const FINE = 0.2;

const FACES = ['intrados', 'extrados', 'bed-lower', 'bed-upper', 'head-struck', 'head-floor'] as const;
const RIM = 'rim';

/** Points on a box with bent sides: `high` by `wide` of them on each of the two faces. */
interface Lattice {
  readonly high: number;
  readonly wide: number;
  /** Share 0 at the lower bed and the struck head. */
  at(outer: 0 | 1, i: number, k: number): Vec3;
}

/**
 * The dry block of a mould, as it is laid; it stands on its floor head with the struck one up. Faces: `intrados`,
 * `extrados`, `bed-lower`, `bed-upper`, `head-floor`, `head-struck`.
 */
export function mouldBlock(name: string, shape: CastShape, options: MouldSolidOptions = {}): Mesh {
  const lattice = blockLattice(shape, options);
  const [positions, place] = [pointsOf([lattice], 1 / shape.grow), placesOf(lattice, 0)];
  return meshOf(name, positions, sidesOf(lattice, place, 1, true));
}

/**
 * The lining in which it is cast, larger by the shrinkage: five sides, `LINING` thick, open at the struck head. Its
 * inner faces bear the block's names, its outer ones too, and `rim` is the edge on which the mix is struck off.
 */
export function mouldLining(name: string, shape: CastShape, options: MouldSolidOptions = {}): Mesh {
  const inner = blockLattice(shape, options);
  const outer = outerLattice(shape, inner);
  const [inside, outside] = [placesOf(inner, 0), placesOf(outer, 2 * inner.high * inner.wide)];
  const rim = rimOf(inner.high, (outerFace, i) => [inside(outerFace, i, 0), outside(outerFace, i, 0)]);
  return meshOf(name, pointsOf([inner, outer], 1), [
    ...sidesOf(inner, inside, -1, false),
    ...sidesOf(outer, outside, 1, false),
    ...rim,
  ]);
}

function blockLattice(shape: CastShape, { surface = FINE }: MouldSolidOptions): Lattice {
  const flat = shape.faces === 'flat';
  const bend = (a: Vec3, m: Vec3, b: Vec3) =>
    hypot(
      ...([0, 1, 2].map((i) => (m[i] as number) - ((a[i] as number) + (b[i] as number)) / 2) as [
        number,
        number,
        number,
      ]),
    );
  const parts = (sagitta: number) => (flat ? 1 : Math.max(1, Math.ceil(Math.sqrt((2 * sagitta) / surface))));
  const high = parts(Math.max(...[0, 1].map((d) => bend(shape.at(0, d, 0), shape.at(0.5, d, 0), shape.at(1, d, 0)))));
  const wide = parts(Math.max(...[0, 1].map((s) => bend(shape.at(s, 1, -1), shape.at(s, 1, 0), shape.at(s, 1, 1)))));
  return {
    high: high + 1,
    wide: wide + 1,
    at: (outer, i, k) => shape.at(i / high, outer, -1 + (2 * k) / wide),
  };
}

/** The lining's outside: beyond beds, faces and the floor head, flush with the struck head. */
function outerLattice(shape: CastShape, { high, wide }: Lattice): Lattice {
  const { bed, top } = shape.block;
  const past = LINING / shape.grow / (top - bed);
  const through = LINING / shape.thickness;
  return {
    high,
    wide,
    at(outer, i, k) {
      const s = -past + ((1 + 2 * past) * i) / (high - 1);
      const depth = outer === 0 ? -through : 1 + through;
      const end = sideBeyond(shape, s, depth);
      return shape.at(s, depth, -1 + ((1 + end) * k) / (wide - 1));
    },
  };
}

/** The share of the side at which a line along the course meets the floor head moved out by the lining. */
function sideBeyond(shape: CastShape, s: number, depth: number): number {
  const { base, perOut, perUp } = shape.head;
  const far = LINING * hypot(1, perOut, perUp);
  const miss = (side: number) => {
    const [across, up, out] = shape.at(s, depth, side);
    return across - base - perOut * out - perUp * up - far;
  };
  let side = 1;
  for (let i = 0; i < 4; i++) side -= miss(side) / ((miss(side + STEP) - miss(side)) / STEP);
  return side;
}

const STEP = 1e-3;

type Place = (outer: 0 | 1, i: number, k: number) => number;

const placesOf =
  ({ high, wide }: Lattice, first: number): Place =>
  (outer, i, k) =>
    first + (outer * high + i) * wide + k;

/** All corners, turned so that the struck head is above: x outward, y up the meridian, z against `across`. */
function pointsOf(lattices: readonly Lattice[], scale: number): Float64Array {
  const points: number[] = [];
  for (const { high, wide, at } of lattices)
    for (const outer of [0, 1] as const)
      for (let i = 0; i < high; i++)
        for (let k = 0; k < wide; k++) {
          const [across, up, out] = at(outer, i, k);
          points.push(out * scale, up * scale, -across * scale);
        }
  return Float64Array.from(points);
}

type Quad = readonly [face: string, a: number, b: number, c: number, d: number];

/** The sides of a box in quads, outward for `turn` 1, inward for −1; the struck head only where it is closed. */
function sidesOf({ high, wide }: Lattice, place: Place, turn: 1 | -1, closed: boolean): Quad[] {
  const quads: Quad[] = [];
  const add = (face: (typeof FACES)[number], a: number, b: number, c: number, d: number) =>
    quads.push(turn > 0 ? [face, a, b, c, d] : [face, a, d, c, b]);
  const [top, end] = [high - 1, wide - 1];
  for (let k = 0; k < end; k++) {
    for (let i = 0; i < top; i++) {
      add('extrados', place(1, i, k), place(1, i, k + 1), place(1, i + 1, k + 1), place(1, i + 1, k));
      add('intrados', place(0, i, k + 1), place(0, i, k), place(0, i + 1, k), place(0, i + 1, k + 1));
    }
    add('bed-lower', place(0, 0, k), place(0, 0, k + 1), place(1, 0, k + 1), place(1, 0, k));
    add('bed-upper', place(1, top, k), place(1, top, k + 1), place(0, top, k + 1), place(0, top, k));
  }
  for (let i = 0; i < top; i++) {
    if (closed) add('head-struck', place(0, i, 0), place(1, i, 0), place(1, i + 1, 0), place(0, i + 1, 0));
    add('head-floor', place(1, i, end), place(0, i, end), place(0, i + 1, end), place(1, i + 1, end));
  }
  return quads;
}

/** The flat edge round the struck head, from the inner to the outer corners. */
function rimOf(high: number, pair: (outer: 0 | 1, i: number) => readonly [number, number]): Quad[] {
  const up = Array.from({ length: high }, (_, i) => pair(1, i));
  const down = Array.from({ length: high }, (_, i) => pair(0, high - 1 - i));
  const loop = [...up, ...down];
  return loop.map(([inner, outer], i): Quad => {
    const [nextInner, nextOuter] = loop[(i + 1) % loop.length] as readonly [number, number];
    return [RIM, inner, outer, nextOuter, nextInner];
  });
}

function meshOf(name: string, positions: Float64Array, quads: readonly Quad[]): Mesh {
  const faceNames = [...FACES, RIM].filter((face) => quads.some(([f]) => f === face));
  return {
    name,
    positions,
    triangles: Uint32Array.from(quads.flatMap(([, a, b, c, d]) => [a, b, c, a, c, d])),
    faceNames,
    faceOf: Uint16Array.from(quads.flatMap(([face]) => [faceNames.indexOf(face), faceNames.indexOf(face)])),
  };
}

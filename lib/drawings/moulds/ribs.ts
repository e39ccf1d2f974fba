import { type CastShape, headAcross, LINING, surfaceOut } from '../../masonry/moulds/shape.js';
import type { Vec2 } from '../../math/vec.js';

/** Wood behind the deepest place of a rib's edge, mm; common practice, no source. */
const WOOD = 30;

/** A rib of the form of a face, square to the mould's middle: its edge, and a straight back. */
export interface FaceRib {
  readonly face: 'intrados' | 'extrados';
  readonly way: 'along' | 'up';
  /** How far from the mould's middle it stands, mm: over it (`along`), or those on either side beside it (`up`). */
  readonly place: number;
  /** How many of them: one in the middle, one on either side, or all three alike. */
  readonly pieces: 1 | 2 | 3;
  /** The edge from end to end by a share: along the rib, and off its back. */
  edge(share: number): Vec2;
  readonly length: number;
  /** Greatest height of the edge over the chord between its ends; negative where it is hollow. */
  readonly rise: number;
}

/** Ribs in both directions for both faces; none for flat faces. The beds and heads give the edges by themselves. */
export function faceRibs(shape: CastShape): FaceRib[] {
  if (shape.faces === 'flat') return [];
  return (['intrados', 'extrados'] as const).flatMap((face) => {
    const middle = upRib(shape, face, 0, 1);
    const beside = upRib(shape, face, shape.at(0.5, 0, 0.5)[0], 2);
    const up: FaceRib[] = alike(middle, beside) ? [{ ...middle, pieces: 3, place: beside.place }] : [middle, beside];
    return [alongRib(shape, face, 0), ...up];
  });
}

/** Ribs are alike when their edges differ by less, mm. */
const ALIKE = 0.1;

const alike = (a: FaceRib, b: FaceRib): boolean =>
  [0, 0.5, 1].every((share) => a.edge(share).every((x, i) => Math.abs(x - (b.edge(share)[i] as number)) < ALIKE));

const depthOf = (shape: CastShape, face: FaceRib['face']): number =>
  face === 'intrados' ? -LINING : shape.thickness + LINING;

function alongRib(shape: CastShape, face: FaceRib['face'], up: number): FaceRib {
  const depth = depthOf(shape, face);
  const end = headAcross(shape, depth, up);
  const out = (x: number) => surfaceOut(shape, depth, x, up);
  return rib(face, 'along', up, 1, [-end, end], out);
}

function upRib(shape: CastShape, face: FaceRib['face'], across: number, pieces: 1 | 2): FaceRib {
  const depth = depthOf(shape, face);
  const share = depth / shape.thickness;
  const bed = (s: 0 | 1): number => {
    const side = across / shape.at(s, share, 1)[0];
    return shape.at(s, share, side)[1];
  };
  return rib(face, 'up', across, pieces, [bed(0), bed(1)], (up) => surfaceOut(shape, depth, across, up));
}

function rib(
  face: FaceRib['face'],
  way: FaceRib['way'],
  place: number,
  pieces: 1 | 2,
  [from, to]: Vec2,
  out: (x: number) => number,
): FaceRib {
  // The form of the extrados stands outside: its ribs are seen from their own side.
  const high = (x: number) => (face === 'intrados' ? out(x) : -out(x));
  const [low, middle, end] = [high(from), high((from + to) / 2), high(to)];
  const base = Math.min(low, middle, end) - WOOD;
  return {
    face,
    way,
    place,
    pieces,
    length: to - from,
    rise: middle - (low + end) / 2,
    edge: (share) => {
      const x = from + share * (to - from);
      return [x - from, high(x) - base];
    },
  };
}

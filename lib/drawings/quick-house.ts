import { remembered } from '../base/remembered.js';
import { CUT_CURVE } from '../base/tolerances.js';
import { type Edge, edgeEnd, edgeStart } from '../math/curves.js';
import type { Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { setOutPassage } from '../setout/passage.js';
import { chained, extradosPieces, offsetPieces } from './meridian.js';

/**
 * The same house for the many questions of hidden lines: where a radius or height takes a search each time, as on a
 * chain's or an ellipse's offset, it is read off the meridian's chain of arcs.
 */
export const quickHouse = remembered((house: HouseSetout): HouseSetout => {
  const domes = house.domes.map((dome) => (dome.profile.arc ? dome : quickDome(dome)));
  const arches = house.arches.map((arch) => {
    const dome = domes.find((d) => d.id === arch.dome.id);
    return dome ? { ...arch, dome } : arch;
  });
  // Later stages ask which of its domes' list a passage's are, so they are the same objects.
  const passages = house.passages.map((p) => {
    const [first, second] = p.domes.map((d) => domes[house.domes.indexOf(d)]);
    return first && second ? setOutPassage(p.passage, [first, second], p.later) : p;
  });
  return { ...house, domes, arches, passages };
});

function quickDome(dome: DomeSetout): DomeSetout {
  const outer = rising(
    chained(extradosPieces(dome), CUT_CURVE)
      .map(withEnds)
      .filter((p) => p.to[1] > p.from[1]),
  );
  const offsets = new Map<number, Rising>();
  const meridian = (offset: number): Rising => {
    const before = offsets.get(offset);
    if (before) return before;
    const made = rising(chained(offsetPieces(dome, offset), CUT_CURVE).map(withEnds));
    offsets.set(offset, made);
    return made;
  };
  return {
    ...dome,
    radiusAt: (z, offset = 0) => radiusOn(meridian(offset), z),
    outerRadiusAt: (z) => radiusOn(outer, z),
    heightAt: (r, offset = 0) => heightOn(meridian(offset), r),
  };
}

interface Piece {
  readonly edge: Edge;
  readonly from: Vec2;
  readonly to: Vec2;
}

/** A meridian that rises and never goes out again, from its foot. */
interface Rising {
  readonly foot: Vec2;
  readonly pieces: readonly Piece[];
}

const withEnds = (edge: Edge): Piece => ({ edge, from: edgeStart(edge), to: edgeEnd(edge) });

const rising = (pieces: readonly Piece[]): Rising => ({ foot: (pieces[0] as Piece).from, pieces });

/** Radius at a height; NaN above the top. */
function radiusOn({ foot, pieces }: Rising, z: number): number {
  if (z <= foot[1]) return foot[0];
  const piece = firstWhere(pieces, (p) => p.to[1] >= z);
  if (!piece) return Number.NaN;
  const { edge, from, to } = piece;
  if (edge.kind === 'arc') return edge.centre[0] + leg(edge.radius, z - edge.centre[1]);
  return from[0] + ((z - from[1]) / (to[1] - from[1])) * (to[0] - from[0]);
}

/** Height at a radius; NaN outside the foot. */
function heightOn({ foot, pieces }: Rising, r: number): number {
  if (r > foot[0]) return Number.NaN;
  const last = pieces[pieces.length - 1] as Piece;
  const { edge, from, to } = firstWhere(pieces, (p) => p.to[0] <= r && p.to[0] < p.from[0]) ?? last;
  if (edge.kind === 'arc') return edge.centre[1] + leg(edge.radius, r - edge.centre[0]);
  return from[1] + ((r - from[0]) / (to[0] - from[0])) * (to[1] - from[1]);
}

const leg = (radius: number, other: number): number => Math.sqrt(Math.max(0, radius * radius - other * other));

/** First of a row that `holds` is true for, when it is true for all after it. */
function firstWhere<T>(row: readonly T[], holds: (one: T) => boolean): T | undefined {
  let [low, high] = [0, row.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(row[middle] as T)) high = middle;
    else low = middle + 1;
  }
  return row[low];
}

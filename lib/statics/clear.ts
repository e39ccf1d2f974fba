import { SAME_POINT } from '../base/tolerances.js';
import type { Vec2 } from '../math/vec.js';

/** A section across a wall: where it crosses the middle surface, and from there to the outer face. */
interface Across {
  readonly middle: Vec2;
  readonly half: Vec2;
}

/** A section with the load above it and its moment about the axis. */
interface Loaded extends Across {
  readonly weight: number;
  readonly moment: number;
}

const inside = ({ middle, half }: Across, share: number): number => middle[0] - share * half[0];

/** Whether a section cut to a share of its thickness doesn't reach beyond the axis; others are passed over. */
export const standsClear = (section: Across, share: number): boolean => inside(section, share) >= -SAME_POINT;

/**
 * Part of the way from a section that is passed over to the next, which isn't, at which one would end on the axis:
 * that one is a limit too, and without it a factor would hang on where sections happen to lie. `null` between others.
 */
export function reachesAxis(above: Across, below: Across, share: number): number | null {
  if (standsClear(above, share) || !standsClear(below, share)) return null;
  const [from, to] = [inside(above, share), inside(below, share)];
  return Math.min(1, from / (from - to));
}

export const partWay = (from: number, to: number, part: number): number => from + part * (to - from);

const pointPartWay = (from: Vec2, to: Vec2, part: number): Vec2 => [
  partWay(from[0], to[0], part),
  partWay(from[1], to[1], part),
];

/** The section a part of the way from one to the next. */
export const sectionPartWay = (above: Loaded, below: Loaded, part: number): Loaded => ({
  middle: pointPartWay(above.middle, below.middle, part),
  half: pointPartWay(above.half, below.half, part),
  weight: partWay(above.weight, below.weight, part),
  moment: partWay(above.moment, below.moment, part),
});

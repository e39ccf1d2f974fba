import type { Passage } from '../description/house.js';
import { hypot } from '../math/elementary.js';
import { type Section, sectionOf } from '../math/section.js';
import { alongBearing, bearingOf, sub2, turnPositive, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from './dome.js';

/**
 * A vault between two domes with its walls down to the footing. Plan frame at the first dome's axis: `along`
 * points at the second's (v), `across` to the right of it (u). Its section is constant from room to room.
 */
export interface PassageSetout {
  readonly id: string;
  readonly passage: Passage;
  readonly domes: readonly [DomeSetout, DomeSetout];
  /** Which of the two is listed later, and gives way where they overlap. */
  readonly later: 0 | 1;
  readonly bearingRad: number;
  readonly along: Vec2;
  readonly across: Vec2;
  /** Between the two axes. */
  readonly distance: number;
  readonly section: Section;
  readonly ring: number;
  readonly topZ: number;
  outerHalfAt(z: number, grow?: number): number;
  clearHalfAt(z: number): number;
  /** Where the masonry begins and ends on the line at (u, z): at the two rooms' walls. */
  stretchAt(u: number, z: number): readonly [number, number];
}

export function setOutPassage(passage: Passage, domes: readonly [DomeSetout, DomeSetout], later: 0 | 1): PassageSetout {
  const [first, second] = domes;
  const between = sub2(second.at, first.at);
  const distance = hypot(between[0], between[1]);
  const bearingRad = bearingOf(between);
  const along = alongBearing(bearingRad);
  const section = sectionOf({ width: passage.width, height: passage.height, sill: 0, head: passage.head });
  const { ring } = passage;
  // Stretches are asked for across at one level after the other.
  let level = Number.NaN;
  let radii = { first: 0, second: 0, outer: 0 };
  const radiiAt = (z: number) => {
    if (z === level) return radii;
    level = z;
    radii = {
      first: first.radiusAt(z),
      second: second.radiusAt(z),
      outer: domes[later === 1 ? 0 : 1].outerRadiusAt(z),
    };
    return radii;
  };
  return {
    id: passage.id,
    passage,
    domes,
    later,
    bearingRad,
    along,
    across: [along[1], -along[0]],
    distance,
    section,
    ring,
    topZ: section.topZ(ring),
    outerHalfAt: (z, grow = 0) => section.halfWidthAt(z, ring + grow, 0),
    clearHalfAt: (z) => section.halfWidthAt(z),
    stretchAt(u, z) {
      // The later dome's room ends at the earlier one's extrados where that reaches into it.
      const at = radiiAt(z);
      const start = reach(at.first, u);
      const end = distance - reach(at.second, u);
      return later === 1
        ? [start, Math.max(end, reach(at.outer, u))]
        : [Math.min(start, distance - reach(at.outer, u)), end];
    },
  };
}

/** Half chord of a circle at distance u from its centre; 0 where it doesn't reach. */
const reach = (radius: number, u: number): number => {
  const square = radius * radius - u * u;
  return square > 0 ? Math.sqrt(square) : 0;
};

/** A passage as a section on a bearing from one of its two domes' axes. */
export function seenFrom(passage: PassageSetout, dome: DomeSetout) {
  const { id, section, ring, domes } = passage;
  const bearingRad = domes[0].id === dome.id ? passage.bearingRad : turnPositive(passage.bearingRad + Math.PI);
  return { id, section, ring, bearingRad, baseZ: 0 };
}

import { acos, asin, atan2, cos, hypot, sin, square } from '../math/elementary.js';
import type { Section } from '../math/section.js';
import { turnSigned, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';

/**
 * What takes masonry away from a dome's courses: the grown outer section of an arch or passage, or the grown
 * extrados of an earlier dome that this one abuts. All bearings and distances are from the dome's own axis.
 */
export interface Cutter {
  readonly id: string;
  readonly bearingRad: number;
  /** Height range that it can reach. */
  readonly lowZ: number;
  readonly highZ: number;
  /** Heights at which its outline changes its law. */
  readonly heights: readonly number[];
  /** Half angle taken away about its bearing at radius r and height z; 0 for nothing. */
  spreadAt(r: number, z: number): number;
  /** Stretch taken from the level line at distance p from the axis, whose foot lies at bearing `footRad`; clockwise. */
  chordAt(p: number, footRad: number, z: number): readonly [number, number] | null;
  /** Half angle outside which nothing is taken, for radii of at least `narrowest` and heights of at least `lowest`. */
  widestSpread(narrowest: number, lowest?: number): number;
  /** Bounds of `spreadAt` over ranges of radii and of heights from the floor up: it is never less, never more. */
  spreadsIn(radii: Range, heights: Range): readonly [least: number, most: number];
}

type Range = readonly [from: number, to: number];

/** An arch, barrel or passage as seen from a dome's axis. */
export interface SectionPlace {
  readonly id: string;
  readonly bearingRad: number;
  readonly section: Section;
  readonly ring: number;
  readonly baseZ: number;
}

export function sectionCutter({ id, bearingRad, section, ring, baseZ }: SectionPlace, grow: number): Cutter {
  const grown = ring + grow;
  const halfAt = (z: number) => section.halfWidthAt(z, grown, baseZ);
  const spreadAt = (r: number, z: number) => {
    const half = halfAt(z);
    return half > 0 ? asin(Math.min(1, half / r)) : 0;
  };
  // No section is wider above than below.
  const widestSpread = (narrowest: number, lowest = baseZ) =>
    asin(Math.min(1, halfAt(Math.max(lowest, baseZ)) / narrowest));
  return {
    id,
    bearingRad,
    lowZ: baseZ,
    highZ: section.topZ(grown),
    heights: [baseZ, section.springingZ, section.shoulderZ(grown), section.topZ(grown)],
    spreadAt,
    chordAt(p, footRad, z) {
      const half = halfAt(z);
      const turn = turnSigned(footRad - bearingRad);
      if (!(half > 0) || cos(turn) <= 0) return null;
      // Along the line at x the section's lateral coordinate is p sin(turn) + x cos(turn).
      const at0 = p * sin(turn);
      return [(-half - at0) / cos(turn), (half - at0) / cos(turn)];
    },
    widestSpread,
    spreadsIn: (radii, heights) => [
      heights[0] < baseZ ? 0 : spreadAt(radii[1], heights[1]),
      heights[1] < baseZ ? 0 : widestSpread(radii[0], heights[0]),
    ],
  };
}

/** The extrados of an earlier dome, `away` (east, north) from the axis of the dome that is cut. */
export function shellCutter(earlier: DomeSetout, away: Vec2, grow: number): Cutter {
  const distance = hypot(away[0], away[1]);
  const bearingRad = atan2(away[0], away[1]);
  const radiusAt = (z: number) => earlier.outerRadiusAt(z) + grow;
  const { skewback, curb } = earlier;
  const spreadOf = (r: number, radius: number) => {
    if (!(radius > 0) || r <= distance - radius || r >= distance + radius) return 0;
    if (distance + r <= radius) return Math.PI;
    return acos((r * r + distance * distance - radius * radius) / (2 * r * distance));
  };
  return {
    id: earlier.id,
    bearingRad,
    lowZ: 0,
    highZ: earlier.topZ,
    heights: [
      0,
      earlier.springingZ,
      ...(skewback ? [skewback.shoulderZ] : []),
      ...(curb ? [curb.bedOuter[1]] : []),
      earlier.topZ,
    ],
    spreadAt: (r, z) => spreadOf(r, radiusAt(z)),
    chordAt(p, footRad, z) {
      const radius = radiusAt(z);
      const turn = turnSigned(bearingRad - footRad);
      const across = distance * sin(turn);
      const rest = radius * radius - square(distance * cos(turn) - p);
      return rest > 0 ? [across - Math.sqrt(rest), across + Math.sqrt(rest)] : null;
    },
    // Seen from outside, a circle spans at most the tangent's angle.
    widestSpread(_, lowest = 0) {
      const radius = radiusAt(Math.max(0, lowest));
      return radius > 0 ? asin(Math.min(1, radius / distance)) : 0;
    },
    // Over the radii the spread has one summit, where the tangent from the axis touches the circle.
    spreadsIn([narrow, wide], [low, high]) {
      const [most, least] = [radiusAt(low), radiusAt(high)];
      const tangent = Math.sqrt(Math.max(0, distance * distance - most * most));
      return [
        Math.min(spreadOf(narrow, least), spreadOf(wide, least)),
        spreadOf(Math.min(wide, Math.max(narrow, tangent)), most),
      ];
    },
  };
}

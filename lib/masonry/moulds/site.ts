import { remembered } from '../../base/remembered.js';
import { SAME_ANGLE_RAD, SAME_POINT } from '../../base/tolerances.js';
import { cos, hypot, sin } from '../../math/elementary.js';
import type { Course } from '../../setout/courses.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { MeridianSpan } from '../../setout/span.js';

/** Where the blocks of a course have their lower bed, middle and upper bed. */
export const EDGES = ['lower', 'middle', 'upper'] as const;
export type EdgeName = (typeof EDGES)[number];

/** A point of the intrados in the half plane (r, z), its outward normal, and the face's curvature up the meridian. */
export interface Station {
  readonly r: number;
  readonly z: number;
  readonly normal: readonly [number, number];
  readonly normalRad: number;
  readonly curvature: number;
}

/** A course as a place for blocks: what decides which mould fits, and nothing else. */
export interface Site {
  readonly domeId: string;
  readonly course: Course;
  readonly span: MeridianSpan;
  readonly thickness: number;
  /** The same object for all places of one wall between the same beds. */
  readonly at: Readonly<Record<EdgeName, Station>>;
}

export function siteOf(dome: DomeSetout, course: Course): Site {
  const { thickness } = dome;
  const span = dome[course.part];
  const known = stationsOn(span);
  const key = `${course.bed} ${course.to} ${thickness}`;
  const at = known.get(key) ?? stationsOf(span, course);
  known.set(key, at);
  return { domeId: dome.id, course, span, thickness, at };
}

/** Courses of one wall that differ in nothing but their blocks have the same stations: what is found for these is kept. */
const stationsOn = remembered((_: MeridianSpan) => new Map<string, Site['at']>());

function stationsOf(span: MeridianSpan, { bed, to }: Course): Site['at'] {
  const station = (s: number): Station => {
    const { r, z, normalRad, curvature } = span.at(s);
    return { r, z, normal: [cos(normalRad), sin(normalRad)], normalRad, curvature };
  };
  return { lower: station(bed), middle: station((bed + to) / 2), upper: station(to) };
}

/** Radius `depth` outside the intrados. */
export const radiusAt = ({ r, normal }: Station, depth: number): number => r + depth * normal[0];

/**
 * A point (r, z) as seen from a station: `up` along the meridian from the bed through the station, and how far it lies
 * outside the intrados; near the station the meridian is its circle of curvature.
 */
export function seenAt({ r, z, normal, curvature }: Station, atR: number, atZ: number): { up: number; depth: number } {
  const dr = atR - r;
  const dz = atZ - z;
  const up = dz * normal[0] - dr * normal[1];
  const out = dr * normal[0] + dz * normal[1];
  if (curvature === 0) return { up, depth: out };
  const radius = 1 / curvature;
  return { up, depth: Math.sign(radius) * hypot(up, radius + out) - radius };
}

/** Courses of one kind take the same moulds: equal but for their height above the floor. */
export function kindOf({ thickness, at }: Site): string {
  const length = (x: number) => Math.round(x / SAME_POINT);
  const angle = (x: number) => Math.round(x / SAME_ANGLE_RAD);
  return [
    length(thickness),
    ...EDGES.flatMap((edge) => {
      const { r, z, normalRad, curvature } = at[edge];
      return [length(r), length(z - at.middle.z), angle(normalRad), angle(thickness * curvature)];
    }),
  ].join(' ');
}

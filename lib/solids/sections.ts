import { WHOLE } from '../base/tolerances.js';
import { acos, cos, hypot, sin } from '../math/elementary.js';
import type { Section } from '../math/section.js';
import { sectionOutline } from '../math/section.js';
import type { Vec2 } from '../math/vec.js';
import type { MeridianSpan } from '../setout/span.js';
import { type Outline, outlineOf, type Stretch } from './outline.js';

/** Greatest distance between an arc of `angleRad` and its chords when divided so often: at most `sagitta`. */
export function arcSteps(radius: number, angleRad: number, sagitta: number): number {
  const step = 2 * acos(Math.max(0, 1 - sagitta / radius));
  return Math.max(1, Math.ceil(Math.abs(angleRad) / step - WHOLE));
}

/** Facets of a full turn, a multiple of four so that quarters are alike. */
export function turnSegments(radius: number, sagitta: number): number {
  return Math.max(8, 4 * Math.ceil(arcSteps(radius, 2 * Math.PI, sagitta) / 4));
}

/** `count` equal steps from `from` to `to`, both ends included and exact. */
export function steps(from: number, to: number, count: number): number[] {
  return Array.from({ length: count + 1 }, (_, i) => (i === count ? to : from + ((to - from) * i) / count));
}

/**
 * Equal steps along the meridian between `from` and `to`, fine enough that no chord leaves the intrados or
 * the surface `offset` outside it by more than `sagitta`.
 */
export function meridianStations(
  span: MeridianSpan,
  from: number,
  to: number,
  offset: number,
  sagitta: number,
): number[] {
  // Both surfaces share the stations: the outer steps are longer by 1 + offset · curvature. On every profile
  // curvature changes one way only between springing and crown, so that it is greatest at an end.
  const need = [from, to].map((s) => {
    const { curvature } = span.at(s);
    return curvature * (1 + offset * curvature);
  });
  const count = Math.ceil((to - from) * Math.sqrt(Math.max(...need) / (8 * sagitta)) - WHOLE);
  return steps(from, to, Math.max(1, count));
}

/** Points of a curve at equal parameters, refined until every chord's middle is within `sagitta` of it. */
export function flatten(curve: (t: number) => Vec2, from: number, to: number, sagitta: number): Vec2[] {
  for (let count = 1; ; count++) {
    const at = steps(from, to, count);
    const points = at.map(curve);
    const near = points.slice(1).every((b, i) => {
      const a = points[i] as Vec2;
      const m = curve(((at[i] as number) + (at[i + 1] as number)) / 2);
      return hypot((a[0] + b[0]) / 2 - m[0], (a[1] + b[1]) / 2 - m[1]) <= sagitta;
    });
    if (near) return points;
  }
}

/** Names of the outline's edges under a section. */
export interface SectionNames {
  readonly bottom: string;
  readonly sides: string;
}

/** The section grown by `grow`, closed at `from` below, its arcs in chords; (u, z), counter-clockwise. */
export function sectionPolygon(
  section: Section,
  grow: number,
  from: number,
  sagitta: number,
  names: SectionNames,
): Outline {
  const pieces = sectionOutline(section, grow, from);
  const bottom = pieces.length - 1;
  const stretches = pieces.map((piece, i): Stretch => {
    const name = i === bottom ? names.bottom : names.sides;
    if (piece.kind === 'line') return [name, [piece.from]];
    const { centre, radius, start, end } = piece;
    const angles = steps(start, end, arcSteps(radius, end - start, sagitta));
    return [name, angles.slice(0, -1).map((a) => [centre[0] + radius * cos(a), centre[1] + radius * sin(a)])];
  });
  return outlineOf(...stretches);
}

import { SAME_ANGLE_RAD } from '../base/tolerances.js';
import type { Site } from '../description/house.js';
import { DEG, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { evenSnow, pressureOf } from './loads.js';
import { type Lune, surfacePoint } from './lune.js';

/** Snow on the plan at three radii, kPa; in proportion between them, none outside the last. */
export type DriftHeights = readonly [number, number, number];

/** Drifted snow along the wind through a dome's axis, on its rendered surface; the wind comes from the windward half. */
export interface SnowDrift {
  /** From the axis outward, mm: the axis, the peak, the edge of what snow stays on. */
  readonly radii: readonly [number, number, number];
  readonly windward: DriftHeights;
  readonly leeward: DriftHeights;
}

/** Shape factor of drifted snow on a curved roof of this rise and span: EN 1991-1-3:2003, 5.3.5 (from memory). */
export const driftFactor = (rise: number, span: number): number => Math.min(2, 0.2 + (10 * rise) / span);

/** Slope from which snow slides in part: ASCE 7-16, Figure 7.4-1, other than slippery, not warmed (from memory). */
const SLIDES_FROM = 30;
const SLIDES_ALL = 70;

/**
 * EN 1991-1-3:2003, 5.3.5 case (ii), written for cylinders: triangles on both halves, their peaks at the quarter
 * points, half as high to windward. ASCE 7-16, 7.6.4: a dome's downwind sector as the curved roof of Figure 7.4-2,
 * from half the even load at the crown to twice it where the slope is 30 degrees or at the edge, then down with what
 * slides; the other half bare (both from memory).
 */
export function snowDrift(lune: Lune, site: Site): SnowDrift {
  const { dome, sections } = lune;
  const { kpa, leastNormalRad } = evenSnow(site);
  const held = sections.filter((s) => s.part === 'shell' && s.normalRad > leastNormalRad - SAME_ANGLE_RAD);
  const outer = held.map((s): Vec2 => [surfacePoint(lune, s)[0], s.normalRad]);
  const last = outer.reduce<Vec2>((a, b) => (b[0] > a[0] ? b : a), [0, Math.PI / 2]);
  const reach = last[0];
  if (site.combinations === 'EN 1990') {
    const peak = driftFactor(dome.profile.rise, 2 * dome.springingRadius) * (site.snowKpa ?? 0);
    return { radii: [0, reach / 2, reach], windward: [0, peak / 2, 0], leeward: [0, peak, 0] };
  }
  const turn = radiusAtSlope(outer, (90 - SLIDES_FROM) * DEG);
  const slope = 90 - last[1] / DEG;
  const kept = Math.min(1, Math.max(0, (SLIDES_ALL - slope) / (SLIDES_ALL - SLIDES_FROM)));
  return { radii: [0, turn, reach], windward: [0, 0, 0], leeward: [0.5 * kpa, 2 * kpa, 2 * kpa * kept] };
}

/** Radius at which the normal of (radius, normal) has this elevation: in proportion between sections; ends held. */
function radiusAtSlope(outer: readonly Vec2[], normalRad: number): number {
  const next = outer.findIndex(([, normal]) => normal < normalRad);
  const [below, above] = [outer[next], outer[next - 1]];
  if (!below) return outer[outer.length - 1]?.[0] ?? 0;
  if (!above) return 0;
  return above[0] + ((below[0] - above[0]) * (above[1] - normalRad)) / (above[1] - below[1]);
}

/** ∫ p r^power dr from the axis to `edge`, per radian; kPa and mm. */
export function driftMoment(radii: SnowDrift['radii'], kpa: DriftHeights, edge: number, power: 1 | 2): number {
  let sum = 0;
  for (const k of [0, 1] as const) {
    const [a, b] = [radii[k], radii[k + 1] as number];
    const to = Math.min(b, edge);
    if (!(to > a)) continue;
    // p = base + slope r.
    const slope = ((kpa[k + 1] as number) - kpa[k]) / (b - a);
    const base = kpa[k] - slope * a;
    const upTo = (r: number) => {
      const [second, third] = [r * r, r * r * r];
      return power === 1
        ? (base * second) / 2 + (slope * third) / 3
        : (base * third) / 3 + (slope * second * second) / 4;
    };
    sum += upTo(to) - upTo(a);
  }
  return sum;
}

/**
 * Drifted snow within `edge`, per radian, and its moment about the axis, kN and mm: what lies on a skylight is carried
 * by the middle of its curb, as even snow is.
 */
export function driftAbove(
  curb: DomeSetout['curb'],
  radii: SnowDrift['radii'],
  kpa: DriftHeights,
  edge: number,
): { readonly weight: number; readonly moment: number } {
  const within = (to: number, power: 1 | 2) => pressureOf(driftMoment(radii, kpa, to, power));
  const [weight, moment] = [within(edge, 1), within(edge, 2)];
  if (!curb) return { weight, moment };
  const { clearRadius: bore, bedOuter } = curb;
  const lever = (bore + bedOuter[0]) / 2;
  return { weight, moment: moment - within(bore, 2) + within(bore, 1) * lever };
}

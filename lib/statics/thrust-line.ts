import { type Convex, ConvexRegion } from '../math/convex.js';
import type { Vec2 } from '../math/vec.js';
import { type Reached, reach, type ThrustBody, type ThrustOptions, type ThrustSection } from './thrust.js';

/** A thrust at one section: H, and where its resultant crosses the section. */
export interface ThrustPoint {
  readonly r: number;
  readonly z: number;
  readonly horizontal: number;
  readonly vertical: number;
  /** 0 at the inner face, 1 at the outer. */
  readonly place: number;
}

/** Part of its size by which rounding may make a way back miss at least. */
const LEAST_MISS = 1e-15;

/**
 * A line of thrust from the crown down: the one of least outward thrust in masonry cut to `share` of its thickness,
 * with as little hoop compression as it can do with. Empty when none fits.
 */
export function thrustLine(body: ThrustBody, share: number, options: ThrustOptions = {}): ThrustPoint[] {
  const reached: Reached[] = [];
  const { region: end, margin } = reach(body, share, options, (step) => reached.push(step));
  if (!(margin >= 0)) return [];
  let at = leastThrust(end);
  const line: ThrustPoint[] = [];
  for (let i = reached.length - 1; i >= 0; i--) {
    const section = body.sections[i] as ThrustSection;
    const step = reached[i] as Reached;
    if (step.skipped) continue;
    line.push(pointAt(section, at));
    if (step.above && i > 0) at = comingFrom(step.above, at, step);
  }
  return line.reverse();
}

/** The least outward thrust of a region; steel that could take more than all of it takes all, as midway as that can. */
function leastThrust(end: ConvexRegion): Vec2 {
  const [least, most] = [end.farthest([-1, 0]), end.farthest([1, 0])];
  if (least[0] >= 0 || most[0] <= 0) return least;
  const rounding = LEAST_MISS * 1000 * Math.max(-least[0], most[0]);
  end.cut(1, 0, 0);
  const upright = end.corners().filter(([h]) => h <= rounding);
  const moments = upright.map(([, k]) => k);
  return [0, (Math.min(...moments) + Math.max(...moments)) / 2];
}

/** The (H, K) of the region above that is moved to `at` with the least pull or push of hoops. */
function comingFrom(region: Convex, at: Vec2, step: Reached): Vec2 {
  // Where the way back runs along the region's edge, rounding may leave none.
  for (let miss = 0; ; miss = Math.max(LEAST_MISS, 10 * miss)) {
    const kept = wayBack(region, at, step, miss);
    if (!kept.empty) return kept.farthest(step.hoops ? [1, 0] : [-1, 0]);
  }
}

/** What of the region above hoops or steel move to `at`, both met up to `miss` times their size. */
function wayBack(region: Convex, at: Vec2, { hoops, tie }: Reached, miss: number): ConvexRegion {
  const cutThrough = (kept: ConvexRegion, a: number, b: number, [x, y]: Vec2) =>
    kept.cut(a, b, -a * x - b * y + miss * (Math.abs(a * x) + Math.abs(b * y)));
  if (hoops) {
    const kept = new ConvexRegion(region);
    cutThrough(kept, -1, 0, at);
    cutThrough(kept, hoops[0], -1, at);
    cutThrough(kept, -hoops[1], 1, at);
    return kept;
  }
  const [pull, pullMoment] = tie ?? [0, 0];
  const kept = new ConvexRegion([at, [at[0] - pull, at[1] - pullMoment]]);
  for (let i = 0; i < region.length; i++) {
    const [p, q] = [region[i] as Vec2, region[(i + 1) % region.length] as Vec2];
    cutThrough(kept, p[1] - q[1], q[0] - p[0], p);
  }
  return kept;
}

function pointAt({ middle, half, weight, moment }: ThrustSection, [h, k]: Vec2): ThrustPoint {
  const across = half[0] * weight + half[1] * h;
  const off = across > 0 ? (moment + k - middle[0] * weight - middle[1] * h) / across : 0;
  return {
    r: middle[0] + off * half[0],
    z: middle[1] + off * half[1],
    horizontal: h,
    vertical: weight,
    place: (1 + off) / 2,
  };
}

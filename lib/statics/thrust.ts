import { FACTOR_STEP, FRICTION_STEP } from '../base/tolerances.js';
import { type Convex, ConvexRegion } from '../math/convex.js';
import { square } from '../math/elementary.js';
import type { Vec2 } from '../math/vec.js';
import { reachesAxis, sectionPartWay, standsClear } from './clear.js';

/**
 * Equilibrium of a lune or half arch by the safe theorem: any thrust that stays in the masonry proves that it stands
 * (Heyman, "The stone skeleton", International Journal of Solids and Structures 2, 1966: no tension, no crushing,
 * no sliding). Unknowns at every section are the horizontal thrust H and its moment K = sum of each push times its
 * height; being inside a section is two linear inequalities in (H, K), and hoop compression moves (H, K) along
 * (1, height). All solutions of the linear programme are therefore a convex region that is carried from the crown
 * down, section by section. Lengths mm; forces kN, per radian of bearing for a lune.
 */
export type Heights = readonly [number, number];

export interface ThrustSection {
  /** Where the section crosses the middle surface: (r, z). */
  readonly middle: Vec2;
  /** From there to the outer face. */
  readonly half: Vec2;
  /** Weight above. */
  readonly weight: number;
  /** Moment of the weight above about the axis: sum of weight times r, kN mm. */
  readonly moment: number;
  /** Heights between which a closed ring just above pushes with hoop compression; `null` for no ring. */
  readonly hoops: Heights | null;
  /** A hoop of steel in place of one of masonry: its height and the greatest pull per radian. */
  readonly tie?: { readonly z: number; readonly most: number };
}

export interface ThrustBody {
  /** From the crown down. */
  readonly sections: readonly ThrustSection[];
  /** Heights between which the crown pushes, when all masonry is cut to `share` of its thickness. */
  readonly crown: (share: number) => Heights;
}

export interface ThrustOptions {
  /** Greatest |shear| / compression on a section; unlimited when missing. */
  readonly friction?: number;
}

/** A thrust at one section: H, and where its resultant crosses the section. */
export interface ThrustPoint {
  readonly r: number;
  readonly z: number;
  readonly horizontal: number;
  readonly vertical: number;
  /** 0 at the inner face, 1 at the outer. */
  readonly place: number;
}

/** Thrusts beyond this many times the weight are told as unlimited. */
const GREATEST_THRUST = 1000;
/** Factors beyond this are told as this. */
const GREATEST_FACTOR = 100;
/** Masonry isn't made thicker than this many times to look for a thrust. */
const MOST_SHARE = 32;

/** How the (H, K) of the section above came to a section. */
interface Reached {
  /** All of them above, where hoops or steel moved them. */
  readonly above: Convex | null;
  /** Heights of hoop compression on the way. */
  readonly hoops: Heights | null;
  /** The steel's greatest pull on the way, as a step in (H, K). */
  readonly tie: Vec2 | null;
  /** Whether the section lies beyond the axis when cut: it is passed over. */
  readonly skipped: boolean;
}

/** The (H, K) that can reach the last section, and by how much they do: the least leeway at any face, negative for none. */
interface Reach {
  readonly region: ConvexRegion;
  readonly margin: number;
}

/**
 * What can reach the last section with all masonry cut to `share` of its thickness. `keep` is told of every section on
 * the way.
 */
function reach(body: ThrustBody, share: number, options: ThrustOptions, keep?: (step: Reached) => void): Reach {
  const { sections } = body;
  const last = sections[sections.length - 1];
  const region = new ConvexRegion(last ? [[0, 0]] : []);
  if (!last) return { region, margin: -1 };
  const most = GREATEST_THRUST * last.weight;
  const [low, high] = body.crown(share);
  let margin = Number.POSITIVE_INFINITY;
  region.sweep(low, high, most);
  let before: ThrustSection | null = null;
  for (const section of sections) {
    const { hoops, tie } = section;
    const pull: Reached['tie'] = tie ? [-tie.most, -tie.most * tie.z] : null;
    const skipped = !standsClear(section, share);
    const part: number | null = before ? reachesAxis(before, section, share) : null;
    if (before && part !== null) {
      margin = Math.min(margin, cutToSection(region, sectionPartWay(before, section, part), share, options.friction));
      if (!(margin >= 0)) break;
    }
    before = section;
    const above = keep && !skipped && (pull || hoops) ? region.corners() : null;
    if (!skipped) {
      if (pull) region.drag(pull);
      else if (hoops) region.sweep(hoops[0], hoops[1], most);
      margin = Math.min(margin, cutToSection(region, section, share, options.friction));
      if (!(margin >= 0)) break;
    }
    keep?.({ above, hoops, tie: pull, skipped });
  }
  return { region, margin };
}

/** Leaves of a region what passes inside a section; the least leeway at either face. */
function cutToSection(
  region: ConvexRegion,
  { weight, moment, middle, half }: Pick<ThrustSection, 'weight' | 'moment' | 'middle' | 'half'>,
  share: number,
  friction: number | undefined,
): number {
  const r = share * half[0];
  const z = share * half[1];
  const inner = region.cut(z - middle[1], 1, moment - (middle[0] - r) * weight);
  if (inner < 0) return inner;
  const leeway = Math.min(inner, region.cut(middle[1] + z, -1, (middle[0] + r) * weight - moment));
  if (friction === undefined || leeway < 0) return leeway;
  const size = Math.sqrt(square(half[0]) + square(half[1]));
  const [c, s] = [half[0] / size, half[1] / size];
  const out = region.cut(friction * s - c, 0, weight * (s + friction * c));
  return out < 0 ? out : Math.min(leeway, out, region.cut(c + friction * s, 0, weight * (friction * c - s)));
}

/** Whether a thrust fits into masonry cut to `share` of its thickness. */
export const stands = (body: ThrustBody, share: number, options: ThrustOptions = {}): boolean =>
  reach(body, share, options).margin >= 0;

/**
 * Geometric factor of safety: thickness over the thickness that the thrust needs just to fit, weights unchanged.
 * Under 1 no thrust fits; 0 when even masonry 32 times as thick holds none.
 */
export function geometricFactor(body: ThrustBody, options: ThrustOptions = {}): number {
  return factorBy((share) => reach(body, share, options).margin);
}

/**
 * The greatest 1 / share for which a thrust fits, to the step of a bisection. `margin` gives by how much it fits,
 * negative where it doesn't. A guess is looked at first: where it is right, two looks show that.
 */
export function factorBy(margin: (share: number) => number): number {
  const near = guessShare(margin);
  const guess = near === null ? null : leastShare((share) => share >= near);
  if (guess && margin(guess.fits) >= 0 && !(margin(guess.fails) >= 0)) return 1 / guess.fits;
  const found = leastShare((share) => margin(share) >= 0);
  return found ? Math.min(GREATEST_FACTOR, 1 / found.fits) : 0;
}

/** Bisection would take twenty steps. */
const MOST_GUESSES = 12;
/** A guess has settled when it moves by no more than this part of the step. */
const SETTLED = 1e-2;

/** A share and by how much a thrust fits there. */
type Tried = readonly [share: number, margin: number];

/** Where a straight line through two tries reaches 0. */
const through = ([a, atA]: Tried, [b, atB]: Tried): number => b - (atB * (b - a)) / (atB - atA);

/**
 * Where a margin turns, most likely; `null` where that doesn't settle. Where a thrust fits, its margin runs nearly
 * straight, so that two such tries show the way; where none does, it tells little from afar.
 */
function guessShare(margin: (share: number) => number): number | null {
  const look = (share: number): Tried => [share, margin(share)];
  let fits = look(1);
  let fails = look(0.5);
  let before: Tried | null = null;
  while (fails[1] >= 0 && fails[0] > 1 / GREATEST_FACTOR) {
    [before, fits] = [fits, fails];
    fails = look(fails[0] / 2);
  }
  while (!(fits[1] >= 0) && fits[0] < MOST_SHARE) {
    fails = fits;
    fits = look(2 * fits[0]);
  }
  let last = fits[0];
  let failed = 0;
  for (let i = 0; i < MOST_GUESSES; i++) {
    const way: number = before ? through(before, fits) : through(fails, fits);
    const inside = failed < 2 && way > fails[0] && way < fits[0];
    const share: number = inside ? way : (fails[0] + fits[0]) / 2;
    if (Math.abs(share - last) < FACTOR_STEP * SETTLED * share) return share;
    const tried = look(share);
    if (tried[1] >= 0) [before, fits, failed] = [fits, tried, 0];
    else [before, fails, failed] = [null, tried, failed + 1];
    last = share;
  }
  return null;
}

/** The least share that fits and the step before it, which doesn't; `null` when masonry is never thick enough. */
function leastShare(fits: (share: number) => boolean): { readonly fits: number; readonly fails: number } | null {
  let high = 1;
  while (!fits(high)) {
    high *= 2;
    if (high > MOST_SHARE) return null;
  }
  let low = high / 2;
  if (high === 1) {
    while (fits(low)) {
      high = low;
      low /= 2;
      if (high <= 1 / GREATEST_FACTOR) return { fits: 1 / GREATEST_FACTOR, fails: 0 };
    }
  }
  while (high - low > FACTOR_STEP * high) {
    const middle = (low + high) / 2;
    if (fits(middle)) high = middle;
    else low = middle;
  }
  return { fits: high, fails: low };
}

/** Least coefficient of friction with which a thrust fits, to a hundredth, at most 1; `null` when 1 isn't enough. */
export function frictionNeeded(body: ThrustBody): number | null {
  const fits = (friction: number) => stands(body, 1, { friction });
  let [low, high] = [0, 1];
  if (!fits(high)) return null;
  while (high - low > FRICTION_STEP) {
    const middle = (low + high) / 2;
    if (fits(middle)) high = middle;
    else low = middle;
  }
  return high;
}

export interface ThrustRange {
  readonly least: number;
  /** `null` where nothing but crushing limits it. */
  readonly greatest: number | null;
}

/** Least and greatest outward thrust at the last section, 0 where a tie can take it all; `null` when none fits. */
export function thrustRange(body: ThrustBody, options: ThrustOptions = {}): ThrustRange | null {
  const { region: end, margin } = reach(body, 1, options);
  if (!(margin >= 0)) return null;
  const weight = body.sections[body.sections.length - 1]?.weight ?? 0;
  const greatest = end.farthest([1, 0])[0];
  return {
    least: Math.max(0, end.farthest([-1, 0])[0]),
    greatest: greatest < 0.99 * GREATEST_THRUST * weight ? greatest : null,
  };
}

/**
 * A line of thrust from the crown down: the one of least thrust in masonry cut to `share` of its thickness, with as
 * little hoop compression as it can do with. Empty when none fits.
 */
export function thrustLine(body: ThrustBody, share: number, options: ThrustOptions = {}): ThrustPoint[] {
  const reached: Reached[] = [];
  const { region: end, margin } = reach(body, share, options, (step) => reached.push(step));
  if (!(margin >= 0)) return [];
  let at = end.farthest([-1, 0]);
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

/** The (H, K) of the region above that is moved to `at` with the least pull or push of hoops. */
function comingFrom(region: Convex, at: Vec2, { hoops, tie }: Reached): Vec2 {
  const [h, k] = at;
  if (hoops) {
    const [low, high] = hoops;
    const kept = new ConvexRegion(region);
    kept.cut(-1, 0, h);
    kept.cut(low, -1, k - low * h);
    kept.cut(-high, 1, high * h - k);
    return kept.empty ? nearestCorner(region, at) : kept.farthest([1, 0]);
  }
  if (!tie) return at;
  const kept = new ConvexRegion([at, [h - tie[0], k - tie[1]]]);
  for (let i = 0; i < region.length; i++) {
    const [p, q] = [region[i] as Vec2, region[(i + 1) % region.length] as Vec2];
    const [a, b] = [p[1] - q[1], q[0] - p[0]];
    kept.cut(a, b, -a * p[0] - b * p[1]);
  }
  return kept.empty ? nearestCorner(region, at) : kept.farthest([-1, 0]);
}

/** Where rounding leaves no way back, the nearest by thrust. */
const nearestCorner = (region: Convex, [h]: Vec2): Vec2 =>
  region.reduce((best, p) => (Math.abs(p[0] - h) < Math.abs(best[0] - h) ? p : best));

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

import { FRICTION_STEP } from '../base/tolerances.js';
import { type Convex, ConvexRegion } from '../math/convex.js';
import { square } from '../math/elementary.js';
import type { Vec2 } from '../math/vec.js';
import { reachesAxis, sectionPartWay, standsClear } from './clear.js';
import { factorBy } from './factor.js';

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

/** Thrusts beyond this many times the weight are told as unlimited. */
const GREATEST_THRUST = 1000;

/** How the (H, K) of the section above came to a section. */
export interface Reached {
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
export interface Reach {
  readonly region: ConvexRegion;
  readonly margin: number;
}

/**
 * What can reach the last section with all masonry cut to `share` of its thickness. `keep` is told of every section on
 * the way.
 */
export function reach(body: ThrustBody, share: number, options: ThrustOptions, keep?: (step: Reached) => void): Reach {
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

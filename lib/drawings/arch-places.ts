import { dot2, sub2, type Vec2, type Vec3 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { PassageSetout } from '../setout/passage.js';

/** What runs level with one section: an opening out from its dome's axis, a passage from the first dome's to the second's. */
export type Prism = ArchSetout | PassageSetout;

export const originOf = (prism: Prism): Vec2 => ('dome' in prism ? prism.dome.at : prism.domes[0].at);

/** How far from its origin a prism may reach; an opening's clear space cuts all that lies before it. */
const endOf = (prism: Prism): number => ('dome' in prism ? Number.POSITIVE_INFINITY : prism.distance);

/** A plan point in a prism's frame: u to the right, v out along the bearing. */
export function inArchFrame(prism: Prism, at: readonly [number, number, ...number[]]): Vec2 {
  const from = sub2([at[0], at[1]], originOf(prism));
  return [dot2(from, prism.across), dot2(from, prism.along)];
}

export function fromArchFrame(prism: Prism, u: number, v: number): Vec2 {
  const { across, along } = prism;
  const at = originOf(prism);
  return [at[0] + u * across[0] + v * along[0], at[1] + u * across[1] + v * along[1]];
}

/** Whether a point lies in the clear section, at whatever distance outward. */
export const inClear = (prism: Prism, p: Vec3): boolean => inHalf(prism, p, prism.clearHalfAt(p[2]));

/** Whether a point lies in the section of ring and jambs, at whatever distance outward. */
export const inOuter = (prism: Prism, p: Vec3): boolean => inHalf(prism, p, prism.outerHalfAt(p[2]));

/** Whether a point lies before a prism, within a half width. */
function inHalf(prism: Prism, p: Vec3, half: number): boolean {
  if (!(half > 0)) return false;
  const { across, along } = prism;
  const at = originOf(prism);
  const [x, y] = [p[0] - at[0], p[1] - at[1]];
  const v = x * along[0] + y * along[1];
  return v > 0 && v < endOf(prism) && Math.abs(x * across[0] + y * across[1]) < half;
}

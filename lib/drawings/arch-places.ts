import { dot2, sub2, type Vec2, type Vec3 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';

/** A plan point in an arch's frame: u to the right, v out along the bearing. */
export function inArchFrame(arch: ArchSetout, at: readonly [number, number, ...number[]]): Vec2 {
  const from = sub2([at[0], at[1]], arch.dome.at);
  return [dot2(from, arch.across), dot2(from, arch.along)];
}

export function fromArchFrame(arch: ArchSetout, u: number, v: number): Vec2 {
  const { across, along, dome } = arch;
  return [dome.at[0] + u * across[0] + v * along[0], dome.at[1] + u * across[1] + v * along[1]];
}

/** Whether a point lies in the clear section, at whatever distance outward. */
export function inClear(arch: ArchSetout, p: Vec3): boolean {
  const [u, v] = inArchFrame(arch, p);
  return v > 0 && Math.abs(u) < arch.clearHalfAt(p[2]);
}

/** Whether a point lies in the section of ring and jambs, at whatever distance outward. */
export function inOuter(arch: ArchSetout, p: Vec3): boolean {
  const [u, v] = inArchFrame(arch, p);
  return v > 0 && Math.abs(u) < arch.outerHalfAt(p[2]);
}

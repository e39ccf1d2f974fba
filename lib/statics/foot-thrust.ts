import type { HouseSetout } from '../setout/house.js';
import type { DomeStatics } from './results.js';

/** Least thrust at a dome's foot, kN/m along the middle of its footing or wall, without load factors; `null` when none fits. */
export function footThrust(setout: HouseSetout, { id, thrust, footing }: DomeStatics): number | null {
  const dome = setout.domes.find((d) => d.id === id);
  if (footing || thrust.least === null || !dome) return footing?.thrust ?? null;
  return (thrust.least * 1000) / (dome.springingRadius + dome.thickness / 2);
}

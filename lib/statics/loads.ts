import * as texts from '../base/texts/statics.js';
import { GRAVITY } from '../base/units.js';
import type { Site } from '../description/house.js';
import { DEG } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { jointShare } from './joint-share.js';

/** kN/mm3 of a density in kg/m3. */
export const weightOf = (densityKgM3: number): number => densityKgM3 * GRAVITY * 1e-12;
/** kN/mm2 of a pressure in kPa. */
export const pressureOf = (kpa: number): number => kpa * 1e-6;

/** Snow on a dome's plan, where its surface isn't too steep to hold it. */
export interface Snow {
  /** On the plan, kPa. */
  readonly kpa: number;
  /** Least elevation of the surface's normal at which snow stays. */
  readonly leastNormalRad: number;
}

/**
 * Even snow. EN 1991-1-3:2003, 5.3.5 case (i): 0.8 of the ground's, down to a slope of 60 degrees; ASCE 7-16, 7.3
 * and 7.4.3: 0.7 of the ground's, down to 70 degrees (both from memory). Exposure, thermal and importance factors 1.
 */
export function evenSnow({ snowKpa, combinations }: Site): Snow {
  const ground = snowKpa ?? 0;
  return combinations === 'EN 1990'
    ? { kpa: 0.8 * ground, leastNormalRad: 30 * DEG }
    : { kpa: 0.7 * ground, leastNormalRad: 20 * DEG };
}

/**
 * Greatest design effect of dead load and snow that both act against. EN 1990, 6.10: 1.35 G + 1.5 Q; ASCE 7-16,
 * 2.3.1: 1.4 D or 1.2 D + 1.6 S (both from memory).
 */
export const designEffect = (combinations: Site['combinations'], dead: number, snow: number): number =>
  combinations === 'EN 1990' ? 1.35 * dead + 1.5 * snow : Math.max(1.4 * dead, 1.2 * dead + 1.6 * snow);

/** What a combination is, in words. */
export const designFormula = (combinations: Site['combinations']): string =>
  combinations === 'EN 1990' ? texts.enCombination : texts.asceCombination;

export const combinationSource = (combinations: Site['combinations']): string =>
  combinations === 'EN 1990' ? texts.enCombinationSource : texts.asceCombinationSource;

/** Loads of one dome by unit, kN and mm. */
export interface UnitLoads {
  /** Blocks and joints together. */
  readonly masonry: number;
  readonly render: number;
  readonly concrete: number;
  readonly snow: Snow;
}

/** Unit loads of a dome: air-dry, no moisture; the mean of blocks and joints counts for all its masonry. */
export function unitLoads(setout: HouseSetout, dome: HouseSetout['domes'][number]): UnitLoads {
  const { material, site, blocks } = setout.house;
  const joints = jointShare(dome, blocks.joint);
  return {
    masonry: weightOf(material.dryDensity + joints * (material.mortarDensity - material.dryDensity)),
    render: weightOf(material.renderDensity),
    concrete: weightOf(material.concreteDensity),
    snow: evenSnow(site),
  };
}

import type { Material } from '../description/house.js';
import { exp, log } from '../math/hyperbolic.js';

/** Least and greatest dry density that the tables and formulas here speak of, kg/m3. */
export const DENSITIES = [300, 1800] as const;

/**
 * Least compressive strength at 7 days by dry density: BCA 46.042, Foamed concrete: composition and properties, 1994
 * (from memory). Mixes of one density differ twofold: never in place of test cubes.
 */
const TABLE: readonly (readonly [densityKgM3: number, mpa: number])[] = [
  [400, 0.5],
  [600, 1],
  [800, 1.5],
  [1000, 2.5],
  [1200, 4.5],
  [1400, 6],
  [1600, 7.5],
];

/** Table strength between its densities in proportion, MPa; `null` outside. */
export function tableStrength(densityKgM3: number): number | null {
  for (let i = 1; i < TABLE.length; i++) {
    const [[d0, f0], [d1, f1]] = [TABLE[i - 1], TABLE[i]] as [readonly [number, number], readonly [number, number]];
    if (densityKgM3 >= d0 && densityKgM3 <= d1) return f0 + ((f1 - f0) * (densityKgM3 - d0)) / (d1 - d0);
  }
  return null;
}

/** What masonry of the blocks may bear. */
export interface Strength {
  /** Of the blocks, MPa. */
  readonly blockMpa: number;
  readonly from: 'test cubes' | 'table';
  readonly characteristicMpa: number;
  readonly designMpa: number;
}

/**
 * fk = 0.55 fb^0.7 fm^0.3 of masonry in general-purpose mortar: EN 1996-1-1:2005, 3.6.1.2 and Table 3.3 for
 * autoclaved aerated units, by analogy (from memory). `null` where the strength can't be told.
 */
export function strengthOf(material: Material): Strength | null {
  const given = material.compressiveStrengthMpa;
  const blockMpa = given ?? tableStrength(material.dryDensity);
  if (blockMpa === null || !(blockMpa > 0) || !(material.mortarStrengthMpa > 0)) return null;
  const characteristicMpa = 0.55 * exp(0.7 * log(blockMpa) + 0.3 * log(material.mortarStrengthMpa));
  return {
    blockMpa,
    from: given === null ? 'table' : 'test cubes',
    characteristicMpa,
    designMpa: characteristicMpa / material.partialFactor,
  };
}

import type { Material } from '../description/house.js';

/** kg/m3; ordinary Portland cement. */
const CEMENT_DENSITY = 3150;
/** kg/m3 of preformed foam; the usual range is 32 to 64 (ASTM C796, from memory). */
const FOAM_DENSITY = 50;
/** Water that stays bound, as a share of the cement's mass (ASTM C869, calculated oven-dry density). */
const BOUND_WATER = 0.2;

/**
 * Density of the fresh neat-cement mix that dries to `dryDensity`, kg/m3, by absolute volumes
 * (Kearsley & Mostert 2005, ACI 523.3R, both from memory): c = ρ_dry / 1.2, foam fills the rest of the cubic metre.
 */
export function wetDensity(material: Material): number {
  const cement = material.dryDensity / (1 + BOUND_WATER);
  const water = cement * material.waterCement;
  const foam = 1 - cement / CEMENT_DENSITY - water / 1000;
  return cement + water + foam * FOAM_DENSITY;
}

/** Mass in kg of a volume in mm³. */
export const massKg = (volume: number, density: number): number => (volume / 1e9) * density;

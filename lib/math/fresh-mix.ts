/**
 * Foamed concrete by absolute volumes, per cubic metre: 1 = c/3150 + s c/2650 + w c/1000 + foam.
 * Sources: the balance as in ACI 523.3R chapter 4 and Kearsley & Mostert 2005 (both from memory); bound water as the
 * calculated oven-dry density of ASTM C869 has it.
 */

/** kg/m3, ordinary Portland cement. */
const CEMENT_DENSITY = 3150;
/** kg/m3, quartz sand. */
const SAND_DENSITY = 2650;
const WATER_DENSITY = 1000;
/** Water that stays bound, as a share of the cement's mass (ASTM C869, calculated oven-dry density). */
const BOUND_WATER = 0.2;

/** Ratios to the cement by mass, and the foam's density in kg/m3. */
export interface MixRatios {
  readonly waterCement: number;
  readonly sandCement: number;
  readonly foamDensity: number;
}

/** One cubic metre of fresh mix: kg, litres, kg/m3; `air` is a fraction of the volume. */
export interface FreshMix {
  readonly cementKg: number;
  readonly sandKg: number;
  /** Water of the slurry, without what is in the foam. */
  readonly waterKg: number;
  readonly foamLitres: number;
  readonly foamKg: number;
  readonly air: number;
  readonly wetDensity: number;
  readonly dryDensity: number;
  readonly slurryDensity: number;
  /** Absolute volumes of cement, sand, water and foam, litres; they fill the cubic metre. */
  readonly litres: Readonly<Record<'cement' | 'sand' | 'water' | 'foam', number>>;
}

/** m3 of slurry that a kilogram of cement makes, with its sand and water. */
const slurryVolume = ({ waterCement, sandCement }: MixRatios): number =>
  1 / CEMENT_DENSITY + sandCement / SAND_DENSITY + waterCement / WATER_DENSITY;

const slurryMass = ({ waterCement, sandCement }: MixRatios): number => 1 + waterCement + sandCement;

/** Densities between which a mix exists: all foam, and no foam at all; kg/m3. */
export function mixLimits(ratios: MixRatios): { readonly wet: readonly [number, number]; readonly dryMost: number } {
  const volume = slurryVolume(ratios);
  return {
    wet: [ratios.foamDensity, slurryMass(ratios) / volume],
    dryMost: (1 + BOUND_WATER + ratios.sandCement) / volume,
  };
}

/** The mix that dries to a density, kg/m3: c = ρ / (1.2 + s). */
export const mixOfDry = (dryDensity: number, ratios: MixRatios): FreshMix =>
  mixOfCement(dryDensity / (1 + BOUND_WATER + ratios.sandCement), ratios);

/** The mix of a fresh density, kg/m3: c = (ρ − ρf) / (1 + w + s − ρf k), k the slurry of a kilogram of cement. */
export const mixOfWet = (wetDensity: number, ratios: MixRatios): FreshMix =>
  mixOfCement(
    (wetDensity - ratios.foamDensity) / (slurryMass(ratios) - ratios.foamDensity * slurryVolume(ratios)),
    ratios,
  );

function mixOfCement(cementKg: number, ratios: MixRatios): FreshMix {
  const sandKg = cementKg * ratios.sandCement;
  const waterKg = cementKg * ratios.waterCement;
  const litres = {
    cement: (1000 * cementKg) / CEMENT_DENSITY,
    sand: (1000 * sandKg) / SAND_DENSITY,
    water: (1000 * waterKg) / WATER_DENSITY,
  };
  const foamLitres = 1000 - litres.cement - litres.sand - litres.water;
  const foamKg = (foamLitres / 1000) * ratios.foamDensity;
  return {
    cementKg,
    sandKg,
    waterKg,
    foamLitres,
    foamKg,
    air: (foamLitres / 1000) * (1 - ratios.foamDensity / WATER_DENSITY),
    wetDensity: cementKg + sandKg + waterKg + foamKg,
    dryDensity: cementKg * (1 + BOUND_WATER) + sandKg,
    slurryDensity: slurryMass(ratios) / slurryVolume(ratios),
    litres: { ...litres, foam: foamLitres },
  };
}

import { type Check, givenFigure } from '../base/figures.js';
import * as texts from '../base/texts/mix.js';
import type { Casting, Material } from '../description/house.js';
import { freshMix } from '../masonry/mass.js';
import type { FreshMix } from '../math/fresh-mix.js';

/** Wet densities that are taken as cast right, either side of the target, kg/m3; common practice, no source. */
export const WET_WINDOW = 50;

/** Ingredients of some volume of fresh mix: masses kg, volumes litres. */
export interface MixAmounts {
  readonly litres: number;
  readonly cementKg: number;
  readonly bags: number;
  readonly sandKg: number;
  /** Into the mixer. */
  readonly waterLitres: number;
  readonly foamLitres: number;
  /** Into the foam generator. */
  readonly concentrateLitres: number;
  readonly foamWaterLitres: number;
  /** `null` where the mixer's output isn't known. */
  readonly mixerMinutes: number | null;
}

/** What goes into a volume of fresh mix, litres. Foamed liquid and water weigh 1 kg a litre. */
export function amountsFor(litres: number, material: Material, casting: Casting): MixAmounts {
  const mix = freshMix(material);
  const share = litres / 1000;
  const liquid = mix.foamKg * share;
  return {
    litres,
    cementKg: mix.cementKg * share,
    bags: (mix.cementKg * share) / material.cementBagKg,
    sandKg: mix.sandKg * share,
    waterLitres: mix.waterKg * share,
    foamLitres: mix.foamLitres * share,
    concentrateLitres: liquid * material.foamConcentrate,
    foamWaterLitres: liquid * (1 - material.foamConcentrate),
    mixerMinutes: casting.mixerLitresPerMinute === null ? null : litres / casting.mixerLitresPerMinute,
  };
}

/** What a weighed bucket tells of a batch whose slurry is as designed. */
export interface FoamCorrection {
  readonly measured: number;
  /** Net mass of the brimful bucket, kg. */
  readonly bucketKg: number;
  /** Foam volume found in the mix over what was put in. */
  readonly lasted: number;
  /** Foam for the next batch of the same slurry, litres. */
  readonly nextFoamLitres: number;
  /** Foam to mix into this batch now, litres; `null` where it is too light already. */
  readonly addNowLitres: number | null;
  readonly verdict: 'cast it' | 'add foam, weigh again' | 'too light: do not cast';
}

/**
 * Foam for the next batch: with slurry of mass M and volume V, and foam F of density ρf put in, the batch fills
 * (M + ρf F) / ρ, so that (that less V) / F of the foam lasted; then (M + ρf F') / (V + lasted F') = target.
 * @param measured wet density, kg/m3, between that of foam and that of slurry
 */
export function correctFoam(measured: number, material: Material, casting: Casting): FoamCorrection {
  const mix = freshMix(material);
  const batch = casting.batchLitres / 1000;
  const mass = (mix.cementKg + mix.sandKg + mix.waterKg) * batch;
  const volume = (1 - mix.foamLitres / 1000) * batch;
  const foam = (mix.foamLitres / 1000) * batch;
  const filled = (mass + material.foamDensity * foam) / measured;
  const lasted = (filled - volume) / foam;
  const target = mix.wetDensity;
  const next = (mass - target * volume) / (target * lasted - material.foamDensity);
  const add = (measured - target) * filled;
  const good = Math.abs(measured - target) <= WET_WINDOW;
  return {
    measured,
    bucketKg: (measured * casting.bucketLitres) / 1000,
    lasted,
    nextFoamLitres: next * 1000,
    addNowLitres: measured > target ? (add / (target * lasted - material.foamDensity)) * 1000 : null,
    verdict: good ? texts.castIt : measured > target ? texts.addFoamWeighAgain : texts.tooLightToCast,
  };
}

const STEP = 20;
const STEPS_EACH_WAY = 8;

/** Corrections for every reading that a bucket may give round the target, the lightest first. */
export function foamCorrections(material: Material, casting: Casting): FoamCorrection[] {
  const { wetDensity, slurryDensity } = freshMix(material);
  const readings = Array.from(
    { length: 2 * STEPS_EACH_WAY + 1 },
    (_, i) => wetDensity + STEP * (i - STEPS_EACH_WAY),
  ).filter((density) => density > material.foamDensity && density < slurryDensity);
  // Where hardly any foam lasts no amount of it brings the mix to its density.
  return readings
    .map((density) => correctFoam(density, material, casting))
    .filter(({ lasted }) => lasted * wetDensity > 2 * material.foamDensity);
}

const MIX_SOURCE = texts.absoluteVolumes;

/** Air by volume of foamed concrete, the usual range (concrete.org.uk, fingertips 355). */
const AIR: readonly [number, number] = [0.3, 0.8];

/** Checks of the mix: air in the usual range, dry density as computed with, the last bucket. */
export function mixChecks(material: Material, casting: Casting): Check[] {
  const mix = freshMix(material);
  return [airCheck(mix), ...dryCheck(mix, material), ...bucketCheck(mix, material, casting)];
}

function airCheck(mix: FreshMix): Check {
  const inside = mix.air >= AIR[0] && mix.air <= AIR[1];
  return {
    id: 'mix-air',
    statement: texts.mixHoldsAsMuch,
    state: inside ? 'ok' : 'attention',
    demand: givenFigure('mix-air.air', texts.airInFreshMix, 100 * mix.air, '%', {
      formula: texts.airByVolumeFormula,
      source: MIX_SOURCE,
      inputs: { 'wet density (kg/m3)': mix.wetDensity, 'foam (L/m3)': mix.foamLitres },
    }),
    source: texts.airSource,
    advice: texts.takeAnotherDensityOrTrial,
  };
}

function dryCheck(mix: FreshMix, material: Material): Check[] {
  if (material.wetDensity === null) return [];
  const off = Math.abs(mix.dryDensity - material.dryDensity);
  return [
    {
      id: 'mix-dry-density',
      statement: texts.mixOfAskedWet,
      state: off <= WET_WINDOW ? 'ok' : 'attention',
      demand: givenFigure('mix-dry-density.mix', texts.dryDensityOfMix, mix.dryDensity, 'kg/m3', {
        formula: texts.dryDensityFormula,
        source: texts.astmC869CalculatedOven,
        inputs: { 'cement (kg/m3)': mix.cementKg, 'sand (kg/m3)': mix.sandKg },
      }),
      capacity: givenFigure('mix-dry-density.given', texts.dryDensityGiven, material.dryDensity, 'kg/m3'),
      source: texts.astmC869,
      advice: texts.writeMaterialDryDensity(Math.round(mix.dryDensity)),
    },
  ];
}

function bucketCheck(mix: FreshMix, material: Material, casting: Casting): Check[] {
  const measured = casting.measuredWetDensity;
  if (measured === null) return [];
  const { lasted, nextFoamLitres, addNowLitres, verdict } = correctFoam(measured, material, casting);
  const foam = texts.litresIntoNextBatch(nextFoamLitres.toFixed(1));
  const usable = nextFoamLitres > 0 && Number.isFinite(nextFoamLitres);
  return [
    {
      id: 'mix-bucket',
      statement: texts.lastBucketWeighed(verdict),
      state: verdict === texts.castIt ? 'ok' : 'attention',
      demand: givenFigure('mix-bucket.measured', texts.wetDensityMeasured, measured, 'kg/m3', {
        inputs: { 'foam that lasted (%)': 100 * lasted },
      }),
      capacity: givenFigure('mix-bucket.target', texts.wetDensityToCast, mix.wetDensity, 'kg/m3', {
        formula: texts.cementSandWaterFoam,
        source: MIX_SOURCE,
        inputs: { 'cement (kg/m3)': mix.cementKg },
      }),
      source: texts.windowOf50Kg,
      advice: usable
        ? texts.putFoam(foam, addNowLitres === null ? '' : texts.thisBatchNeeds(addNowLitres.toFixed(1)))
        : texts.hardlyAnyFoamLasted,
    },
  ];
}

import { CAUTION } from '../base/texts/cautions.js';
import { castIt } from '../base/texts/mix.js';
import * as texts from '../base/texts/table-works.js';
import type { House } from '../description/house.js';
import type { Table } from '../documents/table.js';
import { freshMix } from '../masonry/mass.js';
import { amountsFor, foamCorrections, type MixAmounts, WET_WINDOW } from '../works/mix.js';
import { numberColumn, type Printed, tableUnits, textColumn } from './units.js';

/** What to weigh and measure for a cubic metre, for a batch, and for all that is cast of the mix. */
export function mixTable(house: House, litres: number): Table {
  const units = tableUnits(house.units);
  const { material, casting } = house;
  const mix = freshMix(material);
  const made = [1000, casting.batchLitres, litres].map((amount) => amountsFor(amount, material, casting));
  const [unit, batch, all] = made as [MixAmounts, MixAmounts, MixAmounts];
  const row = (what: string, printed: Pick<Printed, 'unit' | 'of'>, pick: (a: MixAmounts) => number | null) => {
    const cell = (a: MixAmounts) => {
      const value = pick(a);
      return value === null ? null : printed.of(value);
    };
    return { what, unit: printed.unit, cubic: cell(unit), batch: cell(batch), all: cell(all) };
  };
  const plain = (name: string) => ({ unit: name, of: (v: number) => v });
  const bag = texts.bagsOf(Number(units.mass.of(material.cementBagKg).toFixed(1)), units.mass.unit);
  const bucketKg = (mix.wetDensity * casting.bucketLitres) / 1000;
  return {
    id: 'mix',
    title: texts.mix,
    columns: [
      textColumn('what', texts.ingredient),
      textColumn('unit', texts.unit),
      { key: 'cubic', label: texts.forCubicMetre, kind: 'number', decimals: 2 },
      { key: 'batch', label: texts.forBatch(batchText(house)), kind: 'number', decimals: 2 },
      { key: 'all', label: texts.forWholeHouseWaste, kind: 'number', decimals: 1 },
    ],
    rows: [
      row(texts.freshMix, units.liquid, (a) => a.litres),
      row('cement', units.mass, (a) => a.cementKg),
      row('cement', plain(bag), (a) => a.bags),
      ...(material.sandCement > 0 ? [row(texts.sandDry, units.mass, (a) => a.sandKg)] : []),
      row(texts.waterIntoMixer, units.liquid, (a) => a.waterLitres),
      row('foam', units.liquid, (a) => a.foamLitres),
      row(texts.concentrateIntoFoamGenerator, units.dose, (a) => a.concentrateLitres),
      row(texts.waterIntoFoamGenerator, units.liquid, (a) => a.foamWaterLitres),
      row(texts.mixerRunning, plain('min'), (a) => a.mixerMinutes),
    ],
    notes: [
      texts.freshMixWeighs(
        density(mix.wetDensity, house),
        (100 * mix.air).toFixed(0),
        density(mix.slurryDensity, house),
        density(mix.dryDensity, house),
      ),
      texts.brimfulBucketMustHold(
        units.mass.of(bucketKg).toFixed(2),
        units.mass.unit,
        WET_WINDOW,
        (WET_WINDOW * 0.0624).toFixed(0),
      ),
      texts.wholeHouseAsPoured,
      ...(casting.mixerLitresPerMinute === null ? [texts.mixerMinutesNeedCasting] : []),
      texts.absoluteVolumes,
      CAUTION.cubes,
      CAUTION.cement,
      CAUTION.silica,
    ],
  };
}

const batchText = (house: House): string => {
  const { liquid } = tableUnits(house.units);
  return `${Number(liquid.of(house.casting.batchLitres).toFixed(1))} ${liquid.unit}`;
};

const density = (value: number, house: House): string => {
  const { density: printed } = tableUnits(house.units);
  return `${printed.of(value).toFixed(printed.decimals)} ${printed.unit}`;
};

/** From the bucket's mass to the foam of this batch and the next. */
export function foamTable(house: House): Table {
  const units = tableUnits(house.units);
  const { material, casting } = house;
  return {
    id: 'foam-correction',
    title: texts.foamCorrectionFromWeighed,
    columns: [
      numberColumn(
        'bucket',
        texts.bucketNet(Number(units.liquid.of(casting.bucketLitres).toFixed(2)), units.liquid.unit),
        units.mass,
      ),
      numberColumn('density', texts.wetDensity, units.density),
      { key: 'lasted', label: texts.foamThatLasted, kind: 'number', unit: '%', decimals: 0 },
      textColumn('verdict', texts.thisBatch),
      numberColumn('add', texts.foamToAdd, units.liquid),
      numberColumn('next', texts.foamForNextBatch, units.liquid),
    ],
    rows: foamCorrections(material, casting).map((c) => ({
      bucket: units.mass.of(c.bucketKg),
      density: units.density.of(c.measured),
      lasted: 100 * c.lasted,
      verdict: c.verdict,
      add: c.addNowLitres === null || c.verdict === castIt ? null : units.liquid.of(c.addNowLitres),
      next: units.liquid.of(c.nextFoamLitres),
    })),
    notes: [texts.forBatchesAlikeInMix(batchText(house)), texts.mixTooLightIsNotCast, CAUTION.cubes, CAUTION.cement],
  };
}

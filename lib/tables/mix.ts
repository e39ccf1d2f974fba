import { CAUTION } from '../base/cautions.js';
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
  const bag = `bags of ${Number(units.mass.of(material.cementBagKg).toFixed(1))} ${units.mass.unit}`;
  const bucketKg = (mix.wetDensity * casting.bucketLitres) / 1000;
  return {
    id: 'mix',
    title: 'Mix',
    columns: [
      textColumn('what', 'ingredient'),
      textColumn('unit', 'unit'),
      { key: 'cubic', label: 'for a cubic metre of fresh mix', kind: 'number', decimals: 2 },
      { key: 'batch', label: `for a batch of ${batchText(house)}`, kind: 'number', decimals: 2 },
      { key: 'all', label: 'for the whole house, as poured, waste included', kind: 'number', decimals: 1 },
    ],
    rows: [
      row('fresh mix', units.liquid, (a) => a.litres),
      row('cement', units.mass, (a) => a.cementKg),
      row('cement', plain(bag), (a) => a.bags),
      ...(material.sandCement > 0 ? [row('sand, dry', units.mass, (a) => a.sandKg)] : []),
      row('water into the mixer', units.liquid, (a) => a.waterLitres),
      row('foam', units.liquid, (a) => a.foamLitres),
      row('concentrate into the foam generator', units.dose, (a) => a.concentrateLitres),
      row('water into the foam generator', units.liquid, (a) => a.foamWaterLitres),
      row('mixer running', plain('min'), (a) => a.mixerMinutes),
    ],
    notes: [
      `Fresh mix weighs ${density(mix.wetDensity, house)}, of it ${(100 * mix.air).toFixed(0)} % air by volume; the slurry before the foam ${density(mix.slurryDensity, house)}; it dries to ${density(mix.dryDensity, house)}.`,
      `The brimful bucket must hold ${units.mass.of(bucketKg).toFixed(2)} ${units.mass.unit} net. Weigh one of every batch; outside ${WET_WINDOW} kg/m3 or ${(WET_WINDOW * 0.0624).toFixed(0)} lb/ft3 either way correct the foam by its table.`,
      'The whole house is counted by what its moulds hold, larger than the dry pieces by their drying shrinkage.',
      ...(casting.mixerLitresPerMinute === null ? ['Mixer minutes need `casting.mixer`.'] : []),
      'Absolute volumes, as in ACI 523.3R (from memory); dry density as ASTM C869: cement × 1.2, and sand. Moist sand brings water: take it off the water into the mixer.',
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
    title: 'Foam correction from the weighed bucket',
    columns: [
      numberColumn(
        'bucket',
        `bucket, net, ${Number(units.liquid.of(casting.bucketLitres).toFixed(2))} ${units.liquid.unit}`,
        units.mass,
      ),
      numberColumn('density', 'wet density', units.density),
      { key: 'lasted', label: 'foam that lasted', kind: 'number', unit: '%', decimals: 0 },
      textColumn('verdict', 'this batch'),
      numberColumn('add', 'foam to add to it', units.liquid),
      numberColumn('next', 'foam for the next batch', units.liquid),
    ],
    rows: foamCorrections(material, casting).map((c) => ({
      bucket: units.mass.of(c.bucketKg),
      density: units.density.of(c.measured),
      lasted: 100 * c.lasted,
      verdict: c.verdict,
      add: c.addNowLitres === null || c.verdict === 'cast it' ? null : units.liquid.of(c.addNowLitres),
      next: units.liquid.of(c.nextFoamLitres),
    })),
    notes: [
      `For batches of ${batchText(house)} whose cement, sand and water are as in the mix table. Take the bucket’s own mass off; between two rows take the middle.`,
      'A mix that is too light is not cast: it stays weak. Batches that differ again and again tell of the foam generator or of moist sand.',
      CAUTION.cubes,
      CAUTION.cement,
    ],
  };
}

import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-pieces.js';
import type { Table } from '../documents/table.js';
import { type Balance, type BalancePart, PART_NAMES } from '../masonry/balance.js';
import { massKg } from '../masonry/mass.js';
import type { HouseSetout } from '../setout/house.js';
import { numberColumn, tableUnits, textColumn } from './units.js';

const PARTS = Object.entries(PART_NAMES) as [BalancePart, string][];

/** Volumes of the masonry by part, and the envelope that they fill. */
export function volumeTable(house: HouseSetout, balance: Balance): Table {
  const units = tableUnits(house.house.units);
  const { dryDensity } = house.house.material;
  const row = (part: string, volume: number, dry: number | null) => ({
    part,
    volume: units.volume.of(volume),
    share: (100 * volume) / balance.envelope,
    'dry-mass': dry === null ? null : units.mass.of(massKg(volume, dry)),
  });
  return {
    id: 'volumes',
    title: texts.volumesOfMasonry,
    columns: [
      textColumn('part', texts.part),
      numberColumn('volume', texts.volume, units.volume),
      { key: 'share', label: texts.shareOfEnvelope, kind: 'number', unit: '%', decimals: 4 },
      numberColumn('dry-mass', texts.dryMassAtBlock, units.mass),
    ],
    rows: [
      ...PARTS.filter(([key]) => balance[key] !== 0).map(([key, label]) =>
        row(label, balance[key], key === 'blocks' ? dryDensity : null),
      ),
      row(texts.masonryEnvelopeShellsLess, balance.envelope, null),
    ],
    notes: [
      texts.eachPartIsComputed((100 * Math.abs(balance.error)).toExponential(1)),
      texts.volumesAreNet,
      CAUTION.authority,
    ],
  };
}

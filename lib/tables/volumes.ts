import { CAUTION } from '../base/cautions.js';
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
    title: 'Volumes of the masonry',
    columns: [
      textColumn('part', 'part'),
      numberColumn('volume', 'volume', units.volume),
      { key: 'share', label: 'share of the envelope', kind: 'number', unit: '%', decimals: 4 },
      numberColumn('dry-mass', 'dry mass at block density', units.mass),
    ],
    rows: [
      ...PARTS.filter(([key]) => balance[key] !== 0).map(([key, label]) =>
        row(label, balance[key], key === 'blocks' ? dryDensity : null),
      ),
      row('masonry envelope: shells less voids, plus barrels, passages and curbs', balance.envelope, null),
    ],
    notes: [
      `Each part is computed by itself; their sum misses the envelope by ${(100 * Math.abs(balance.error)).toExponential(1)} %.`,
      'Volumes are net: no waste is added.',
      CAUTION.authority,
    ],
  };
}

import { CAUTION } from '../base/cautions.js';
import type { Table } from '../documents/table.js';
import type { HouseSetout } from '../setout/house.js';
import type { Bill } from '../works/bill.js';
import type { Measure, Quantity } from '../works/quantities.js';
import { type Printed, type TableUnits, tableUnits, textColumn } from './units.js';

const EACH: Printed = { unit: 'pieces', decimals: 0, of: (n) => n };

/** How a measure is printed for the reader; numbers stand in columns of one width, so decimals are the column's. */
const printedOf = (units: TableUnits, measure: Measure): Printed => {
  switch (measure) {
    case 'm3':
      return { ...units.volume, of: (m3) => units.volume.of(m3 * 1e9) };
    case 'L':
      return units.liquid;
    case 'm2':
      return units.area;
    case 'kg':
      return units.mass;
    case 'm':
      return units.run;
    case 'each':
      return EACH;
  }
};

/** Everything that the house takes, part by part, waste apart. */
export function quantityTable(house: HouseSetout, quantities: readonly Quantity[]): Table {
  const units = tableUnits(house.house.units);
  return {
    id: 'quantities',
    title: 'Quantities',
    columns: [
      textColumn('part', 'part'),
      textColumn('stuff', 'of'),
      textColumn('unit', 'unit'),
      { key: 'net', label: 'net', kind: 'number', decimals: 3 },
      { key: 'waste', label: 'waste', kind: 'number', decimals: 3 },
      { key: 'gross', label: 'to order', kind: 'number', decimals: 3 },
    ],
    rows: quantities.map(({ part, stuff, measure, net, waste }) => {
      const printed = printedOf(units, measure);
      return {
        part,
        stuff,
        unit: printed.unit,
        net: net === null ? null : printed.of(net),
        waste: net === null ? null : printed.of(waste),
        gross: net === null ? null : printed.of(net + waste),
      };
    }),
    notes: [
      `Waste is ${(100 * house.house.casting.waste).toFixed(1)} % of everything but ribs and moulds; for what is cast in moulds also the drying shrinkage, since the mould is larger than the dry piece; for blocks also what is cut off, since a cut block is cast whole.`,
      'Volumes are those of the balance of the masonry, areas those of the curved surfaces. An empty quantity has not been computed; it is not zero.',
      'Cast pieces are counted of the blocks’ mix. Lagging and ribs are those of as many forms as the calendar keeps.',
      CAUTION.authority,
    ],
  };
}

/** What the materials cost. */
export function billTable(house: HouseSetout, bill: Bill): Table {
  const units = tableUnits(house.house.units);
  const currency = bill.currency === '' ? 'no currency' : bill.currency;
  const unknown = bill.lines.filter((l) => l.cost === null).length;
  return {
    id: 'bill',
    title: 'Bill of materials',
    columns: [
      textColumn('item', 'item'),
      textColumn('unit', 'unit'),
      { key: 'amount', label: 'amount, waste included', kind: 'number', decimals: 3 },
      { key: 'price', label: 'price of one', kind: 'number', unit: currency, decimals: 4 },
      { key: 'cost', label: 'cost', kind: 'number', unit: currency, decimals: 2 },
      { key: 'share', label: 'share of the known costs', kind: 'number', unit: '%', decimals: 1 },
      textColumn('missing', 'unknown because'),
    ],
    rows: [
      ...bill.lines.map((l) => {
        const printed = printedOf(units, l.measure);
        return {
          item: l.item,
          unit: printed.unit,
          amount: l.amount === null ? null : printed.of(l.amount),
          price: l.unitPrice === null ? null : l.unitPrice / printed.of(1),
          cost: l.cost,
          share: l.share === null ? null : 100 * l.share,
          missing: l.missing === '' ? null : l.missing,
        };
      }),
      {
        item: 'total',
        unit: null,
        amount: null,
        price: null,
        cost: bill.total,
        share: null,
        missing: bill.total === null ? `${unknown} of ${bill.lines.length} lines unknown` : null,
      },
    ],
    notes: [
      ...(bill.total === null
        ? [
            `The total is unknown, not zero: ${bill.currency === '' ? 'no prices are given' : `the known lines come to ${bill.known.toFixed(2)} ${bill.currency}`}.`,
          ]
        : []),
      'Materials alone: labour, tools, transport, doors and windows, fees and taxes are not in it. Prices are those of the description.',
    ],
  };
}

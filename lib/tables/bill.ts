import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-works.js';
import type { Table } from '../documents/table.js';
import type { HouseSetout } from '../setout/house.js';
import type { Bill } from '../works/bill.js';
import type { Measure, Quantity } from '../works/quantities.js';
import { type Printed, type TableUnits, tableUnits, textColumn } from './units.js';

const EACH: Printed = { unit: 'pieces', decimals: 0, of: (n) => n };

/** How a measure is printed for the reader; numbers stand in columns of one width, so decimals are the column's. */
const printedOf = (units: TableUnits, measure: Measure, stuff: string): Printed => {
  switch (measure) {
    case 'm3': {
      const volume = stuff === 'concrete' ? units.concrete : units.volume;
      return { ...volume, of: (m3) => volume.of(m3 * 1e9) };
    }
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
    title: texts.quantities,
    columns: [
      textColumn('part', texts.part),
      textColumn('stuff', texts.ofWord),
      textColumn('unit', texts.unit),
      { key: 'net', label: texts.net, kind: 'number', decimals: 3 },
      { key: 'waste', label: texts.waste, kind: 'number', decimals: 3 },
      { key: 'gross', label: texts.toOrder, kind: 'number', decimals: 3 },
    ],
    rows: quantities.map(({ part, stuff, measure, net, waste }) => {
      const printed = printedOf(units, measure, stuff);
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
      texts.wasteIsOfEverything((100 * house.house.casting.waste).toFixed(1)),
      texts.volumesAreOfBalance,
      texts.castPiecesAreCounted,
      CAUTION.authority,
    ],
  };
}

/** What the materials cost. */
export function billTable(house: HouseSetout, bill: Bill): Table {
  const units = tableUnits(house.house.units);
  const currency = bill.currency === '' ? texts.noCurrency : bill.currency;
  const unknown = bill.lines.filter((l) => l.cost === null).length;
  return {
    id: 'bill',
    title: texts.billOfMaterials,
    columns: [
      textColumn('item', texts.item),
      textColumn('unit', texts.unit),
      { key: 'amount', label: texts.amountWasteIncluded, kind: 'number', decimals: 3 },
      { key: 'price', label: texts.priceOfOne, kind: 'number', unit: currency, decimals: 4 },
      { key: 'cost', label: texts.cost, kind: 'number', unit: currency, decimals: 2 },
      { key: 'share', label: texts.shareOfKnownCosts, kind: 'number', unit: '%', decimals: 1 },
      textColumn('missing', texts.unknownBecause),
    ],
    rows: [
      ...bill.lines.map((l) => {
        const printed = printedOf(units, l.measure, l.item);
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
        missing: bill.total === null ? texts.linesUnknown(unknown, bill.lines.length) : null,
      },
    ],
    notes: [
      ...(bill.total === null
        ? [
            texts.totalIsUnknown(
              bill.currency === ''
                ? texts.noPricesAreGiven
                : texts.knownLinesComeTo(bill.known.toFixed(2), bill.currency),
            ),
          ]
        : []),
      texts.materialsAloneLabourTools,
    ],
  };
}

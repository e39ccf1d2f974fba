import { type Check, givenFigure } from '../base/figures.js';
import { nearest } from '../base/suggest.js';
import * as texts from '../base/texts/bill.js';
import { SQUARE_FOOT_M2 } from '../base/units.js';
import type { House, Price } from '../description/house.js';
import { amountsFor } from './mix.js';
import type { Measure, Quantity, Stuff } from './quantities.js';

/** Names of a price list's items and the unit that each is bought in. */
export const PRICE_ITEMS = {
  cement: 'kg',
  sand: 'kg',
  water: 'L',
  'foam-concentrate': 'L',
  mortar: 'm3',
  concrete: 'm3',
  render: 'm3',
  partition: 'm2',
  mesh: 'm2',
  waterproofing: 'm2',
  'ring-steel': 'kg',
  lagging: 'm',
  rib: 'each',
  mould: 'each',
} as const satisfies Record<string, Measure>;

export type PriceItem = keyof typeof PRICE_ITEMS;

/** One of each unit that prices may be for, in the unit that quantities are counted in. */
const IN_MEASURE: Readonly<Record<Measure, Readonly<Record<string, number>>>> = {
  kg: { kg: 1, g: 0.001, t: 1000, lb: 0.45359237 },
  m3: { m3: 1, L: 0.001, gal: 0.003785411784, ft3: 0.028316846592, yd3: 0.764554857984 },
  L: { L: 1, m3: 1000, gal: 3.785411784, ft3: 28.316846592 },
  m2: { m2: 1, ft2: SQUARE_FOOT_M2 },
  m: { m: 1, ft: 0.3048 },
  each: { each: 1 },
};

/** Items that stuff is bought as; the mix is bought as its ingredients. */
const BOUGHT: Readonly<Record<Exclude<Stuff, 'mix'>, PriceItem>> = {
  mortar: 'mortar',
  concrete: 'concrete',
  render: 'render',
  partitions: 'partition',
  mesh: 'mesh',
  waterproofing: 'waterproofing',
  'ring steel': 'ring-steel',
  lagging: 'lagging',
  ribs: 'rib',
  moulds: 'mould',
};

export interface BillLine {
  readonly item: PriceItem;
  readonly measure: Measure;
  /** Waste included; `null` where it isn't known. */
  readonly amount: number | null;
  /** Of one of the measure. */
  readonly unitPrice: number | null;
  readonly cost: number | null;
  /** Of the known costs, a fraction. */
  readonly share: number | null;
  /** Why the cost is unknown; empty when it is known. */
  readonly missing: string;
}

/** What the materials cost by the description's prices. */
export interface Bill {
  readonly currency: string;
  readonly lines: readonly BillLine[];
  /** Of the lines whose cost is known. */
  readonly known: number;
  /** `null` while any line's cost is unknown. */
  readonly total: number | null;
}

/** Material costs from the price list; labour, tools and transport aren't in it. */
export function billOf(house: House, quantities: readonly Quantity[]): Bill {
  const { prices } = house;
  const lines = amounts(house, quantities).map(([item, amount]) => line(item, amount, prices.items[item]));
  const known = lines.reduce((sum, l) => sum + (l.cost ?? 0), 0);
  return {
    currency: prices.currency,
    lines: lines.map((l) => ({ ...l, share: l.cost !== null && known > 0 ? l.cost / known : null })),
    known,
    total: lines.every((l) => l.cost !== null) ? known : null,
  };
}

function amounts(house: House, quantities: readonly Quantity[]): (readonly [PriceItem, number | null])[] {
  const gross = (stuff: Stuff): number | null => {
    const own = quantities.filter((q) => q.stuff === stuff);
    return own.some((q) => q.net === null) ? null : own.reduce((sum, q) => sum + (q.net ?? 0) + q.waste, 0);
  };
  const mix = amountsFor((gross('mix') ?? 0) * 1000, house.material, house.casting);
  const ingredients: (readonly [PriceItem, number])[] = [
    ['cement', mix.cementKg],
    ['sand', mix.sandKg],
    ['water', mix.waterLitres + mix.foamWaterLitres],
    ['foam-concentrate', mix.concentrateLitres],
  ];
  const rest = Object.entries(BOUGHT) as [Exclude<Stuff, 'mix'>, PriceItem][];
  return [...ingredients, ...rest.map(([stuff, item]) => [item, gross(stuff)] as const)].filter(
    ([, amount]) => amount === null || amount > 0,
  );
}

function line(item: PriceItem, amount: number | null, price: Price | undefined): BillLine {
  const measure = PRICE_ITEMS[item];
  const factor = price ? IN_MEASURE[measure][price.unit] : undefined;
  const unitPrice = price && factor !== undefined ? price.price / (price.amount * factor) : null;
  const cost = unitPrice === null || amount === null ? null : unitPrice * amount;
  const missing =
    amount === null
      ? texts.quantityNotComputed
      : !price
        ? texts.noPriceGiven
        : factor === undefined
          ? texts.pricedPerCounted(price.unit, measure)
          : '';
  return { item, measure, amount, unitPrice, cost, share: null, missing };
}

/** Checks of the bill: that every line has a price, and every price a line. */
export function billChecks(house: House, bill: Bill): Check[] {
  const unknown = bill.lines.filter((l) => l.cost === null);
  const names = Object.keys(PRICE_ITEMS);
  const strays = Object.keys(house.prices.items).filter((item) => !names.includes(item));
  const listed = unknown.map((l) => `${l.item} (${l.missing})`).join(', ');
  return [
    {
      id: 'bill-prices',
      statement:
        unknown.length === 0 ? texts.everyLineOfBill : texts.totalCostIsUnknown(unknown.length, bill.lines.length),
      state: unknown.length === 0 ? 'ok' : 'attention',
      ...(bill.currency === ''
        ? {}
        : {
            demand: givenFigure('bill-prices.known', texts.knownCosts, bill.known, bill.currency, {
              formula: texts.sumOfAmountPrice,
              source: texts.derivedPricesFromDescription,
              inputs: { lines: bill.lines.length, unknown: unknown.length },
            }),
          }),
      source: texts.priceListOfDescription,
      advice: texts.missingGivePricesLike(listed || 'nothing'),
    },
    ...strays.map((item): Check => {
      const near = nearest(item, names);
      return {
        id: `bill-unused.${item}`,
        statement: texts.priceForNothing(item),
        state: 'attention',
        source: texts.priceListOfDescription,
        advice: near === null ? texts.itemsNamed(names.join(', ')) : texts.didYouMean(near),
      };
    }),
  ];
}

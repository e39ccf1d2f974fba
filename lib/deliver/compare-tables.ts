import * as texts from '../base/texts/comparison.js';
import type { LengthUnit } from '../base/units.js';
import type { Cell, Table } from '../documents/table.js';
import { countColumn, numberColumn, tableUnits, textColumn } from '../tables/units.js';
import type { Comparison } from './compare.js';
import type { HouseFigures } from './house-figures.js';

/** A comparison as tables: figures, blocks by dome, moulds, costs, and the checks that changed. */
export function comparisonTables(comparison: Comparison, units: LengthUnit): Table[] {
  return [
    figureTable(comparison, units),
    blockTable(comparison),
    mouldTable(comparison),
    costTable(comparison),
    checkTable(comparison),
  ];
}

/** Safety factors are told so wherever houses are weighed against one another. */
export const SAFETY_DECIMALS = 2;

function figureTable({ before, after }: Comparison, units: LengthUnit): Table {
  const { area, volume } = tableUnits(units);
  const row = (figure: string, unit: string, decimals: number, of: (figures: HouseFigures) => number | null) => {
    // Told to the same decimal, and so the change: the columns add up.
    const told = (value: number | null) => (value === null ? null : Number(value.toFixed(decimals)));
    const [first, second] = [told(of(before)), told(of(after))];
    const said = (value: number | null) => (value === null ? 'unknown' : value.toFixed(decimals));
    const change = first === null || second === null ? null : second - first;
    const sign = change !== null && change > 0 ? '+' : '';
    return { figure, unit, before: said(first), after: said(second), change: `${sign}${said(change)}` };
  };
  const currency = after.currency || before.currency;
  return {
    id: 'compare-figures',
    title: texts.figures,
    columns: [
      textColumn('figure', texts.figure),
      textColumn('unit', texts.unit),
      textColumn('before', texts.before),
      textColumn('after', texts.after),
      textColumn('change', texts.change),
    ],
    rows: [
      row('floor', area.unit, area.decimals, (f) => area.of(f.floor)),
      row('blocks', '', 0, (f) => f.blocks),
      row(texts.mouldsColumn, '', 0, (f) => f.moulds),
      row('masonry', volume.unit, volume.decimals, (f) => volume.of(f.masonry * 1e9)),
      row(texts.costOfMaterials, currency, 2, (f) => f.cost),
      row(texts.leastGeometricFactor, '', SAFETY_DECIMALS, (f) => f.safety),
      row(texts.checksThatFail, '', 0, (f) => f.fails),
      row(texts.checksThatNeedAttention, '', 0, (f) => f.attention),
    ],
    notes:
      before.currency === after.currency
        ? []
        : [texts.costsAreInBefore(before.currency || texts.noCurrency, after.currency || texts.noCurrency)],
  };
}

const blockTable = ({ blocks }: Comparison): Table => ({
  id: 'compare-blocks',
  title: texts.blocksByMark,
  columns: [
    textColumn('dome', texts.dome),
    countColumn('same', texts.asBefore),
    countColumn('changed', texts.otherShapeOrPlace),
    countColumn('gone', texts.goneState),
    countColumn('added', texts.newWord),
  ],
  rows: blocks.map((changes) => ({ ...changes })),
});

function mouldTable({ moulds }: Comparison): Table {
  const row = (change: string, names: readonly string[]) => ({ change, count: names.length, names: names.join(' ') });
  return {
    id: 'compare-moulds',
    title: texts.moulds,
    columns: [
      textColumn('change', texts.mouldsColumn),
      countColumn('count', texts.howMany),
      textColumn('names', texts.names),
    ],
    rows: [
      row(
        texts.asBefore,
        moulds.same.map(([was, is]) => (was === is ? was : `${was}→${is}`)),
      ),
      row(texts.goneState, moulds.gone),
      row('new', moulds.added),
    ],
    notes: [texts.mouldsAreAlikeWhen],
  };
}

function costTable({ costs, before, after }: Comparison): Table {
  const unit = after.currency || before.currency || texts.noCurrency;
  const money = (key: string, label: string) => numberColumn(key, label, { unit, decimals: 2 });
  const known = costs.filter((cost) => cost.before !== null || cost.after !== null);
  const change = (was: Cell, is: Cell) => (typeof was === 'number' && typeof is === 'number' ? is - was : null);
  return {
    id: 'compare-costs',
    title: texts.costs,
    columns: [
      textColumn('item', texts.item),
      money('before', 'before'),
      money('after', 'after'),
      money('change', 'change'),
    ],
    rows: known.map((cost) => ({ ...cost, change: change(cost.before, cost.after) })),
    notes: [known.length === 0 ? texts.noCostsAreKnown : texts.emptyCostIsUnknown],
  };
}

const checkTable = ({ checks }: Comparison): Table => ({
  id: 'compare-checks',
  title: texts.checksThatChanged,
  columns: [
    textColumn('id', texts.check),
    textColumn('before', texts.before),
    textColumn('after', texts.after),
    textColumn('statement', texts.whatItSays),
  ],
  rows: checks.map((check) => ({ ...check, before: check.before ?? 'none', after: check.after ?? 'none' })),
  notes: checks.length === 0 ? [texts.noCheckChanged] : [],
});

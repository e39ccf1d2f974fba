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
    title: 'Figures',
    columns: [
      textColumn('figure', 'figure'),
      textColumn('unit', 'unit'),
      textColumn('before', 'before'),
      textColumn('after', 'after'),
      textColumn('change', 'change'),
    ],
    rows: [
      row('floor', area.unit, area.decimals, (f) => area.of(f.floor)),
      row('blocks', '', 0, (f) => f.blocks),
      row('moulds', '', 0, (f) => f.moulds),
      row('masonry', volume.unit, volume.decimals, (f) => volume.of(f.masonry * 1e9)),
      row('cost of materials', currency, 2, (f) => f.cost),
      row('least geometric factor of safety', '', SAFETY_DECIMALS, (f) => f.safety),
      row('checks that fail', '', 0, (f) => f.fails),
      row('checks that need attention', '', 0, (f) => f.attention),
    ],
    notes:
      before.currency === after.currency
        ? []
        : [`Costs are in ${before.currency || 'no currency'} before and ${after.currency || 'no currency'} after.`],
  };
}

const blockTable = ({ blocks }: Comparison): Table => ({
  id: 'compare-blocks',
  title: 'Blocks by mark',
  columns: [
    textColumn('dome', 'dome'),
    countColumn('same', 'as before'),
    countColumn('changed', 'other shape or place'),
    countColumn('gone', 'gone'),
    countColumn('added', 'new'),
  ],
  rows: blocks.map((changes) => ({ ...changes })),
});

function mouldTable({ moulds }: Comparison): Table {
  const row = (change: string, names: readonly string[]) => ({ change, count: names.length, names: names.join(' ') });
  return {
    id: 'compare-moulds',
    title: 'Moulds',
    columns: [textColumn('change', 'moulds'), countColumn('count', 'how many'), textColumn('names', 'names')],
    rows: [
      row(
        'as before',
        moulds.same.map(([was, is]) => (was === is ? was : `${was}→${is}`)),
      ),
      row('gone', moulds.gone),
      row('new', moulds.added),
    ],
    notes: ['Moulds are alike when their inner sizes are the same to half a millimetre, whatever they are called.'],
  };
}

function costTable({ costs, before, after }: Comparison): Table {
  const unit = after.currency || before.currency || 'no currency';
  const money = (key: string, label: string) => numberColumn(key, label, { unit, decimals: 2 });
  const known = costs.filter((cost) => cost.before !== null || cost.after !== null);
  const change = (was: Cell, is: Cell) => (typeof was === 'number' && typeof is === 'number' ? is - was : null);
  return {
    id: 'compare-costs',
    title: 'Costs',
    columns: [
      textColumn('item', 'item'),
      money('before', 'before'),
      money('after', 'after'),
      money('change', 'change'),
    ],
    rows: known.map((cost) => ({ ...cost, change: change(cost.before, cost.after) })),
    notes: [known.length === 0 ? 'No costs are known: give `prices`.' : 'An empty cost is unknown, not zero.'],
  };
}

const checkTable = ({ checks }: Comparison): Table => ({
  id: 'compare-checks',
  title: 'Checks that changed',
  columns: [
    textColumn('id', 'check'),
    textColumn('before', 'before'),
    textColumn('after', 'after'),
    textColumn('statement', 'what it says'),
  ],
  rows: checks.map((check) => ({ ...check, before: check.before ?? 'none', after: check.after ?? 'none' })),
  notes: checks.length === 0 ? ['No check changed its state.'] : [],
});

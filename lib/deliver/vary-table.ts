import * as texts from '../base/texts/variants.js';
import type { LengthUnit } from '../base/units.js';
import type { Cell, Column, Table } from '../documents/table.js';
import { countColumn, numberColumn, tableUnits, textColumn } from '../tables/units.js';
import { SAFETY_DECIMALS } from './compare-tables.js';
import type { VariantResult } from './vary.js';

/** A row of variants as a table: what was varied, the figures of each, and its worst check or what is wrong with it. */
export function variantTable(results: readonly VariantResult[], units: LengthUnit): Table {
  const paths = [...new Set(results.flatMap(({ variant }) => Object.keys(variant.varied)))];
  const { area, volume } = tableUnits(units);
  const currency = results.map((r) => ('figures' in r ? r.figures.currency : '')).find((c) => c !== '');
  return {
    id: 'variants',
    title: texts.variants,
    columns: [
      ...paths.map((path): Column => textColumn(path, path)),
      numberColumn('floor', texts.floor, area),
      countColumn('blocks', texts.blocks),
      countColumn('moulds', texts.moulds),
      numberColumn('masonry', texts.masonry, volume),
      numberColumn('cost', texts.materials, { unit: currency ?? texts.noCurrency, decimals: 2 }),
      { key: 'safety', label: texts.safetyFactor, kind: 'number', decimals: SAFETY_DECIMALS },
      countColumn('fails', texts.fails),
      countColumn('attention', texts.attention),
      textColumn('worst', texts.worstCheck),
    ],
    rows: results.map((result): Record<string, Cell> => {
      const { varied } = result.variant;
      const own = Object.fromEntries(paths.map((path) => [path, varied[path] ?? '']));
      if ('problems' in result) {
        const [first] = result.problems;
        const none = { floor: null, blocks: null, moulds: null, masonry: null, cost: null, safety: null };
        return { ...own, ...none, fails: null, attention: null, worst: `${first?.code}: ${first?.message}` };
      }
      const { floor, blocks, moulds, masonry, cost, safety, fails, attention, worst } = result.figures;
      return {
        ...own,
        floor: area.of(floor),
        blocks,
        moulds,
        masonry: volume.of(masonry * 1e9),
        cost,
        safety,
        fails,
        attention,
        worst: worst === null ? '' : `${worst.state}: ${worst.id}`,
      };
    }),
    notes: [texts.safetyFactorIsLeast, texts.preliminaryFigures],
  };
}

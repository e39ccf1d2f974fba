import type { Table } from '../documents/table.js';
import type { MasonryPlan } from '../masonry/plan.js';
import { tradeOffs } from '../masonry/trade-off.js';
import { countColumn, numberColumn, tableUnits, textColumn } from './units.js';

/** Both bonds at several ranges of joints: what few moulds cost in laps and blocks. */
export function bondTable(plan: MasonryPlan): Table {
  const { house } = plan.setout;
  const units = tableUnits(house.units);
  const length = (mm: number | null) => (mm === null ? null : units.length.of(mm));
  const percent = { unit: '%', decimals: 1 };
  return {
    id: 'bonds',
    title: 'Bonds',
    columns: [
      textColumn('bond', 'bond'),
      countColumn('in-course', 'moulds in a course'),
      textColumn('asked', 'as described'),
      numberColumn('thinnest', 'thinnest joint', units.length),
      numberColumn('thickest', 'thickest joint', units.length),
      countColumn('moulds', 'moulds'),
      countColumn('at-least', 'moulds needed at least'),
      countColumn('unmet', 'courses that no mould fits'),
      countColumn('blocks', 'blocks to cast'),
      countColumn('cut', 'blocks to cut'),
      { key: 'waste', label: 'cut off', kind: 'number', ...percent },
      countColumn('merged', 'longer blocks, with a short neighbour'),
      numberColumn('shortest', 'shortest piece beside a cut', units.length),
      numberColumn('least-lap', 'least lap', units.length),
      countColumn('short-laps', 'laps too short'),
      countColumn('lines', 'perpends in line through three courses'),
    ],
    rows: tradeOffs(plan).map((row) => ({
      bond: row.bond,
      'in-course': row.mouldsInCourse,
      asked: row.asked ? 'yes' : '',
      thinnest: length(row.jointRange[0]),
      thickest: length(row.jointRange[1]),
      moulds: row.moulds,
      'at-least': row.atLeast,
      unmet: row.unmet,
      blocks: row.blocks,
      cut: row.cut,
      waste: 100 * row.waste,
      merged: row.merged,
      shortest: length(row.shortest),
      'least-lap': length(row.leastLap),
      'short-laps': row.shortLaps,
      lines: row.lines,
    })),
    notes: [
      'Block tolerance and drying shrinkage are taken off each range before moulds are sought, and beds and face steps are held.',
      'Between courses of n and m equal blocks no start laps more than π r / lcm(n, m) everywhere: laps are kept where numbers of blocks are, and lost where moulds are shared.',
      'With two moulds in a course, `blocks.moulds-in-course: 2`, their blocks are spread evenly among each other: places are then unequal, and laps less regular.',
      'Blocks, cuts and waste are counted by the longest runs of pieces at mid-thickness; laps over whole rings.',
    ],
  };
}

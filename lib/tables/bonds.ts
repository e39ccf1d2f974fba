import * as texts from '../base/texts/table-courses.js';
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
    title: texts.bonds,
    columns: [
      textColumn('bond', texts.bond),
      countColumn('in-course', texts.mouldsInACourse),
      textColumn('asked', texts.asDescribed),
      numberColumn('thinnest', texts.thinnestJoint, units.length),
      numberColumn('thickest', texts.thickestJoint, units.length),
      countColumn('moulds', texts.moulds),
      countColumn('at-least', texts.mouldsNeededAtLeast),
      countColumn('unmet', texts.coursesThatNoMould),
      countColumn('blocks', texts.blocksToCast),
      countColumn('cut', texts.blocksToCut),
      { key: 'waste', label: texts.cutOff, kind: 'number', ...percent },
      countColumn('merged', texts.longerBlocksWithShort),
      numberColumn('shortest', texts.shortestPieceBesideCut, units.length),
      numberColumn('least-lap', texts.leastLap, units.length),
      countColumn('short-laps', texts.lapsTooShort),
      countColumn('lines', texts.perpendsInLineThrough),
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
    notes: [texts.blockToleranceAndDrying, texts.betweenCoursesOfN, texts.withTwoMoulds, texts.blocksCutsAndWaste],
  };
}

import { twoMoulds } from '../base/texts/table-courses.js';
import type { Table } from '../documents/table.js';
import { SECOND } from '../drawings/courses-view.js';
import type { HandedOver } from '../drawings/handed.js';
import type { LaidHouse } from '../masonry/block.js';
import { courseTable } from '../tables/courses.js';
import { layingTable } from '../tables/laying.js';
import { mouldTable } from '../tables/moulds.js';
import { structuralCheckTable, structureTable } from '../tables/structure.js';
import type { Study } from './study.js';

/** Columns of the table of moulds that a sheet has room for: what the mould maker cuts. */
const MOULD_COLUMNS = [
  'mould',
  'parent',
  'courses',
  'whole',
  'cut',
  'longer',
  'inner-lower-chord',
  'inner-upper-chord',
  'inner-height',
  'outer-lower-chord',
  'outer-upper-chord',
  'outer-height',
  'thickness',
  'bed-angle',
  'head-across',
  'head-up',
  'wet-mass',
];

/** Columns of the table of courses on a sheet: what the mason sets. */
const COURSE_COLUMNS = [
  'dome',
  'course',
  'count',
  'whole',
  'cut',
  'longer',
  'mould',
  'perpend-middle',
  'bed-angle',
  'inner-radius',
  'inner-level',
  'outer-radius',
  'outer-level',
  'first-perpend',
  'lap',
];

/** Sources of checks are long; the table in full and the report have them. */
const LEFT_OUT = ['source'];

const only = (table: Table, keys: readonly string[]): Table => ({
  ...table,
  columns: table.columns.filter((c) => keys.includes(c.key)),
});

const without = (table: Table, keys: readonly string[]): Table => ({
  ...table,
  columns: table.columns.filter((c) => !keys.includes(c.key)),
});

/** What the sheets show of other stages' results; plain data that can go to another thread. */
export function handedOver(known: Study): HandedOver {
  const { plan, setout, laid, statics, dwelling, laying } = known;
  return {
    statics,
    structure: [structureTable(setout, statics), structuralCheckTable(known.stands, setout.house.units)].map((table) =>
      without(table, LEFT_OUT),
    ),
    laying: [layingTable(setout, laying)],
    moulds: [only(mouldTable(plan, laid), MOULD_COLUMNS), only(courseTable(plan, laid), COURSE_COLUMNS)],
    floors: Object.fromEntries(dwelling.rooms.map((r) => [r.room.id, r.floor])),
    roomFloor: dwelling.roomFloor,
    clears: Object.fromEntries(dwelling.openings.map(({ id, clear: { width, height } }) => [id, { width, height }])),
    ties: Object.fromEntries(statics.domes.flatMap((d) => (d.tie ? [[d.id, d.tie.z] as const] : []))),
    mouldOf: Object.fromEntries(
      plan.moulds.courses.flatMap(({ domeId, course, laid: own, second }) => {
        const name = own && second ? twoMoulds(own.id, second.id + SECOND) : own?.id;
        return name ? [[`${domeId} ${course}`, name] as const] : [];
      }),
    ),
    laidIn: numbersByCourse(laid),
  };
}

function numbersByCourse({ blocks }: LaidHouse): Record<string, number[]> {
  const all: Record<string, number[]> = {};
  for (const { domeId, course, number } of blocks) {
    const key = `${domeId} ${course}`;
    all[key] ??= [];
    // Pieces of a block that a cut divides share its number.
    if (!all[key].includes(number)) all[key].push(number);
  }
  return all;
}

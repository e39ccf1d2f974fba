import type { Table } from '../documents/table.js';
import { billTable, quantityTable } from '../tables/bill.js';
import { blockTable } from '../tables/blocks.js';
import { bondTable } from '../tables/bonds.js';
import { calendarTable, mouldCopyTable } from '../tables/calendar.js';
import { formTable, laggingTable, ribTable, tubeTable } from '../tables/centering.js';
import { courseTable } from '../tables/courses.js';
import { cutTable } from '../tables/cuts.js';
import { dwellingTable, roomTable } from '../tables/dwelling.js';
import { layingTable } from '../tables/laying.js';
import { foamTable, mixTable } from '../tables/mix.js';
import { longMouldTable, mouldTable } from '../tables/moulds.js';
import { openingTable } from '../tables/openings.js';
import { poleTable, templateBoardTable, templateTable } from '../tables/radius-pole.js';
import { remnantTable } from '../tables/remnants.js';
import { ringPieceTable } from '../tables/ring-pieces.js';
import { bearingTable, circleTable, pegTable } from '../tables/setting-out.js';
import { structuralCheckTable, structureTable } from '../tables/structure.js';
import { volumeTable } from '../tables/volumes.js';
import { voussoirTable } from '../tables/voussoirs.js';
import { layerTable, warmthTable } from '../tables/warmth.js';
import type { Study } from './study.js';

/** One table that every house has. */
export interface TableEntry {
  readonly id: string;
  /** What the table is for, in a line. */
  readonly about: string;
  readonly of: (study: Study) => Table | Promise<Table>;
}

const entry = (id: string, about: string, of: TableEntry['of']): TableEntry => ({ id, about, of });

/** Every table, in the order in which a house is built. */
export const TABLES: readonly TableEntry[] = [
  entry('drawing-register', 'every sheet of the drawings', (s) => s.register),
  entry('pegs', 'where each peg goes, with tapes from two datum pegs', (s) => pegTable(s.setout)),
  entry('circles', 'circles of footing, wall and slab to scribe', (s) => circleTable(s.setout)),
  entry('bearings', 'openings and passages by chord from a mark', (s) => bearingTable(s.setout)),
  entry('openings', 'sizes of openings, rings and faces', (s) => openingTable(s.setout)),
  entry('rooms', 'floor, headroom, light and air of each room', (s) => roomTable(s.setout, s.dwelling)),
  entry('dwelling', 'rules of living in it, and what the house gives', (s) => dwellingTable(s.setout, s.dwelling)),
  entry('structure', 'weights, thrust, tie and footing of each dome', (s) => structureTable(s.setout, s.statics)),
  entry('structural-checks', 'what must hold for it to stand, the worst first', (s) =>
    structuralCheckTable(s.stands, s.setout.house.units),
  ),
  entry('mix', 'what to weigh for a cubic metre, a batch, the house', (s) =>
    mixTable(s.setout.house, s.works.mixLitres),
  ),
  entry('foam-correction', 'foam for the next batch, from a weighed bucket', (s) => foamTable(s.setout.house)),
  entry('moulds', 'inner sizes of each mould, and where it serves', (s) => mouldTable(s.plan, s.laid)),
  entry('long-moulds', 'inner sizes of the moulds of longer blocks', (s) => longMouldTable(s.plan, s.laid)),
  entry('bonds', 'moulds against bond and joints: what each choice costs', (s) => bondTable(s.plan)),
  entry('mould-copies', 'how many copies of each mould to make', (s) => mouldCopyTable(s.setout, s.works.calendar)),
  entry('blocks', 'every block: place, sizes, mass', (s) => blockTable(s.plan, s.laid)),
  entry('cuts', 'where blocks are cut, and which cuts are alike', (s) => cutTable(s.plan, s.laid)),
  entry('remnants', 'what cuts leave that is too small to lay', (s) => remnantTable(s.setout, s.laid)),
  entry('voussoirs', 'stones of the arches, and rings cast in one', (s) => voussoirTable(s.setout, s.pieces)),
  entry('ring-pieces', 'segments of skewback rings and curbs, crown plugs', (s) => ringPieceTable(s.setout, s.pieces)),
  entry('calendar', 'what is cast, struck and laid on each day', (s) => calendarTable(s.setout, s.works.calendar)),
  entry('forms', 'which arches share a form, and when each stands', (s) => {
    const { calendar, centres } = s.works;
    return formTable(s.setout, calendar, centres);
  }),
  entry('centering-ribs', 'ribs to cut for each arch', (s) => ribTable(s.setout, s.works.centres)),
  entry('centering-tubes', 'the same ribs of bent tube', (s) => tubeTable(s.setout, s.works.centres)),
  entry('lagging', 'lagging strips to cut for each arch', (s) => laggingTable(s.setout, s.works.centres)),
  entry('courses', 'levels, radii and laps of each course', (s) => courseTable(s.plan, s.laid)),
  entry('laying', 'what holds each block till its ring is closed', (s) => layingTable(s.setout, s.laying)),
  entry('radius-pole', 'how the pole is set for each course', (s) => poleTable(s.setout)),
  entry('meridian-template', 'ordinates of the template where no pole reaches', (s) => templateTable(s.setout)),
  entry('template-boards', 'boards to cut for that template', (s) => templateBoardTable(s.setout)),
  entry('volumes', 'volumes of the masonry by part', (s) => volumeTable(s.setout, s.balance)),
  entry('quantities', 'what the house takes, waste apart', (s) => quantityTable(s.setout, s.works.quantities)),
  entry('bill', 'what the materials cost', (s) => billTable(s.setout, s.works.bill)),
  entry('layers', 'layers of the shell', (s) => layerTable(s.setout, s.warmth)),
  entry('warmth', 'transmittances and heat loss', (s) => warmthTable(s.setout.house, s.warmth)),
];

export const tablesOf = (study: Study): Promise<Table[]> => Promise.all(TABLES.map((table) => table.of(study)));

import * as texts from '../base/texts/table-list.js';
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
  entry('drawing-register', texts.everySheetOfDrawings, (s) => s.register),
  entry('pegs', texts.whereEachPegGoes, (s) => pegTable(s.setout)),
  entry('circles', texts.circlesOfFootingWall, (s) => circleTable(s.setout)),
  entry('bearings', texts.openingsAndPassages, (s) => bearingTable(s.setout)),
  entry('openings', texts.sizesOfOpeningsRings, (s) => openingTable(s.setout)),
  entry('rooms', texts.floorHeadroomLight, (s) => roomTable(s.setout, s.dwelling)),
  entry('dwelling', texts.rulesOfLiving, (s) => dwellingTable(s.setout, s.dwelling)),
  entry('structure', texts.weightsThrustTie, (s) => structureTable(s.setout, s.statics)),
  entry('structural-checks', texts.whatMustHold, (s) => structuralCheckTable(s.stands, s.setout.house.units)),
  entry('mix', texts.whatToWeigh, (s) => mixTable(s.setout.house, s.works.mixLitres)),
  entry('foam-correction', texts.foamForNextBatch, (s) => foamTable(s.setout.house)),
  entry('moulds', texts.innerSizesOfEach, (s) => mouldTable(s.plan, s.laid)),
  entry('long-moulds', texts.innerSizesOfMoulds, (s) => longMouldTable(s.plan, s.laid)),
  entry('bonds', texts.mouldsAgainstBond, (s) => bondTable(s.plan)),
  entry('mould-copies', texts.howManyCopies, (s) => mouldCopyTable(s.setout, s.works.calendar)),
  entry('blocks', texts.everyBlockPlaceSizes, (s) => blockTable(s.plan, s.laid)),
  entry('cuts', texts.whereBlocksAreCut, (s) => cutTable(s.plan, s.laid)),
  entry('remnants', texts.whatCutsLeave, (s) => remnantTable(s.setout, s.laid)),
  entry('voussoirs', texts.stonesOfArches, (s) => voussoirTable(s.setout, s.pieces)),
  entry('ring-pieces', texts.segmentsOfSkewbackRings, (s) => ringPieceTable(s.setout, s.pieces)),
  entry('calendar', texts.whatIsCastStruck, (s) => calendarTable(s.setout, s.works.calendar)),
  entry('forms', texts.whichArchesShareForm, (s) => {
    const { calendar, centres } = s.works;
    return formTable(s.setout, calendar, centres);
  }),
  entry('centering-ribs', texts.ribsToCut, (s) => ribTable(s.setout, s.works.centres)),
  entry('centering-tubes', texts.sameRibsOfBent, (s) => tubeTable(s.setout, s.works.centres)),
  entry('lagging', texts.laggingStripsToCut, (s) => laggingTable(s.setout, s.works.centres)),
  entry('courses', texts.levelsRadiiAndLaps, (s) => courseTable(s.plan, s.laid)),
  entry('laying', texts.whatHoldsEachBlock, (s) => layingTable(s.setout, s.laying)),
  entry('radius-pole', texts.howPoleIsSet, (s) => poleTable(s.setout)),
  entry('meridian-template', texts.ordinatesOfTemplateWhere, (s) => templateTable(s.setout)),
  entry('template-boards', texts.boardsToCut, (s) => templateBoardTable(s.setout)),
  entry('volumes', texts.volumesOfMasonry, (s) => volumeTable(s.setout, s.balance)),
  entry('quantities', texts.whatHouseTakesWaste, (s) => quantityTable(s.setout, s.works.quantities)),
  entry('bill', texts.whatMaterialsCost, (s) => billTable(s.setout, s.works.bill)),
  entry('layers', texts.layersOfShell, (s) => layerTable(s.setout, s.warmth)),
  entry('warmth', texts.transmittancesAndHeatLoss, (s) => warmthTable(s.setout.house, s.warmth)),
];

export const tablesOf = (study: Study): Promise<Table[]> => Promise.all(TABLES.map((table) => table.of(study)));

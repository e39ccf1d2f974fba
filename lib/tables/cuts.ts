import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-pieces.js';
import type { Table } from '../documents/table.js';
import type { LaidHouse } from '../masonry/block.js';
import { blockCuts, CUT_EDGES, type CutEdge } from '../masonry/cuts.js';
import { nameCuts } from '../masonry/leftovers.js';
import { formNames } from '../masonry/longer.js';
import { LIGHTER } from '../masonry/longer-check.js';
import type { MasonryPlan } from '../masonry/plan.js';
import { SAWN_OFF, stopAlong, stopsOf } from '../masonry/stops.js';
import { DEG } from '../math/vec.js';
import { degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

const EDGES: Readonly<Record<CutEdge, readonly [string, string]>> = {
  innerLower: ['inner-lower', texts.intradosLowerEdge],
  innerUpper: ['inner-upper', texts.intradosUpperEdge],
  outerLower: ['outer-lower', texts.extradosLowerEdge],
  outerUpper: ['outer-upper', texts.extradosUpperEdge],
};

const KEEPS = { start: texts.firstHead, end: texts.secondHead, between: texts.noHead, notch: texts.bothHeads } as const;

/** Where every cut block is cut, which cuts are alike, and which pieces come out of leftovers. */
export function cutTable(plan: MasonryPlan, laid: LaidHouse): Table {
  const { setout } = plan;
  const units = tableUnits(setout.house.units);
  const formOf = formNames(plan);
  const stops = stopsOf(setout, laid);
  const named = nameCuts(
    blockCuts(setout, laid),
    ({ block }) => formOf(block) ?? '',
    ({ block }) => stops.has(block.mark),
  );
  const stopCells = (mark: string) => {
    const stop = stops.get(mark);
    const along = stop && stopAlong(stop, setout.house.blocks);
    return Object.fromEntries(
      CUT_EDGES.map((edge) => [`stop-${EDGES[edge][0]}`, along ? units.length.of(along[edge]) : null]),
    );
  };
  return {
    id: 'cuts',
    title: texts.cuts,
    columns: [
      textColumn('mark', texts.mark),
      textColumn('mould', texts.mould),
      textColumn('cut', texts.cut),
      textColumn('mirrored', texts.mirrored),
      textColumn('keeps', texts.keeps),
      ...CUT_EDGES.map((edge) => numberColumn(EDGES[edge][0], texts.leftOfEdges(EDGES[edge][1]), units.length)),
      ...CUT_EDGES.map((edge) =>
        numberColumn(`stop-${EDGES[edge][0]}`, texts.stopBoardAlong(EDGES[edge][1]), units.length),
      ),
      degreesColumn('angle', texts.planAngleOfCut),
      textColumn('from', texts.outOfLeftover),
      textColumn('cut-by', texts.cutBy),
    ],
    rows: named.map(({ cut, mould, name, mirrored, from }) => ({
      mark: cut.block.mark,
      mould,
      cut: name,
      mirrored: mirrored ? 'yes' : '',
      keeps: KEEPS[cut.keeps],
      ...Object.fromEntries(CUT_EDGES.map((edge) => [EDGES[edge][0], units.length.of(cut.left[edge])])),
      ...stopCells(cut.block.mark),
      angle: cut.angleRad === null ? null : cut.angleRad / DEG,
      from,
      'cut-by': cut.block.cutBy.join(' '),
    })),
    notes: [
      texts.lengthsAlongEdges,
      texts.cutsOfOneName,
      texts.placesOfStopBoards(
        LIGHTER,
        `${Number(units.length.of(SAWN_OFF).toFixed(units.length.decimals))} ${units.length.unit}`,
      ),
      CAUTION.silica,
    ],
  };
}

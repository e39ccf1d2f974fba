import { CAUTION } from '../base/cautions.js';
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
  innerLower: ['inner-lower', 'intrados lower edge'],
  innerUpper: ['inner-upper', 'intrados upper edge'],
  outerLower: ['outer-lower', 'extrados lower edge'],
  outerUpper: ['outer-upper', 'extrados upper edge'],
};

const KEEPS = { start: 'first head', end: 'second head', between: 'no head', notch: 'both heads' } as const;

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
    title: 'Cuts',
    columns: [
      textColumn('mark', 'mark'),
      textColumn('mould', 'mould'),
      textColumn('cut', 'cut'),
      textColumn('mirrored', 'mirrored'),
      textColumn('keeps', 'keeps'),
      ...CUT_EDGES.map((edge) => numberColumn(EDGES[edge][0], `${EDGES[edge][1]}, left`, units.length)),
      ...CUT_EDGES.map((edge) =>
        numberColumn(`stop-${EDGES[edge][0]}`, `stop board along the ${EDGES[edge][1]}, as cast`, units.length),
      ),
      degreesColumn('angle', 'plan angle of the cut to the head kept'),
      textColumn('from', 'out of the leftover of'),
      textColumn('cut-by', 'cut by'),
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
      'Lengths along the edges from the head kept; the first head is the one first met clockwise. A cut through the head of an arch curves between its marks.',
      'Cuts of one name are marked out alike; a mirrored one is its mirror image, which the same mould gives.',
      `${LIGHTER} Its places are told from the head kept, in the mould, to half a millimetre; ${Number(units.length.of(SAWN_OFF).toFixed(units.length.decimals))} ${units.length.unit} at least are left to saw off.`,
      CAUTION.silica,
    ],
  };
}

import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-pieces.js';
import type { Table } from '../documents/table.js';
import type { LaidHouse } from '../masonry/block.js';
import { SLIVER_RUN, SLIVER_SHARE } from '../masonry/cut.js';
import type { HouseSetout } from '../setout/house.js';
import { numberColumn, tableUnits, textColumn } from './units.js';

/** What cuts leave of blocks that is too small to be laid: where mortar takes its place, and how much. */
export function remnantTable(house: HouseSetout, laid: LaidHouse): Table {
  const units = tableUnits(house.house.units);
  const laidMarks = new Set(laid.blocks.map(({ mark }) => mark));
  // A block that falls in two is laid under letters.
  const isLaid = (mark: string) => laidMarks.has(mark) || laidMarks.has(`${mark}a`);
  const run = `${Number(units.length.of(SLIVER_RUN).toFixed(units.length.decimals))} ${units.length.unit}`;
  return {
    id: 'remnants',
    title: texts.remnantsLeftToMortar,
    columns: [
      textColumn('mark', texts.mark),
      textColumn('dome', texts.dome),
      textColumn('beside', texts.whatIsLaid),
      numberColumn('volume', texts.volume, units.pieceVolume),
    ],
    rows: laid.slivers.map(({ mark, domeId, volume }) => ({
      mark,
      dome: domeId,
      beside: isLaid(mark) ? texts.restOfBlock : texts.nothingOfBlock,
      volume: units.pieceVolume.of(volume),
    })),
    notes: [texts.noBlockIsCut(run, 100 * SLIVER_SHARE), texts.noBlockForSuchMark, CAUTION.cement],
  };
}

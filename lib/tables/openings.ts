import { CAUTION } from '../base/cautions.js';
import type { Table } from '../documents/table.js';
import type { HouseSetout } from '../setout/house.js';
import { degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

/** Schedule of openings: sizes between jambs, rings, faces. */
export function openingTable(house: HouseSetout): Table {
  const units = tableUnits(house.house.units);
  const length = (mm: number | null) => (mm === null ? null : units.length.of(mm));
  return {
    id: 'openings',
    title: 'Openings',
    columns: [
      textColumn('id', 'opening'),
      textColumn('dome', 'dome'),
      textColumn('use', 'use'),
      degreesColumn('bearing', 'bearing'),
      numberColumn('width', 'width between jambs', units.length),
      numberColumn('height', 'height, sill to crown', units.length),
      numberColumn('sill', 'sill above floor', units.length),
      textColumn('head', 'head'),
      numberColumn('rise', 'rise of the head', units.length),
      numberColumn('springing', 'springing above floor', units.length),
      numberColumn('ring', 'ring and jambs, thickness', units.length),
      numberColumn('face', 'flat face from the axis', units.length),
      textColumn('made-as', 'ring made as'),
      numberColumn('depth', 'depth of niche', units.length),
      numberColumn('back', 'wall left behind niche', units.length),
    ],
    rows: house.arches.map(({ opening, section, faceV, dome, clear }) => ({
      id: opening.id,
      dome: opening.in,
      use: opening.use,
      bearing: opening.bearingDeg,
      width: length(opening.width),
      height: length(opening.height),
      sill: length(opening.sill),
      head: opening.head.shape,
      rise: length(opening.head.rise),
      springing: length(section.springingZ),
      ring: length(opening.arch.ring),
      face: length(faceV),
      'made-as': opening.arch.madeAs === 'cast' ? 'cast' : `${opening.arch.voussoirs} voussoirs`,
      depth: length(opening.depth),
      back:
        clear.kind === 'through'
          ? null
          : length(clear.kind === 'plane' ? (faceV as number) - clear.v : dome.thickness - clear.depth),
    })),
    notes: ['A ring without a flat face follows the extrados.', CAUTION.authority],
  };
}

import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-house.js';
import type { Table } from '../documents/table.js';
import type { HouseSetout } from '../setout/house.js';
import { degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

/** Schedule of openings: sizes between jambs, rings, faces. */
export function openingTable(house: HouseSetout): Table {
  const units = tableUnits(house.house.units);
  const length = (mm: number | null) => (mm === null ? null : units.tape.of(mm));
  return {
    id: 'openings',
    title: texts.openings,
    columns: [
      textColumn('id', texts.opening),
      textColumn('dome', texts.dome),
      textColumn('use', texts.use),
      degreesColumn('bearing', texts.bearing),
      numberColumn('width', texts.widthBetweenJambs, units.tape),
      numberColumn('height', texts.heightSillToCrown, units.tape),
      numberColumn('sill', texts.sillAboveFloor, units.tape),
      textColumn('head', texts.head),
      numberColumn('rise', texts.riseOfHead, units.tape),
      numberColumn('springing', texts.springingAboveFloor, units.tape),
      numberColumn('ring', texts.ringAndJambsThickness, units.tape),
      numberColumn('face', texts.flatFaceFromAxis, units.tape),
      textColumn('made-as', texts.ringMade),
      numberColumn('depth', texts.depthOfNiche, units.tape),
      numberColumn('back', texts.wallLeftBehindNiche, units.tape),
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
      'made-as': opening.arch.madeAs === 'cast' ? texts.castInOne : texts.voussoirsCount(opening.arch.voussoirs),
      depth: length(opening.depth),
      back:
        clear.kind === 'through'
          ? null
          : length(clear.kind === 'plane' ? (faceV as number) - clear.v : dome.thickness - clear.depth),
    })),
    notes: [texts.ringWithoutFlatFace, CAUTION.authority],
  };
}

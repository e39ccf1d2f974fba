import type { WrittenUnits } from '../../base/measures.js';
import { DIMENSION_STYLE as STYLE } from '../../documents/dimensioning.js';
import { TEXT_STYLE, weightCode } from './entities.js';
import { type DxfObject, tableRecord } from './object.js';
import type { Tag } from './tags.js';

const MM_PER_INCH = 25.4;

/** A readers' "tick size" is the reach of the stroke along and across the line, from its middle. */
const TICK_REACH = STYLE.tick / 2 / Math.SQRT2;

/** Name, group in the style record, group in the header, value: sizes are paper mm, multiplied by DIMSCALE. */
type Variable = readonly [name: string, style: number, header: number, value: number];

function variables(scale: number, units: WrittenUnits): readonly Variable[] {
  const feet = units === 'feet-inches';
  return [
    ['DIMSCALE', 40, 40, scale],
    ['DIMASZ', 41, 40, STYLE.tick],
    ['DIMEXO', 42, 40, STYLE.offset],
    ['DIMEXE', 44, 40, STYLE.beyond],
    ['DIMTXT', 140, 40, STYLE.textHeight],
    ['DIMCEN', 141, 40, 0],
    ['DIMTSZ', 142, 40, TICK_REACH],
    ['DIMLFAC', 144, 40, feet ? 1 / MM_PER_INCH : 1],
    ['DIMGAP', 147, 40, STYLE.textGap],
    // Texts lie along their line, inside and outside of the extension lines, above it.
    ['DIMTIH', 73, 70, 0],
    ['DIMTOH', 74, 70, 0],
    ['DIMTAD', 77, 70, 1],
    // Feet and inches leave out zero feet; whole millimetres leave out trailing zeros.
    ['DIMZIN', 78, 70, feet ? 3 : 8],
    ['DIMTOFL', 172, 70, 1],
    ['DIMADEC', 179, 70, 1],
    ['DIMDEC', 271, 70, feet ? 4 : 0],
    ['DIMAUNIT', 275, 70, 0],
    ['DIMFRAC', 276, 70, 2],
    ['DIMLUNIT', 277, 70, feet ? 4 : 2],
    ['DIMDSEP', 278, 70, '.'.charCodeAt(0)],
    ['DIMLWD', 371, 70, weightCode(STYLE.lineWeight)],
    ['DIMLWE', 372, 70, weightCode(STYLE.lineWeight)],
  ];
}

/** Name of the dimension style: one for each scale and way of writing, so that drawings can be pasted together. */
export const dimStyleName = (scale: number, units: WrittenUnits): string =>
  `OBLIQUE-${scale}-${units === 'metric' ? 'MM' : 'FT'}`;

export const dimStyleRecord = (name: string, scale: number, units: WrittenUnits, textStyleHandle: string): DxfObject =>
  tableRecord(
    'DIMSTYLE',
    'AcDbDimStyleTableRecord',
    [
      [2, name],
      [70, 0],
      ...variables(scale, units).map(([, code, , value]): Tag => [code, value]),
      [340, textStyleHandle],
    ],
    105,
  );

/** The same values as header variables: some readers redraw dimensions from these alone. */
export const dimHeaders = (name: string, scale: number, units: WrittenUnits): [string, Tag[]][] => [
  ...variables(scale, units).map(([variable, , code, value]): [string, Tag[]] => [variable, [[code, value]]]),
  ['DIMTXSTY', [[7, TEXT_STYLE]]],
  ['DIMSTYLE', [[2, name]]],
];

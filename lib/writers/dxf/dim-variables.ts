import type { WrittenUnits } from '../../base/measures.js';
import { DIMENSION_STYLE as STYLE } from '../../documents/dimension-style.js';
import { TEXT_STYLE, weightCode } from './entities.js';
import { type DxfObject, tableRecord } from './object.js';

const MM_PER_INCH = 25.4;

/** A readers' "tick size" is the reach of the stroke along and across the line, from its middle. */
const TICK_REACH = STYLE.tick / 2 / Math.SQRT2;

/** How the dimensions of a view are written in a file whose texts are sized for `1 : scale`. */
export interface DimensionWriting {
  readonly scale: number;
  readonly units: WrittenUnits;
  /** How many times too large the view lies in the model; measures are divided by it. */
  readonly enlarged: number;
}

/** Name, group in the style record, group in the header, value: sizes are paper mm, multiplied by DIMSCALE. */
type Variable = readonly [name: string, style: number, header: number, value: number];

function variables({ scale, units, enlarged }: DimensionWriting): readonly Variable[] {
  const feet = units === 'feet-inches';
  const half = units === 'half-millimetres';
  return [
    ['DIMSCALE', 40, 40, scale],
    ['DIMASZ', 41, 40, STYLE.tick],
    ['DIMEXO', 42, 40, STYLE.offset],
    ['DIMEXE', 44, 40, STYLE.beyond],
    ...(half ? [['DIMRND', 45, 40, 0.5] as const] : []),
    ['DIMTXT', 140, 40, STYLE.textHeight],
    ['DIMCEN', 141, 40, 0],
    ['DIMTSZ', 142, 40, TICK_REACH],
    ['DIMLFAC', 144, 40, (feet ? 1 / MM_PER_INCH : 1) / enlarged],
    ['DIMGAP', 147, 40, STYLE.textGap],
    // Texts lie along their line, inside and outside of the extension lines, above it.
    ['DIMTIH', 73, 70, 0],
    ['DIMTOH', 74, 70, 0],
    ['DIMTAD', 77, 70, 1],
    // Feet and inches leave out zero feet; millimetres leave out trailing zeros.
    ['DIMZIN', 78, 70, feet ? 3 : 8],
    ['DIMTOFL', 172, 70, 1],
    ['DIMADEC', 179, 70, 1],
    ['DIMDEC', 271, 70, feet ? 4 : half ? 1 : 0],
    ['DIMAUNIT', 275, 70, 0],
    ['DIMFRAC', 276, 70, 2],
    ['DIMLUNIT', 277, 70, feet ? 4 : 2],
    ['DIMDSEP', 278, 70, '.'.charCodeAt(0)],
    ['DIMLWD', 371, 70, weightCode(STYLE.lineWeight)],
    ['DIMLWE', 372, 70, weightCode(STYLE.lineWeight)],
  ];
}

const STYLE_SUFFIX: Readonly<Record<WrittenUnits, string>> = {
  metric: 'MM',
  'half-millimetres': 'HALF-MM',
  'feet-inches': 'FT',
};

/** Name of the dimension style: one for each scale and way of writing, so that drawings can be pasted together. */
export const dimStyleName = ({ scale, units, enlarged }: DimensionWriting): string =>
  `OBLIQUE-${scale}-${STYLE_SUFFIX[units]}${enlarged === 1 ? '' : `-X${enlarged.toFixed(4).replace('.', '_')}`}`;

export const dimStyleRecord = (writing: DimensionWriting, textStyleHandle: string): DxfObject =>
  tableRecord(
    'DIMSTYLE',
    'AcDbDimStyleTableRecord',
    (tags) => {
      tags.push(2, dimStyleName(writing));
      tags.push(70, 0);
      for (const [, code, , value] of variables(writing)) tags.push(code, value);
      tags.push(340, textStyleHandle);
    },
    105,
  );

/** The same values as header variables, each with its group: some readers redraw dimensions from these alone. */
export const dimHeaders = (writing: DimensionWriting): [string, number, string | number][] => [
  ...variables(writing).map(([name, , code, value]): [string, number, number] => [name, code, value]),
  ['DIMTXSTY', 7, TEXT_STYLE],
  ['DIMSTYLE', 2, dimStyleName(writing)],
];

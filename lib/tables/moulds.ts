import { CAUTION } from '../base/cautions.js';
import type { House } from '../description/house.js';
import type { Column, Table } from '../documents/table.js';
import type { LaidHouse } from '../masonry/block.js';
import { castCount } from '../masonry/cast.js';
import { longerForms } from '../masonry/longer.js';
import { LIGHTER } from '../masonry/longer-check.js';
import { massKg, wetDensity } from '../masonry/mass.js';
import {
  type FaceDimensions,
  formDimensions,
  type MouldDimensions,
  mouldDimensions,
} from '../masonry/moulds/dimensions.js';
import type { NamedMould } from '../masonry/moulds/schedule.js';
import type { MasonryPlan } from '../masonry/plan.js';
import { DEG } from '../math/vec.js';
import { countColumn, degreesColumn, numberColumn, type TableUnits, tableUnits, textColumn } from './units.js';

/** A mould is cut no finer than this, mm. */
const CUT_TO = 0.5;
const toCut = (mm: number): number => Math.round(mm / CUT_TO) * CUT_TO;

const FACE: readonly (readonly [string, string, (f: FaceDimensions) => number])[] = [
  ['lower-arc', 'lower edge, arc', (f) => f.edges.lower.arc],
  ['lower-chord', 'lower edge, chord', (f) => f.edges.lower.chord],
  ['middle-arc', 'at mid-height, arc', (f) => f.edges.middle.arc],
  ['middle-chord', 'at mid-height, chord', (f) => f.edges.middle.chord],
  ['upper-arc', 'upper edge, arc', (f) => f.edges.upper.arc],
  ['upper-chord', 'upper edge, chord', (f) => f.edges.upper.chord],
  ['height', 'height along the face', (f) => f.height],
  ['diagonal', 'diagonal', (f) => f.diagonal],
  ['sagitta-lower', 'sagitta of the lower edge', (f) => f.sagittaLower],
  ['sagitta-upper', 'sagitta of the upper edge', (f) => f.sagittaUpper],
  ['sagitta-up', 'sagitta up the face', (f) => f.sagittaUp],
];

const SIDES = [
  ['inner', 'intrados'],
  ['outer', 'extrados'],
] as const;

const ANGLES: readonly (readonly [string, string, (d: MouldDimensions) => number])[] = [
  ['bed-angle', 'angle between the beds', (d) => d.bedAngleRad],
  ['head-across', 'head off square across the wall, wider outside', (d) => d.headAcrossRad],
  ['head-up', 'head off square up the face, narrower at the top', (d) => d.headUpRad],
];

/** Every mould with its inner sizes, what it is for, and how many blocks come out of it. */
export function mouldTable(plan: MasonryPlan, laid: LaidHouse): Table {
  const { house } = plan.setout;
  const units = tableUnits(house.units);
  const size = (mm: number) => units.length.of(toCut(mm));
  const { moulds } = plan.moulds;
  return {
    id: 'moulds',
    title: 'Moulds',
    columns: [
      textColumn('mould', 'mould'),
      textColumn('parent', 'course that it is shaped for'),
      textColumn('courses', 'courses laid with it'),
      countColumn('whole', 'blocks laid whole'),
      countColumn('cut', 'blocks to be cut'),
      countColumn('longer', 'longer blocks in its shape'),
      ...sizeColumns(units),
    ],
    rows: moulds.map((named) => {
      const d = mouldDimensions(named.mould, house.blocks);
      return {
        mould: named.id,
        parent: markOf(named.mould.parent.domeId, named.mould.parent.course.index),
        courses: named.courses.map((c) => markOf(c.domeId, c.course)).join(' '),
        ...castOf(plan, laid, named),
        ...sizeCells(d, house),
      };
    }),
    notes: [
      ...countNotes(plan),
      `Inner sizes, to ${Math.round(size(CUT_TO) * 1000) / 1000} ${units.length.unit}, larger than the dry block by its drying shrinkage of ${Math.round(house.blocks.shrinkage * 1e4) / 100} %.`,
      'Beds stand square to the faces. Every mould is its own mirror image: one serves left and right. Blocks that take in a short neighbour are cast in its shape with the heads moved apart: see the longer moulds.',
      ...(house.blocks.faces === 'flat'
        ? ['Faces are flat: the sagittas say how far they miss the curve that the corners lie on.']
        : []),
      CAUTION.authority,
      CAUTION.lifting,
    ],
  };
}

/** What is proven of the number of moulds. */
function countNotes({ setout, moulds: { moulds, atLeast, proven, courses } }: MasonryPlan): string[] {
  const family =
    'moulds with beds and faces of any course, heads of any bevel, and tapers in steps of half a millimetre';
  const mixed = setout.house.blocks.mouldsInCourse > 1;
  const number = `${moulds.length} moulds for this bond${mixed ? ', two of which may share a course' : ''}`;
  const shared = courses.filter(({ second }) => second !== null).length;
  return [
    proven
      ? `${number}: fewer are impossible, by exact search over ${family}.`
      : `${number}; ${atLeast} at least are needed, of ${family}. ${mixed ? 'The true number lies between.' : 'The search was cut short.'}`,
    ...(shared > 0
      ? [`${shared} courses are laid with two moulds: the table of courses tells which blocks are of which.`]
      : []),
  ];
}

const markOf = (domeId: string, course: number): string => `${domeId}-${course}`;

function castOf({ setout }: MasonryPlan, laid: LaidHouse, { id, courses }: NamedMould) {
  const sum = { whole: 0, cut: 0, longer: 0 };
  for (const { domeId, course, second } of courses) {
    const own = setout.domes.find((d) => d.id === domeId)?.courses[course - 1];
    if (!own) continue;
    const { whole, cut, longer } = castCount(laid, domeId, own, second?.id === id);
    sum.whole += whole;
    sum.cut += cut;
    sum.longer += longer;
  }
  return sum;
}

/** Inner sizes of what longer blocks are cast in. */
export function longMouldTable(plan: MasonryPlan, laid: LaidHouse): Table {
  const { house } = plan.setout;
  const units = tableUnits(house.units);
  return {
    id: 'long-moulds',
    title: 'Longer moulds',
    columns: [
      textColumn('mould', 'mould'),
      textColumn('shape', 'beds and faces of'),
      textColumn('courses', 'course laid with it'),
      countColumn('places', 'places that a block takes'),
      countColumn('whole', 'blocks laid whole'),
      countColumn('cut', 'blocks to be cut'),
      countColumn('stopped', 'of them cast to a stop board'),
      ...sizeColumns(units),
    ],
    rows: longerForms(plan, laid).map((form) => ({
      mould: form.id,
      shape: form.mould ?? `course ${markOf(form.domeId, form.course)}`,
      courses: markOf(form.domeId, form.course),
      places: form.modules,
      whole: form.whole,
      cut: form.cut,
      stopped: form.stops.length,
      ...sizeCells(formDimensions(form.form, house.blocks), house),
    })),
    notes: [
      'A piece beside an opening that would be too short is one with its neighbour. Such blocks have the beds and faces of their mould with the heads moved apart; where these would leave the bed joints, those of their own course.',
      'Sizes as in the table of moulds: inner ones, larger than the dry block by its drying shrinkage.',
      LIGHTER,
      CAUTION.authority,
      CAUTION.lifting,
    ],
  };
}

const sizeColumns = (units: TableUnits): Column[] => [
  ...SIDES.flatMap(([side, face]) =>
    FACE.map(([key, label]) => numberColumn(`${side}-${key}`, `${face}: ${label}`, units.length)),
  ),
  numberColumn('thickness', 'thickness', units.length),
  ...ANGLES.map(([key, label]) => degreesColumn(key, label)),
  numberColumn('volume', 'fresh mix for one filling', units.pieceVolume),
  numberColumn('wet-mass', 'wet mass of a filling', units.mass),
];

function sizeCells(d: MouldDimensions, house: House) {
  const units = tableUnits(house.units);
  const size = (mm: number) => units.length.of(toCut(mm));
  return {
    ...Object.fromEntries(
      SIDES.flatMap(([side, face]) => FACE.map(([key, , pick]) => [`${side}-${key}`, size(pick(d[face]))])),
    ),
    thickness: size(d.thickness),
    ...Object.fromEntries(ANGLES.map(([key, , pick]) => [key, pick(d) / DEG])),
    volume: units.pieceVolume.of(d.volume),
    'wet-mass': units.mass.of(massKg(d.volume, wetDensity(house.material))),
  };
}

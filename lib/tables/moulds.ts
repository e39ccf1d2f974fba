import { feetAndInches } from '../base/measures.js';
import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-moulds.js';
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
  ['lower-arc', texts.lowerEdgeArc, (f) => f.edges.lower.arc],
  ['lower-chord', texts.lowerEdgeChord, (f) => f.edges.lower.chord],
  ['middle-arc', texts.atMidHeightArc, (f) => f.edges.middle.arc],
  ['middle-chord', texts.atMidHeightChord, (f) => f.edges.middle.chord],
  ['upper-arc', texts.upperEdgeArc, (f) => f.edges.upper.arc],
  ['upper-chord', texts.upperEdgeChord, (f) => f.edges.upper.chord],
  ['height', texts.heightAlongFace, (f) => f.height],
  ['diagonal', 'diagonal', (f) => f.diagonal],
  ['sagitta-lower', texts.sagittaOfLowerEdge, (f) => f.sagittaLower],
  ['sagitta-upper', texts.sagittaOfUpperEdge, (f) => f.sagittaUpper],
  ['sagitta-up', texts.sagittaUpFace, (f) => f.sagittaUp],
];

const SIDES = [
  ['inner', 'intrados'],
  ['outer', 'extrados'],
] as const;

const ANGLES: readonly (readonly [string, string, (d: MouldDimensions) => number])[] = [
  ['bed-angle', texts.angleBetweenBeds, (d) => d.bedAngleRad],
  ['head-across', texts.headOffSquareAcross, (d) => d.headAcrossRad],
  ['head-up', texts.headOffSquareUp, (d) => d.headUpRad],
];

/** Every mould with its inner sizes, what it is for, and how many blocks come out of it. */
export function mouldTable(plan: MasonryPlan, laid: LaidHouse): Table {
  const { house } = plan.setout;
  const units = tableUnits(house.units);
  const { moulds } = plan.moulds;
  return {
    id: 'moulds',
    title: texts.moulds,
    columns: [
      textColumn('mould', texts.mould),
      textColumn('parent', texts.courseShapedFor),
      textColumn('courses', texts.coursesLaid),
      countColumn('whole', texts.blocksLaidWhole),
      countColumn('cut', texts.blocksToBeCut),
      countColumn('longer', texts.longerBlocks),
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
      texts.innerSizesToLarger(
        units.length.inchParts
          ? feetAndInches(1 / units.length.inchParts, units.length.inchParts)
          : `${CUT_TO} ${units.length.unit}`,
        Math.round(house.blocks.shrinkage * 1e4) / 100,
      ),
      texts.bedsStandSquare,
      ...(house.blocks.faces === 'flat' ? [texts.facesAreFlatSagittas] : []),
      CAUTION.authority,
      CAUTION.lifting,
    ],
  };
}

/** What is proven of the number of moulds. */
function countNotes({ setout, moulds: { moulds, atLeast, proven, courses } }: MasonryPlan): string[] {
  const mixed = setout.house.blocks.mouldsInCourse > 1;
  const shared = courses.filter(({ second }) => second !== null).length;
  return [
    proven ? texts.mouldsProvenFewest(moulds.length, mixed) : texts.mouldsAtLeastNeeded(moulds.length, atLeast, mixed),
    ...(shared > 0 ? [texts.coursesOfTwoMoulds(shared)] : []),
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
    title: texts.longerMoulds,
    columns: [
      textColumn('mould', texts.mould),
      textColumn('shape', texts.bedsAndFaces),
      textColumn('courses', texts.courseLaid),
      countColumn('places', texts.placesThatBlockTakes),
      countColumn('whole', texts.blocksLaidWhole),
      countColumn('cut', texts.blocksToBeCut),
      countColumn('stopped', texts.castToStopBoard),
      ...sizeColumns(units),
    ],
    rows: longerForms(plan, laid).map((form) => ({
      mould: form.id,
      shape: form.mould ?? texts.courseOfDome(markOf(form.domeId, form.course)),
      courses: markOf(form.domeId, form.course),
      places: form.modules,
      whole: form.whole,
      cut: form.cut,
      stopped: form.stops.length,
      ...sizeCells(formDimensions(form.form, house.blocks), house),
    })),
    notes: [texts.pieceBesideOpening, texts.sizesAsInTable, LIGHTER, CAUTION.authority, CAUTION.lifting],
  };
}

const sizeColumns = (units: TableUnits): Column[] => [
  ...SIDES.flatMap(([side, face]) =>
    FACE.map(([key, label]) => numberColumn(`${side}-${key}`, `${face}: ${label}`, units.length)),
  ),
  numberColumn('thickness', texts.thickness, units.length),
  ...ANGLES.map(([key, label]) => degreesColumn(key, label)),
  numberColumn('volume', texts.volume, units.pieceVolume),
  numberColumn('wet-mass', texts.wetMassOfFilling, units.mass),
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

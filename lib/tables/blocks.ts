import { CAUTIONS } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-pieces.js';
import type { Table } from '../documents/table.js';
import type { LaidBlock, LaidHouse } from '../masonry/block.js';
import { type BlockDimensions, blockDimensions } from '../masonry/dimensions.js';
import { longerFormId } from '../masonry/longer.js';
import { freshKg, massKg } from '../masonry/mass.js';
import { formIn, formKey } from '../masonry/placed.js';
import { type MasonryPlan, mouldNames } from '../masonry/plan.js';
import { DEG, turnPositive } from '../math/vec.js';
import type { Course } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import { countColumn, degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

type Pick = (d: BlockDimensions) => number;

const LENGTHS: readonly (readonly [string, string, Pick])[] = [
  ['inner-lower-arc', texts.intradosLowerEdgeArc, (d) => d.intradosLower.arc],
  ['inner-lower-chord', texts.intradosLowerEdgeChord, (d) => d.intradosLower.chord],
  ['inner-upper-arc', texts.intradosUpperEdgeArc, (d) => d.intradosUpper.arc],
  ['inner-upper-chord', texts.intradosUpperEdgeChord, (d) => d.intradosUpper.chord],
  ['outer-lower-arc', texts.extradosLowerEdgeArc, (d) => d.extradosLower.arc],
  ['outer-lower-chord', texts.extradosLowerEdgeChord, (d) => d.extradosLower.chord],
  ['outer-upper-arc', texts.extradosUpperEdgeArc, (d) => d.extradosUpper.arc],
  ['outer-upper-chord', texts.extradosUpperEdgeChord, (d) => d.extradosUpper.chord],
  ['inner-height', texts.heightAlongIntrados, (d) => d.intradosHeight],
  ['outer-height', texts.heightAlongExtrados, (d) => d.extradosHeight],
  ['thickness', 'thickness', (d) => d.thickness],
  ['inner-sagitta-along', texts.intradosSagittaOfLower, (d) => d.sagitta.intradosAlong],
  ['outer-sagitta-along', texts.extradosSagittaOfLower, (d) => d.sagitta.extradosAlong],
  ['inner-sagitta-up', texts.intradosSagittaUpMeridian, (d) => d.sagitta.intradosUp],
  ['outer-sagitta-up', texts.extradosSagittaUpMeridian, (d) => d.sagitta.extradosUp],
];

const ANGLES: readonly (readonly [string, string, Pick])[] = [
  ['head-angle', texts.headAngle, (d) => d.headAngleRad / DEG],
  ['lower-bed', texts.lowerBedAngle, (d) => d.lowerBedRad / DEG],
  ['upper-bed', texts.upperBedAngle, (d) => d.upperBedRad / DEG],
];

/** Every block of the house: place, dry sizes before any cut, and what a cut leaves of it. */
export function blockTable(plan: MasonryPlan, laid: LaidHouse): Table {
  const house = plan.setout;
  const mouldOf = mouldNames(plan);
  const units = tableUnits(house.house.units);
  const domes = new Map(house.domes.map((d) => [d.id, d]));
  const { dryDensity } = house.house.material;
  // Blocks of one course and length share their sizes; only the bearing differs.
  const sizes = new Map<string, BlockDimensions>();
  const sizesOf = (dome: DomeSetout, block: LaidBlock) => {
    const key = `${dome.id} ${block.course} ${formKey(formIn(dome.courses[block.course - 1] as Course, block.number))}`;
    const known = sizes.get(key) ?? blockDimensions(house, dome, block);
    sizes.set(key, known);
    return known;
  };
  return {
    id: 'blocks',
    title: texts.blocks,
    columns: [
      textColumn('mark', texts.mark),
      textColumn('dome', texts.dome),
      countColumn('course', texts.course),
      countColumn('number', texts.number),
      degreesColumn('bearing', texts.bearingOfMiddle),
      ...LENGTHS.map(([key, label]) => numberColumn(key, label, units.length)),
      ...ANGLES.map(([key, label]) => degreesColumn(key, label)),
      textColumn('mould', texts.mould),
      textColumn('state', texts.wholeOrCut),
      textColumn('cut-by', texts.cutBy),
      numberColumn('longest-run', texts.longestRunAtMid, units.length),
      numberColumn('volume', texts.volume, units.pieceVolume),
      numberColumn('dry-mass', texts.dryMass, units.mass),
      numberColumn('wet-mass', texts.wetMass, units.mass),
    ],
    rows: laid.blocks.map((block) => {
      const dome = domes.get(block.domeId) as DomeSetout;
      const d = sizesOf(dome, block);
      return {
        mark: block.mark,
        dome: block.domeId,
        course: block.course,
        number: block.number,
        bearing: turnPositive((block.startRad + block.endRad) / 2) / DEG,
        ...Object.fromEntries(LENGTHS.map(([key, , pick]) => [key, units.length.of(pick(d))])),
        ...Object.fromEntries(ANGLES.map(([key, , pick]) => [key, pick(d)])),
        mould: longerFormId(dome, block) ?? mouldOf(block) ?? texts.noneFits,
        state: texts.stateOfBlock(longerFormId(dome, block) !== null, block.cutBy.length > 0),
        'cut-by': block.cutBy.join(' '),
        'longest-run': units.length.of(block.longestRun),
        volume: units.pieceVolume.of(block.volume),
        'dry-mass': units.mass.of(massKg(block.volume, dryDensity)),
        'wet-mass': units.mass.of(freshKg(block.volume, house.house)),
      };
    }),
    notes: [
      texts.edgesHeightsAngles,
      ...(house.house.blocks.faces === 'flat' ? [texts.facesAreFlatEight] : []),
      texts.sizesAreThose,
      ...CAUTIONS,
    ],
  };
}

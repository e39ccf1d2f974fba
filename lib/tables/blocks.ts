import { CAUTIONS } from '../base/cautions.js';
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
  ['inner-lower-arc', 'intrados lower edge, arc', (d) => d.intradosLower.arc],
  ['inner-lower-chord', 'intrados lower edge, chord', (d) => d.intradosLower.chord],
  ['inner-upper-arc', 'intrados upper edge, arc', (d) => d.intradosUpper.arc],
  ['inner-upper-chord', 'intrados upper edge, chord', (d) => d.intradosUpper.chord],
  ['outer-lower-arc', 'extrados lower edge, arc', (d) => d.extradosLower.arc],
  ['outer-lower-chord', 'extrados lower edge, chord', (d) => d.extradosLower.chord],
  ['outer-upper-arc', 'extrados upper edge, arc', (d) => d.extradosUpper.arc],
  ['outer-upper-chord', 'extrados upper edge, chord', (d) => d.extradosUpper.chord],
  ['inner-height', 'height along intrados', (d) => d.intradosHeight],
  ['outer-height', 'height along extrados', (d) => d.extradosHeight],
  ['thickness', 'thickness', (d) => d.thickness],
  ['inner-sagitta-along', 'intrados sagitta of the lower edge', (d) => d.sagitta.intradosAlong],
  ['outer-sagitta-along', 'extrados sagitta of the lower edge', (d) => d.sagitta.extradosAlong],
  ['inner-sagitta-up', 'intrados sagitta up the meridian', (d) => d.sagitta.intradosUp],
  ['outer-sagitta-up', 'extrados sagitta up the meridian', (d) => d.sagitta.extradosUp],
];

const ANGLES: readonly (readonly [string, string, Pick])[] = [
  ['head-angle', 'head angle', (d) => d.headAngleRad / DEG],
  ['lower-bed', 'lower bed angle from level', (d) => d.lowerBedRad / DEG],
  ['upper-bed', 'upper bed angle from level', (d) => d.upperBedRad / DEG],
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
    title: 'Blocks',
    columns: [
      textColumn('mark', 'mark'),
      textColumn('dome', 'dome'),
      countColumn('course', 'course'),
      countColumn('number', 'number'),
      degreesColumn('bearing', 'bearing of the middle'),
      ...LENGTHS.map(([key, label]) => numberColumn(key, label, units.length)),
      ...ANGLES.map(([key, label]) => degreesColumn(key, label)),
      textColumn('mould', 'mould'),
      textColumn('state', 'whole or cut'),
      textColumn('cut-by', 'cut by'),
      numberColumn('longest-run', 'longest run at mid-thickness', units.length),
      numberColumn('volume', 'volume', units.pieceVolume),
      numberColumn('dry-mass', 'dry mass', units.mass),
      numberColumn('wet-mass', 'wet mass', units.mass),
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
        mould: longerFormId(dome, block) ?? mouldOf(block) ?? 'none fits',
        state: `${longerFormId(dome, block) ? 'longer, ' : ''}${block.cutBy.length > 0 ? 'cut' : 'whole'}`,
        'cut-by': block.cutBy.join(' '),
        'longest-run': units.length.of(block.longestRun),
        volume: units.pieceVolume.of(block.volume),
        'dry-mass': units.mass.of(massKg(block.volume, dryDensity)),
        'wet-mass': units.mass.of(freshKg(block.volume, house.house)),
      };
    }),
    notes: [
      'Edges, heights, angles and sagittas are of the block before any cut; run, volume and masses are of what is left.',
      ...(house.house.blocks.faces === 'flat'
        ? [
            'Faces are flat: the eight corners lie on the curved surfaces; the sagittas say how far the faces miss them.',
          ]
        : []),
      'Sizes are those of the dry block that its mould makes; inner sizes are in the tables of moulds and of longer moulds.',
      ...CAUTIONS,
    ],
  };
}

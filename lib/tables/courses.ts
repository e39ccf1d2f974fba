import { CAUTION } from '../base/cautions.js';
import type { Table } from '../documents/table.js';
import type { LaidHouse } from '../masonry/block.js';
import { castCount } from '../masonry/cast.js';
import type { MasonryPlan } from '../masonry/plan.js';
import { courseMiss } from '../masonry/reach.js';
import { DEG } from '../math/vec.js';
import { placeAngle, secondNumbers } from '../setout/courses.js';
import { spanPoint } from '../setout/span.js';
import { countColumn, degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

/** How two moulds share a course. */
const MIXED =
  'Where a course has two moulds, its blocks lie as numbered, those of the second mould spread evenly; in the middle of the heads all its perpends are as thick as told.';

/** One row a course: heights and radii of its beds, how many blocks of which mould, their joints, how they lap. */
export function courseTable(plan: MasonryPlan, laid: LaidHouse): Table {
  const house = plan.setout;
  const units = tableUnits(house.house.units);
  const length = (mm: number | null | undefined) => (mm === null || mm === undefined ? null : units.length.of(mm));
  const mixed = plan.moulds.courses.some(({ second }) => second !== null);
  const rows = house.domes.flatMap((dome) =>
    dome.courses.map((course) => {
      const span = dome[course.part];
      const [innerR, innerZ] = spanPoint(span, course.bed, 0);
      const [outerR, outerZ] = spanPoint(span, course.bed, dome.thickness);
      const top = spanPoint(span, course.to, 0);
      const cast = castCount(laid, dome.id, course);
      const isOwn = (domeId: string, index: number) => domeId === dome.id && index === course.index;
      const bond = plan.courses.find((c) => isOwn(c.domeId, c.course.index));
      const found = plan.moulds.courses.find((c) => isOwn(c.domeId, c.course));
      const mould = found?.laid;
      const second = found?.second;
      const miss = mould && courseMiss(house, dome, course);
      return {
        dome: dome.id,
        course: course.index,
        part: course.part === 'stem' ? 'stem wall' : 'shell',
        count: course.count,
        ...cast,
        mould: second ? `${mould?.id} and ${second.id}` : (mould?.id ?? 'none fits'),
        seconds: second ? secondNumbers(course).join(' ') : null,
        'perpend-least': length(mould?.joints[0]),
        'perpend-middle': length(mould?.perpend),
        'perpend-most': length(mould?.joints[1]),
        'bed-over': length(miss?.bedOver),
        'bed-under': length(miss?.bedUnder),
        'face-miss': length(miss?.faceMiss),
        'bed-angle': span.at(course.bed).normalRad / DEG,
        'inner-radius': length(innerR),
        'inner-level': length(innerZ),
        'outer-radius': length(outerR),
        'outer-level': length(outerZ),
        'top-level': length(top[1]),
        height: length(course.to - course.bed),
        'first-perpend': course.startRad / DEG,
        module: placeAngle(course, 0) / DEG,
        'second-module': course.mix ? course.mix.angles[1] / DEG : null,
        lap: length(bond?.lap),
        'lap-bound': length(bond?.lapBound),
        'short-laps': bond?.shortLaps ?? 0,
        'shortest-piece': length(bond?.pieces.shortest),
      };
    }),
  );
  return {
    id: 'courses',
    title: 'Courses',
    columns: [
      textColumn('dome', 'dome'),
      countColumn('course', 'course'),
      textColumn('part', 'part'),
      countColumn('count', 'blocks round the full ring'),
      countColumn('whole', 'whole blocks'),
      countColumn('cut', 'cut blocks'),
      countColumn('longer', 'longer blocks, with a short neighbour'),
      textColumn('mould', mixed ? 'mould, or first and second' : 'mould'),
      ...(mixed ? [textColumn('seconds', 'numbers of the blocks of the second mould')] : []),
      numberColumn('perpend-least', 'thinnest perpend', units.length),
      numberColumn('perpend-middle', 'perpend to lay, in the middle of the heads', units.length),
      numberColumn('perpend-most', 'thickest perpend', units.length),
      numberColumn('bed-over', 'bed reaches into its joint by', units.length),
      numberColumn('bed-under', 'bed stays back from its joint by', units.length),
      numberColumn('face-miss', 'face off the surface by', units.length),
      degreesColumn('bed-angle', 'bed angle from level'),
      numberColumn('inner-radius', 'radius to the lower inner edge', units.length),
      numberColumn('inner-level', 'level of the lower inner edge', units.length),
      numberColumn('outer-radius', 'radius to the lower outer edge', units.length),
      numberColumn('outer-level', 'level of the lower outer edge', units.length),
      numberColumn('top-level', 'level of the upper inner edge', units.length),
      numberColumn('height', 'height of the blocks along the intrados', units.length),
      degreesColumn('first-perpend', 'bearing of the first perpend'),
      degreesColumn('module', 'block and joint, angle'),
      ...(mixed ? [degreesColumn('second-module', 'block of the second mould and joint, angle')] : []),
      numberColumn('lap', 'least lap on the course below', units.length),
      numberColumn('lap-bound', 'least lap of the best start', units.length),
      countColumn('short-laps', 'laps too short'),
      numberColumn('shortest-piece', 'shortest piece beside a cut', units.length),
    ],
    rows,
    notes: [
      "Levels are above the finished floor, radii from the dome's axis, bearings clockwise from project north.",
      'Perpends are those of dry blocks of the size cast, over corners and middles of edges of both faces; a block off its size or laid before it has shrunk changes them within the joint range.',
      'The perpends of a ring are all alike: none is left over to make it up.',
      ...(mixed ? [MIXED] : []),
      CAUTION.rings,
      CAUTION.authority,
    ],
  };
}

import { CAUTION } from '../base/cautions.js';
import type { Table } from '../documents/table.js';
import type { LaidHouse } from '../masonry/block.js';
import { leastLap } from '../masonry/laps.js';
import { DEG } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { spanPoint } from '../setout/span.js';
import { countColumn, degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

/** One row a course: heights and radii of its beds, how many blocks, how they lap. */
export function courseTable(house: HouseSetout, laid: LaidHouse): Table {
  const units = tableUnits(house.house.units);
  const length = (mm: number) => units.length.of(mm);
  const rows = house.domes.flatMap((dome) =>
    dome.courses.map((course, k) => {
      const span = dome[course.part];
      const [innerR, innerZ] = spanPoint(span, course.bed, 0);
      const [outerR, outerZ] = spanPoint(span, course.bed, dome.thickness);
      const top = spanPoint(span, course.to, 0);
      const blocks = laid.blocks.filter((b) => b.domeId === dome.id && b.course === course.index);
      const below = dome.courses[k - 1];
      return {
        dome: dome.id,
        course: course.index,
        part: course.part === 'stem' ? 'stem wall' : 'shell',
        count: course.count,
        whole: blocks.filter((b) => b.cutBy.length === 0).length,
        cut: blocks.filter((b) => b.cutBy.length > 0).length,
        'bed-angle': span.at(course.bed).normalRad / DEG,
        'inner-radius': length(innerR),
        'inner-level': length(innerZ),
        'outer-radius': length(outerR),
        'outer-level': length(outerZ),
        'top-level': length(top[1]),
        'first-perpend': course.startRad / DEG,
        module: (360 / course.count) as number,
        lap: below ? length(leastLap(below, course)) : null,
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
      degreesColumn('bed-angle', 'bed angle from level'),
      numberColumn('inner-radius', 'radius to the lower inner edge', units.length),
      numberColumn('inner-level', 'level of the lower inner edge', units.length),
      numberColumn('outer-radius', 'radius to the lower outer edge', units.length),
      numberColumn('outer-level', 'level of the lower outer edge', units.length),
      numberColumn('top-level', 'level of the upper inner edge', units.length),
      degreesColumn('first-perpend', 'bearing of the first perpend'),
      degreesColumn('module', 'block and joint, angle'),
      numberColumn('lap', 'least lap on the course below', units.length),
    ],
    rows,
    notes: [
      "Levels are above the finished floor, radii from the dome's axis, bearings clockwise from project north.",
      CAUTION.rings,
      CAUTION.authority,
    ],
  };
}

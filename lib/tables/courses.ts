import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-courses.js';
import type { Table } from '../documents/table.js';
import type { LaidHouse } from '../masonry/block.js';
import { castCount } from '../masonry/cast.js';
import type { MasonryPlan } from '../masonry/plan.js';
import { courseMiss } from '../masonry/reach.js';
import { DEG } from '../math/vec.js';
import { placeAngle, secondNumbers } from '../setout/courses.js';
import { spanPoint } from '../setout/span.js';
import { countColumn, degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

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
        part: course.part === 'stem' ? texts.stemWallPart : texts.shellPart,
        count: course.count,
        ...cast,
        mould: mould && second ? texts.twoMoulds(mould.id, second.id) : (mould?.id ?? texts.noneFits),
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
    title: texts.courses,
    columns: [
      textColumn('dome', texts.dome),
      countColumn('course', texts.course),
      textColumn('part', texts.part),
      countColumn('count', texts.blocksRoundFullRing),
      countColumn('whole', texts.wholeBlocks),
      countColumn('cut', texts.cutBlocks),
      countColumn('longer', texts.longerBlocksWithShort),
      textColumn('mould', mixed ? texts.mouldOrTwo : texts.mould),
      ...(mixed ? [textColumn('seconds', texts.secondMouldNumbers)] : []),
      numberColumn('perpend-least', texts.thinnestPerpend, units.length),
      numberColumn('perpend-middle', texts.perpendToLay, units.length),
      numberColumn('perpend-most', texts.thickestPerpend, units.length),
      numberColumn('bed-over', texts.bedReaches, units.fine),
      numberColumn('bed-under', texts.bedStaysBack, units.fine),
      numberColumn('face-miss', texts.faceOffSurface, units.fine),
      degreesColumn('bed-angle', texts.bedAngleFromLevel),
      numberColumn('inner-radius', texts.radiusToLowerInner, units.tape),
      numberColumn('inner-level', texts.levelOfLowerInner, units.tape),
      numberColumn('outer-radius', texts.radiusToLowerOuter, units.tape),
      numberColumn('outer-level', texts.levelOfLowerOuter, units.tape),
      numberColumn('top-level', texts.levelOfUpperInner, units.tape),
      numberColumn('height', texts.heightOfBlocksAlong, units.tape),
      degreesColumn('first-perpend', texts.bearingOfFirstPerpend),
      degreesColumn('module', texts.blockAndJointAngle),
      ...(mixed ? [degreesColumn('second-module', texts.secondBlockAndJointAngle)] : []),
      numberColumn('lap', texts.leastLapOnCourse, units.tape),
      numberColumn('lap-bound', texts.leastLapOfBest, units.tape),
      countColumn('short-laps', texts.lapsTooShort),
      numberColumn('shortest-piece', texts.shortestPieceBesideCut, units.tape),
    ],
    rows,
    notes: [
      texts.levelsAreAboveFinished,
      texts.perpendsAreThose,
      texts.perpendsOfRing,
      ...(mixed ? [texts.blocksAsNumbered] : []),
      CAUTION.rings,
      CAUTION.authority,
    ],
  };
}

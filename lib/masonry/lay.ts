import type { Memory } from '../base/memory.js';
import { sub2 } from '../math/vec.js';
import { courseContent } from '../setout/content.js';
import { blockPlaces, type Course, turnTo } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, earlierThan, type HouseSetout, passagesOf } from '../setout/house.js';
import { seenFrom } from '../setout/passage.js';
import { spanPoint } from '../setout/span.js';
import { meetingsOf } from './bands.js';
import type { Block, LaidBlock, LaidHouse, Reach, Sliver } from './block.js';
import { type ColumnBody, comesNear, footOf, reaching } from './column.js';
import { blockBodies, cutBlock, uncutVolume } from './cut.js';
import { type Cutter, sectionCutter, shellCutter } from './cutter.js';
import { wholeVolume } from './measure.js';
import { formIn, formKey, headAngle, perpendHalf, placedBlock } from './placed.js';
import { reachLeft, reachLines } from './reach.js';

/**
 * Lays every course with its blocks and cuts them at the arches.
 * @param memory of courses that were laid before
 */
export function layBlocks(house: HouseSetout, memory?: Memory): LaidHouse {
  const laid = house.domes.flatMap((dome) =>
    dome.courses.map((course) => {
      const lay = () => layCourse(house, dome, course);
      return memory ? memory.recall(`course ${courseContent(house, dome, course)}`, lay) : lay();
    }),
  );
  const sum = (part: keyof Reach) => laid.reduce((all, c) => all + c.reach[part], 0);
  return {
    blocks: laid.flatMap((c) => c.blocks),
    slivers: laid.flatMap((c) => c.slivers),
    reach: { beds: sum('beds'), faces: sum('faces') },
  };
}

/** All that cuts a dome's courses: its arches, its passages, and the earlier domes that it abuts. */
export function cuttersOf(house: HouseSetout, dome: DomeSetout, grow = house.house.blocks.joint): Cutter[] {
  return [
    ...archesOf(house, dome).map((arch) => sectionCutter(arch, grow)),
    ...passagesOf(house, dome).map((passage) => sectionCutter(seenFrom(passage, dome), grow)),
    ...earlierThan(house, dome).map((earlier) => shellCutter(earlier, sub2(earlier.at, dome.at), grow)),
  ];
}

function layCourse(house: HouseSetout, dome: DomeSetout, course: Course): LaidHouse {
  const span = dome[course.part];
  const cutters = reaching(cuttersOf(house, dome), span, [course.bed, course.to], dome.thickness);
  const bodyOf = blockBodies(house, dome, { part: course.part, bed: course.bed, top: course.to });
  const met = meetingIn(house, dome, course, cutters);
  const ring = ringOf(house, dome, course);
  // Blocks of one form are equal: what is measured of one stands for all.
  const measured = new Map<string, ReturnType<typeof measureWhole>>();
  const blocks: LaidBlock[] = [];
  const slivers: Sliver[] = [];
  const reach = { beds: 0, faces: 0 };
  for (const block of ring) {
    const key = formKey(formIn(course, block.number));
    const known = measured.get(key) ?? measureWhole(house, dome, block, bodyOf(block));
    measured.set(key, known);
    const laid = {
      ...block,
      volume: known.volume,
      longestRun: course.midRadius * (block.endRad - block.startRad),
    };
    const middle = (block.startRad + block.endRad) / 2;
    const { near, gone } = met([middle - known.widest, middle + known.widest]);
    if (gone) continue;
    const left =
      near.length === 0
        ? { kept: [laid], slivers: [], reach: known.reachWhole }
        : cutBlock(dome, { ...known, laid, body: bodyOf(block) }, near);
    blocks.push(...left.kept);
    slivers.push(...left.slivers);
    reach.beds += left.reach.beds;
    reach.faces += left.reach.faces;
  }
  return { blocks, slivers, reach };
}

/** Flat faces lie inside the ring, by so little that it matters only to what is taken whole. */
function meetingIn(house: HouseSetout, dome: DomeSetout, course: Course, cutters: readonly Cutter[]) {
  if (house.house.blocks.faces === 'curved')
    return meetingsOf(cutters, dome[course.part], [course.bed, course.to], dome.thickness);
  const foot = footOf(dome, course);
  return (bearing: readonly [number, number]) => ({
    near: cutters.filter((c) => comesNear(c, foot, bearing)),
    gone: false,
  });
}

/** What all uncut blocks of one course and length have in common. */
function measureWhole(house: HouseSetout, dome: DomeSetout, block: Block, body: ColumnBody) {
  const flat = house.house.blocks.faces === 'flat';
  const placed = placedBlock(house, dome, block);
  const bodyVolume = wholeVolume(body);
  const reach = flat ? { lines: [] } : reachLines(dome, block, placed);
  return {
    /** Half the angle of the block where it is widest: heads are planes, so at a corner. */
    widest: Math.max(
      ...[block.bed, block.top].flatMap((s) =>
        [0, dome.thickness].map((depth) => headAngle(placed.head, ...spanPoint(dome[block.part], s, depth))),
      ),
    ),
    bodyVolume,
    volume: flat ? bodyVolume : uncutVolume(house, dome, block),
    reach,
    reachWhole: reachLeft(reach, (block.startRad + block.endRad) / 2, []),
  };
}

/**
 * The whole ring's blocks, numbered clockwise from the first past bearing 0. Where perpends are left out, one block
 * takes the place of several and the number of its first.
 */
function ringOf(house: HouseSetout, dome: DomeSetout, course: Course): Block[] {
  const middle = spanPoint(dome[course.part], (course.bed + course.to) / 2, dome.thickness / 2);
  const margins = [false, true].map((second) => perpendHalf(house, dome, course, second && !!course.mix)(...middle));
  return blockPlaces(course).map((k) => {
    const { second, places } = formIn(course, k + 1);
    const margin = margins[second ? 1 : 0] as number;
    return {
      mark: `${dome.id}-${course.index}-${k + 1}`,
      domeId: dome.id,
      course: course.index,
      number: k + 1,
      part: course.part,
      bed: course.bed,
      top: course.to,
      startRad: course.startRad + turnTo(course, k) + margin,
      endRad: course.startRad + turnTo(course, k + places) - margin,
      cutBy: [],
      seed: null,
    };
  });
}

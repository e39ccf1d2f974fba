import { sub2 } from '../math/vec.js';
import type { Course } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, earlierThan, type HouseSetout, passagesOf } from '../setout/house.js';
import { seenFrom } from '../setout/passage.js';
import type { Block, LaidBlock, LaidHouse, Sliver } from './block.js';
import { comesNear, footOf, reaching } from './column.js';
import { blockBody, cutBlock } from './cut.js';
import { type Cutter, sectionCutter, shellCutter } from './cutter.js';
import { wholeVolume } from './measure.js';

/** Lays every course with its blocks and cuts them at the arches. */
export function layBlocks(house: HouseSetout): LaidHouse {
  const laid = house.domes.flatMap((dome) => dome.courses.map((course) => layCourse(house, dome, course)));
  return { blocks: laid.flatMap((c) => c.blocks), slivers: laid.flatMap((c) => c.slivers) };
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
  const foot = footOf(dome, course);
  const ring = ringOf(dome, course);
  // Blocks of one length are equal: what is measured of one stands for all.
  const volumes = new Map<number, number>();
  const blocks: LaidBlock[] = [];
  const slivers: Sliver[] = [];
  for (const { modules, block } of ring) {
    const volume = volumes.get(modules) ?? wholeVolume(blockBody(house, dome, block));
    volumes.set(modules, volume);
    const whole = { ...block, volume, longestRun: course.midRadius * (block.endRad - block.startRad) };
    const near = cutters.filter((c) => comesNear(c, foot, [block.startRad, block.endRad]));
    const left = near.length === 0 ? { kept: [whole], slivers: [] } : cutBlock(house, dome, whole, near);
    blocks.push(...left.kept);
    slivers.push(...left.slivers);
  }
  return { blocks, slivers };
}

/**
 * The whole ring's blocks, numbered clockwise from the first past bearing 0. Where perpends are left out, one block
 * takes the place of several and the number of its first.
 */
function ringOf(dome: DomeSetout, course: Course): { modules: number; block: Block }[] {
  const { count, leftOut } = course;
  const module = (2 * Math.PI) / count;
  const margin = course.perpend / 2 / course.midRadius;
  return Array.from({ length: count }, (_, k) => k)
    .filter((k) => !leftOut.includes(k))
    .map((k) => {
      let modules = 1;
      while (leftOut.includes((k + modules) % count)) modules++;
      const block = {
        mark: `${dome.id}-${course.index}-${k + 1}`,
        domeId: dome.id,
        course: course.index,
        number: k + 1,
        part: course.part,
        bed: course.bed,
        top: course.to,
        startRad: course.startRad + k * module + margin,
        endRad: course.startRad + (k + modules) * module - margin,
        cutBy: [],
        seed: null,
      };
      return { modules, block };
    });
}

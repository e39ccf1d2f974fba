import * as texts from '../../base/texts/print.js';
import type { Mesh } from '../../documents/mesh.js';
import type { Block } from '../../masonry/block.js';
import { formIn, formKey } from '../../masonry/placed.js';
import { cos, sin } from '../../math/elementary.js';
import type { Vec2 } from '../../math/vec.js';
import type { Course } from '../../setout/courses.js';
import type { HouseSetout } from '../../setout/house.js';
import type { LooseBlock } from './print-model.js';

/**
 * The blocks of the course that the description asks for, to be printed one by one: whole ones once with their count,
 * cut ones by themselves. Empty where none is asked for, or the dome has no such course.
 * @param solids of all blocks, in their order
 */
export function looseBlocks(setout: HouseSetout, blocks: readonly Block[], solids: readonly Mesh[]): LooseBlock[] {
  const wanted = setout.house.print.looseBlocks;
  if (!wanted) return [];
  const course = setout.domes.find((dome) => dome.id === wanted.in)?.courses[wanted.course - 1] as Course;
  const alike = new Map<string, { block: Block; mesh: Mesh; count: number }>();
  for (const [k, block] of blocks.entries()) {
    if (block.domeId !== wanted.in || block.course !== wanted.course) continue;
    const key = block.cutBy.length > 0 ? block.mark : texts.wholeOfForm(formKey(formIn(course, block.number)));
    const found = alike.get(key);
    if (found) found.count++;
    else alike.set(key, { block, mesh: solids[k] as Mesh, count: 1 });
  }
  return [...alike.values()].map(({ block, mesh, count }): LooseBlock => {
    const { mark, startRad, endRad } = block;
    const faces: Vec2[] = [
      [-cos(startRad), sin(startRad)],
      [cos(endRad), -sin(endRad)],
    ];
    return { mesh: { ...mesh, name: mark }, count, faces };
  });
}

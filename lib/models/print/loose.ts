import type { Mesh } from '../../documents/mesh.js';
import type { Block } from '../../masonry/block.js';
import { cos, sin } from '../../math/elementary.js';
import type { Vec2 } from '../../math/vec.js';
import type { HouseSetout } from '../../setout/house.js';
import { blockShapes } from '../../solids/block-shapes.js';
import type { LooseBlock } from './print-model.js';

/**
 * The blocks of the course that the description asks for, to be printed one by one: whole ones once with their count,
 * cut ones by themselves. Empty where none is asked for, or the dome has no such course.
 * @param solids of all blocks, in their order
 */
export function looseBlocks(setout: HouseSetout, blocks: readonly Block[], solids: readonly Mesh[]): LooseBlock[] {
  const wanted = setout.house.print.looseBlocks;
  if (!wanted) return [];
  const chosen = blocks.flatMap((block, k) =>
    block.domeId === wanted.in && block.course === wanted.course ? [{ block, solid: solids[k] as Mesh }] : [],
  );
  const { meshes, uses } = blockShapes(
    setout,
    chosen.map((c) => c.block),
    chosen.map((c) => c.solid),
  );
  return meshes.map((mesh, m): LooseBlock => {
    const own = chosen.filter((_, k) => uses[k]?.mesh === m);
    const { block } = own[0] as (typeof own)[number];
    // A shared mesh stands at bearing 0.
    const start = block.cutBy.length > 0 ? block.startRad : 0;
    const end = start + block.endRad - block.startRad;
    const faces: Vec2[] = [
      [-cos(start), sin(start)],
      [cos(end), -sin(end)],
    ];
    return { mesh: { ...mesh, name: block.mark }, count: own.length, faces };
  });
}

import { DEFAULT_SURFACE } from '../base/tolerances.js';
import type { Mesh } from '../documents/mesh.js';
import type { Block } from '../masonry/block.js';
import { hypot } from '../math/elementary.js';
import { alongBearing, bearingOf, turnSigned, type Vec2, type Vec3 } from '../math/vec.js';
import { courseContent } from '../setout/content.js';
import type { HouseSetout } from '../setout/house.js';
import { blockCutters } from './block-cutters.js';
import { type BlockGrid, blockGrid, gridFaces, gridMesh, gridOutline, stationPlacer } from './block-grid.js';
import type { SolidOptions } from './house-solids.js';
import type { Kernel, Solid, SolidScope } from './kernel.js';
import { rectangle } from './outline.js';

/**
 * Every block as its own closed solid, in its place. Faces: `intrados`, `extrados`, `bed-lower`, `bed-upper`,
 * `perpend-start`, `perpend-end` (clockwise), and `cut:<id>` along an arch, a passage or an earlier dome. Uncut blocks
 * need no kernel; cut ones lose what cuts them grown by the joint, and remnants that are left to mortar. Meshes come
 * in the blocks' order, named by their marks. Throws an `Error` naming the block when a cut leaves nothing.
 */
export function blockSolids(
  kernel: Kernel,
  setout: HouseSetout,
  blocks: readonly Block[],
  options: SolidOptions = {},
): Mesh[] {
  const { surface = DEFAULT_SURFACE, memory } = options;
  const { faces } = setout.house.blocks;
  const domes = new Map(setout.domes.map((dome) => [dome.id, dome]));
  const siblings = siblingsOf(blocks);
  return kernel.scope((scope) => {
    const cutterOf = blockCutters(scope, setout, surface);
    const solidOf = (block: Block): Mesh => {
      const dome = domes.get(block.domeId);
      if (!dome) throw new Error(`block ${block.mark} stands in no dome of the house`);
      const grid = blockGrid(setout, dome, block, { faces, surface });
      if (block.cutBy.length === 0) return gridMesh(block.mark, grid);
      const by = block.cutBy.map((id) => cutterOf(id, block, dome));
      return scope.scope((inner) => inner.mesh(block.mark, cut(inner, block, grid, by, siblings(block))));
    };
    if (!memory) return blocks.map(solidOf);
    return byCourse(blocks).flatMap((row) => {
      const [{ domeId, course: index }] = row;
      const dome = domes.get(domeId);
      const course = dome?.courses[index - 1];
      if (!dome || !course) return row.map(solidOf);
      const content = `blocks ${surface} ${courseContent(setout, dome, course)} ${JSON.stringify(row)}`;
      return memory.recall(content, () => row.map(solidOf));
    });
  });
}

type Row = readonly [Block, ...Block[]];

/** The blocks in rows, each of neighbours in the list that lie in one course. */
function byCourse(blocks: readonly Block[]): Row[] {
  const rows: [Block, ...Block[]][] = [];
  for (const block of blocks) {
    const open = rows[rows.length - 1];
    if (open?.[0].domeId === block.domeId && open[0].course === block.course) open.push(block);
    else rows.push([block]);
  }
  return rows;
}

/** Finds the other pieces of a divided block. */
function siblingsOf(blocks: readonly Block[]): (block: Block) => readonly Block[] {
  const keyOf = ({ domeId, course, number }: Block) => `${domeId} ${course} ${number}`;
  const divided = new Map<string, Block[]>();
  for (const block of blocks) if (block.seed) divided.set(keyOf(block), [...(divided.get(keyOf(block)) ?? []), block]);
  return (block) => (divided.get(keyOf(block)) ?? []).filter((other) => other !== block);
}

function cut(
  scope: SolidScope,
  { mark, seed }: Block,
  grid: BlockGrid,
  by: readonly Solid[],
  siblings: readonly Block[],
): Solid {
  const whole = scope.bend(mark, gridOutline(grid), grid.facets, stationPlacer(grid), gridFaces(grid));
  const pieces = scope.pieces(scope.subtract(mark, whole, by));
  if (!seed) return pieces[0] as Solid;
  const piece = nearest(scope, pieces, seed);
  // A bridge too thin to last joins two pieces of the table: part them midway.
  const joined = siblings.flatMap((b) => (b.seed && nearest(scope, pieces, b.seed) === piece ? [b.seed] : []));
  if (joined.length === 0) return piece;
  const parted = scope.subtract(
    mark,
    piece,
    joined.map((other) => beyond(scope, mark, grid.at, seed, other)),
  );
  return nearest(scope, scope.pieces(parted), seed);
}

/** The piece that holds a point; a point on a curved face may lie just outside its facets. */
function nearest(scope: SolidScope, pieces: readonly Solid[], point: Vec3): Solid {
  const gaps = pieces.map((piece) => scope.gap(piece, point));
  return pieces[gaps.indexOf(Math.min(...gaps))] as Solid;
}

/** All that lies on the other seed's side of the upright plane through the axis midway between two seeds. */
function beyond(scope: SolidScope, mark: string, at: Vec2, seed: Vec3, other: Vec3): Solid {
  const own = bearingOf([seed[0] - at[0], seed[1] - at[1]]);
  const turn = turnSigned(bearingOf([other[0] - at[0], other[1] - at[1]]) - own) / 2;
  const along = alongBearing(own + turn);
  const side = Math.sign(turn) || 1;
  const far = 2 * hypot(...seed);
  const name = 'parted';
  const names = { bottom: name, side: name, top: name };
  const outline = side > 0 ? rectangle([0, -far], [far, far], names) : rectangle([-far, -far], [0, far], names);
  return scope.prism(mark, outline, { at, along, across: [along[1], -along[0]] }, [0, far], [name, name]);
}

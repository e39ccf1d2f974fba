import type { Mesh } from '../../documents/mesh.js';
import { meshBounds } from '../../documents/mesh-measure.js';
import { IN_PLACE, inTurn, moved, type Placement } from '../../documents/scene.js';
import { cos, sin } from '../../math/elementary.js';
import { DEG, type Vec2 } from '../../math/vec.js';
import { bestTurn, planOf } from './footprint.js';
import { type Overhang, overhangOf } from './overhang.js';

/** A part as it lies on the bed, and how it came there. */
export interface Laid {
  /** Its least corner in the origin. */
  readonly mesh: Mesh;
  /** From its place in the model to where it lies. */
  readonly motion: Placement;
  readonly overhang: Overhang;
}

/** What lies nearer to the bed than this is on it, mm. */
const ON_BED = 0.01;

/** A motion that lays the face with an outward normal (level, in plan) on the bed. */
const onFace = ([nx, ny]: Vec2): Placement => ({
  x: [-ny, 0, -nx],
  y: [nx, 0, -ny],
  z: [0, -1, 0],
  move: [0, 0, 0],
});

/**
 * Lays a part on the face that leaves least overhanging and most of it on the bed: as it stands, or on one of its
 * upright cut faces; then turns it so that it fits the bed best.
 */
export function layFlat(mesh: Mesh, faces: readonly Vec2[], bed: readonly [number, number, number]): Laid {
  const ways = [IN_PLACE, ...faces.map(onFace)].flatMap((way) => {
    const stood = movedMesh(mesh, way);
    const plan = planOf(stood);
    const { turnDeg, share } = bestTurn(plan, [bed[0], bed[1]]);
    const bounds = meshBounds(stood);
    if (share > 1 || bounds.max[2] - bounds.min[2] > bed[2]) return [];
    const turned = inTurn(way, turnOf(turnDeg));
    const low = turnDeg === 0 ? bounds.min : meshBounds(movedMesh(mesh, turned)).min;
    const motion = inTurn(turned, moved([-low[0], -low[1], -low[2]]));
    const lying = movedMesh(mesh, motion);
    const overhang = overhangOf(lying);
    return [{ mesh: lying, motion, overhang, bad: overhang.area - contactOf(lying) }];
  });
  const [first] = ways;
  if (!first) throw new Error(`${mesh.name}: it was to fit the bed and doesn't`);
  const { bad: _, ...best } = ways.reduce((a, b) => (b.bad < a.bad ? b : a), first);
  return best;
}

const turnOf = (turnDeg: number): Placement => {
  const [c, s] = turnDeg === 0 ? [1, 0] : [cos(turnDeg * DEG), sin(turnDeg * DEG)];
  return { x: [c, s, 0], y: [-s, c, 0], z: [0, 0, 1], move: [0, 0, 0] };
};

/** A mesh after a motion. */
function movedMesh(mesh: Mesh, way: Placement): Mesh {
  if (way === IN_PLACE) return mesh;
  const { x, y, z, move } = way;
  const from = mesh.positions;
  const positions = new Float64Array(from.length);
  for (let i = 0; i < positions.length; i += 3) {
    const [a, b, c] = [from[i] as number, from[i + 1] as number, from[i + 2] as number];
    positions[i] = a * x[0] + b * y[0] + c * z[0] + move[0];
    positions[i + 1] = a * x[1] + b * y[1] + c * z[1] + move[1];
    positions[i + 2] = a * x[2] + b * y[2] + c * z[2] + move[2];
  }
  return { ...mesh, positions };
}

/** Area that lies on the bed. */
function contactOf({ positions, triangles }: Mesh): number {
  const at = (v: number, axis: number) => positions[3 * v + axis] as number;
  let area = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t], triangles[t + 1], triangles[t + 2]] as [number, number, number];
    if (at(a, 2) > ON_BED || at(b, 2) > ON_BED || at(c, 2) > ON_BED) continue;
    area += Math.abs((at(b, 0) - at(a, 0)) * (at(c, 1) - at(a, 1)) - (at(b, 1) - at(a, 1)) * (at(c, 0) - at(a, 0))) / 2;
  }
  return area;
}

import type { Mesh } from '../../documents/mesh.js';
import { hypot } from '../../math/elementary.js';
import { dot2, perp2, scale2, type Vec2, type Vec3 } from '../../math/vec.js';
import type { Solid, SolidScope } from '../../solids/kernel.js';
import { outlineOf, rectangle } from '../../solids/outline.js';
import type { CutLine, CutTree } from './cut-lines.js';
import { octagonAcross, socketHalf } from './peg-places.js';
import type { PrintSizes } from './sizes.js';

/** A part cut to the bed: its pieces, and how many loose pegs join them. */
export interface Pieces {
  readonly pieces: readonly Piece[];
  readonly pegs: readonly PegPlace[];
}

/** The middle of a loose peg, and the cut that it stands across. */
export interface PegPlace {
  readonly at: Vec3;
  readonly line: CutLine;
}

/** One piece with the upright faces that cuts gave it: their outward normals in plan. */
export interface Piece {
  readonly solid: Solid;
  readonly faces: readonly Vec2[];
}

/** Loose pegs in one cut. */
const MOST_PEGS = 4;
const CUT = 'cut';

/** Cuts a part along a tree and gives both sides of each cut sockets for loose pegs. */
export function cutPieces(
  scope: SolidScope,
  { solid: part, faces }: Piece,
  tree: CutTree,
  lines: readonly CutLine[],
  sizes: PrintSizes,
): Pieces {
  if (!tree.cut) return { pieces: [{ solid: part, faces }], pegs: [] };
  const { line, sides } = tree.cut;
  const [low, high] = spreadOf(scope.plainMesh(part.part, part), line);
  // A layer may stand on one side of a cut alone.
  if (low > -sizes.thin || high < sizes.thin)
    return cutPieces(scope, { solid: part, faces }, sides[low > -sizes.thin ? 0 : 1], lines, sizes);
  const far = 4 * hypot(...spanOf(tree.hull)) + Math.max(...sizes.bed);
  const half = halfSpace(scope, line, tree.hull, far);
  const [front, back] = [scope.intersect(part.part, [part, half]), scope.subtract(part.part, part, [half])];
  const places = socketPlaces(scope.mesh(part.part, front), line, lines, sizes);
  const sockets = places.map((at) => socket(scope, at, line, sizes));
  const made = [front, back].map((side, i) => {
    const outward = scale2(line.normal, i === 0 ? -1 : 1);
    const piece = { solid: scope.subtract(part.part, side, sockets), faces: [...faces, outward] };
    return cutPieces(scope, piece, sides[i] as CutTree, lines, sizes);
  });
  return {
    pieces: made.flatMap((m) => m.pieces),
    pegs: [...places.map((at) => ({ at, line })), ...made.flatMap((m) => m.pegs)],
  };
}

/** How far a mesh reaches to both sides of a line. */
function spreadOf({ positions }: Mesh, { normal, offset }: CutLine): Vec2 {
  let [low, high] = [Infinity, -Infinity];
  for (let i = 0; i < positions.length; i += 3) {
    const away = (positions[i] as number) * normal[0] + (positions[i + 1] as number) * normal[1] - offset;
    low = Math.min(low, away);
    high = Math.max(high, away);
  }
  return [low, high];
}

function spanOf(hull: readonly Vec2[]): Vec2 {
  const along = (axis: 0 | 1) => hull.map((p) => p[axis]);
  return [Math.max(...along(0)) - Math.min(...along(0)), Math.max(...along(1)) - Math.min(...along(1))];
}

/** All on the positive side of a line. */
function halfSpace(scope: SolidScope, { normal, offset }: CutLine, hull: readonly Vec2[], far: number): Solid {
  const [first] = hull as [Vec2];
  const away = dot2(first, normal) - offset;
  const at: Vec2 = [first[0] - away * normal[0], first[1] - away * normal[1]];
  const names = { bottom: CUT, side: CUT, top: CUT };
  const outline = rectangle([-far, -far], [far, far], names);
  return scope.prism(CUT, outline, { at, along: normal, across: [normal[1], -normal[0]] }, [0, far], [CUT, CUT]);
}

/** Places on a cut's face that keep the thinnest wall round a socket, far from each other and from other cuts. */
function socketPlaces(mesh: Mesh, line: CutLine, lines: readonly CutLine[], sizes: PrintSizes): Vec3[] {
  const around = octagonAcross(socketHalf(sizes)) / 2 + sizes.thin + sizes.surface;
  const edges = faceEdges(mesh, line);
  if (edges.length === 0) return [];
  const along = perp2(line.normal);
  const base = scale2(line.normal, line.offset);
  const low = edges.reduce<Vec2>((m, [a]) => [Math.min(m[0], a[0]), Math.min(m[1], a[1])], [Infinity, Infinity]);
  const high = edges.reduce<Vec2>((m, [a]) => [Math.max(m[0], a[0]), Math.max(m[1], a[1])], [-Infinity, -Infinity]);
  const found: { readonly at: Vec3; readonly t: Vec2 }[] = [];
  const step = around / 2;
  const apart = lines.filter((other) => other !== line);
  for (let t = low[0] + around; t <= high[0] - around; t += step) {
    for (let z = low[1] + around; z <= high[1] - around; z += step) {
      const at: Vec3 = [base[0] + t * along[0], base[1] + t * along[1], z];
      if (!isInside(edges, [t, z]) || edges.some(([a, b]) => distance([t, z], a, b) < around)) continue;
      if (apart.some((o) => Math.abs(dot2([at[0], at[1]], o.normal) - o.offset) < 2 * around + sizes.peg.length))
        continue;
      found.push({ at, t: [t, z] });
    }
  }
  const chosen: typeof found = [];
  while (chosen.length < MOST_PEGS) {
    const gap = (p: Vec2) => Math.min(...chosen.map((c) => hypot(c.t[0] - p[0], c.t[1] - p[1])));
    const [first] = found;
    if (!first) break;
    const best = chosen.length === 0 ? first : found.reduce((far, p) => (gap(p.t) > gap(far.t) ? p : far), first);
    if (chosen.length > 0 && gap(best.t) < 2 * around) break;
    chosen.push(best);
  }
  return chosen.map(({ at }) => at);
}

type Edge = readonly [Vec2, Vec2];

/** The outline of the face that a cut left on a mesh, along the plane and up. */
function faceEdges({ positions, triangles, faceNames, faceOf }: Mesh, line: CutLine): Edge[] {
  const along = perp2(line.normal);
  const at = (v: number): Vec2 => [
    (positions[3 * v] as number) * along[0] + (positions[3 * v + 1] as number) * along[1],
    positions[3 * v + 2] as number,
  ];
  const isOn = (v: number) =>
    Math.abs(
      (positions[3 * v] as number) * line.normal[0] + (positions[3 * v + 1] as number) * line.normal[1] - line.offset,
    ) < 0.01;
  const count = positions.length / 3;
  const once = new Map<number, readonly [number, number]>();
  for (let t = 0; t < triangles.length; t += 3) {
    if (faceNames[faceOf[t / 3] as number] !== CUT) continue;
    const corners = [triangles[t], triangles[t + 1], triangles[t + 2]] as [number, number, number];
    if (!corners.every(isOn)) continue;
    for (const [i, a] of corners.entries()) {
      const b = corners[(i + 1) % 3] as number;
      const key = Math.min(a, b) * count + Math.max(a, b);
      if (once.has(key)) once.delete(key);
      else once.set(key, [a, b]);
    }
  }
  return [...once.values()].map(([a, b]) => [at(a), at(b)]);
}

function isInside(edges: readonly Edge[], [x, y]: Vec2): boolean {
  let inside = false;
  for (const [a, b] of edges)
    if (a[1] > y !== b[1] > y && x < ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]) + a[0]) inside = !inside;
  return inside;
}

function distance(p: Vec2, a: Vec2, b: Vec2): number {
  const [ex, ey] = [b[0] - a[0], b[1] - a[1]];
  const t = Math.min(1, Math.max(0, ((p[0] - a[0]) * ex + (p[1] - a[1]) * ey) / (ex * ex + ey * ey || 1)));
  return hypot(a[0] + t * ex - p[0], a[1] + t * ey - p[1]);
}

/** A lying octagon through a cut, as long on both sides. */
function socket(scope: SolidScope, at: Vec3, line: CutLine, sizes: PrintSizes): Solid {
  const reach = sizes.peg.length + sizes.peg.end;
  return lyingOctagon(scope, 'socket', at, line, socketHalf(sizes), reach);
}

/** The loose peg that fits all sockets, lying on a flat along east. */
export function loosePeg(scope: SolidScope, sizes: PrintSizes): Solid {
  const half = sizes.peg.across / 2;
  return lyingOctagon(scope, 'peg', [0, 0, half], { normal: [1, 0], offset: 0 }, half, sizes.peg.length);
}

function lyingOctagon(
  scope: SolidScope,
  part: string,
  [x, y, z]: Vec3,
  { normal }: CutLine,
  half: number,
  reach: number,
): Solid {
  const side = half * (Math.SQRT2 - 1);
  const points: Vec2[] = [
    ...([
      [-side, -half],
      [side, -half],
      [half, -side],
      [half, side],
    ] as const),
    ...([
      [side, half],
      [-side, half],
      [-half, side],
      [-half, -side],
    ] as const),
  ].map(([u, v]): Vec2 => [u, z + v]);
  const outline = outlineOf([part, points]);
  return scope.prism(
    part,
    outline,
    { at: [x, y], along: normal, across: [normal[1], -normal[0]] },
    [-reach, reach],
    [part, part],
  );
}

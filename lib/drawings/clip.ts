import { CUT_BESIDE, CUT_POINT, STROKES_MEET } from '../base/tolerances.js';
import type { EllipsePrimitive, HatchPrimitive, PathPrimitive, PlainPrimitive, Segment } from '../documents/drawing.js';
import { ellipseAt, ellipseTurn } from '../documents/drawing-bounds.js';
import { rectangleLoop } from '../documents/shapes.js';
import {
  type Box,
  circleEdge,
  type Edge,
  edgeAt,
  edgeBox,
  edgeLength,
  edgePart,
  edgeShare,
  uniteBoxes,
} from '../math/curves.js';
import { rangesWhere } from '../math/curves-ranges.js';
import { acos, asin } from '../math/elementary.js';
import { bordersOf, regionOf } from '../math/planar.js';
import { chainEdges } from '../math/planar-chain.js';
import type { Vec2 } from '../math/vec.js';
import { loopOf, strokeOf } from './paths.js';

/** Lines, circles and hatches as far as they lie in a box, exactly: arcs stay arcs. Texts and signs go whole or not at all. */
export function clipTo(primitives: readonly PlainPrimitive[], box: Box): PlainPrimitive[] {
  return primitives.flatMap((p) => clipped(p, box));
}

function clipped(p: PlainPrimitive, box: Box): PlainPrimitive[] {
  switch (p.kind) {
    case 'path':
      return clipPath(p, box);
    case 'circle':
      return strokes(p.layer, clipEdge(circleEdge(p.centre, p.radius), box));
    case 'ellipse':
      return clipEllipse(p, box);
    case 'hatch':
      return clipHatch(p, box);
    case 'text':
      return inBox(p.at, box) ? [p] : [];
  }
}

export const inBox = ([x, y]: Vec2, { min, max }: Box): boolean =>
  x >= min[0] && x <= max[0] && y >= min[1] && y <= max[1];

const within = (inner: Box, { min, max }: Box): boolean =>
  inner.min[0] >= min[0] && inner.min[1] >= min[1] && inner.max[0] <= max[0] && inner.max[1] <= max[1];

const apart = (a: Box, b: Box): boolean =>
  a.min[0] > b.max[0] || b.min[0] > a.max[0] || a.min[1] > b.max[1] || b.min[1] > a.max[1];

/** The pieces of an edge in a box. */
export function clipEdge(edge: Edge, box: Box): Edge[] {
  const own = edgeBox(edge);
  if (within(own, box)) return [edge];
  if (apart(own, box)) return [];
  const length = edgeLength(edge);
  const shares = [0, ...crossings(edge, box), 1].sort((a, b) => a - b);
  const pieces: Edge[] = [];
  let open: number | null = null;
  for (let i = 1; i < shares.length; i++) {
    const [a, b] = [shares[i - 1] as number, shares[i] as number];
    const inside = b > a && inBox(edgeAt(edge, (a + b) / 2), box);
    if (inside && open === null) open = a;
    if (!inside && open !== null && b > a) {
      if ((a - open) * length > STROKES_MEET) pieces.push(edgePart(edge, open, a));
      open = null;
    }
  }
  if (open !== null && (1 - open) * length > STROKES_MEET) pieces.push(edgePart(edge, open, 1));
  return pieces;
}

/** Shares at which an edge crosses the four lines of a box. */
function crossings(edge: Edge, { min, max }: Box): number[] {
  const lines: (readonly [axis: 0 | 1, at: number])[] = [
    [0, min[0]],
    [0, max[0]],
    [1, min[1]],
    [1, max[1]],
  ];
  return lines.flatMap(([axis, at]) => {
    if (edge.kind === 'line') {
      const [a, b] = [edge.from[axis], edge.to[axis]];
      const share = (at - a) / (b - a);
      return share > 0 && share < 1 ? [share] : [];
    }
    const k = (at - edge.centre[axis]) / edge.radius;
    if (Math.abs(k) >= 1) return [];
    const angles = axis === 0 ? [acos(k), -acos(k)] : [asin(k), Math.PI - asin(k)];
    return angles.flatMap((angle) => {
      const turn = 2 * Math.PI;
      const [low, high] = [Math.min(edge.start, edge.end), Math.max(edge.start, edge.end)];
      const all: number[] = [];
      for (let n = Math.ceil((low - angle) / turn); angle + n * turn <= high; n++)
        all.push((angle + n * turn - edge.start) / (edge.end - edge.start));
      return all.filter((share) => share > 0 && share < 1);
    });
  });
}

const strokes = (layer: PathPrimitive['layer'], edges: readonly Edge[]): PlainPrimitive[] =>
  chainEdges(edges, STROKES_MEET).map((chain) => strokeOf(layer, chain) as PlainPrimitive);

function clipPath(path: PathPrimitive, box: Box): PlainPrimitive[] {
  const own = uniteBoxes(path.segments.map(edgeBox));
  if (within(own, box)) return [path];
  if (apart(own, box)) return [];
  return strokes(
    path.layer,
    path.segments.flatMap((e) => clipEdge(e, box)),
  );
}

function clipEllipse(ellipse: EllipsePrimitive, box: Box): PlainPrimitive[] {
  const turn = ellipseTurn(ellipse);
  const at = (t: number) => ellipseAt(ellipse, ellipse.start + t * turn);
  const size = Math.max(Math.abs(ellipse.major[0]), Math.abs(ellipse.major[1])) * turn;
  const near = (a: number, b: number) => Math.abs(a - b) * size < STROKES_MEET;
  return rangesWhere((t) => inBox(at(t), box), 0, 1, 96, near)
    .filter(([a, b]) => (b - a) * size > STROKES_MEET)
    .map(([a, b]) => ({ ...ellipse, start: ellipse.start + a * turn, end: ellipse.start + b * turn }));
}

function clipHatch(hatch: HatchPrimitive, box: Box): PlainPrimitive[] {
  const all = hatch.loops.flat();
  const own = uniteBoxes(all.map(edgeBox));
  if (within(own, box)) return [hatch];
  if (apart(own, box)) return [];
  const region = clipRegion(hatch.loops, box);
  return region.length > 0 ? [{ ...hatch, loops: region.map(loopOf) }] : [];
}

/** What of a region, even-odd within its loops, lies in a box. */
export function clipRegion(loops: readonly (readonly Segment[])[], box: Box): Edge[][] {
  const frame = rectangleLoop(box.min[0], box.min[1], box.max[0], box.max[1]);
  const label = (p: Vec2) => (inBox(p, box) && inLoops(loops, p) ? 'in' : null);
  const near = loops.flat().filter((e) => !apart(edgeBox(e), box));
  const borders = bordersOf([...near, ...frame], label, { tolerance: CUT_POINT, beside: CUT_BESIDE });
  return regionOf(borders, () => true, CUT_POINT);
}

/** Even-odd: whether a ray to the right crosses the loops an odd number of times. */
function inLoops(loops: readonly (readonly Segment[])[], [x, y]: Vec2): boolean {
  let inside = false;
  for (const loop of loops) {
    for (const e of loop) {
      if (e.kind === 'line') {
        if (e.from[1] > y !== e.to[1] > y) {
          const at = e.from[0] + ((y - e.from[1]) / (e.to[1] - e.from[1])) * (e.to[0] - e.from[0]);
          if (at > x) inside = !inside;
        }
        continue;
      }
      const k = (y - e.centre[1]) / e.radius;
      if (Math.abs(k) >= 1) continue;
      const half = e.radius * Math.sqrt(1 - k * k);
      for (const p of [
        [e.centre[0] + half, y],
        [e.centre[0] - half, y],
      ] as const) {
        if (p[0] <= x) continue;
        const share = edgeShare(e, p);
        const on =
          share > 0 &&
          share < 1 &&
          Math.abs(edgeAt(e, share)[0] - p[0]) + Math.abs(edgeAt(e, share)[1] - p[1]) < 1e-3 * e.radius;
        if (on) inside = !inside;
      }
    }
  }
  return inside;
}

import {
  type Box,
  type Edge,
  edgeAt,
  edgeBox,
  edgeEnd,
  edgeLength,
  edgePart,
  edgeStart,
  edgeTangent,
  reversedEdge,
} from './curves.js';
import { atan2 } from './elementary.js';
import { joinEdges } from './planar-chain.js';
import { meetings } from './planar-cross.js';
import { PointIndex } from './planar-points.js';
import { perp2, type Vec2 } from './vec.js';

/**
 * Planar regions out of a heap of boundary curves: split the curves where they meet, ask on both sides of each piece
 * what lies there, keep the pieces that part two different things, chain them to loops. The heap may hold more than
 * the boundaries: what parts nothing falls out.
 */

/** A piece that parts two things; `null` is empty space. Left and right are seen along the edge. */
export interface Border<Label extends string> {
  readonly edge: Edge;
  readonly left: Label | null;
  readonly right: Label | null;
}

export interface PlanarOptions {
  /** Points nearer than this are one point. */
  readonly tolerance: number;
  /** How far beside a piece's middle it is asked what lies there, at most. */
  readonly beside: number;
}

/** The edges cut at all places where they meet; of coincident pieces one is kept. */
export function splitEdges(edges: readonly Edge[], tolerance: number): Edge[] {
  const whole = edges.filter((e) => edgeLength(e) > tolerance);
  const boxes = whole.map(edgeBox);
  const points = new PointIndex(tolerance);
  const seen = new Set<string>();
  const pieces: Edge[] = [];
  const near = neighbours(boxes, tolerance);
  whole.forEach((edge, i) => {
    const shares = [0, 1];
    for (const j of near[i] as number[]) shares.push(...meetings(edge, whole[j] as Edge, tolerance));
    for (const piece of cutAt(edge, shares, tolerance)) {
      const start = points.of(edgeStart(piece));
      const end = points.of(edgeEnd(piece));
      const key = `${Math.min(start, end)} ${Math.max(start, end)} ${points.of(edgeAt(piece, 0.5))}`;
      if (seen.has(key)) continue;
      seen.add(key);
      pieces.push(piece);
    }
  });
  return pieces;
}

/** For each box, those that it touches: swept from left to right. */
function neighbours(boxes: readonly Box[], tolerance: number): number[][] {
  const near = boxes.map((): number[] => []);
  let open: number[] = [];
  const order = boxes.map((_, i) => i).sort((i, j) => (boxes[i] as Box).min[0] - (boxes[j] as Box).min[0]);
  for (const i of order) {
    const { min, max } = boxes[i] as Box;
    open = open.filter((j) => (boxes[j] as Box).max[0] + tolerance >= min[0]);
    for (const j of open) {
      const other = boxes[j] as Box;
      if (min[1] > other.max[1] + tolerance || other.min[1] > max[1] + tolerance) continue;
      (near[i] as number[]).push(j);
      (near[j] as number[]).push(i);
    }
    open.push(i);
  }
  return near;
}

function cutAt(edge: Edge, shares: number[], tolerance: number): Edge[] {
  const least = tolerance / edgeLength(edge);
  const kept = [0];
  for (const share of shares.sort((a, b) => a - b)) {
    if (share - (kept[kept.length - 1] as number) > least && 1 - share > least) kept.push(share);
  }
  kept.push(1);
  return kept.slice(1).map((to, i) => edgePart(edge, kept[i] as number, to));
}

/** The borders between different things, out of a heap of boundary curves. */
export function bordersOf<Label extends string>(
  edges: readonly Edge[],
  labelAt: (p: Vec2) => Label | null,
  options: PlanarOptions,
): Border<Label>[] {
  const borders: Border<Label>[] = [];
  for (const edge of splitEdges(edges, options.tolerance)) {
    const middle = edgeAt(edge, 0.5);
    const across = perp2(edgeTangent(edge, 0.5));
    // Beside a short piece another may be near.
    const beside = Math.min(options.beside, edgeLength(edge) / 4);
    const side = (turn: number) =>
      labelAt([middle[0] + turn * beside * across[0], middle[1] + turn * beside * across[1]]);
    const left = side(1);
    const right = side(-1);
    if (left !== right) borders.push({ edge, left, right });
  }
  return borders;
}

/**
 * Closed loops round everything that `inside` accepts, with it on their left: outer loops run counter-clockwise,
 * holes clockwise.
 */
export function regionOf<Label extends string>(
  borders: readonly Border<Label>[],
  inside: (label: Label) => boolean,
  tolerance: number,
): Edge[][] {
  const within = (label: Label | null) => label !== null && inside(label);
  const oriented: Edge[] = [];
  for (const { edge, left, right } of borders) {
    if (within(left) === within(right)) continue;
    oriented.push(within(left) ? edge : reversedEdge(edge));
  }
  return loopsOf(oriented, tolerance);
}

/** Chains directed edges to closed loops; where loops touch, each turns so that its inside stays in one piece. */
function loopsOf(edges: readonly Edge[], tolerance: number): Edge[][] {
  const points = new PointIndex(tolerance);
  const leaving = new Map<number, Edge[]>();
  for (const edge of edges) {
    const at = points.of(edgeStart(edge));
    leaving.set(at, [...(leaving.get(at) ?? []), edge]);
  }
  const used = new Set<Edge>();
  const loops: Edge[][] = [];
  for (const first of edges) {
    if (used.has(first)) continue;
    const loop: Edge[] = [];
    const home = points.of(edgeStart(first));
    for (let edge: Edge | undefined = first; edge; ) {
      used.add(edge);
      loop.push(edge);
      const at = points.of(edgeEnd(edge));
      if (at === home) break;
      edge = sharpestLeft(
        edge,
        (leaving.get(at) ?? []).filter((e) => !used.has(e)),
      );
    }
    loops.push(joinEdges(loop, true, tolerance));
  }
  return loops;
}

function sharpestLeft(coming: Edge, choices: readonly Edge[]): Edge | undefined {
  const along = edgeTangent(coming, 1);
  const turn = (e: Edge) => {
    const to = edgeTangent(e, 0);
    return atan2(along[0] * to[1] - along[1] * to[0], along[0] * to[0] + along[1] * to[1]);
  };
  return [...choices].sort((a, b) => turn(b) - turn(a))[0];
}

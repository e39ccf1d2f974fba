import { type Edge, edgeAt, edgeEnd, edgePart, edgeShare, edgeStart, loopsArea, sweptArea } from './curves.js';
import type { Disc } from './discs.js';
import { atan2, square } from './elementary.js';
import { pointApart } from './segments.js';
import { add2, cross2, dot2, length2, perp2, scale2, sub2, type Vec2 } from './vec.js';

/** Closed loops that bound an area together, as `regionOf` gives them: outer ones counter-clockwise, holes clockwise. */
export type Loops = readonly (readonly Edge[])[];

/** Whether a point lies within loops: they turn round it as a whole. On a loop itself either may be said. */
export function withinLoops(loops: Loops, p: Vec2): boolean {
  let turned = 0;
  for (const loop of loops) for (const edge of loop) turned += turnAbout(edge, p);
  return turned > Math.PI;
}

/** By how much the direction from a point turns while it follows an edge, rad. */
function turnAbout(edge: Edge, p: Vec2): number {
  if (edge.kind === 'line') return chordTurn(edge.from, edge.to, p);
  const { centre, radius, start, end, ccw } = edge;
  const pieces = Math.max(1, Math.ceil(Math.abs(end - start) / (Math.PI / 2)));
  let turned = 0;
  for (let k = 0; k < pieces; k++) {
    const piece = edgePart(edge, k / pieces, (k + 1) / pieces);
    const [a, b] = [edgeStart(piece), edgeEnd(piece)];
    turned += chordTurn(a, b, p);
    // Between the chord and its arc the point is passed on the other side.
    const beyond = cross2(sub2(b, a), sub2(p, a)) < 0 === ccw;
    if (beyond && length2(sub2(p, centre)) < radius) turned += ccw ? 2 * Math.PI : -2 * Math.PI;
  }
  return turned;
}

function chordTurn(a: Vec2, b: Vec2, p: Vec2): number {
  const [from, to] = [sub2(a, p), sub2(b, p)];
  return atan2(cross2(from, to), dot2(from, to));
}

/** Pieces of an area that don't hang together, each with the holes in it. */
export function piecesOf(loops: Loops): Loops[] {
  const outer = loops.filter((loop) => loopsArea([loop]) > 0);
  const holes = loops.filter((loop) => loopsArea([loop]) < 0);
  return outer.map((loop) => [loop, ...holes.filter((hole) => withinLoops([loop], edgeAt(hole[0] as Edge, 0.5)))]);
}

/** Least distance from a point to loops, mm. */
export function loopsApart(loops: Loops, p: Vec2): number {
  let least = Number.POSITIVE_INFINITY;
  for (const loop of loops) for (const edge of loop) least = Math.min(least, edgeApart(edge, p));
  return least;
}

function edgeApart(edge: Edge, p: Vec2): number {
  if (edge.kind === 'line') return pointApart(p, edge.from, edge.to);
  const out = sub2(p, edge.centre);
  const angle = atan2(out[1], out[0]);
  const [low, high] = edge.ccw ? [edge.start, edge.end] : [edge.end, edge.start];
  const turns = Math.ceil((low - angle) / (2 * Math.PI));
  if (angle + turns * 2 * Math.PI <= high) return Math.abs(length2(out) - edge.radius);
  return Math.min(length2(sub2(p, edgeStart(edge))), length2(sub2(p, edgeEnd(edge))));
}

/**
 * Area that loops and a disc have in common, exactly: along each edge what is swept about the disc's centre, outside the
 * disc that of its own circle. Edges that nearly lie on the circle do no harm, for no point is taken for another.
 */
export function areaInDisc(loops: Loops, disc: Disc): number {
  if (!(disc.radius > 0)) return 0;
  let area = 0;
  for (const loop of loops) for (const edge of loop) area += sweptInDisc(edge, disc);
  return area;
}

function sweptInDisc(edge: Edge, disc: Disc): number {
  const { centre, radius } = disc;
  const shares = crossings(edge, disc).filter((t) => t > 0 && t < 1);
  shares.sort((a, b) => a - b);
  shares.push(1);
  let area = 0;
  let from = 0;
  for (const to of shares) {
    const piece = edgePart(edge, from, to);
    const inside = length2(sub2(edgeAt(piece, 0.5), centre)) < radius;
    area += inside ? sweptArea(piece, centre) : (square(radius) * turnAbout(piece, centre)) / 2;
    from = to;
  }
  return area;
}

/** Shares of an edge at which its prolonged line or circle crosses a disc's. */
function crossings(edge: Edge, { centre, radius }: Disc): number[] {
  if (edge.kind === 'line') {
    const along = sub2(edge.to, edge.from);
    const size = dot2(along, along);
    const middle = dot2(sub2(centre, edge.from), along) / size;
    const rest = square(radius) / size - square(cross2(along, sub2(centre, edge.from)) / size);
    return rest > 0 ? [middle - Math.sqrt(rest), middle + Math.sqrt(rest)] : [];
  }
  const between = sub2(centre, edge.centre);
  const distance = length2(between);
  if (distance === 0) return [];
  const along = (square(distance) + square(edge.radius) - square(radius)) / (2 * distance);
  const rest = square(edge.radius) - square(along);
  if (!(rest > 0)) return [];
  const unit = scale2(between, 1 / distance);
  const foot = add2(edge.centre, scale2(unit, along));
  return [1, -1].map((side) => edgeShare(edge, add2(foot, scale2(perp2(unit), side * Math.sqrt(rest)))));
}

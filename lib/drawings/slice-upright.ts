import { CUT_CURVE, MERIDIAN_CURVE, SAME_ANGLE_RAD, SAME_POINT } from '../base/tolerances.js';
import { arcEdge, type Edge, edgeAt, edgePart, lineEdge, mirroredEdge, movedEdge } from '../math/curves.js';
import { traceCurve } from '../math/curves-trace.js';
import { atan2, cos } from '../math/elementary.js';
import { monotoneRoot } from '../math/roots.js';
import { sectionOutline } from '../math/section.js';
import { cross2, dot2, sub2, type Vec2, type Vec3 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, type HouseSetout } from '../setout/house.js';
import { baseHalf } from '../setout/material.js';
import type { PassageSetout } from '../setout/passage.js';
import { spanPoint } from '../setout/span.js';
import { inArchFrame, type Prism } from './arch-places.js';
import { extradosPieces, intradosPieces, type MeridianPiece, offsetPieces } from './meridian.js';

/** An upright plane: (x, z) stands for the plan point `through + x · right` at height z. */
export interface CutPlane {
  readonly through: Vec2;
  readonly right: Vec2;
}

export const onPlane = (plane: CutPlane, [x, z]: Vec2): Vec3 => [
  plane.through[0] + x * plane.right[0],
  plane.through[1] + x * plane.right[1],
  z,
];

/** All lines that may bound a part of the house in the plane; more than the true outline. */
export function sliceUpright(house: HouseSetout, plane: CutPlane): Edge[] {
  return [
    ...house.domes.flatMap((dome) => [
      ...domeLines(house, dome, plane),
      ...archesOf(house, dome).flatMap((arch) => archLines(house, arch, plane)),
    ]),
    ...house.passages.flatMap((passage) => passageLines(house, passage, plane)),
  ];
}

function domeLines(house: HouseSetout, dome: DomeSetout, plane: CutPlane): Edge[] {
  const beds = [dome.skewback ? 0 : null, dome.curb?.bedS ?? null, dome.plug?.bedS ?? null];
  const meridian: MeridianPiece[] = [
    ...extradosPieces(dome),
    ...intradosPieces(dome),
    ...beds.flatMap((s) => (s === null ? [] : [bedLine(dome, s)])),
  ];
  const outer = dome.springingRadius + dome.thickness;
  meridian.push(lineEdge([0, 0], [outer, 0]));
  // A later dome's wall may end on the level over an earlier one's bore.
  if (dome.curb) meridian.push(lineEdge([dome.curb.clearRadius, dome.curb.topZ], [0, dome.curb.topZ]));
  if (dome.skewback) meridian.push(lineEdge([dome.springingRadius, dome.springingZ], [outer, dome.springingZ]));
  for (const { clear } of archesOf(house, dome)) {
    if (clear.kind === 'parallel') meridian.push(...offsetPieces(dome, clear.depth));
  }
  const footing = house.footings.find((f) => f.domeId === dome.id);
  if (footing) meridian.push(...ring(footing.innerRadius, footing.outerRadius, footing.bottomZ));
  const slab = house.slabs.find((s) => s.domeId === dome.id);
  if (slab) meridian.push(...ring(0, slab.radius, slab.bottomZ));
  return meridian.flatMap((e) => revolved(e, dome, plane));
}

/** A bed across the wall and a little past both faces, so that it surely crosses them. */
const bedLine = (dome: DomeSetout, s: number): Edge =>
  lineEdge(spanPoint(dome.shell, s, -1), spanPoint(dome.shell, s, dome.thickness + 1));

/** Outline of a ring from z down to the floor's level. */
const ring = (inner: number, outer: number, bottomZ: number): Edge[] => [
  lineEdge([inner, bottomZ], [outer, bottomZ]),
  lineEdge([outer, bottomZ], [outer, 0]),
  lineEdge([outer, 0], [inner, 0]),
  ...(inner > 0 ? [lineEdge([inner, 0], [inner, bottomZ])] : []),
];

/** Where the surface that a piece of meridian sweeps round the dome's axis passes the plane: on both sides of the axis. */
function revolved(piece: MeridianPiece, dome: DomeSetout, plane: CutPlane): Edge[] {
  const from = sub2(dome.at, plane.through);
  const x = dot2(from, plane.right);
  const off = Math.abs(cross2(plane.right, from));
  const edges = off < MERIDIAN_CURVE ? onAxis(piece) : offAxis(piece, off);
  return edges.flatMap((e) => {
    const here = movedEdge(e, [x, 0]);
    return [here, mirroredEdge(here, x)];
  });
}

const onAxis = (piece: MeridianPiece): Edge[] =>
  piece.kind === 'free' ? traceCurve(piece.at, piece.from, piece.to, CUT_CURVE) : [piece];

/** The same surface at the distance `off` from its axis: r becomes √(r² − off²). */
function offAxis(piece: MeridianPiece, off: number): Edge[] {
  const half = (r: number) => Math.sqrt(Math.max(0, r * r - off * off));
  const point = (t: number): Vec2 =>
    piece.kind === 'free' ? piece.at(piece.from + (piece.to - piece.from) * t) : edgeAt(piece, t);
  const [a, b] = [point(0), point(1)];
  if (Math.max(a[0], b[0]) <= off) return [];
  if (piece.kind === 'line' && (a[0] === b[0] || a[1] === b[1]))
    return [lineEdge([half(a[0]), a[1]], [half(b[0]), b[1]])];
  if (piece.kind === 'arc' && Math.abs(piece.centre[0]) < SAME_POINT && piece.radius > off) {
    // A sphere: its sections are circles.
    const angle = ([r, z]: Vec2) => atan2(z - piece.centre[1], half(r));
    return [arcEdge([0, piece.centre[1]], half(piece.radius), angle(a), angle(b))];
  }
  // Where the piece comes nearer to the axis than the plane, the section turns back at x = 0.
  const inside = (t: number) => point(t)[0] > off;
  let [from, to] = [0, 1];
  if (!inside(0) || !inside(1)) {
    let [low, high] = inside(0) ? [0, 1] : [1, 0];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (inside(middle)) low = middle;
      else high = middle;
    }
    [from, to] = inside(0) ? [0, low] : [low, 1];
  }
  // Near the turn x runs like a square root: the parameter is bent so that its picture stays smooth.
  const share = (t: number) => (1 - cos(Math.PI * t)) / 2;
  const at = (t: number): Vec2 => {
    const [r, z] = point(from + (to - from) * share(t));
    return [half(r), z];
  };
  return traceCurve(at, 0, 1, CUT_CURVE);
}

function archLines(house: HouseSetout, arch: ArchSetout, plane: CutPlane): Edge[] {
  const { section, baseZ, faceV, clear, topZ } = arch;
  const edges = prismLines(arch, faceV ?? arch.dome.springingRadius + arch.dome.thickness, baseZ, plane);
  const [, v0] = inArchFrame(arch, plane.through);
  const dv = dot2(plane.right, arch.along);
  const atV = (v: number, low: number, high: number): void => {
    if (Math.abs(dv) < SAME_ANGLE_RAD) return;
    const x = (v - v0) / dv;
    edges.push(lineEdge([x, low], [x, high]));
  };
  if (faceV !== null) atV(faceV, 0, topZ);
  if (clear.kind === 'plane') atV(clear.v, section.sill, section.crownZ);
  if (faceV === null) return edges;
  return [...edges, ...baseLines(house, arch, faceV + (house.footings[0]?.projection ?? 0), plane)];
}

const passageLines = (house: HouseSetout, passage: PassageSetout, plane: CutPlane): Edge[] => [
  ...prismLines(passage, passage.distance, 0, plane),
  ...baseLines(house, passage, passage.distance, plane),
];

/** Clear and outer outline of a prism that reaches from its origin to v = `reach`. */
function prismLines(prism: Prism, reach: number, baseZ: number, plane: CutPlane): Edge[] {
  const { section, ring: grow } = prism;
  const [u0, v0] = inArchFrame(prism, plane.through);
  const [du, dv] = [dot2(plane.right, prism.across), dot2(plane.right, prism.along)];
  if (Math.abs(du) < SAME_ANGLE_RAD) {
    // Along the prism: level lines where the plane passes the section.
    const [xa, xb] = [-v0 / dv, (reach - v0) / dv];
    const levels = [section.topAt(u0), section.sill, section.topAt(u0, grow), baseZ];
    return levels.filter(Number.isFinite).map((z) => lineEdge([xa, z], [xb, z]));
  }
  const across = ([u, z]: Vec2): Vec2 => [(u - u0) / du, z];
  const outlines = [sectionOutline(section, 0, section.sill), sectionOutline(section, grow, baseZ)];
  // A plane nearly along the prism draws its outline out to kilometres: only what lies along the prism is kept.
  const ends = Math.abs(dv) < SAME_ANGLE_RAD ? null : [-v0 / dv, (reach - v0) / dv];
  const us = ends?.flatMap((x) => [x - PAST_END, x + PAST_END].map((p) => u0 + p * du));
  const [low, high] = us ? [Math.min(...us), Math.max(...us)] : [-Infinity, Infinity];
  return outlines.flat().flatMap((whole) => {
    const piece = withinU(whole, low, high);
    if (!piece) return [];
    if (piece.kind === 'line') return [lineEdge(across(piece.from), across(piece.to))];
    return traceCurve((t) => across(edgeAt(piece, t)), 0, 1, CUT_CURVE);
  });
}

/** How much farther than a prism its outline is kept, mm. */
const PAST_END = 10;

/** What of an outline's piece, along which u only grows or only falls, lies between two places. */
function withinU(piece: Edge, low: number, high: number): Edge | null {
  const [a, b] = [edgeAt(piece, 0)[0], edgeAt(piece, 1)[0]];
  if (Math.max(a, b) < low || Math.min(a, b) > high) return null;
  if (Math.min(a, b) >= low && Math.max(a, b) <= high) return piece;
  const shareAt = (u: number) => monotoneRoot((t) => edgeAt(piece, t)[0] - u, 0, 1);
  const [from, to] = [shareAt(low), shareAt(high)].sort((p, q) => p - q) as [number, number];
  return edgePart(piece, from, to);
}

/** Footing or slab under a barrel or passage, from its origin to v = `end`. */
function baseLines(house: HouseSetout, prism: Prism, end: number, plane: CutPlane): Edge[] {
  const [footing] = house.footings;
  const bottom = footing?.bottomZ ?? house.slabs[0]?.bottomZ;
  if (bottom === undefined) return [];
  const at = inArchFrame(prism, plane.through);
  const along: Vec2 = [dot2(plane.right, prism.across), dot2(plane.right, prism.along)];
  const half = baseHalf(prism, footing?.projection ?? 0);
  const xs: number[] = [];
  if (Math.abs(along[0]) >= SAME_ANGLE_RAD) xs.push((half - at[0]) / along[0], (-half - at[0]) / along[0]);
  if (Math.abs(along[1]) >= SAME_ANGLE_RAD) xs.push((end - at[1]) / along[1], -at[1] / along[1]);
  const [low, high] = [Math.min(...xs), Math.max(...xs)];
  return [
    ...xs.map((x) => lineEdge([x, bottom], [x, 0])),
    lineEdge([low, bottom], [high, bottom]),
    lineEdge([low, 0], [high, 0]),
  ];
}

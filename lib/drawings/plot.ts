import { SAME_POINT } from '../base/tolerances.js';
import { arcEdge, type Edge, edgeAt, edgeLength, edgePart, lineEdge } from '../math/curves.js';
import { rangesWhere } from '../math/curves-ranges.js';
import { atan2 } from '../math/elementary.js';
import { add2, cross2, dot2, length2, perp2, scale2, sub2, type Vec2 } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { fromArchFrame } from './arch-places.js';

/** One side of a plot: its ends, and the unit vector into the plot. */
export interface PlotSide {
  readonly from: Vec2;
  readonly to: Vec2;
  readonly inward: Vec2;
}

/** Sides of a plot in the order of its corners, which may run either way round. */
export function plotSides(plot: readonly Vec2[]): PlotSide[] {
  const turn = Math.sign(plotArea(plot));
  return plot.map((from, i) => {
    const to = plot[(i + 1) % plot.length] as Vec2;
    const along = scale2(sub2(to, from), 1 / length2(sub2(to, from)));
    return { from, to, inward: scale2(perp2(along), turn) };
  });
}

/** Signed, positive where the corners run counter-clockwise; mm². */
export const plotArea = (plot: readonly Vec2[]): number =>
  plot.reduce((sum, p, i) => sum + cross2(p, plot[(i + 1) % plot.length] as Vec2), 0) / 2;

/** The place of a side that is nearest to a point. */
function nearestOn({ from, to }: PlotSide, p: Vec2): Vec2 {
  const along = sub2(to, from);
  const share = dot2(sub2(p, from), along) / dot2(along, along);
  return add2(from, scale2(along, Math.min(1, Math.max(0, share))));
}

const apart = (a: Vec2, b: Vec2): number => length2(sub2(a, b));

/** A place on a boundary, the place of the house that is nearest to it, and how far they are apart. */
export interface Nearest {
  readonly on: Vec2;
  readonly house: Vec2;
  readonly distance: number;
}

/** Where the outer faces of the house come nearest to a side. */
export function nearestOf(house: HouseSetout, side: PlotSide): Nearest {
  const round = house.domes.map((d): Nearest => {
    const on = nearestOn(side, d.at);
    const radius = d.springingRadius + d.thickness;
    const gap = apart(on, d.at);
    return { on, house: add2(d.at, scale2(sub2(on, d.at), radius / gap)), distance: gap - radius };
  });
  const corners = house.arches.flatMap((arch): Nearest[] => {
    const { faceV } = arch;
    if (faceV === null) return [];
    const half = arch.section.width / 2 + arch.ring;
    const at = [half, -half].map((u) => fromArchFrame(arch, u, faceV));
    return at.map((corner) => {
      const on = nearestOn(side, corner);
      return { on, house: corner, distance: apart(on, corner) };
    });
  });
  return [...round, ...corners].reduce((a, b) => (b.distance < a.distance - SAME_POINT ? b : a));
}

/** Lines that keep a distance from every side of a plot, inside it: parallels of sides, arcs round inward corners. */
export function setbackLines(plot: readonly Vec2[], setback: number): Edge[] {
  const sides = plotSides(plot);
  const parallels: Edge[] = sides.map(({ from, to, inward }) =>
    lineEdge(add2(from, scale2(inward, setback)), add2(to, scale2(inward, setback))),
  );
  const arcs = sides.flatMap((side, i): Edge[] => {
    const next = sides[(i + 1) % sides.length] as PlotSide;
    // A corner that points into the plot.
    const reflex = dot2(sub2(next.to, next.from), side.inward) < 0;
    if (!reflex) return [];
    const start = atan2(side.inward[1], side.inward[0]);
    const turn = atan2(cross2(side.inward, next.inward), dot2(side.inward, next.inward));
    return [arcEdge(side.to, setback, start, start + turn)];
  });
  const holds = (p: Vec2) => inPlot(plot, p) && sides.every((s) => apart(p, nearestOn(s, p)) > setback - SETBACK_SLACK);
  return [...parallels, ...arcs].flatMap((edge) => {
    const near = (a: number, b: number) => Math.abs(a - b) * edgeLength(edge) < SETBACK_SLACK;
    return rangesWhere((t) => holds(edgeAt(edge, t)), 0, 1, 200, near).map(([a, b]) => edgePart(edge, a, b));
  });
}

/** How much nearer than the setback a place may be by rounding, mm. */
const SETBACK_SLACK = 0.01;

function inPlot(plot: readonly Vec2[], p: Vec2): boolean {
  let inside = false;
  plot.forEach((a, i) => {
    const b = plot[(i + 1) % plot.length] as Vec2;
    if (a[1] > p[1] !== b[1] > p[1] && p[0] < a[0] + ((p[1] - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) inside = !inside;
  });
  return inside;
}

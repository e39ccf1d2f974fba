import { acos, atan2, cos, hypot, sin } from '../../math/elementary.js';
import { type FitLimits, thinnestDry } from './limits.js';
import { type Placement, placedAt, type Seat, seatOf, seatsOf } from './place.js';
import { radiusAt, type Site } from './site.js';

/**
 * A mould: bed curves, bevels and faces of its parent course, and upright-standing perpend planes, one on either side
 * of its middle plane. In the parent's place, with the middle plane through the axis, a perpend lies at
 * `slope · distance from the axis + lean · way up the meridian from the block's middle`. With no lean it is an upright
 * plane through the axis; lean makes the block narrow faster or slower upward, for courses of other radii.
 */
export interface Mould {
  readonly parent: Site;
  readonly slope: number;
  readonly lean: number;
}

/** A point that a perpend passes at the thinnest or thickest joint: half width, distance from the axis, way up. */
interface Gauge {
  readonly across: number;
  readonly distance: number;
  readonly up: number;
}

/** All perpends that keep the joints of one placement: between the two gauges at every seat. */
export interface Window {
  readonly placement: Placement;
  readonly gauges: readonly { readonly thick: Gauge; readonly thin: Gauge }[];
  /** Least and greatest lean; empty when the first is larger. */
  readonly leans: readonly [number, number];
}

export function windowOf(placement: Placement, limits: FitLimits): Window {
  const { parent, site, count } = placement;
  const beta = Math.PI / count;
  const gauges = seatsOf(parent, limits).map((seat) => {
    const width = 2 * radiusAt(site.at[seat.edge], seat.depth) * sin(beta);
    const gauge = (joint: number) => gaugeAt(placement, seat, joint);
    return { thick: gauge(limits.thick), thin: gauge(thinnestDry(limits, width)) };
  });
  return { placement, gauges, leans: leansOf(gauges) };
}

/** Where the joint beside a seat has the thickness given: twice its distance from the joint's middle plane. */
function gaugeAt({ parent, site, count, up, out }: Placement, seat: Seat, joint: number): Gauge {
  const beta = Math.PI / count;
  const { r } = seat;
  const [cp, sp] = parent.at.middle.normal;
  const [cs, ss] = site.at.middle.normal;
  const turn = cp * cs + sp * ss;
  const [atTop] = placedAt(parent, site, seat, r, up, out);
  // joint / 2 = (atTop + (r cos ψ − r) · turn) sin β − r sin ψ cos β at the angle ψ from the middle plane.
  const a = r * turn * sin(beta);
  const b = r * cos(beta);
  const angle = acos((joint / 2 - (atTop - r * turn) * sin(beta)) / hypot(a, b)) - atan2(b, a);
  const distance = r * cos(angle);
  return { across: r * sin(angle), distance, up: seat.up - (distance - r) * sp };
}

/** Leans for which no seat's least slope is above another's greatest. */
function leansOf(gauges: Window['gauges']): [number, number] {
  let low = Number.NEGATIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  for (const { thick } of gauges) {
    for (const { thin } of gauges) {
      // (thick.across − lean · thick.up) / thick.distance ≤ (thin.across − lean · thin.up) / thin.distance
      const slack = thin.across / thin.distance - thick.across / thick.distance;
      const rate = thin.up / thin.distance - thick.up / thick.distance;
      if (rate > 0) high = Math.min(high, slack / rate);
      else if (rate < 0) low = Math.max(low, slack / rate);
      else if (!(slack >= 0)) return [1, 0];
    }
  }
  return [low, high];
}

/** Least and greatest slope at one lean; empty when the first is larger. */
export function slopesOf({ gauges }: Window, lean: number): [number, number] {
  let low = Number.NEGATIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  for (const { thick, thin } of gauges) {
    low = Math.max(low, (thick.across - lean * thick.up) / thick.distance);
    high = Math.min(high, (thin.across - lean * thin.up) / thin.distance);
  }
  return [low, high];
}

/** Joints that a mould's blocks make in a placement, dry, thinnest and thickest over all seats. */
export function jointsOf(mould: Mould, placement: Placement, limits: FitLimits): readonly [number, number] {
  const joints = jointsAtSeats(mould, placement, limits);
  return [Math.min(...joints), Math.max(...joints)];
}

/** The same at each seat. */
export function jointsAtSeats(mould: Mould, placement: Placement, limits: FitLimits): number[] {
  const { parent, site, count, up, out } = placement;
  const beta = Math.PI / count;
  return seatsOf(parent, limits).map((seat) => {
    const { distance, across } = perpendAt(mould, seat);
    const [at] = placedAt(parent, site, seat, distance, up, out);
    return 2 * (at * sin(beta) - across * cos(beta));
  });
}

/** Joint in the middle of the blocks' heads, dry. */
export function middleJoint(mould: Mould, placement: Placement): number {
  const { parent, site, count, up, out } = placement;
  const seat = seatOf(parent, 'middle', parent.thickness / 2);
  const { distance, across } = perpendAt(mould, seat);
  const [at] = placedAt(parent, site, seat, distance, up, out);
  const beta = Math.PI / count;
  return 2 * (at * sin(beta) - across * cos(beta));
}

/** Where a mould's perpend meets the circle through a seat: half width, and distance from the parent's axis along the middle plane. */
function perpendAt(
  { parent, slope, lean }: Mould,
  { r, up }: Pick<Seat, 'r' | 'up'>,
): { across: number; distance: number; angleRad: number } {
  const [, s] = parent.at.middle.normal;
  // r sin ψ = slope · r cos ψ + lean (up − (r cos ψ − r) s)
  const a = r * (slope - lean * s);
  const angle = acos(-(lean * (up + r * s)) / hypot(a, r)) - atan2(r, a);
  return { across: r * sin(angle), distance: r * cos(angle), angleRad: angle };
}

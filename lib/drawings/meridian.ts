import { MERIDIAN_CURVE } from '../base/tolerances.js';
import { arcEdge, type Edge, edgePart, edgeShare, lineEdge } from '../math/curves.js';
import { traceCurve } from '../math/curves-trace.js';
import { acos } from '../math/elementary.js';
import { monotoneRoot } from '../math/roots.js';
import { alongBearing, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { spanPoint } from '../setout/span.js';
import { type SpaceCurve, standing } from './space-curve.js';

/**
 * A dome's upright section on one side of its axis, in (r, z). Circular meridians are exact arcs, others chains of
 * arcs within a micrometre.
 */

/** From the floor up to the crown or to the curb's top, then in to the bore. */
export function extradosMeridian(dome: DomeSetout): Edge[] {
  const outer = dome.springingRadius + dome.thickness;
  const { curb } = dome;
  const low = dome.skewback?.shoulderZ ?? dome.springingZ;
  const shell = shellMeridian(dome, dome.thickness, curb ? { s: curb.bedS, at: curb.bedOuter } : null);
  const top: Edge[] = curb
    ? [
        lineEdge(curb.bedOuter, [curb.bedOuter[0], curb.topZ]),
        lineEdge([curb.bedOuter[0], curb.topZ], [curb.clearRadius, curb.topZ]),
      ]
    : [];
  return [...upright(outer, 0, low), ...shell, ...top];
}

/** From the floor up to the crown, or to the bore and up it. */
export function intradosMeridian(dome: DomeSetout): Edge[] {
  const { curb } = dome;
  const r = curb?.clearRadius ?? 0;
  const z = dome.heightAt(r);
  const s = curb ? monotoneRoot((t) => dome.shell.at(t).r - r, 0, dome.shell.length) : dome.shell.length;
  const shell = shellMeridian(dome, 0, { s, at: [r, z] });
  return [
    ...upright(dome.springingRadius, 0, dome.springingZ),
    ...shell,
    ...(curb ? [lineEdge([r, z], [r, curb.topZ])] : []),
  ];
}

/** The surface `offset` outside the intrados, from the floor to the crown. */
export function offsetMeridian(dome: DomeSetout, offset: number): Edge[] {
  const r = dome.springingRadius + offset;
  const low = dome.springingZ + dome.profile.heightAt(r, offset);
  return [...upright(r, 0, low), ...shellMeridian(dome, offset, null)];
}

const upright = (r: number, from: number, to: number): Edge[] => (to > from ? [lineEdge([r, from], [r, to])] : []);

interface MeridianEnd {
  readonly s: number;
  readonly at: Vec2;
}

/** From where the surface leaves the stem wall's face up to `end`, or to the axis. */
function shellMeridian(dome: DomeSetout, offset: number, end: MeridianEnd | null): Edge[] {
  const { profile, springingZ, springingRadius, shell } = dome;
  const { arc } = profile;
  const foot = springingRadius + offset;
  if (arc) {
    const centre: Vec2 = [arc.centre[0], springingZ + arc.centre[1]];
    const radius = arc.radius + offset;
    const whole = arcEdge(centre, radius, acos(Math.min(1, (foot - centre[0]) / radius)), acos(-centre[0] / radius));
    return [end ? edgePart(whole, 0, edgeShare(whole, end.at)) : whole];
  }
  const start = spanPoint(shell, 0, offset);
  const shoulder = springingZ + profile.heightAt(foot, offset);
  const skew =
    start[0] < foot - MERIDIAN_CURVE
      ? traceCurve((z) => [profile.radiusAt(z - springingZ, offset), z], shoulder, start[1], MERIDIAN_CURVE)
      : [];
  return [...skew, ...traceCurve((s) => spanPoint(shell, s, offset), 0, end?.s ?? shell.length, MERIDIAN_CURVE)];
}

/** A meridian's edge put in its place at a bearing. */
export const atBearing = (edge: Edge, dome: DomeSetout, bearingRad: number): SpaceCurve =>
  standing(edge, dome.at, alongBearing(bearingRad));

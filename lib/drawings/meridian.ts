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
 * A piece of a dome's upright section on one side of its axis, in (r, z): a line or an arc, or an exact curve that is
 * neither.
 */
export type MeridianPiece =
  | Edge
  | { readonly kind: 'free'; readonly at: (t: number) => Vec2; readonly from: number; readonly to: number };

/** The same as lines and arcs only: free curves become chains of arcs. */
export const chained = (pieces: readonly MeridianPiece[], tolerance: number): Edge[] =>
  pieces.flatMap((p) => (p.kind === 'free' ? traceCurve(p.at, p.from, p.to, tolerance) : [p]));

export const extradosMeridian = (dome: DomeSetout): Edge[] => chained(extradosPieces(dome), MERIDIAN_CURVE);

/** From the floor up to the crown or to the curb's top, then in to the bore. */
export function extradosPieces(dome: DomeSetout): MeridianPiece[] {
  const outer = dome.springingRadius + dome.thickness;
  const { curb } = dome;
  const low = dome.skewback?.shoulderZ ?? dome.springingZ;
  const shell = shellMeridian(dome, dome.thickness, curb ? { s: curb.bedS, at: curb.bedOuter } : null);
  const top: MeridianPiece[] = curb
    ? [
        lineEdge(curb.bedOuter, [curb.bedOuter[0], curb.topZ]),
        lineEdge([curb.bedOuter[0], curb.topZ], [curb.clearRadius, curb.topZ]),
      ]
    : [];
  return [...upright(outer, 0, low), ...shell, ...top];
}

/** From the floor up to the crown, or to the bore and up it. */
export function intradosPieces(dome: DomeSetout): MeridianPiece[] {
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
export function offsetPieces(dome: DomeSetout, offset: number): MeridianPiece[] {
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
function shellMeridian(dome: DomeSetout, offset: number, end: MeridianEnd | null): MeridianPiece[] {
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
  const shellCurve: MeridianPiece = {
    kind: 'free',
    at: (t) => spanPoint(shell, t, offset),
    from: 0,
    to: end?.s ?? shell.length,
  };
  if (start[0] >= foot - MERIDIAN_CURVE) return [shellCurve];
  const skew = (z: number): Vec2 => [profile.radiusAt(z - springingZ, offset), z];
  return [{ kind: 'free', at: skew, from: shoulder, to: start[1] }, shellCurve];
}

/** A meridian's edge put in its place at a bearing. */
export const atBearing = (edge: Edge, dome: DomeSetout, bearingRad: number): SpaceCurve =>
  standing(edge, dome.at, alongBearing(bearingRad));

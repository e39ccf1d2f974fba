import { AT_CROWN, FLAT_CROWN } from '../base/tolerances.js';
import { cos, sin } from '../math/elementary.js';
import { integrate } from '../math/quadrature.js';
import { monotoneRoot } from '../math/roots.js';

/**
 * Membrane forces of a shell of revolution under loads that are the same all round; compression negative.
 * Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, ch. 14; Flügge, Stresses in Shells,
 * ch. 2 (both from memory). With the angle from the axis a, V the load above: N = −V / (2π r sin a),
 * N/r1 + Nhoop/r2 = −p. Any one set of units: lengths L, loads F/L2, forces F/L.
 */
export interface SurfacePoint {
  readonly r: number;
  readonly z: number;
  /** Elevation of the outward normal. */
  readonly normalRad: number;
  /** Of the meridian, 1/L. */
  readonly curvature: number;
  /** Arc length per unit of the parameter. */
  readonly speed: number;
}

/** A middle surface by any parameter, from its top to its lower edge. */
export interface Surface {
  readonly top: number;
  readonly edge: number;
  at(u: number): SurfacePoint;
}

export interface SurfaceLoad {
  /** Per area of the surface. */
  readonly area: (u: number) => number;
  /** Per area of the plan. */
  readonly plan: (u: number) => number;
  /** Per length of the top edge. */
  readonly onTop: number;
}

export interface MembraneForces {
  readonly u: number;
  readonly r: number;
  readonly z: number;
  readonly normalRad: number;
  readonly meridian: number;
  readonly hoop: number;
  /** All load above, F. */
  readonly above: number;
  /** Horizontal thrust per length of the circle. */
  readonly thrust: number;
  /** Pull of a ring that takes the thrust: thrust times radius, F. */
  readonly ringTension: number;
}

/** Forces at each of `stations`, which run from the top down; panels between them are integrated one by one. */
export function membraneForces(surface: Surface, load: SurfaceLoad, stations: readonly number[]): MembraneForces[] {
  const start = surface.at(surface.top);
  let above = 2 * Math.PI * start.r * load.onTop;
  let from = surface.top;
  return stations.map((u) => {
    above += loadBetween(surface, load, from, u);
    from = u;
    return forcesAt(surface, load, u, above);
  });
}

function loadBetween(surface: Surface, load: SurfaceLoad, from: number, to: number): number {
  if (from === to) return 0;
  const along = (u: number) => {
    const p = surface.at(u);
    return 2 * Math.PI * p.r * (load.area(u) + load.plan(u) * sin(p.normalRad)) * p.speed;
  };
  return Math.abs(integrate(along, from, to, 8));
}

function forcesAt(surface: Surface, load: SurfaceLoad, u: number, above: number): MembraneForces {
  const p = surface.at(u);
  const [flat, steep] = [sin(p.normalRad), cos(p.normalRad)];
  const pressure = load.area(u) * flat + load.plan(u) * flat * flat;
  const lever = p.r * steep;
  const size = surface.at(surface.edge).r;
  let meridian = 0;
  let hoop = 0;
  if (lever > AT_CROWN * size) {
    // Taken from 0, so that no load gives no negative zero.
    meridian = 0 - above / (2 * Math.PI * lever);
    hoop = 0 - (p.r / steep) * (pressure + meridian * p.curvature);
  } else if (steep < FLAT_CROWN && p.curvature > 0) {
    // A smooth crown: both radii are one, and both forces.
    meridian = 0 - pressure / (2 * p.curvature);
    hoop = meridian;
  }
  const thrust = 0 - meridian * flat;
  return {
    u,
    r: p.r,
    z: p.z,
    normalRad: p.normalRad,
    meridian,
    hoop,
    above,
    thrust,
    ringTension: thrust * p.r,
  };
}

/**
 * Parameter at which hoop forces turn from compression into tension on the way down;
 * `null` when they don't between the stations.
 */
export function hoopTurn(surface: Surface, load: SurfaceLoad, forces: readonly MembraneForces[]): number | null {
  for (let i = 1; i < forces.length; i++) {
    const [a, b] = [forces[i - 1] as MembraneForces, forces[i] as MembraneForces];
    if (!(a.hoop <= 0 && b.hoop > 0)) continue;
    const hoopAt = (u: number) => forcesAt(surface, load, u, a.above + loadBetween(surface, load, a.u, u)).hoop;
    return monotoneRoot(hoopAt, a.u, b.u);
  }
  return null;
}

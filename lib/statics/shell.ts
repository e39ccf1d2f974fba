import { acos, sin, square } from '../math/elementary.js';
import { gauss } from '../math/quadrature.js';
import type { DomeSetout } from '../setout/dome.js';
import { outsideOf } from '../setout/span.js';
import { layerAt } from './layers.js';
import { pressureOf, type UnitLoads } from './loads.js';
import { type Lune, snowLayer } from './lune.js';
import { hoopTurn, type MembraneForces, membraneForces, type Surface, type SurfaceLoad } from './membrane.js';
import type { MembranePoint, ShellForces } from './results.js';

/** Points from top to springing at which forces are given. */
const POINTS = 60;

/** The shell's middle surface by arc length of the intrados; a pointed one goes on to the axis. */
function middleSurface(dome: DomeSetout): Surface {
  const { shell, profile, thickness, curb } = dome;
  const depth = thickness / 2;
  const { arc } = profile;
  let top = curb?.bedS ?? shell.length;
  if (!curb && arc && arc.centre[0] < 0) {
    const turn = acos(-arc.centre[0] / (arc.radius + depth));
    top = shell.length + arc.radius * (turn - shell.at(shell.length).normalRad);
  }
  return {
    top,
    edge: 0,
    at(s) {
      const p = shell.at(s);
      const speed = 1 + p.curvature * depth;
      const [r, z] = outsideOf(p, depth);
      return {
        r: Math.max(0, r),
        z,
        normalRad: p.normalRad,
        curvature: p.curvature / speed,
        speed,
      };
    },
  };
}

/** Membrane forces of a dome's shell, kN/m; kN/mm inside. */
export function shellForces(lune: Lune, loads: UnitLoads, renders: readonly [number, number]): ShellForces {
  const { dome } = lune;
  const surface = middleSurface(dome);
  const [inside, outside] = renders;
  const t = dome.thickness;
  const edge = surface.at(surface.top).r;
  const onTop = (weight: number) => (edge > 0 && dome.curb ? weight / edge : 0);
  // Near the axis a load on the area is what the layers weigh on the middle surface.
  const perArea = (s: number) => {
    const p = dome.shell.at(s);
    const m = surface.at(s);
    const all =
      layerAt(p, 0, t, loads.masonry).weight +
      layerAt(p, -inside, 0, loads.render).weight +
      layerAt(p, t, t + outside, loads.render).weight;
    return m.r > 0 ? all / (m.r * m.speed) : t * loads.masonry + (inside + outside) * loads.render;
  };
  // Snow lies on the outside, which is wider than the middle surface.
  const snowed = (s: number) => {
    const p = dome.shell.at(s);
    const m = surface.at(s);
    const { weight } = snowLayer(p, t + outside, loads);
    if (weight === 0) return 0;
    if (m.r > 0) return weight / (m.r * m.speed * sin(p.normalRad));
    return pressureOf(loads.snow.kpa) * square((1 + p.curvature * (t + outside)) / m.speed);
  };
  const dead: SurfaceLoad = { area: perArea, plan: () => 0, onTop: onTop(lune.top.dead.weight) };
  const snow: SurfaceLoad = { area: () => 0, plan: snowed, onTop: onTop(lune.top.snow.weight) };
  const stations = Array.from({ length: POINTS + 1 }, (_, i) => surface.top * (1 - i / POINTS));
  const deadForces = membraneForces(surface, dead, stations);
  const snowForces = membraneForces(surface, snow, stations);
  const turn = hoopTurn(surface, dead, deadForces);
  return {
    points: deadForces.map((d, i): MembranePoint => {
      const s = snowForces[i] as MembraneForces;
      return {
        z: d.z,
        r: d.r,
        dead: perMetre(d),
        snow: perMetre(s),
        pull: { dead: d.ringTension, snow: s.ringTension },
      };
    }),
    hoopTurnZ: turn === null ? null : surface.at(turn).z,
    hoopTension: hoopTension(surface, dead, turn),
  };
}

const perMetre = ({ meridian, hoop }: MembraneForces) => ({ meridian: meridian * 1000, hoop: hoop * 1000 });

/** Order of the rule along the stretch in which hoops pull. */
const HOOP_ORDER = 12;

/** Sum of the hoops' pull along the middle surface from `turn` down, where they begin to pull; F. */
function hoopTension(surface: Surface, load: SurfaceLoad, turn: number | null): number {
  const from = turn ?? surface.top;
  const { nodes, weights } = gauss(HOOP_ORDER);
  const depth = from - surface.edge;
  const places = nodes.map((node) => from - depth * node);
  const forces = membraneForces(surface, load, places);
  return forces.reduce(
    (sum, { u, hoop }, k) => sum + (weights[k] as number) * depth * Math.max(0, hoop) * surface.at(u).speed,
    0,
  );
}

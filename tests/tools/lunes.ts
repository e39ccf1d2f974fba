import { gauss } from '../../lib/math/quadrature.js';
import type { ThrustBody, ThrustSection } from '../../lib/statics/thrust.js';

export interface LuneShape {
  /** Of the middle surface. */
  readonly radius?: number;
  readonly thickness: number;
  /** How far the arc's centre lies past the axis. */
  readonly past?: number;
  /** Angle from the upright at which it springs. */
  readonly edgeRad?: number;
  readonly sections?: number;
  /** Hoop compression anywhere in the height of every ring, on the middle surface alone, or not at all. */
  readonly hoops?: 'section' | 'middle' | 'none';
  /** Where in a course its ring pushes: 0 its lower bed, 0.5 its middle. */
  readonly hoopAt?: number;
  /** Half angle of an oculus, and its load per length of the circle. */
  readonly oculusRad?: number;
  readonly lantern?: number;
  /** Half arch of constant width in place of a lune. */
  readonly arch?: boolean;
}

/** A lune or half arch bounded by two arcs, of unit weight 1, cut by radial sections; true weights. */
export function luneBody(shape: LuneShape): ThrustBody {
  const { radius = 1, thickness, past = 0, edgeRad = Math.PI / 2, sections = 240, arch = false } = shape;
  const hoops = arch ? 'none' : (shape.hoops ?? 'section');
  const [inner, outer] = [radius - thickness / 2, radius + thickness / 2];
  const start = shape.oculusRad ?? Math.asin(past / outer);
  const edge = radius * Math.sin(start) - past;
  let weight = (shape.lantern ?? 0) * edge;
  let moment = weight * edge;
  const { nodes, weights } = gauss(4);
  const heights = (angle: number): readonly [number, number] => {
    const up = Math.cos(angle);
    return hoops === 'middle' ? [radius * up, radius * up] : [inner * up, outer * up];
  };
  const list: ThrustSection[] = [];
  const step = (edgeRad - start) / sections;
  for (let i = 0; i <= sections; i++) {
    const angle = start + i * step;
    for (let a = 0; i > 0 && a < 4; a++) {
      const at = angle - step * (nodes[a] as number);
      const low = Math.max(inner, past > 0 ? past / Math.sin(at) : inner);
      for (let b = 0; b < 4; b++) {
        const rho = low + (outer - low) * (nodes[b] as number);
        const r = rho * Math.sin(at) - past;
        const part = rho * step * (weights[a] as number) * (outer - low) * (weights[b] as number) * (arch ? 1 : r);
        weight += part;
        moment += part * r;
      }
    }
    list.push({
      middle: [radius * Math.sin(angle) - past, radius * Math.cos(angle)],
      half: [(thickness / 2) * Math.sin(angle), (thickness / 2) * Math.cos(angle)],
      weight,
      moment,
      hoops: hoops === 'none' ? null : heights(Math.max(start, angle - step * (shape.hoopAt ?? 0.5))),
    });
  }
  const crown = (share: number): readonly [number, number] => {
    const [low, high] = [radius - (share * thickness) / 2, radius + (share * thickness) / 2];
    return shape.oculusRad
      ? [low * Math.cos(start), high * Math.cos(start)]
      : [Math.sqrt(low ** 2 - past ** 2), Math.sqrt(high ** 2 - past ** 2)];
  };
  return { sections: list, crown };
}

/** Least thickness at which a thrust fits. */
export function leastThickness(fits: (thickness: number) => boolean): number {
  let [low, high] = [1e-6, 0.35];
  for (let i = 0; i < 26; i++) {
    const middle = (low + high) / 2;
    if (fits(middle)) high = middle;
    else low = middle;
  }
  return high;
}

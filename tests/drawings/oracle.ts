import type { Primitive } from '../../lib/documents/drawing.js';
import { ellipseAt, ellipseTurn } from '../../lib/documents/drawing-bounds.js';
import { segmentAt } from '../../lib/documents/segments.js';
import { elevationFigure } from '../../lib/drawings/elevation-figure.js';
import { masonryReach } from '../../lib/drawings/extent.js';
import { planFigure } from '../../lib/drawings/plan-figure.js';
import { sectionFigure } from '../../lib/drawings/section-figure.js';
import { type SectionOptions, sectionPlane } from '../../lib/drawings/section-plane.js';
import { onPlane } from '../../lib/drawings/slice-upright.js';
import type { Vec2 } from '../../lib/math/vec.js';
import type { HouseSetout } from '../../lib/setout/house.js';
import { levelMaterial, uprightMaterial } from '../../lib/setout/material.js';

/** A figure and, for every place on it, the depth at which material is met. Depths know nothing of edges. */
export interface Pictured {
  readonly name: string;
  readonly primitives: readonly Primitive[];
  readonly depthAt: (at: Vec2) => number;
  /** Where the house lies on it. */
  readonly low: Vec2;
  readonly high: Vec2;
}

export const FAR = 20000;
export const PLAN_CUT = 1200;

/** All six figures of a house, its section through one of its domes. */
export function pictured(house: HouseSetout, options: SectionOptions = {}): Pictured[] {
  const top = Math.max(...house.domes.map((d) => d.topZ)) + 50;
  const bottom = house.house.site.ground + 20;
  const upright = (right: Vec2, middle: number): { low: Vec2; high: Vec2 } => {
    const [left, end] = masonryReach(house, right);
    return { low: [left - middle - 100, bottom], high: [end - middle + 100, top] };
  };
  const looks: readonly Vec2[] = [
    [0, 1],
    [-1, 0],
    [0, -1],
    [1, 0],
  ];
  const elevations = looks.map((look): Pictured => {
    const right: Vec2 = [look[1], -look[0]];
    return {
      name: `looking ${look}`,
      primitives: elevationFigure(house, look),
      depthAt: ([x, z]) =>
        firstOf(levelMaterial(house, z, [x * right[0] - FAR * look[0], x * right[1] - FAR * look[1]], look)),
      ...upright(right, 0),
    };
  });
  const plane = sectionPlane(house, options);
  const section: Pictured = {
    name: 'section',
    primitives: sectionFigure(house, plane).primitives,
    depthAt: (at) => {
      const [x, y, z] = onPlane(plane, at);
      return firstOf(levelMaterial(house, z, [x, y], plane.look));
    },
    ...upright(plane.right, plane.through[0] * plane.right[0] + plane.through[1] * plane.right[1]),
  };
  const [west, east] = masonryReach(house, [1, 0]);
  const [south, north] = masonryReach(house, [0, 1]);
  const plan: Pictured = {
    name: 'plan',
    primitives: planFigure(house, PLAN_CUT).primitives,
    depthAt: (at) => {
      const below = uprightMaterial(house, at).filter(([from]) => from < PLAN_CUT);
      const uppermost = below[below.length - 1];
      return uppermost ? Math.max(0, PLAN_CUT - uppermost[1]) : Number.POSITIVE_INFINITY;
    },
    low: [west - 600, south - 600],
    high: [east + 600, north + 600],
  };
  return [...elevations, section, plan];
}

function firstOf(met: readonly (readonly [number, number])[]): number {
  const first = met.find(([, to]) => to > 0);
  return first ? Math.max(0, first[0]) : Number.POSITIVE_INFINITY;
}

export interface Place {
  readonly at: Vec2;
  /** Square to the stroke. */
  readonly across: Vec2;
}

/** Points along the strokes of some layers. */
export function placesOn(primitives: readonly Primitive[], layers: readonly string[], step: number): Place[] {
  const found: Place[] = [];
  const walk = (curve: (t: number) => Vec2, length: number) => {
    const n = Math.floor(length / step);
    for (let i = 0; i < n; i++) {
      const t = (i + 0.5) / n;
      const [a, b] = [curve(t - 1e-6), curve(t + 1e-6)];
      const l = Math.hypot(b[0] - a[0], b[1] - a[1]);
      found.push({ at: curve(t), across: [-(b[1] - a[1]) / l, (b[0] - a[0]) / l] });
    }
  };
  for (const p of primitives) {
    if (!('layer' in p) || !layers.includes(p.layer)) continue;
    if (p.kind === 'path') {
      for (const s of p.segments) {
        const [a, b] = [segmentAt(s, 0), segmentAt(s, 1)];
        const straight = Math.hypot(b[0] - a[0], b[1] - a[1]);
        walk((t) => segmentAt(s, t), s.kind === 'line' ? straight : s.radius * Math.abs(s.end - s.start));
      }
    } else if (p.kind === 'circle') {
      const { centre, radius } = p;
      const turn = 2 * Math.PI;
      walk((t) => [centre[0] + radius * Math.cos(t * turn), centre[1] + radius * Math.sin(t * turn)], radius * turn);
    } else if (p.kind === 'ellipse') {
      const turn = ellipseTurn(p);
      walk((t) => ellipseAt(p, p.start + t * turn), turn * Math.hypot(...p.major));
    }
  }
  return found;
}

/** Pseudo-random numbers in [0, 1) from a seed (the mulberry32 generator). */
export function randoms(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

import { balanceOf } from '../../lib/masonry/balance.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { circleEdge, type Edge, lineEdge, loopsArea } from '../../lib/math/curves.js';
import { bordersOf, regionOf } from '../../lib/math/planar.js';
import type { Vec2 } from '../../lib/math/vec.js';
import { earlierThan, type HouseSetout } from '../../lib/setout/house.js';

/** Blocks, joints and cast pieces, mm³, each by its own quadrature. */
export function masonryVolume(setout: HouseSetout): number {
  const { envelope, error } = balanceOf(setout, layBlocks(setout));
  return envelope * (1 + error);
}

/** Footing and slab, mm³, from exact areas. */
export function groundVolume(setout: HouseSetout): number {
  const { domes, arches, passages, footings, slabs } = setout;
  const margin = footings[0]?.projection ?? 0;
  const radius = (k: number, which: 'innerRadius' | 'outerRadius') =>
    footings[k]?.[which] ?? (setout.domes[k]?.springingRadius as number) + (setout.domes[k]?.thickness as number);
  const strips = [
    ...arches.flatMap((a) => (a.faceV === null ? [] : [{ ...a, at: a.dome.at, to: a.faceV + margin }])),
    ...passages.map((p) => ({ ...p, at: p.domes[0].at, to: p.distance })),
  ].map(({ at, along, across, section, ring, to }) => {
    const half = section.width / 2 + ring + margin;
    const corner = (u: number, v: number): Vec2 => [
      at[0] + u * across[0] + v * along[0],
      at[1] + u * across[1] + v * along[1],
    ];
    const loop = [corner(-half, 0), corner(half, 0), corner(half, to), corner(-half, to)];
    const holds = ([x, y]: Vec2) => {
      const [dx, dy] = [x - at[0], y - at[1]];
      const v = dx * along[0] + dy * along[1];
      return Math.abs(dx * across[0] + dy * across[1]) < half && v > 0 && v < to;
    };
    return { edges: loop.map((p, k) => lineEdge(p, loop[(k + 1) % 4] as Vec2)), holds };
  });
  const disc = (k: number, which: 'innerRadius' | 'outerRadius') => {
    const at = (domes[k] as (typeof domes)[number]).at;
    const holds = ([x, y]: Vec2) => Math.hypot(x - at[0], y - at[1]) < radius(k, which);
    return { edges: [circleEdge(at, radius(k, which)) as Edge], holds };
  };
  const outer = domes.map((_, k) => disc(k, 'outerRadius'));
  const inner = domes.map((_, k) => disc(k, 'innerRadius'));
  const enclosed = (p: Vec2) =>
    domes.some(
      (dome, k) => inner[k]?.holds(p) && !earlierThan(setout, dome).some((e) => outer[domes.indexOf(e)]?.holds(p)),
    );
  const covered = (p: Vec2) => [...outer, ...strips].some((area) => area.holds(p));
  const all = [...outer, ...inner, ...strips].flatMap((area) => area.edges);
  const areaWhere = (holds: (p: Vec2) => boolean): number => {
    const borders = bordersOf(all, (p) => (holds(p) ? 'in' : null), { tolerance: 1e-6, beside: 1e-3 });
    return loopsArea(regionOf(borders, () => true, 1e-6));
  };
  const slab = slabs.length > 0 ? -(slabs[0]?.bottomZ as number) : 0;
  if (footings.length === 0) return areaWhere(covered) * slab;
  const depth = -(footings[0]?.bottomZ as number);
  return areaWhere((p) => covered(p) && !enclosed(p)) * depth + areaWhere(enclosed) * slab;
}

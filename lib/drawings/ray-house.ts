import { dot2, type Vec2 } from '../math/vec.js';
import { archesOf, type HouseSetout, withSurroundings } from '../setout/house.js';
import { baseHalf } from '../setout/material.js';
import { fromArchFrame } from './arch-places.js';

/**
 * What level rays in one direction can meet: for each ray the domes, openings and passages that lie in its way. A ray meets few of
 * a house's openings, and those that it misses needn't be asked.
 */
export function rayHouse(house: HouseSetout, direction: Vec2): (through: Vec2) => HouseSetout {
  const aside: Vec2 = [-direction[1], direction[0]];
  const domes = house.domes.map((dome) => {
    const footing = house.footings.find((f) => f.domeId === dome.id);
    const slab = house.slabs.find((s) => s.domeId === dome.id);
    const wall = dome.springingRadius + dome.thickness;
    const radius = Math.max(wall, footing?.outerRadius ?? 0, slab?.radius ?? 0);
    const middle = dot2(dome.at, aside);
    const arches = archesOf(house, dome).map((arch) => {
      const more = footing?.projection ?? 0;
      const half = baseHalf(arch, Math.max(0, more));
      // A clear space cuts all that lies before its opening.
      const reach = Math.max(radius, (arch.faceV ?? 0) + Math.max(0, more));
      const corners = [
        [half, 0],
        [-half, 0],
        [half, reach],
        [-half, reach],
      ].map(([u, v]) => dot2(fromArchFrame(arch, u as number, v as number), aside));
      return { arch, low: Math.min(...corners), high: Math.max(...corners) };
    });
    return {
      dome,
      arches,
      low: Math.min(middle - radius, ...arches.map((a) => a.low)),
      high: Math.max(middle + radius, ...arches.map((a) => a.high)),
    };
  });
  const passages = house.passages.map((passage) => {
    const half = baseHalf(passage, Math.max(0, house.footings[0]?.projection ?? 0));
    const corners = [half, -half].flatMap((u) =>
      [0, passage.distance].map((v) => dot2(fromArchFrame(passage, u, v), aside)),
    );
    return { passage, low: Math.min(...corners), high: Math.max(...corners) };
  });
  const known = new Map<string, HouseSetout>();
  return (through) => {
    const at = dot2(through, aside);
    let key = '';
    for (const d of domes) {
      const met = at >= d.low && at <= d.high;
      key += met ? 'D' : '-';
      if (met) for (const a of d.arches) key += at >= a.low && at <= a.high ? 'a' : '-';
    }
    for (const p of passages) key += at >= p.low && at <= p.high ? 'p' : '-';
    const before = known.get(key);
    if (before) return before;
    const met = domes.filter((d) => at >= d.low && at <= d.high);
    const less = withSurroundings({
      ...house,
      domes: met.map((d) => d.dome),
      passages: passages.filter((p) => at >= p.low && at <= p.high).map((p) => p.passage),
      arches: met.flatMap((d) => d.arches.filter((a) => at >= a.low && at <= a.high).map((a) => a.arch)),
    });
    known.set(key, less);
    return less;
  };
}

import { dot2, type Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import { archesOf, earlierThan, type HouseSetout } from '../setout/house.js';
import { baseHalf } from '../setout/material.js';
import { fromArchFrame, type Prism } from './arch-places.js';
import { type QuickLook, type QuickWay, quickLook } from './quick-look.js';

/** What lies in the way of a level ray. */
export interface Way {
  /** The domes, openings and passages that it can meet. */
  readonly house: HouseSetout;
  /** What it shows of a place, where whole walls tell it; the viewer's plane stands at the distance `reach`. */
  quickly(z: number, at: Vec2, reach: number): QuickLook;
}

/** Something of the house between two places across the rays. */
interface Across<T> {
  readonly of: T;
  readonly low: number;
  readonly high: number;
}

/**
 * What level rays in one direction can meet: a ray meets few of a house's openings, and those that it misses needn't
 * be asked.
 */
export function rayHouse(house: HouseSetout, direction: Vec2): (through: Vec2) => Way {
  const aside: Vec2 = [-direction[1], direction[0]];
  const hull = <T>(of: T, places: readonly number[]): Across<T> => ({
    of,
    low: Math.min(...places),
    high: Math.max(...places),
  });
  const box = <T extends Prism>(prism: T, half: number, reach: number): Across<T> =>
    hull(
      prism,
      [half, -half].flatMap((u) => [0, reach].map((v) => dot2(fromArchFrame(prism, u, v), aside))),
    );
  const domes = house.domes.map((dome) => {
    const footing = house.footings.find((f) => f.domeId === dome.id);
    const slab = house.slabs.find((s) => s.domeId === dome.id);
    const radius = Math.max(dome.springingRadius + dome.thickness, footing?.outerRadius ?? 0, slab?.radius ?? 0);
    const middle = dot2(dome.at, aside);
    const more = Math.max(0, footing?.projection ?? 0);
    // A clear space cuts all that lies before its opening.
    const arches = archesOf(house, dome).map((arch) =>
      box(arch, baseHalf(arch, more), Math.max(radius, (arch.faceV ?? 0) + more)),
    );
    const reach = hull(dome, [middle - radius, middle + radius, ...arches.flatMap((a) => [a.low, a.high])]);
    return { ...reach, arches, earlier: earlierThan(house, dome) };
  });
  const beside = Math.max(0, house.footings[0]?.projection ?? 0);
  const passages = house.passages.map((p) => box(p, baseHalf(p, beside), p.distance));

  const all = [...domes, ...domes.flatMap((d) => d.arches), ...passages];
  const stops = [...new Set(all.flatMap((a) => [a.low, a.high]))].sort((a, b) => a - b);
  const strips = new Map<number, Way>();
  const wayIn = (strip: number): Way => {
    const [from, to] = [stops[strip - 1] ?? Number.NEGATIVE_INFINITY, stops[strip] ?? Number.POSITIVE_INFINITY];
    const met = (a: Across<unknown>) => a.low <= to && a.high >= from;
    const those = domes.filter(met).map((d) => ({ ...d, arches: d.arches.filter(met).map((a) => a.of) }));
    const vaults = passages.filter(met).map((p) => p.of);
    const arches = those.flatMap((d) => d.arches);
    const between = vaults.map((prism) => ({ prism, end: prism.distance }));
    const quick: QuickWay = {
      walls: those.map((d) => ({ dome: d.of, earlier: d.earlier })),
      clears: [...arches.map((prism) => ({ prism, end: clearEnd(prism) })), ...between],
      vaults: [
        ...those.flatMap((d) =>
          d.arches.flatMap((prism) =>
            prism.faceV === null ? [] : [{ prism, end: prism.faceV, rooms: [d.of], earlier: d.earlier }],
          ),
        ),
        ...between.map((vault) => ({ ...vault, rooms: vault.prism.domes, earlier: [] })),
      ],
    };
    return {
      house: { ...house, domes: those.map((d) => d.of), passages: vaults, arches },
      quickly: (z, at, reach) => quickLook(quick, z, at, direction, reach),
    };
  };
  return (through) => {
    const at = dot2(through, aside);
    let [low, high] = [0, stops.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((stops[middle] as number) > at) high = middle;
      else low = middle + 1;
    }
    const before = strips.get(low);
    if (before) return before;
    const way = wayIn(low);
    strips.set(low, way);
    return way;
  };
}

/** How far from its dome's axis an opening's clear space may take from a wall. */
function clearEnd({ clear, dome, faceV }: ArchSetout): number {
  return clear.kind === 'plane' ? clear.v : (faceV ?? dome.springingRadius + dome.thickness);
}

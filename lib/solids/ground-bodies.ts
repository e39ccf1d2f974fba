import { hypot } from '../math/elementary.js';
import type { HouseSetout } from '../setout/house.js';
import { baseHalf } from '../setout/material.js';
import { frameOf, groundUnder, OVERRUN } from './arch-bodies.js';
import type { Solid, SolidScope } from './kernel.js';
import { type Outline, outlineOf, rectangle } from './outline.js';
import { passageFrame } from './passage-bodies.js';
import type { Site } from './site.js';

/** What the whole house stands on, in bodies taller than what they make: levels are cut once, by `level`. */
export interface Ground {
  readonly footing: { readonly bottomZ: number } | null;
  readonly slab: { readonly bottomZ: number } | null;
  /** Under all walls, jambs and passages with what they enclose, as wide as the footing or, without it, the walls. */
  plate(part: GroundPart): Solid;
  /** What the footing encloses under each dome: inside its ring, outside the footings of earlier domes. */
  enclosed(side: string): Solid[];
  /** The solid between two levels. */
  level(part: string, solid: Solid, levels: readonly [bottom: number, top: number], names: FaceNames): Solid;
  /** All of the ground between two levels, whether built upon or not. */
  everywhere(part: string, levels: readonly [bottom: number, top: number], names: FaceNames): Solid;
}

export type GroundPart = 'footing' | 'slab';

export interface FaceNames {
  readonly bottom: string;
  readonly side: string;
  readonly top: string;
}

const allOf = (name: string): FaceNames => ({ bottom: name, side: name, top: name });

/** Down to where walls, barrels and passages run before the ground is joined to them: to the middle of a footing that
 * is wider than the wall; without footing past the level where all is cut. */
export function bottomOf({ footings: [footing], slabs: [slab] }: HouseSetout): number {
  if (!footing) return (slab?.bottomZ ?? 0) - OVERRUN;
  return footing.projection > 0 ? Math.max(footing.bottomZ, slab?.bottomZ ?? footing.bottomZ) / 2 : 0;
}

/** An upright cylinder from `bottom` to `top`. */
export function disc(radius: number, bottom: number, top: number, names: FaceNames): Outline {
  return outlineOf(
    [names.bottom, [[0, bottom]]],
    [names.side, [[radius, bottom]]],
    [names.top, [[radius, top]]],
    ['axis', [[0, top]]],
  );
}

export function groundOf(scope: SolidScope, setout: HouseSetout, sites: readonly Site[]): Ground {
  const { footings, slabs, arches, passages } = setout;
  const [footing = null] = footings;
  const [slab = null] = slabs;
  const projection = footing?.projection ?? 0;
  const lowest = Math.min(0, footing?.bottomZ ?? 0, slab?.bottomZ ?? 0);
  const radiiOf = ({ dome }: Site) => {
    const outer = dome.springingRadius + dome.thickness;
    return footings.find((f) => f.domeId === dome.id) ?? { innerRadius: outer, outerRadius: outer };
  };
  const cylinder = (site: Site, radius: number, past: number, name: string): Solid => {
    const outline = disc(radius, lowest - past, past, allOf(name));
    return scope.revolve(`${site.dome.id}: ground`, outline, site.facets.segments, site.dome.at);
  };
  const level = (part: string, solid: Solid, levels: readonly [number, number], names: FaceNames): Solid =>
    scope.intersect(part, [solid, everywhere(part, levels, names)]);
  const everywhere = (part: string, [bottom, top]: readonly [number, number], names: FaceNames): Solid => {
    const { min, max } = planBox(setout);
    const frame = { at: [0, 0], along: [0, 1], across: [1, 0] } as const;
    const outline = rectangle([min[0], bottom], [max[0], top], names);
    return scope.prism(part, outline, frame, [min[1], max[1]], [names.side, names.side]);
  };
  return {
    footing,
    slab,
    level,
    everywhere,
    plate(part) {
      const name = `${part}-side`;
      const z = [lowest - OVERRUN, OVERRUN] as const;
      const strip = (from: Parameters<typeof groundUnder>[1]) => groundUnder(scope, from, z, name);
      return scope.union(part, [
        ...sites.map((site) => cylinder(site, radiiOf(site).outerRadius, OVERRUN, name)),
        ...arches.flatMap((a) => {
          if (a.faceV === null) return [];
          return [strip({ id: a.id, frame: frameOf(a), half: baseHalf(a, projection), to: a.faceV + projection })];
        }),
        ...passages.map((p) =>
          strip({ id: p.id, frame: passageFrame(p), half: baseHalf(p, projection), to: p.distance }),
        ),
      ]);
    },
    enclosed: (side) =>
      sites.map((site) =>
        scope.subtract(`${site.dome.id}: ground`, cylinder(site, radiiOf(site).innerRadius, 2 * OVERRUN, side), [
          ...site.earlier.map((earlier) => cylinder(earlier, radiiOf(earlier).outerRadius, 3 * OVERRUN, side)),
        ]),
      ),
  };
}

/** The one footing of the house: its plate less what it encloses. */
export function footingPart(scope: SolidScope, ground: Ground): Solid {
  const part = 'footing';
  const { bottomZ } = ground.footing as NonNullable<Ground['footing']>;
  const ring = scope.subtract(part, ground.plate(part), ground.enclosed('footing-side'));
  return ground.level(part, ring, [bottomZ, 0], { bottom: 'footing-bottom', side: 'footing-side', top: 'footing-top' });
}

/** The one slab of the house: in what the footing encloses, or under everything where there is no footing. */
export function slabPart(scope: SolidScope, ground: Ground): Solid {
  const part = 'slab';
  const { bottomZ } = ground.slab as NonNullable<Ground['slab']>;
  const area = ground.footing ? scope.union(part, ground.enclosed('slab-side')) : ground.plate(part);
  return ground.level(part, area, [bottomZ, 0], { bottom: 'slab-bottom', side: 'slab-side', top: 'floor' });
}

/** A box in plan over everything that stands or lies in the ground. */
function planBox({ domes, arches, footings: [footing] }: HouseSetout): {
  min: [number, number];
  max: [number, number];
} {
  const projection = footing?.projection ?? 0;
  const reaches = [
    ...domes.map((d) => ({ at: d.at, far: d.springingRadius + d.thickness + Math.max(0, projection) })),
    ...arches.map((a) => ({ at: a.dome.at, far: hypot(baseHalf(a, projection), (a.faceV ?? 0) + projection) })),
  ];
  const side = (axis: 0 | 1, sign: 1 | -1) =>
    sign * Math.max(...reaches.map(({ at, far }) => sign * at[axis] + far)) + sign * OVERRUN;
  return { min: [side(0, -1), side(1, -1)], max: [side(0, 1), side(1, 1)] };
}

import { hypot } from '../math/elementary.js';
import type { FootingSetout, HouseSetout } from '../setout/house.js';
import { baseHalf } from '../setout/material.js';
import { frameOf, groundUnder, OVERRUN } from './arch-bodies.js';
import type { Solid, SolidScope } from './kernel.js';
import { type Outline, outlineOf, rectangle } from './outline.js';
import { passageFrame } from './passage-bodies.js';
import type { Site } from './site.js';

export interface FaceNames {
  readonly bottom: string;
  readonly side: string;
  readonly top: string;
}

type Levels = readonly [bottom: number, top: number];

/** What the whole house stands on. */
export interface Ground {
  readonly footing: { readonly bottomZ: number } | null;
  readonly slab: { readonly bottomZ: number } | null;
  /**
   * Level down to which walls, barrels and passages run before the ground is joined to them: the middle of a footing
   * that is wider than the wall; without footing past the level where all is cut.
   */
  readonly bottom: number;
  /**
   * Under all walls, jambs and passages with what they enclose, from a level up to the floor; as wide as the footing
   * or, without one, as the walls.
   */
  plate(part: 'footing' | 'slab'): Solid;
  /** What the footing encloses between two levels: inside the ring of each dome, outside those of earlier ones. */
  enclosed(part: string, levels: Levels, names: FaceNames): Solid;
  /** Everything between two levels, whether built upon or not. */
  everywhere(part: string, levels: Levels, names: FaceNames): Solid;
}

function bottomOf({ footings: [footing], slabs: [slab] }: HouseSetout): number {
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

const NAMES: Readonly<Record<'footing' | 'slab', FaceNames>> = {
  footing: { bottom: 'footing-bottom', side: 'footing-side', top: 'footing-top' },
  slab: { bottom: 'slab-bottom', side: 'slab-side', top: 'floor' },
};

export function groundOf(scope: SolidScope, setout: HouseSetout, sites: readonly Site[]): Ground {
  const [footing = null] = setout.footings;
  const [slab = null] = setout.slabs;
  const cylinder = ({ dome, facets }: Site, radius: number, [bottom, top]: Levels, names: FaceNames): Solid =>
    scope.revolve(`${dome.id}: ground`, disc(radius, bottom, top, names), facets.segments, dome.at);
  const plates = new Map<string, Solid>();
  return {
    footing,
    slab,
    bottom: bottomOf(setout),
    plate(part) {
      const known = plates.get(part);
      if (known) return known;
      const levels = [(part === 'slab' ? slab : footing)?.bottomZ ?? 0, 0] as const;
      const discs = sites.map((site) => cylinder(site, outerRadius(site), levels, NAMES[part]));
      const plate = scope.union(part, [...discs, ...strips(scope, setout, levels, NAMES[part])]);
      plates.set(part, plate);
      return plate;
    },
    enclosed(part, [bottom, top], names) {
      const past = [bottom - OVERRUN, top + OVERRUN] as const;
      const discs = sites.map((site) => {
        const inner = cylinder(site, (site.footing as FootingSetout).innerRadius, [bottom, top], names);
        const others = site.earlier.map((earlier) => cylinder(earlier, outerRadius(earlier), past, names));
        return scope.subtract(part, inner, others);
      });
      return scope.union(part, discs);
    },
    everywhere(part, [bottom, top], names) {
      const { min, max } = planBox(setout);
      const frame = { at: [0, 0], along: [0, 1], across: [1, 0] } as const;
      const outline = rectangle([min[0], bottom], [max[0], top], names);
      return scope.prism(part, outline, frame, [min[1], max[1]], [names.side, names.side]);
    },
  };
}

const outerRadius = ({ dome, footing }: Site): number => footing?.outerRadius ?? dome.springingRadius + dome.thickness;

/** Under barrels and passages. */
function strips(scope: SolidScope, { footings, arches, passages }: HouseSetout, levels: Levels, names: FaceNames) {
  const projection = footings[0]?.projection ?? 0;
  const barrels = arches.flatMap((arch) => {
    if (arch.faceV === null) return [];
    return [{ id: arch.id, frame: frameOf(arch), half: baseHalf(arch, projection), to: arch.faceV + projection }];
  });
  const vaults = passages.map((passage) => ({
    id: passage.id,
    frame: passageFrame(passage),
    half: baseHalf(passage, projection),
    to: passage.distance,
  }));
  return [...barrels, ...vaults].map((strip) => groundUnder(scope, strip, levels, names));
}

/** The one footing of the house: its plate less what it encloses. */
export function footingPart(scope: SolidScope, ground: Ground): Solid {
  const { bottomZ } = ground.footing as NonNullable<Ground['footing']>;
  const side = { bottom: 'footing-side', side: 'footing-side', top: 'footing-side' };
  const enclosed = ground.enclosed('footing', [bottomZ - OVERRUN, OVERRUN], side);
  return scope.subtract('footing', ground.plate('footing'), [enclosed]);
}

/** The one slab of the house: in what the footing encloses, or under everything where there is no footing. */
export function slabPart(ground: Ground): Solid {
  const { bottomZ } = ground.slab as NonNullable<Ground['slab']>;
  return ground.footing ? ground.enclosed('slab', [bottomZ, 0], NAMES.slab) : ground.plate('slab');
}

/** A box in plan over everything that stands or lies in the ground. */
function planBox({
  domes,
  arches,
  footings: [footing],
}: HouseSetout): Record<'min' | 'max', readonly [number, number]> {
  const projection = footing?.projection ?? 0;
  const reaches = [
    ...domes.map((d) => ({ at: d.at, far: d.springingRadius + d.thickness + Math.max(0, projection) })),
    ...arches.map((a) => ({ at: a.dome.at, far: hypot(baseHalf(a, projection), (a.faceV ?? 0) + projection) })),
  ];
  const side = (axis: 0 | 1, sign: 1 | -1) =>
    sign * (Math.max(...reaches.map(({ at, far }) => sign * at[axis] + far)) + OVERRUN);
  return { min: [side(0, -1), side(1, -1)], max: [side(0, 1), side(1, 1)] };
}

import type { Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, type HouseSetout } from '../setout/house.js';
import { clearSpace, OVERRUN } from './arch-bodies.js';
import { type DomeFacets, domeFacets, outerBody, roomBody } from './dome-outlines.js';
import { footingPlate, type Ground } from './ground-bodies.js';
import type { Solid, SolidScope } from './kernel.js';
import type { Stretch } from './outline.js';

/** One dome with all that belongs to it, and the bodies that its whole and its parts share, made when asked for. */
export interface Site {
  readonly dome: DomeSetout;
  readonly facets: DomeFacets;
  readonly arches: readonly ArchSetout[];
  readonly ground: Ground;
  /** How deep walls and barrels run before the ground is joined to them. */
  readonly bottom: number;
  /** The dome outside, filled to the axis, down to `bottom`. */
  outer(): Solid;
  /** The room and its bore, open well below everything that it trims. */
  openRoom(): Solid;
  footingPlate(): Solid;
  /** An arch's clear space; a sill on the floor is cut to the threshold's level, where its face has that name. */
  clear(arch: ArchSetout, threshold: readonly [level: number, name: string]): Solid;
}

export function siteOf(scope: SolidScope, setout: HouseSetout, dome: DomeSetout, surface: number): Site {
  const arches = archesOf(setout, dome);
  const facets = domeFacets(dome, surface);
  const ground: Ground = {
    dome,
    barrels: arches.filter((a) => a.faceV !== null),
    footing: setout.footings.find((f) => f.domeId === dome.id) ?? null,
    slab: setout.slabs.find((s) => s.domeId === dome.id) ?? null,
    segments: facets.segments,
  };
  const bottom = bottomOf(ground);
  const made = new Map<string, Solid>();
  const once = (key: string, make: () => Solid): Solid => {
    const solid = made.get(key) ?? make();
    made.set(key, solid);
    return solid;
  };
  const turned = (part: string, outline: Parameters<SolidScope['revolve']>[1]) =>
    once(part, () => scope.revolve(`${dome.id}: ${part}`, outline, facets.segments, dome.at));
  return {
    dome,
    facets,
    arches,
    ground,
    bottom,
    outer: () => turned('outside', outerBody(facets, bottom)),
    openRoom: () => turned('room', roomBody(facets, ...openFloor(dome), boreTop(dome))),
    footingPlate: () => once('footing', () => footingPlate(scope, ground)),
    clear(arch, threshold) {
      const { sill } = arch.section;
      const from = sill > 0 ? ([sill, `opening:${arch.id}`] as const) : threshold;
      return once(`${arch.id} from ${from[0]}`, () => clearSpace(scope, arch, facets, from));
    },
  };
}

export const boreTop = (dome: DomeSetout): number => dome.topZ + OVERRUN;

/** To the middle of the footing where this is wider than the wall; without footing past the level where all is cut. */
function bottomOf({ footing, slab }: Ground): number {
  if (!footing) return (slab?.bottomZ ?? 0) - OVERRUN;
  return footing.projection > 0 ? Math.max(footing.bottomZ, slab?.bottomZ ?? footing.bottomZ) / 2 : 0;
}

function openFloor({ springingRadius }: DomeSetout): [under: Stretch[], foot: Vec2] {
  return [[['base', [[0, -2 * OVERRUN]]]], [springingRadius, -2 * OVERRUN]];
}

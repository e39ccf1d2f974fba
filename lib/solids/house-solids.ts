import { DEFAULT_SURFACE } from '../base/tolerances.js';
import type { Mesh } from '../documents/mesh.js';
import type { Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, type HouseSetout } from '../setout/house.js';
import { archCutter, archPart, barrelPrism, clearSpace, OVERRUN } from './arch-bodies.js';
import {
  crownPiece,
  type DomeFacets,
  domeFacets,
  outerBody,
  roomBody,
  shellRing,
  skewbackRing,
  stemWall,
  wallAndShell,
} from './dome-outlines.js';
import { disc, footingPart, footingPlate, type Ground, levelBox, slabPart } from './ground-bodies.js';
import type { Kernel, Solid, SolidScope } from './kernel.js';
import type { Outline, Stretch } from './outline.js';

export interface SolidOptions {
  /** Greatest distance between a facet and the surface that it stands for, mm. */
  readonly surface?: number;
}

export interface HouseSolids {
  /** The house as one closed solid. */
  readonly whole: Mesh;
  /**
   * Named parts that fill the whole and overlap in nothing: `<dome>:stem-wall` (where a skewback parts it from
   * the shell), `<dome>:shell`, `<dome>:skewback`, `<dome>:plug` or `<dome>:curb`, `arch:<opening>`,
   * `<dome>:footing`, `<dome>:slab`.
   */
  readonly parts: readonly Mesh[];
}

/**
 * The house in facets. Faces are named `intrados`, `extrados`, `bed`, `curb-top`, `curb-side`, `bore`,
 * `arch:<opening>`, `face:<opening>`, `opening:<opening>`, `niche-back:<opening>`, `floor`, `base` and after
 * footing and slab. Throws an `Error` that names the part when the kernel fails on it.
 */
export function houseSolids(kernel: Kernel, setout: HouseSetout, options: SolidOptions = {}): HouseSolids {
  const { surface = DEFAULT_SURFACE } = options;
  return kernel.scope((scope) => {
    const sites = setout.domes.map((dome) => siteOf(setout, dome, surface));
    const outers = sites.map((site) => {
      const { dome, facets, ground } = site;
      return scope.revolve(`${dome.id}: outside`, outerBody(facets, bottomOf(ground)), facets.segments, dome.at);
    });
    const wholes = sites.map((site, i) => wholeDome(scope, site, outers[i] as Solid));
    return {
      whole: scope.mesh('house', scope.union('house', wholes)),
      parts: sites.flatMap((site, i) => scope.scope((inner) => domeParts(inner, site, outers[i] as Solid))),
    };
  });
}

/** One dome with all that belongs to it. */
interface Site {
  readonly dome: DomeSetout;
  readonly facets: DomeFacets;
  readonly arches: readonly ArchSetout[];
  readonly ground: Ground;
}

function siteOf(setout: HouseSetout, dome: DomeSetout, surface: number): Site {
  const arches = archesOf(setout, dome);
  const facets = domeFacets(dome, surface);
  const ground: Ground = {
    dome,
    barrels: arches.filter((a) => a.faceV !== null),
    footing: setout.footings.find((f) => f.domeId === dome.id) ?? null,
    slab: setout.slabs.find((s) => s.domeId === dome.id) ?? null,
    segments: facets.segments,
  };
  return { dome, facets, arches, ground };
}

const boreTop = (dome: DomeSetout): number => dome.topZ + OVERRUN;

/** Outer bodies, barrels and ground in one, less rooms and clear spaces. */
function wholeDome(scope: SolidScope, site: Site, outer: Solid): Solid {
  const { dome, facets, arches, ground } = site;
  const { footing, slab } = ground;
  const part = `${dome.id}: whole`;
  const turned = (outline: Outline) => scope.revolve(part, outline, facets.segments, dome.at);
  const bottom = bottomOf(ground);
  const solid = [outer, ...ground.barrels.map((arch) => barrelPrism(scope, arch, bottom, facets.sagitta))];
  const hollow = [
    turned(roomBody(facets, ...roomFloor(site), boreTop(dome))),
    ...arches.map((arch) => clearSpace(scope, arch, facets, footing || slab ? 0 : -OVERRUN)),
  ];
  if (footing) {
    solid.push(footingPlate(scope, ground, footing));
    const names = { bottom: 'slab-bottom', side: 'footing-side', top: 'slab-bottom' };
    const below = footing.bottomZ - OVERRUN;
    if (slab && slab.bottomZ > footing.bottomZ) hollow.push(turned(disc(slab.radius, below, slab.bottomZ, names)));
    if (slab && slab.bottomZ < footing.bottomZ) solid.push(turned(disc(slab.radius, slab.bottomZ, bottom, names)));
  } else {
    const names = { bottom: 'base', side: 'base', top: 'base' };
    hollow.push(levelBox(scope, part, ground, [bottom - OVERRUN, slab?.bottomZ ?? 0], names));
  }
  return scope.subtract(part, scope.union(part, solid), hollow);
}

/**
 * How deep walls and barrels run before the ground is joined: to the middle of the footing where this is
 * wider than the wall; past the level where all is cut when there is no footing.
 */
function bottomOf({ footing, slab }: Ground): number {
  if (!footing) return (slab?.bottomZ ?? 0) - OVERRUN;
  return footing.projection > 0 ? Math.max(footing.bottomZ, slab?.bottomZ ?? footing.bottomZ) / 2 : 0;
}

function roomFloor({ dome, ground }: Site): [under: Stretch[], foot: Vec2] {
  const { footing, slab } = ground;
  const { springingRadius } = dome;
  if (slab) return [[['floor', [[0, 0]]]], [springingRadius, 0]];
  if (!footing) return openFloor(dome);
  const low = footing.bottomZ - OVERRUN;
  const { innerRadius } = footing;
  return [
    [
      ['base', [[0, low]]],
      ['footing-side', [[innerRadius, low]]],
      ['footing-top', [[innerRadius, 0]]],
    ],
    [springingRadius, 0],
  ];
}

/** A room without a floor, open well below everything that it trims. */
function openFloor({ springingRadius }: DomeSetout): [under: Stretch[], foot: Vec2] {
  return [[['base', [[0, -2 * OVERRUN]]]], [springingRadius, -2 * OVERRUN]];
}

function domeParts(scope: SolidScope, site: Site, outer: Solid): Mesh[] {
  const { dome, facets, arches, ground } = site;
  const { segments } = facets;
  const turned = (part: string, outline: Outline) => scope.revolve(part, outline, segments, dome.at);
  const cutters = arches.map((arch) => ({
    arch,
    solid: archCutter(scope, arch, { grow: 0, sagitta: facets.sagitta, name: `arch:${arch.id}` }),
  }));
  const parts: Mesh[] = [];
  const add = (part: string, solid: Solid) => parts.push(scope.mesh(part, solid));
  const addRing = (part: string, outline: Outline | null) => {
    if (!outline) return;
    const heights = outline.points.map((p) => p[1]);
    const [low, high] = [Math.min(...heights), Math.max(...heights)];
    const near = cutters.filter(({ arch }) => arch.baseZ < high && arch.topZ > low);
    add(
      part,
      scope.subtract(
        part,
        turned(part, outline),
        near.map((c) => c.solid),
      ),
    );
  };
  if (dome.skewback) {
    addRing(`${dome.id}:stem-wall`, stemWall(facets));
    addRing(`${dome.id}:skewback`, skewbackRing(facets));
    addRing(`${dome.id}:shell`, shellRing(facets));
  } else addRing(`${dome.id}:shell`, wallAndShell(facets));
  addRing(`${dome.id}:${dome.curb ? 'curb' : 'plug'}`, crownPiece(facets));

  const room = once(() => turned(`${dome.id}: room`, roomBody(facets, ...openFloor(dome), boreTop(dome))));
  for (const arch of arches) add(`arch:${arch.id}`, archPart(scope, arch, facets, { room, outer }));
  if (ground.footing) add(`${dome.id}:footing`, footingPart(scope, ground, ground.footing));
  if (ground.slab) add(`${dome.id}:slab`, slabPart(scope, ground, ground.slab));
  return parts;
}

function once<T>(make: () => T): () => T {
  let made: { value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

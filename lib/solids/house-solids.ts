import { DEFAULT_SURFACE } from '../base/tolerances.js';
import type { Mesh } from '../documents/mesh.js';
import type { HouseSetout } from '../setout/house.js';
import { barrelPrism, OVERRUN } from './arch-bodies.js';
import { roomBody } from './dome-outlines.js';
import { domeParts } from './dome-parts.js';
import { disc, levelBox } from './ground-bodies.js';
import type { Kernel, Solid, SolidScope } from './kernel.js';
import type { Outline } from './outline.js';
import { boreTop, type Site, siteOf } from './site.js';

export interface SolidOptions {
  /** Greatest distance between a facet and the surface that it stands for, mm. */
  readonly surface?: number;
}

export interface HouseSolids {
  /** The house as one closed solid. */
  readonly whole: Mesh;
  /**
   * Named parts that fill the whole and overlap in nothing: `<dome>:shell` with its stem wall (`<dome>:stem-wall`
   * apart where a skewback lies between), `<dome>:skewback`, `<dome>:plug` or `<dome>:curb`, `arch:<opening>`,
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
    const sites = setout.domes.map((dome) => siteOf(scope, setout, dome, surface));
    const wholes = sites.map((site) => wholeDome(scope, site));
    return {
      whole: scope.mesh('house', scope.union('house', wholes)),
      parts: sites.flatMap((site) => scope.scope((inner) => domeParts(inner, site))),
    };
  });
}

/** Outer bodies, barrels and ground in one, less rooms and clear spaces. */
function wholeDome(scope: SolidScope, site: Site): Solid {
  const { dome, facets, arches, ground, bottom } = site;
  const { footing, slab } = ground;
  const part = `${dome.id}: whole`;
  const turned = (outline: Outline) => scope.revolve(part, outline, facets.segments, dome.at);
  const solid = [
    site.outer(),
    ...ground.barrels.map((arch) => barrelPrism(scope, arch, [bottom, `arch:${arch.id}`], facets.sagitta)),
  ];
  const threshold = slab
    ? ([0, 'floor'] as const)
    : footing
      ? ([0, 'footing-top'] as const)
      : ([-OVERRUN, 'base'] as const);
  const hollow = arches.map((arch) => site.clear(arch, threshold));
  if (footing) {
    solid.push(site.footingPlate());
    const names = { bottom: 'slab-bottom', side: 'footing-side', top: 'slab-bottom' };
    const below = footing.bottomZ - OVERRUN;
    if (slab && slab.bottomZ > footing.bottomZ) hollow.push(turned(disc(slab.radius, below, slab.bottomZ, names)));
    if (slab && slab.bottomZ < footing.bottomZ) solid.push(turned(disc(slab.radius, slab.bottomZ, bottom, names)));
  } else {
    const names = { bottom: 'base', side: 'base', top: 'base' };
    hollow.push(levelBox(scope, part, ground, [bottom - OVERRUN, slab?.bottomZ ?? 0], names));
  }
  // The small cuts first: it takes half the time of one difference with the room among them.
  const pierced = scope.subtract(part, scope.union(part, solid), hollow);
  return scope.subtract(part, pierced, [roomOf(scope, site)]);
}

/** The room down to its floor, or down through the footing's ring where there is no slab. */
function roomOf(scope: SolidScope, site: Site): Solid {
  const { dome, facets, ground } = site;
  const { footing, slab } = ground;
  if (!slab && !footing) return site.openRoom();
  const turned = (...under: Parameters<typeof roomBody>[1]) =>
    scope.revolve(
      `${dome.id}: room`,
      roomBody(facets, under, [dome.springingRadius, 0], boreTop(dome)),
      facets.segments,
      dome.at,
    );
  if (slab || !footing) return turned(['floor', [[0, 0]]]);
  const low = footing.bottomZ - OVERRUN;
  return turned(
    ['footing-bottom', [[0, low]]],
    ['footing-side', [[footing.innerRadius, low]]],
    ['footing-top', [[footing.innerRadius, 0]]],
  );
}

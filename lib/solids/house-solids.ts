import type { Memory } from '../base/memory.js';
import { DEFAULT_SURFACE } from '../base/tolerances.js';
import type { Mesh } from '../documents/mesh.js';
import { domeContent } from '../setout/content.js';
import { type HouseSetout, passagesOf } from '../setout/house.js';
import { domeParts } from './dome-parts.js';
import { footingPart, groundOf, slabPart } from './ground-bodies.js';
import type { Kernel } from './kernel.js';
import { linkOf, passagePart } from './passage-bodies.js';
import { sitesOf } from './site.js';
import { wholeHouse } from './whole-house.js';

export interface SolidOptions {
  /** Greatest distance between a facet and the surface that it stands for, mm. */
  readonly surface?: number;
  /** Of solids that were made before. */
  readonly memory?: Memory;
}

export interface HouseSolids {
  /** The house as one closed solid; domes that don't touch are pieces of it. */
  readonly whole: Mesh;
  /**
   * Named parts that fill the whole and overlap in nothing: `<dome>:shell` with its stem wall (`<dome>:stem-wall`
   * apart where a skewback lies between), `<dome>:skewback`, `<dome>:plug` or `<dome>:curb`, `arch:<opening>`,
   * `passage:<id>`, `footing`, `slab`. A shell that earlier domes cut deeply may be in several closed pieces.
   */
  readonly parts: readonly Mesh[];
}

/**
 * The house in facets. Faces are named `intrados`, `extrados`, `bed`, `curb-top`, `curb-side`, `bore`,
 * `arch:<opening>`, `face:<opening>`, `opening:<opening>`, `niche-back:<opening>`, `passage:<id>` outside and
 * `vault:<id>` inside, `floor`, `base` and after footing and slab. Throws an `Error` that names the part when the
 * kernel fails on it.
 */
export function houseSolids(kernel: Kernel, setout: HouseSetout, options: SolidOptions = {}): HouseSolids {
  const { surface = DEFAULT_SURFACE, memory } = options;
  return kernel.scope((scope) => {
    const sites = sitesOf(scope, setout, surface);
    const links = setout.passages.map((passage) => linkOf(passage, sites));
    const ground = groundOf(scope, setout, sites);
    const whole = scope.scope((inner) => wholeHouse(inner, sites, links, ground));
    const parts = sites.flatMap((site) => {
      const make = () => scope.scope((inner) => domeParts(inner, site, passagesOf(setout, site.dome)));
      // Domes that abut it later tell of its seam alone.
      const content = () => `parts ${surface} ${site.seam} ${domeContent(setout, site.dome)}`;
      return memory ? memory.recall(content(), make) : make();
    });
    for (const link of links)
      parts.push(scope.scope((inner) => inner.mesh(`passage:${link.passage.id}`, passagePart(inner, link))));
    if (ground.footing) parts.push(scope.scope((inner) => inner.mesh('footing', footingPart(inner, ground))));
    if (ground.slab) parts.push(scope.scope((inner) => inner.mesh('slab', slabPart(ground))));
    return { whole, parts };
  });
}

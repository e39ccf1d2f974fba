import { hypot } from '../../math/elementary.js';
import type { Solid, SolidScope } from '../../solids/kernel.js';
import { rectangle } from '../../solids/outline.js';
import type { Site } from '../../solids/site.js';
import type { HeightCut } from './height-cuts.js';
import type { StandingPegs } from './peg-places.js';
import { type PegBodies, standingPegBodies } from './pegs.js';
import type { PrintSizes } from './sizes.js';
import { wallInside } from './wall-inside.js';

/** A part in layers from below, parted at its levels: pegs stand on each and fit the sockets of the next. */
export function layersOf(
  scope: SolidScope,
  part: Solid,
  cuts: readonly HeightCut[],
  sites: readonly Site[],
  sizes: PrintSizes,
): Solid[] {
  let rest = part;
  const layers = cuts.map(({ z, pegs }): Solid => {
    const bodies = sites.flatMap((site, i) => {
      const own = pegs[i];
      return own && own.at.length > 0 ? [pegsOn(scope, site, own, sizes)] : [];
    });
    const all = (kind: keyof PegBodies) => bodies.flatMap((body) => body[kind]);
    const above = aboveOf(scope, sites, z, sizes);
    const lower = scope.subtract(part.part, rest, [above]);
    const upper = scope.intersect(part.part, [rest, above]);
    rest = scope.subtract(part.part, scope.union(part.part, [upper, ...all('pads')]), all('sockets'));
    return scope.union(part.part, [lower, ...all('pegs')]);
  });
  return [...layers, rest];
}

/** Pegs on a level of a dome's wall, and what carries and takes them. */
export const pegsOn = (scope: SolidScope, { dome, facets }: Site, pegs: StandingPegs, sizes: PrintSizes): PegBodies =>
  standingPegBodies(scope, dome, pegs, sizes, wallInside(scope, dome, facets, pegs.level, sizes));

/** All above a level. */
function aboveOf(scope: SolidScope, sites: readonly Site[], z: number, { bed }: PrintSizes): Solid {
  const far = 2 * (Math.max(...sites.map(({ dome }) => hypot(...dome.at))) + Math.max(...bed) + bed[0]);
  const names = { bottom: 'cut', side: 'cut', top: 'cut' };
  return scope.slab('cut', rectangle([-far, -far], [far, far], names), [z, z + far]);
}

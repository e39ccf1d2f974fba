import type { Mesh } from '../documents/mesh.js';
import { barrelPrism, type Level, OVERRUN } from './arch-bodies.js';
import { withCaps } from './cap.js';
import { roomBody, wholeWall } from './dome-outlines.js';
import type { Ground } from './ground-bodies.js';
import type { Solid, SolidScope } from './kernel.js';
import type { Stretch } from './outline.js';
import { type Link, passageClear, passagePrism } from './passage-bodies.js';
import { boreTop, capOf, type Site } from './site.js';

/** Outsides, barrels, passages and ground in one, less rooms and clear spaces. */
export function wholeHouse(scope: SolidScope, sites: readonly Site[], links: readonly Link[], ground: Ground): Mesh {
  const lower = scope.mesh('house', lowerHouse(scope, sites, links, ground));
  const caps = sites.flatMap((site) => capOf(site, wholeWall(site.facets)) ?? []);
  return withCaps(lower, caps);
}

/** The house up to its domes' seams. */
function lowerHouse(scope: SolidScope, sites: readonly Site[], links: readonly Link[], ground: Ground): Solid {
  const part = 'house';
  const { bottom } = ground;
  const threshold = thresholdOf(ground);
  const solid = sites.map((site) => site.outer(bottom));
  const hollow: Solid[] = [];
  for (const site of sites) {
    for (const arch of site.arches) {
      // An earlier dome beside the arch stays whole.
      hollow.push(scope.subtract(part, site.clear(arch, threshold), site.earlierAlong(site.stripOf(arch))));
      if (arch.faceV !== null) solid.push(barrelPrism(scope, arch, [bottom, `arch:${arch.id}`], site));
    }
  }
  for (const link of links) {
    solid.push(passagePrism(scope, link, [bottom, `passage:${link.passage.id}`]));
    hollow.push(passageClear(scope, link, threshold));
  }
  const { added, removed } = groundOfWhole(ground);
  // The small cuts first: it takes half the time of one difference with the rooms among them.
  const pierced = scope.subtract(part, scope.union(part, [...solid, ...added]), [...hollow, ...removed]);
  return scope.subtract(
    part,
    pierced,
    sites.map((site) => roomOf(scope, site, ground)),
  );
}

/** Where clear spaces end below: on the floor, on the footing's top, or nowhere. */
const thresholdOf = ({ footing, slab }: Ground): Level => {
  if (slab) return [0, 'floor'];
  return footing ? [0, 'footing-top'] : [-OVERRUN, 'base'];
};

/** What the ground adds to all that stands on it, and what is taken away below. */
function groundOfWhole(ground: Ground): Record<'added' | 'removed', Solid[]> {
  const { footing, slab, bottom } = ground;
  if (!footing) {
    const names = { bottom: 'base', side: 'base', top: 'base' };
    return { added: [], removed: [ground.everywhere('house', [bottom - OVERRUN, slab?.bottomZ ?? 0], names)] };
  }
  const added = [ground.plate('footing')];
  if (!slab || slab.bottomZ === footing.bottomZ) return { added, removed: [] };
  const under = { bottom: 'slab-bottom', side: 'footing-side', top: 'slab-bottom' };
  if (slab.bottomZ > footing.bottomZ)
    return { added, removed: [ground.enclosed('slab', [footing.bottomZ - OVERRUN, slab.bottomZ], under)] };
  return { added: [...added, ground.enclosed('slab', [slab.bottomZ, bottom], under)], removed: [] };
}

/** A room down to its floor, down through what the footing encloses where there is no slab, or open below. */
function roomOf(scope: SolidScope, site: Site, { footing, slab }: Ground): Solid {
  const { dome, facets, seam } = site;
  const low = (footing?.bottomZ ?? 0) - 2 * OVERRUN;
  const floor: Stretch[] = [['floor', [[0, 0]]]];
  const open: Stretch[] = [['base', [[0, low]]]];
  const inner = site.footing?.innerRadius ?? dome.springingRadius;
  const stepped: Stretch[] = [
    ['footing-bottom', [[0, low]]],
    ['footing-side', [[inner, low]]],
    ['footing-top', [[inner, 0]]],
  ];
  const onFooting = !slab && footing !== null;
  const [under, foot] = slab ? [floor, 0] : onFooting ? [stepped, 0] : [open, low];
  const outline = roomBody(facets, under, [dome.springingRadius, foot], { boreTop: boreTop(dome), seam });
  const part = `${dome.id}: room`;
  const earlier = site.giveWay({
    radius: Math.max(dome.springingRadius, inner),
    heights: [low - OVERRUN, boreTop(dome) + OVERRUN],
    onFooting,
  });
  return scope.subtract(part, scope.revolve(part, outline, facets.segments, dome.at), earlier);
}

import type { HouseSetout } from '../setout/house.js';
import { barrelPrism, type Level, OVERRUN } from './arch-bodies.js';
import { roomBody } from './dome-outlines.js';
import { bottomOf, type Ground } from './ground-bodies.js';
import type { Solid, SolidScope } from './kernel.js';
import type { Stretch } from './outline.js';
import { passageClear, passagePrism } from './passage-bodies.js';
import { boreTop, type Site } from './site.js';

/** Outsides, barrels, passages and ground in one, less rooms and clear spaces. */
export function wholeHouse(scope: SolidScope, setout: HouseSetout, sites: readonly Site[], ground: Ground): Solid {
  const part = 'house';
  const bottom = bottomOf(setout);
  const threshold = thresholdOf(ground);
  const { sagitta } = (sites[0] as Site).facets;
  const solid = sites.map((site) => site.outer());
  const hollow: Solid[] = [];
  for (const site of sites) {
    for (const arch of site.arches) {
      hollow.push(site.clear(arch, threshold));
      if (arch.faceV !== null) solid.push(barrelPrism(scope, arch, [bottom, `arch:${arch.id}`], sagitta));
    }
  }
  for (const passage of setout.passages) {
    const name = `passage:${passage.id}`;
    solid.push(passagePrism(scope, passage, passage.ring, [bottom, name], { sagitta, name }));
    hollow.push(passageClear(scope, passage, threshold, sagitta));
  }
  const { added, removed } = groundOfWhole(scope, ground, bottom);
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
function groundOfWhole(scope: SolidScope, ground: Ground, bottom: number): Record<'added' | 'removed', Solid[]> {
  const { footing, slab } = ground;
  if (!footing) {
    const names = { bottom: 'base', side: 'base', top: 'base' };
    return { added: [], removed: [ground.everywhere('house', [bottom - OVERRUN, slab?.bottomZ ?? 0], names)] };
  }
  const names = { bottom: 'footing-bottom', side: 'footing-side', top: 'footing-top' };
  const added = [ground.level('footing', ground.plate('footing'), [footing.bottomZ, 0], names)];
  if (!slab) return { added, removed: [] };
  const under = { bottom: 'slab-bottom', side: 'footing-side', top: 'slab-bottom' };
  const enclosed = (levels: readonly [number, number]) =>
    ground.level('slab', scope.union('slab', ground.enclosed('footing-side')), levels, under);
  if (slab.bottomZ > footing.bottomZ) return { added, removed: [enclosed([footing.bottomZ - OVERRUN, slab.bottomZ])] };
  return { added: slab.bottomZ < footing.bottomZ ? [...added, enclosed([slab.bottomZ, bottom])] : added, removed: [] };
}

/** A room down to its floor, or down through what the footing encloses where there is no slab. */
function roomOf(scope: SolidScope, site: Site, { footing, slab }: Ground): Solid {
  const { dome, facets } = site;
  if (!slab && !site.footing) return site.openRoom();
  const low = (footing?.bottomZ ?? 0) - OVERRUN;
  const inner = site.footing?.innerRadius ?? dome.springingRadius;
  const under: Stretch[] = slab
    ? [['floor', [[0, 0]]]]
    : [
        ['footing-bottom', [[0, low]]],
        ['footing-side', [[inner, low]]],
        ['footing-top', [[inner, 0]]],
      ];
  const outline = roomBody(facets, under, [dome.springingRadius, 0], boreTop(dome));
  const part = `${dome.id}: room`;
  const earlier = site.giveWay({
    radius: Math.max(dome.springingRadius, inner),
    heights: [low - OVERRUN, boreTop(dome) + OVERRUN],
    onFooting: !slab,
  });
  return scope.subtract(part, scope.revolve(part, outline, facets.segments, dome.at), earlier);
}

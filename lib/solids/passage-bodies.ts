import type { PassageSetout } from '../setout/passage.js';
import { type Level, OVERRUN } from './arch-bodies.js';
import type { PlanFrame } from './faces.js';
import type { Solid, SolidScope } from './kernel.js';
import { sectionPolygon } from './sections.js';
import type { Site } from './site.js';
import { passageStrip, type Strip } from './strip.js';

export const passageFrame = ({ domes, along, across }: PassageSetout): PlanFrame => ({
  at: domes[0].at,
  along,
  across,
});

/** A passage's section grown by `grow` from a level up, along a stretch of it; `name` is that of all other faces. */
function prismOf(
  scope: SolidScope,
  passage: PassageSetout,
  grow: number,
  [from, bottom]: Level,
  options: { readonly v: readonly [number, number]; readonly sagitta: number; readonly name: string },
): Solid {
  const { v, sagitta, name } = options;
  const outline = sectionPolygon(passage.section, grow, from, sagitta, { bottom, sides: name });
  return scope.prism(`${passage.id}: vault`, outline, passageFrame(passage), v, [name, name]);
}

/** The outer section of vault and walls grown by `grow`, open below at the floor, from axis to axis. */
export function passageCutter(
  scope: SolidScope,
  passage: PassageSetout,
  { grow, sagitta, name }: { readonly grow: number; readonly sagitta: number; readonly name: string },
): Solid {
  const v = [0, passage.distance] as const;
  return prismOf(scope, passage, passage.ring + grow, [-OVERRUN, name], { v, sagitta, name });
}

/** A passage between the sites of its two domes. */
export interface Link {
  readonly passage: PassageSetout;
  readonly sites: readonly [Site, Site];
  readonly strips: readonly [Strip, Strip];
}

export function linkOf(passage: PassageSetout, sites: readonly Site[]): Link {
  const ends = passage.domes.map((dome) => sites.find((site) => site.dome.id === dome.id)) as [Site, Site];
  const { surface } = ends[0];
  return { passage, sites: ends, strips: [passageStrip(passage, 0, surface), passageStrip(passage, 1, surface)] };
}

/** Vault and walls from room to room, prolonged into both, solid, from a level up whose face is named. */
export const passagePrism = (scope: SolidScope, link: Link, level: Level): Solid =>
  prismOf(scope, link.passage, link.passage.ring, level, { ...within(link), name: `passage:${link.passage.id}` });

/** The clear space from room to room, prolonged into both, from a level up whose face is named. */
export const passageClear = (scope: SolidScope, link: Link, level: Level): Solid =>
  prismOf(scope, link.passage, 0, level, { ...within(link), name: `vault:${link.passage.id}` });

const within = ({ passage, sites, strips }: Link) => ({
  v: [strips[0].from, passage.distance - strips[1].from] as const,
  sagitta: sites[0].facets.sagitta,
});

/** One passage as a part: vault and walls from room to room. */
export function passagePart(scope: SolidScope, link: Link): Solid {
  const part = `passage:${link.passage.id}`;
  const rooms = link.sites.map((site, end) => {
    const strip = link.strips[end] as Strip;
    return scope.subtract(part, site.within(strip, 0, 'intrados'), site.earlierAlong(strip, site.dome.springingRadius));
  });
  return scope.subtract(part, passagePrism(scope, link, [0, 'base']), [
    passageClear(scope, link, [-OVERRUN, 'base']),
    ...rooms,
  ]);
}

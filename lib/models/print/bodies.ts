import { dot2, sub2, type Vec3 } from '../../math/vec.js';
import type { ArchSetout } from '../../setout/arch.js';
import type { HouseSetout } from '../../setout/house.js';
import { barrelPrism, OVERRUN } from '../../solids/arch-bodies.js';
import { roomBody } from '../../solids/dome-outlines.js';
import { disc } from '../../solids/ground-bodies.js';
import type { Solid, SolidScope } from '../../solids/kernel.js';
import { linkOf, passageClear, passagePrism } from '../../solids/passage-bodies.js';
import { boreTop, type Site, sitesOf } from '../../solids/site.js';
import { type Covered, type Grooved, groovedDome } from './grooved.js';
import { pegsOn } from './layers.js';
import type { RoofLevel } from './levels.js';
import type { StandingPegs } from './peg-places.js';
import type { PlannedDome, PrintPlan } from './plan.js';
import type { PrintSizes } from './sizes.js';
import { type Ring, skinOf } from './skin.js';

/** One dome of the model: its outside with joints, where its roof comes off, and what holds it there. */
export interface PrintDome {
  readonly site: Site;
  readonly grooved: Grooved;
  readonly level: RoofLevel | null;
  readonly pegs: StandingPegs | null;
}

/** The domes of a model; `bottom` is the level in the plate down to which walls run. */
export function printDomes(
  scope: SolidScope,
  setout: HouseSetout,
  { domes: planned, baseCuts, sizes }: PrintPlan,
  bottom: number,
): PrintDome[] {
  const below = baseCuts.map(({ z }) => z);
  return sitesOf(scope, setout, sizes.surface).map((site, i): PrintDome => {
    const { level, pegs, roofCuts } = planned[i] as PlannedDome;
    const cuts = [...below.filter((z) => z < (level?.z ?? Infinity)), ...roofCuts.map(({ z }) => z)];
    const grooved = groovedDome(site.facets, sizes, { bottom, cuts }, coveredBy(site.arches, sizes));
    return { site, level, pegs, grooved };
  });
}

const ringOf = ({ beds }: Grooved, { bed }: RoofLevel): number => beds[bed] as number;

/** Joints stop at the rings that lie flush in the extrados, which are smooth, and well below their sills. */
function coveredBy(arches: readonly ArchSetout[], { groove, thin }: PrintSizes): Covered {
  const flush = arches.filter((arch) => arch.faceV === null);
  return (point: Vec3) =>
    flush.some(({ dome, along, across, outerHalfAt, baseZ }) => {
      const away = sub2([point[0], point[1]], dome.at);
      if (dot2(away, along) <= 0 || point[2] < baseZ - thin - groove.width) return false;
      return Math.abs(dot2(away, across)) < outerHalfAt(Math.max(point[2], baseZ), groove.width / 2);
    });
}

/** What of a dome's outside stands below its roof, or all of it, filled to the axis. */
export function lowerBody(scope: SolidScope, { site, grooved, level }: PrintDome): Solid {
  const { dome } = site;
  const rings = level ? grooved.rings.slice(0, ringOf(grooved, level) + 1) : grooved.rings;
  const [bottom, top] = grooved.ends;
  const { positions, triangles } = skinOf(rings, dome.at, [bottom, level?.z ?? top]);
  return scope.solid(`${dome.id}: outside`, positions, triangles, () => 'extrados');
}

/** A dome's room, from the floor to the crown and through the bore of its oculus; earlier domes stand in it whole. */
export function roomOf(scope: SolidScope, { dome, facets, giveWay }: Site): Solid {
  const part = `${dome.id}: room`;
  const outline = roomBody(facets, [['floor', [[0, 0]]]], [dome.springingRadius, 0], {
    boreTop: boreTop(dome),
    seam: null,
  });
  const heights = [-2 * OVERRUN, boreTop(dome) + OVERRUN] as const;
  return scope.subtract(
    part,
    scope.revolve(part, outline, facets.segments, dome.at),
    giveWay({ radius: dome.springingRadius, heights }),
  );
}

/** The clear spaces of all openings and passages, down to the floor. */
export function clearSpaces(scope: SolidScope, sites: readonly Site[], { passages }: HouseSetout): Solid[] {
  const floor = [0, 'floor'] as const;
  const arches = sites.flatMap((site) =>
    site.arches.map((arch) => scope.subtract(arch.id, site.clear(arch, floor), site.earlierAlong(site.stripOf(arch)))),
  );
  return [...arches, ...passages.map((passage) => passageClear(scope, linkOf(passage, sites), floor))];
}

/** Barrels and passages, solid, from a level up. */
export function archBodies(
  scope: SolidScope,
  sites: readonly Site[],
  { passages }: HouseSetout,
  bottom: number,
): Solid[] {
  const barrels = sites.flatMap((site) =>
    site.arches.flatMap((arch) =>
      arch.faceV === null ? [] : [barrelPrism(scope, arch, [bottom, `arch:${arch.id}`], site)],
    ),
  );
  return [
    ...barrels,
    ...passages.map((passage) => passagePrism(scope, linkOf(passage, sites), [bottom, `passage:${passage.id}`])),
  ];
}

/** The roof of a dome with its sockets; the pegs below it are made with them. */
export function roofBody(
  scope: SolidScope,
  print: PrintDome,
  room: Solid,
  sizes: PrintSizes,
): { readonly roof: Solid; readonly shell: Solid; readonly pegs: readonly Solid[] } | null {
  const { site, level, pegs } = print;
  if (!level || !pegs) return null;
  const { dome } = site;
  const part = `${dome.id}: roof`;
  const { positions, triangles } = skinOf(roofRings(print, sizes), dome.at, [level.z, print.grooved.ends[1]]);
  const outer = scope.solid(part, positions, triangles, () => 'extrados');
  const shell = scope.subtract(part, outer, [room]);
  const bodies = pegsOn(scope, site, pegs, sizes);
  return {
    roof: scope.subtract(part, scope.union(part, [shell, ...bodies.pads]), bodies.sockets),
    shell,
    pegs: bodies.pegs,
  };
}

/** The rings of a roof, with an upright face at its foot where the edge would be sharp. */
function roofRings({ grooved, level }: PrintDome, { thin }: PrintSizes): Ring[] {
  const { z, blunt } = level as RoofLevel;
  const rings = grooved.rings.slice(ringOf(grooved, level as RoofLevel));
  if (!blunt) return rings;
  const lowest = ({ corners }: Ring) => Math.min(...corners.map((c) => c[2]));
  const above = rings.filter((r) => lowest(r) > z + thin);
  const [first] = above as [Ring];
  return [{ bearings: first.bearings, corners: first.corners.map(([x, y]): Vec3 => [x, y, z]) }, ...above];
}

/** What is taken off the inner edge under a roof where it would be sharp: all within an upright face. */
export function bluntEdge(scope: SolidScope, { site, level }: PrintDome, { thin }: PrintSizes): Solid[] {
  if (!level?.blunt) return [];
  const { dome, facets } = site;
  const names = { bottom: 'rim', side: 'rim', top: 'rim' };
  const outline = disc(dome.radiusAt(level.z - thin), level.z - thin - OVERRUN, level.z + OVERRUN, names);
  return [scope.revolve(`${dome.id}: rim`, outline, facets.segments, dome.at)];
}

import { dot2, sub2, type Vec3 } from '../../math/vec.js';
import type { ArchSetout } from '../../setout/arch.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { barrelPrism, frameOf, OVERRUN } from '../../solids/arch-bodies.js';
import { filledTo, roomBody } from '../../solids/dome-outlines.js';
import { disc } from '../../solids/ground-bodies.js';
import type { Solid, SolidScope } from '../../solids/kernel.js';
import { linkOf, passageClear, passagePrism } from '../../solids/passage-bodies.js';
import { sectionPolygon } from '../../solids/sections.js';
import { boreTop, type Site, sitesOf } from '../../solids/site.js';
import { type Covered, type Grooved, groovedDome } from './grooved.js';
import type { RoofLevel } from './levels.js';
import { type RoofPegs, roofPegBodies, socketDepth } from './pegs.js';
import type { PlannedDome } from './plan.js';
import type { PrintSizes } from './sizes.js';
import { type Ring, skinOf } from './skin.js';

/** One dome of the model: its outside with joints, where its roof comes off, and what holds it there. */
export interface PrintDome {
  readonly site: Site;
  readonly grooved: Grooved;
  readonly level: RoofLevel | null;
  readonly pegs: RoofPegs | null;
}

/** The domes of a model; `bottom` is the level in the plate down to which walls run. */
export function printDomes(
  scope: SolidScope,
  setout: HouseSetout,
  planned: readonly PlannedDome[],
  sizes: PrintSizes,
  bottom: number,
): PrintDome[] {
  return sitesOf(scope, setout, sizes.surface).map((site, i): PrintDome => {
    const { level, pegs } = planned[i] as PlannedDome;
    return { site, level, pegs, grooved: groovedDome(site.facets, sizes, bottom, coveredBy(site.arches, sizes)) };
  });
}

const ringOf = ({ beds }: Grooved, { bed }: RoofLevel): number => beds[bed] as number;

/** Joints stop at the rings that lie flush in the extrados. */
function coveredBy(arches: readonly ArchSetout[], { groove }: PrintSizes): Covered {
  const flush = arches.filter((arch) => arch.faceV === null);
  return (point: Vec3) =>
    flush.some(({ dome, along, across, outerHalfAt }) => {
      const away = sub2([point[0], point[1]], dome.at);
      return dot2(away, along) > 0 && Math.abs(dot2(away, across)) < outerHalfAt(point[2], groove.width / 2);
    });
}

/** What of a dome's outside stands below its roof, or all of it, filled to the axis. */
export function lowerBody(scope: SolidScope, { site, grooved, level }: PrintDome, sizes: PrintSizes): Solid {
  const { dome, arches } = site;
  const rings = level ? grooved.rings.slice(0, ringOf(grooved, level) + 1) : grooved.rings;
  const [bottom, top] = grooved.ends;
  const { positions, triangles } = skinOf(rings, dome.at, [bottom, level?.z ?? top]);
  const body = scope.solid(`${dome.id}: outside`, positions, triangles, () => 'extrados');
  const outlines = arches.flatMap((arch) => (arch.faceV === null ? [ringOutline(scope, arch, site, sizes)] : []));
  return scope.subtract(body.part, body, outlines);
}

/** The groove along a ring that lies flush in the extrados. */
function ringOutline(scope: SolidScope, arch: ArchSetout, site: Site, { groove }: PrintSizes): Solid {
  const part = `${arch.id}: outline`;
  const strip = site.stripOf(arch);
  const prism = (grow: number) => {
    const from = Math.max(arch.baseZ - grow, -OVERRUN);
    const outline = sectionPolygon(arch.section, arch.ring + grow, from, site.facets.sagitta, {
      bottom: part,
      sides: part,
    });
    return scope.prism(part, outline, frameOf(arch), [strip.from, strip.to], [part, part]);
  };
  const inner = site.within(strip, site.dome.thickness - groove.depth, part);
  return scope.subtract(part, prism(groove.width / 2), [prism(-groove.width / 2), inner]);
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
  const { dome, facets } = site;
  const part = `${dome.id}: roof`;
  const { positions, triangles } = skinOf(roofRings(print, sizes), dome.at, [level.z, print.grooved.ends[1]]);
  const outer = scope.solid(part, positions, triangles, () => 'extrados');
  const shell = scope.subtract(part, outer, [room]);
  const within = innerHalf(scope, dome, facets, level.z - socketDepth(sizes) - dome.thickness);
  const bodies = roofPegBodies(scope, dome, pegs, sizes, within);
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
  const heightOf = ({ corners }: Ring) => Math.max(...corners.map((c) => c[2]));
  const above = rings.filter((r) => heightOf(r) > z + thin);
  const [first] = above as [Ring];
  return [{ bearings: first.bearings, corners: first.corners.map(([x, y]): Vec3 => [x, y, z]) }, ...above];
}

/** What is taken off the inner edge under a roof where it would be sharp: all within an upright face. */
export function bluntEdge(scope: SolidScope, { site, level }: PrintDome, { thin }: PrintSizes): Solid[] {
  if (!level?.blunt) return [];
  const { dome, facets } = site;
  const names = { bottom: 'rim', side: 'rim', top: 'rim' };
  const outline = disc(dome.radiusAt(level.z - thin), level.z - thin, level.z + OVERRUN, names);
  return [scope.revolve(`${dome.id}: rim`, outline, facets.segments, dome.at)];
}

/** All inside the middle of the wall: pads and corbels grow out of it and don't come through. */
function innerHalf(scope: SolidScope, dome: DomeSetout, facets: Site['facets'], bottom: number): Solid {
  const outline = filledTo(facets, dome.thickness / 2, Math.min(0, bottom), 'pad');
  return scope.revolve(`${dome.id}: pads`, outline, facets.segments, dome.at);
}

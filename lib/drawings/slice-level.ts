import { circleEdge, type Edge, lineEdge } from '../math/curves.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, type HouseSetout } from '../setout/house.js';
import { baseHalf } from '../setout/material.js';
import { fromArchFrame, type Prism } from './arch-places.js';

/**
 * All lines that may bound a part of the house in the level plane at z. More than the true outline: what parts
 * nothing falls out when the regions are made.
 */
export function sliceLevel(house: HouseSetout, z: number): Edge[] {
  const round = house.domes.flatMap((dome) => {
    const arches = archesOf(house, dome);
    return z < 0 ? baseLines(house, dome, arches) : wallLines(dome, arches, z);
  });
  const projection = house.footings[0]?.projection ?? 0;
  const between = house.passages.flatMap((passage) => {
    const halves = z < 0 ? [baseHalf(passage, projection)] : [passage.outerHalfAt(z), passage.clearHalfAt(z)];
    return halves.flatMap((half) => band(passage, half, passage.distance));
  });
  return [...round, ...between];
}

function wallLines(dome: DomeSetout, arches: readonly ArchSetout[], z: number): Edge[] {
  const radii = [dome.radiusAt(z), dome.outerRadiusAt(z), ...bedRadii(dome, z)];
  if (dome.curb && z > dome.springingZ) radii.push(dome.curb.clearRadius);
  const edges: Edge[] = [];
  for (const arch of arches) {
    const { clear, faceV } = arch;
    if (clear.kind === 'parallel') radii.push(dome.radiusAt(z, clear.depth));
    const reach = faceV ?? dome.springingRadius + dome.thickness;
    const outer = arch.outerHalfAt(z);
    const open = arch.clearHalfAt(z);
    edges.push(...band(arch, outer, reach), ...band(arch, open, clear.kind === 'plane' ? clear.v : reach));
  }
  return [...circles(dome, radii), ...edges];
}

/** Where the conical beds of skewback, curb and crown plug pass the level. */
function bedRadii(dome: DomeSetout, z: number): number[] {
  const beds = [dome.skewback ? 0 : null, dome.curb?.bedS ?? null, dome.plug?.bedS ?? null];
  return beds.flatMap((s) => {
    if (s === null) return [];
    const p = dome.shell.at(s);
    const depth = (z - p.z) / p.normal[1];
    return depth > 0 && depth < dome.thickness ? [p.r + depth * p.normal[0]] : [];
  });
}

function baseLines(house: HouseSetout, dome: DomeSetout, arches: readonly ArchSetout[]): Edge[] {
  const footing = house.footings.find((f) => f.domeId === dome.id);
  const slab = house.slabs.find((s) => s.domeId === dome.id);
  const projection = footing?.projection ?? 0;
  const radii = [...(footing ? [footing.innerRadius, footing.outerRadius] : []), ...(slab ? [slab.radius] : [])];
  const barrels = arches.flatMap((a) =>
    a.faceV === null ? [] : band(a, baseHalf(a, projection), a.faceV + projection),
  );
  return [...circles(dome, radii), ...barrels];
}

const circles = (dome: DomeSetout, radii: readonly number[]): Edge[] =>
  radii.filter((r) => r > 0).map((r) => circleEdge(dome.at, r));

/** Sides and ends of a band along a prism, from its origin to v. */
function band(prism: Prism, half: number, v: number): Edge[] {
  if (!(half > 0)) return [];
  const at = (u: number, w: number) => fromArchFrame(prism, u, w);
  return [
    lineEdge(at(half, 0), at(half, v)),
    lineEdge(at(half, v), at(-half, v)),
    lineEdge(at(-half, v), at(-half, 0)),
    lineEdge(at(-half, 0), at(half, 0)),
  ];
}

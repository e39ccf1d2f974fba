import type { ArcEdge, Edge, LineEdge } from '../math/curves.js';
import { edgeEnd, edgeStart } from '../math/curves.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { extradosMeridian, offsetMeridian } from './meridian.js';

const known = new WeakMap<HouseSetout, HouseSetout>();

/**
 * The same house for the many questions of hidden lines: where a radius or height takes a search each time, as on a
 * chain's or an ellipse's offset, it is read off the meridian's chain of arcs, true to a micrometre.
 */
export function quickHouse(house: HouseSetout): HouseSetout {
  const before = known.get(house);
  if (before) return before;
  const domes = house.domes.map((dome) => (dome.profile.arc ? dome : quickDome(dome)));
  const arches = house.arches.map((arch) => {
    const dome = domes.find((d) => d.id === arch.dome.id);
    return dome ? { ...arch, dome } : arch;
  });
  const quick = { ...house, domes, arches };
  known.set(house, quick);
  return quick;
}

function quickDome(dome: DomeSetout): DomeSetout {
  const outer = extradosMeridian(dome).filter((e) => edgeEnd(e)[1] > edgeStart(e)[1]);
  const offsets = new Map<number, readonly Edge[]>();
  const meridian = (offset: number): readonly Edge[] => {
    const edges = offsets.get(offset) ?? offsetMeridian(dome, offset);
    offsets.set(offset, edges);
    return edges;
  };
  return {
    ...dome,
    radiusAt: (z, offset = 0) => radiusOn(meridian(offset), z),
    outerRadiusAt: (z) => radiusOn(outer, z),
    heightAt: (r, offset = 0) => heightOn(meridian(offset), r),
  };
}

/** Radius of a meridian that rises from edge to edge; NaN above its top. */
function radiusOn(edges: readonly Edge[], z: number): number {
  const [first] = edges;
  if (first && z <= edgeStart(first)[1]) return edgeStart(first)[0];
  const edge = find(edges, (e) => edgeEnd(e)[1] >= z);
  if (!edge) return Number.NaN;
  if (edge.kind === 'arc') return edge.centre[0] + root(edge.radius, z - edge.centre[1]);
  const share = (z - edge.from[1]) / (edge.to[1] - edge.from[1]);
  return edge.from[0] + share * (edge.to[0] - edge.from[0]);
}

/** Height of a meridian that draws in from edge to edge; NaN outside its foot, and on an upright foot its top. */
function heightOn(edges: readonly Edge[], r: number): number {
  const edge = find(edges, (e) => edgeEnd(e)[0] <= r && edgeEnd(e)[0] < edgeStart(e)[0]);
  const [first] = edges;
  if (!edge || !first || r > edgeStart(first)[0]) return Number.NaN;
  return rises(edge) ? edge.centre[1] + root(edge.radius, r - edge.centre[0]) : levelOn(edge, r);
}

const rises = (e: Edge): e is ArcEdge => e.kind === 'arc';

function levelOn(e: LineEdge, r: number): number {
  return e.from[1] + ((r - e.from[0]) / (e.to[0] - e.from[0])) * (e.to[1] - e.from[1]);
}

const root = (radius: number, leg: number): number => Math.sqrt(Math.max(0, radius * radius - leg * leg));

/** First edge of a row for which `reached` holds, when it holds for all after it. */
function find(edges: readonly Edge[], reached: (e: Edge) => boolean): Edge | undefined {
  let [low, high] = [0, edges.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (reached(edges[middle] as Edge)) high = middle;
    else low = middle + 1;
  }
  return edges[low];
}

import { THIN_MASONRY } from '../base/tolerances.js';
import { type Edge, edgeAt } from '../math/curves.js';
import type { Vec3 } from '../math/vec.js';
import type { PassageSetout } from '../setout/passage.js';
import { creasePlaces, onRadius, outlineOf, outward } from './arch-edges.js';
import { fromArchFrame, inArchFrame } from './arch-places.js';
import { edgeFeature, type Feature, jointFeature } from './feature.js';
import type { SpaceCurve } from './space-curve.js';

/** Distance along a passage at which its line at (u, z) ends. */
type EndAt = (u: number, z: number) => number;

/**
 * Edges of a passage: its outlines at both rooms and at both domes' outsides, and the creases that run along it. What
 * lies within other masonry, as most of a short passage between abutting domes does, no view sees.
 */
export function passageEdges(passage: PassageSetout): Feature[] {
  const clear = outlineOf(passage, 0, 0);
  const outer = outlineOf(passage, passage.ring, 0);
  const rooms: EndAt[] = [(u, z) => passage.stretchAt(u, z)[0], (u, z) => passage.stretchAt(u, z)[1]];
  const outsides = outsidesOf(passage);
  // Where the domes overlap, the passage ends flush with the earlier one's outside, in the later one's room.
  const open = (p: Vec3): boolean => {
    const [u] = inArchFrame(passage, p);
    const [from, to] = outsides;
    return to(u, p[2]) - from(u, p[2]) > THIN_MASONRY;
  };
  const between = (grow: number, [from, to]: readonly EndAt[]): Feature[] =>
    creasePlaces(passage, grow, 0).flatMap(([u, z]) =>
      from && to ? outward(passage, u, z, from(u, z), to(u, z)) : [],
    );
  return [
    ...rooms.flatMap((end) => [
      ...atEnd(passage, clear, end).map((c) => edgeFeature(c)),
      ...atEnd(passage, outer, end).map((c) => jointFeature(c)),
    ]),
    ...outsides.flatMap((end) => atEnd(passage, outer, end).map((c) => edgeFeature(c, open))),
    ...between(0, rooms),
    ...between(passage.ring, outsides),
  ];
}

/** Along the crown of a passage whose head is round: no crease, but the uppermost line that a level look sees. */
export function passageCrown(passage: PassageSetout): Feature[] {
  const { section, topZ } = passage;
  if (section.arc === null || section.arc.past > 0) return [];
  const [from, to] = outsidesOf(passage);
  return outward(passage, 0, topZ, from(0, topZ), to(0, topZ));
}

/** Where it leaves the first dome's extrados and meets the second's; the axis above a dome's top. */
function outsidesOf({ domes, distance }: PassageSetout): readonly [EndAt, EndAt] {
  const reach = (k: 0 | 1, u: number, z: number) => onRadius(domes[k].outerRadiusAt(z), u) || 0;
  return [(u, z) => reach(0, u, z), (u, z) => distance - reach(1, u, z)];
}

/** The outline where the passage's lines end; its foot runs on as the floor and is no edge. */
const atEnd = (passage: PassageSetout, outline: readonly Edge[], end: EndAt): SpaceCurve[] =>
  outline
    .filter((e) => !(e.kind === 'line' && e.from[1] === 0 && e.to[1] === 0))
    .map((e) => ({
      kind: 'free',
      from: 0,
      to: 1,
      at: (t: number): Vec3 => {
        const [u, z] = edgeAt(e, t);
        const [x, y] = fromArchFrame(passage, u, end(u, z));
        return [x, y, z];
      },
    }));

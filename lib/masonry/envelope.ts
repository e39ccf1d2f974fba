import { commonArea } from '../math/discs.js';
import { square } from '../math/elementary.js';
import { integrateSoftEnds } from '../math/quadrature.js';
import { sub2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, earlierThan, type HouseSetout } from '../setout/house.js';
import { meetingLevel } from '../setout/meeting.js';
import type { PassageSetout } from '../setout/passage.js';
import { nicheBack } from './arch-volumes.js';
import {
  type Depth,
  domeBreaks,
  type HalfWidth,
  onSurface,
  passageKinks,
  planeKink,
  prismVolume,
  sectionBreaks,
} from './prism.js';

/**
 * The masonry envelope, mm³: shells less voids, plus barrels, passages and curbs. It is cut up otherwise than
 * the parts are, so that it can tell when a part is wrong.
 */
export function envelopeVolume(house: HouseSetout): number {
  let sum = 0;
  for (const dome of house.domes) {
    sum += shellOfRevolution(dome);
    sum -= lostTo(dome, earlierThan(house, dome));
    for (const arch of archesOf(house, dome)) {
      const { barrel, voidInShell } = archEnvelope(arch);
      sum += barrel - voidInShell;
    }
  }
  for (const passage of house.passages) sum += passageEnvelope(passage);
  return sum;
}

const NOTHING: HalfWidth = () => 0;

/** Masonry of an arch outside the extrados, and what its clear space takes from the shell. */
export function archEnvelope(arch: ArchSetout): { readonly barrel: number; readonly voidInShell: number } {
  const { dome, section, ring, faceV } = arch;
  const inner = onSurface(dome, 0);
  const extrados = onSurface(dome, dome.thickness);
  const clear: HalfWidth = (z) => section.halfWidthAt(z);
  const breaks = [...sectionBreaks(section, [0, ring]), ...domeBreaks(dome)];
  // A niche's flat back may pass from the barrel into the shell.
  const kinks = arch.clear.kind === 'plane' ? [planeKink(dome, dome.thickness, arch.clear.v)] : [];
  const inClear = (depth: Depth) => prismVolume([section.sill, section.crownZ], [NOTHING, clear], depth, breaks, kinks);
  const back = nicheBack(arch);
  const voidInShell = inClear((u, z) => Math.min(back(u, z), extrados(u, z)) - inner(u, z));
  if (faceV === null) return { barrel: 0, voidInShell };
  const outside: HalfWidth = (z) => arch.outerHalfAt(z);
  const gross = prismVolume([arch.baseZ, arch.topZ], [NOTHING, outside], (u, z) => faceV - extrados(u, z), breaks);
  const open = inClear((u, z) => Math.max(0, Math.min(back(u, z), faceV) - extrados(u, z)));
  return { barrel: gross - open, voidInShell };
}

/** What a passage adds outside the two shells, less what its clear space takes from them. */
function passageEnvelope(passage: PassageSetout): number {
  const { domes, distance, later, section, ring } = passage;
  const [first, second] = domes;
  const [inner1, outer1] = [onSurface(first, 0), onSurface(first, first.thickness)];
  const [inner2, outer2] = [onSurface(second, 0), onSurface(second, second.thickness)];
  const inShells = (u: number, z: number, stretch = passage.stretchAt(u, z)): number => {
    const within = (from: number, to: number) => Math.max(0, Math.min(to, stretch[1]) - Math.max(from, stretch[0]));
    const [end1, start2] = [outer1(u, z), distance - outer2(u, z)];
    // The later wall ends where the earlier dome's body begins.
    return (
      within(inner1(u, z), later === 0 ? Math.min(end1, start2) : end1) +
      within(later === 1 ? Math.max(start2, end1) : start2, distance - inner2(u, z))
    );
  };
  const beside: Depth = (u, z) => {
    const stretch = passage.stretchAt(u, z);
    return stretch[1] - stretch[0] - inShells(u, z, stretch);
  };
  const clear: HalfWidth = (z) => passage.clearHalfAt(z);
  const outside: HalfWidth = (z) => passage.outerHalfAt(z);
  const breaks = [...sectionBreaks(section, [0, ring]), ...domes.flatMap(domeBreaks)];
  const kinks = passageKinks(passage);
  return (
    prismVolume([0, passage.topZ], [clear, outside], beside, breaks, kinks) -
    prismVolume([0, section.crownZ], [NOTHING, clear], inShells, breaks, kinks)
  );
}

/** A dome's shell, stem wall, skewback and curb as one figure of revolution, less the room and the bore. */
export function shellOfRevolution(dome: DomeSetout): number {
  const disc = (radius: (z: number) => number, breaks: readonly number[]) => {
    let sum = 0;
    for (let k = 0; k + 1 < breaks.length; k++) {
      sum += integrateSoftEnds((z) => Math.PI * square(radius(z)), breaks[k] as number, breaks[k + 1] as number, 32);
    }
    return sum;
  };
  const { curb } = dome;
  const outer = [0, ...domeBreaks(dome), ...(curb ? [curb.bedOuter[1]] : []), dome.topZ];
  const gross = disc((z) => dome.outerRadiusAt(z), outer);
  if (!curb) return gross - disc((z) => dome.radiusAt(z), [0, dome.springingZ, dome.crownZ]);
  const boreZ = dome.heightAt(curb.clearRadius);
  const room = disc((z) => dome.radiusAt(z), [0, dome.springingZ, boreZ]);
  return gross - room - Math.PI * square(curb.clearRadius) * (dome.topZ - boreZ);
}

/** What the earlier domes' bodies take together from a later one's wall, in level slices. */
function lostTo(dome: DomeSetout, earlier: readonly DomeSetout[]): number {
  if (earlier.length === 0) return 0;
  const ends = earlier.map((other) => meetingLevel(dome, other));
  const breaks = [...domeBreaks(dome), ...earlier.flatMap(domeBreaks)];
  for (const other of earlier) breaks.push(meetingLevel(dome, other, (z) => dome.radiusAt(z)));
  for (const [k, one] of earlier.entries())
    for (const other of earlier.slice(k + 1)) breaks.push(meetingLevel(one, other));
  const end = Math.max(...ends);
  const levels = [...new Set([0, ...ends, ...breaks].filter((z) => z >= 0 && z <= end))].sort((a, b) => a - b);
  const lost = (z: number) => {
    const others = earlier.map((other) => ({ centre: sub2(other.at, dome.at), radius: other.outerRadiusAt(z) }));
    const common = (radius: number) => commonArea({ centre: [0, 0], radius }, others);
    return common(dome.outerRadiusAt(z)) - common(dome.radiusAt(z));
  };
  let sum = 0;
  for (let k = 0; k + 1 < levels.length; k++)
    sum += integrateSoftEnds(lost, levels[k] as number, levels[k + 1] as number, 40);
  return sum;
}

import { type Cutter, sectionCutter, shellCutter } from '../masonry/cutter.js';
import { sub2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, earlierThan, type HouseSetout, passagesOf } from '../setout/house.js';
import { meetingLevel } from '../setout/meeting.js';
import { seenFrom } from '../setout/passage.js';

/** Clear spaces of a dome's openings, niches and passages, and earlier domes that it abuts, as cutters. */
export function voidsOf(house: HouseSetout, dome: DomeSetout): Cutter[] {
  return [
    ...archesOf(house, dome).map((arch) => sectionCutter({ ...arch, baseZ: arch.section.sill, ring: 0 }, 0)),
    ...passagesOf(house, dome).map((passage) => sectionCutter({ ...seenFrom(passage, dome), ring: 0 }, 0)),
    ...earlierThan(house, dome).map((earlier) => shellCutter(earlier, sub2(earlier.at, dome.at), 0)),
  ];
}

/** Height above which every ring of a dome is closed: over all rings of arches, passages and abutted domes. */
export function cutLevel(house: HouseSetout, dome: DomeSetout): number {
  return Math.max(
    0,
    ...archesOf(house, dome).map((arch) => arch.topZ),
    ...passagesOf(house, dome).map((passage) => passage.topZ),
    ...earlierThan(house, dome).map((earlier) => meetingLevel(dome, earlier)),
  );
}

/** What a closed hoop at a height would run through: ids of openings, passages and earlier domes. */
export function crossedAt(house: HouseSetout, dome: DomeSetout, z: number): string[] {
  const r = dome.radiusAt(z, dome.thickness / 2);
  return voidsOf(house, dome)
    .filter((cutter) => cutter.spreadAt(r, z) > 0)
    .map(({ id }) => id);
}

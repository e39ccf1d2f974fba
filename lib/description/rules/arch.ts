import { type Section, sectionOf } from '../../math/section.js';
import { alongBearing, bearingOf, DEG, sub2, turnPositive, type Vec2 } from '../../math/vec.js';
import type { Placed } from '../draft.js';
import type { Dome, Opening, Passage } from '../house.js';
import type { Path } from '../problem-list.js';

/** What pierces a dome's wall: an opening's arch, or the vault of a passage at one of its ends. */
export interface Arch {
  readonly path: Path;
  readonly id: string;
  /** The opening; `null` for a passage. */
  readonly opening: Opening | null;
  readonly bearingRad: number;
  readonly along: Vec2;
  readonly section: Section;
  readonly ring: number;
  /** Ring and jambs begin here: a barrel's and a passage's at the floor, a flush ring's at the sill. */
  readonly baseZ: number;
  readonly topZ: number;
}

export function openingArch({ path, value: opening }: Placed<Opening>): Arch {
  const { ring, face } = opening.arch;
  const baseZ = face === 'flush' ? opening.sill : 0;
  return archOf(path, opening.id, opening, opening.bearingDeg * DEG, sectionOf(opening), ring, baseZ);
}

/** A passage as seen from one of its domes, whose axis stands `away` from the other's. */
export function passageArch({ path, value: passage }: Placed<Passage>, away: Vec2): Arch {
  return archOf(path, passage.id, null, bearingOf(away), passageSection(passage), passage.ring, 0);
}

const passageSection = ({ width, height, head }: Passage): Section => sectionOf({ width, height, sill: 0, head });

/** A passage at each of its ends that is among the given domes, given where both its domes stand. */
export function passageEnds(
  passage: Placed<Passage>,
  placeOf: (id: string) => Vec2 | undefined,
  domes: readonly Dome[],
): { readonly dome: Dome; readonly arch: Arch }[] {
  const { between } = passage.value;
  return ([0, 1] as const).flatMap((end) => {
    const dome = domes.find((d) => d.id === between[end]);
    const other = placeOf(between[1 - end] as string);
    return dome && other && between[0] !== between[1]
      ? [{ dome, arch: passageArch(passage, sub2(other, dome.at)) }]
      : [];
  });
}

function archOf(
  path: Path,
  id: string,
  opening: Opening | null,
  bearing: number,
  section: Section,
  ring: number,
  baseZ: number,
): Arch {
  const bearingRad = turnPositive(bearing);
  const along = alongBearing(bearingRad);
  return { path, id, opening, bearingRad, along, section, ring, baseZ, topZ: section.topZ(ring) };
}

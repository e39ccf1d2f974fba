import { hypot } from '../../math/elementary.js';
import type { Draft } from '../draft.js';
import type { Opening, Passage } from '../house.js';
import type { Path } from '../problem-list.js';
import { type Arch, openingArch, passageArch } from './arch.js';
import type { DomeBody } from './body.js';
import { chordAt, type Run, type Strip } from './runs.js';
import { turnsOf } from './seat.js';

/** An opening in its dome's body. */
export interface Opened {
  readonly path: Path;
  readonly opening: Opening;
  readonly arch: Arch;
  readonly body: DomeBody;
}

/** A passage with the bodies of both its domes. Its arch is as seen from the first. */
export interface Passed {
  readonly path: Path;
  readonly passage: Passage;
  readonly arch: Arch;
  readonly ends: readonly [DomeBody, DomeBody];
  /** Between the two axes. */
  readonly distance: number;
}

export function openedIn(bodies: readonly DomeBody[], openings: Draft['openings']): Opened[] {
  return openings.flatMap((placed) => {
    const body = bodies.find((b) => b.dome.id === placed.value.in);
    return body ? [{ path: placed.path, opening: placed.value, arch: openingArch(placed), body }] : [];
  });
}

export function passedBetween(bodies: readonly DomeBody[], passages: Draft['passages']): Passed[] {
  return passages.flatMap((placed) => {
    const [first, second] = placed.value.between.map((id) => bodies.find((b) => b.dome.id === id));
    if (!first || !second || first === second) return [];
    const away = [second.at[0] - first.at[0], second.at[1] - first.at[1]] as const;
    const distance = hypot(...away);
    const arch = passageArch(placed, away);
    return distance > 0 ? [{ path: placed.path, passage: placed.value, arch, ends: [first, second], distance }] : [];
  });
}

/** Distance of a barrel's flat face from the axis; `null` when the ring is flush. */
export const faceOf = ({ opening, body }: Opened): number | null =>
  opening.arch.face === 'flush' ? null : body.footRadius + opening.arch.face;

/** Ring and jambs, from the intrados to the extrados or the flat face. */
export function archRun(opened: Opened): Run {
  const { arch, body } = opened;
  const { section, ring, baseZ, topZ } = arch;
  const face = faceOf(opened);
  return {
    at: body.at,
    along: arch.along,
    lowZ: baseZ,
    highZ: topZ,
    turns: turnsOf(arch, ring),
    halfAt: (z) => section.halfWidthAt(z, ring, baseZ),
    stretchAt: (u, z) => [chordAt(body.shape.radiusAt(z), u), face ?? chordAt(body.outerRadiusAt(z), u)],
  };
}

/** The clear space prolonged outward by `reach` beyond the outside of the wall. */
export function wayRun(opened: Opened, reach: number): Run {
  const { arch, body } = opened;
  const { section } = arch;
  const face = faceOf(opened);
  return {
    at: body.at,
    along: arch.along,
    lowZ: section.sill,
    highZ: section.crownZ,
    turns: turnsOf(arch, 0),
    halfAt: (z) => section.halfWidthAt(z),
    stretchAt: (u, z) => {
      const from = face ?? chordAt(body.outerRadiusAt(z), u);
      return [from, from + reach];
    },
  };
}

/** A passage's outer section over its own part of the line between the axes. */
export function passageRun({ arch, ends }: Passed, stretchAt: Run['stretchAt']): Run {
  const { section, ring, topZ, along } = arch;
  return {
    at: ends[0].at,
    along,
    lowZ: 0,
    highZ: topZ,
    turns: turnsOf(arch, ring),
    halfAt: (z) => section.halfWidthAt(z, ring, 0),
    stretchAt,
  };
}

/** What a barrel covers of the ground outside its dome; `null` for a flush ring. */
export function barrelStrip(opened: Opened): Strip | null {
  const { arch, body } = opened;
  const to = faceOf(opened);
  if (to === null) return null;
  const half = arch.section.width / 2 + arch.ring;
  return { at: body.at, along: arch.along, half, from: chordAt(body.footRadius, half), to };
}

/** What a passage covers of the ground between its domes; `null` where they abut. */
export function passageStrip({ arch, ends, distance }: Passed): Strip | null {
  const half = arch.section.width / 2 + arch.ring;
  const [from, rest] = [chordAt(ends[0].footRadius, half), chordAt(ends[1].footRadius, half)];
  return from + rest < distance ? { at: ends[0].at, along: arch.along, half, from, to: distance - rest } : null;
}

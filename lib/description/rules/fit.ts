import * as texts from '../../base/texts/problems-domes.js';
import { SAME_ANGLE_RAD } from '../../base/tolerances.js';
import { formatLength, formatNumber, type LengthUnit } from '../../base/units.js';
import { asin } from '../../math/elementary.js';
import { sectionOf } from '../../math/section.js';
import { DEG, turnSigned } from '../../math/vec.js';
import type { Draft, Placed } from '../draft.js';
import type { BlockRules, Dome } from '../house.js';
import type { ProblemList } from '../problem-list.js';
import { type Arch, openingArch, passageEnds } from './arch.js';
import { heightsBetween } from './runs.js';
import { type DomeShape, shapeOf, widestShapeOf } from './shape.js';

/** Half the width over the rings, as part of the inside radius at the same height. */
const WIDEST_ARCH = 0.9;

/** An arch in its dome. */
interface Seat {
  readonly arch: Arch;
  readonly dome: Dome;
  readonly shape: Pick<DomeShape, 'radiusAt' | 'archLimit'>;
}

/** A seat that leaves wall to both sides, and by how much the arch's top is too high. */
interface Held extends Seat {
  readonly excess: number;
}

/** Openings and passages fit their domes, and in one dome they leave a piece of wall between them. */
export function checkFit(
  draft: Draft,
  domes: readonly Placed<Dome>[],
  openings: Draft['openings'],
  passages: Draft['passages'],
  problems: ProblemList,
): void {
  const { blocks, units } = draft;
  if (!blocks) return;
  const all = draft.domes.map(({ path, value }) => {
    const sound = domes.find((placed) => placed.path === path);
    return sound ? { dome: sound.value, shape: shapeOf(sound.value) } : { dome: value, shape: widestShapeOf(value) };
  });
  const placeOf = (id: string) => all.find(({ dome }) => dome.id === id)?.dome.at;
  const seatOf = (arch: Arch, dome: Dome): Seat => {
    const shape = all.find((own) => own.dome === dome)?.shape ?? widestShapeOf(dome);
    return { arch, dome, shape };
  };
  const hold = (ends: readonly Seat[]): readonly Held[] => {
    if (ends.length === 0) return [];
    const excess = tellTooHigh(ends, blocks, units, problems);
    // One that is too high can come down, but stays as wide where it stands.
    return fitsIn(ends, excess > 0 ? foot : allHeights, units, problems)
      ? ends.map((seat) => ({ ...seat, excess }))
      : [];
  };
  const within = all.map(({ dome }) => dome);
  const held = [
    ...openings.map((placed) =>
      within.filter((d) => d.id === placed.value.in).map((dome) => seatOf(openingArch(placed), dome)),
    ),
    ...passages.map((placed) => passageEnds(placed, placeOf, within).map(({ arch, dome }) => seatOf(arch, dome))),
  ].flatMap(hold);
  for (const { dome } of all) {
    const own = held.filter((seat) => seat.dome === dome);
    for (const [i, a] of own.entries())
      for (const b of own.slice(i + 1)) checkApart(a, b, blocks.shortestPiece, units, problems);
  }
}

/** The arch stays under the curb or crown, at each end of a passage; returns by how much it doesn't. */
function tellTooHigh(ends: readonly Seat[], blocks: BlockRules, units: LengthUnit, problems: ProblemList): number {
  const say = (mm: number) => formatLength(mm, units);
  const limits = ends.map((seat) => ({ ...seat, limit: seat.shape.archLimit(blocks) }));
  const { arch, dome, limit } = limits.reduce((a, b) => (b.limit < a.limit ? b : a));
  const { opening, section, ring, path, topZ, id } = arch;
  if (topZ <= limit) return 0;
  const under = dome.oculus ? texts.curbOfItsOculus : texts.itsCrown;
  const sizes = texts.archSizes(opening ? texts.sill(say(opening.sill)) : '', say(section.height), say(ring));
  const message = texts.archTooHigh(wordOf(arch), id, say(topZ), sizes, under, dome.id, say(limit));
  const mend = texts.lowerByOrMore(opening !== null, say(Math.ceil(topZ - limit)));
  problems.add(opening ? 'opening-too-high' : 'passage-too-high', [...path, 'height'], message, mend);
  return topZ - limit;
}

const lowest = (arch: Arch): number => Math.max(0, arch.baseZ);
const allHeights = ({ arch }: Seat): number[] => heightsBetween(lowest(arch), arch.topZ, turnsOf(arch, arch.ring));
const foot = ({ arch, shape }: Seat): number[] => [lowest(arch)].filter((z) => shape.radiusAt(z) > 0);

/** The arch leaves wall to both sides at the heights asked for, at each end of a passage. */
function fitsIn(
  ends: readonly Seat[],
  heightsOf: (seat: Seat) => number[],
  units: LengthUnit,
  problems: ProblemList,
): boolean {
  const say = (mm: number) => formatLength(mm, units);
  let worst = { seat: ends[0] as Seat, ratio: 0, z: 0, half: 0, radius: 0 };
  for (const seat of ends) {
    const { arch, shape } = seat;
    for (const z of heightsOf(seat)) {
      const half = arch.section.halfWidthAt(z, arch.ring, arch.baseZ);
      const radius = shape.radiusAt(z);
      if (half / radius > worst.ratio) worst = { seat, ratio: half / radius, z, half, radius };
    }
  }
  if (worst.ratio <= WIDEST_ARCH) return true;
  const { arch, dome } = worst.seat;
  const thing = arch.opening ? 'opening' : 'passage';
  const message = texts.archTooWide(
    wordOf(arch),
    arch.id,
    say(2 * worst.half),
    say(worst.z),
    dome.id,
    say(2 * worst.radius),
    say(2 * WIDEST_ARCH * worst.radius),
  );
  const mend = texts.makeNarrowerOrLower(thing);
  problems.add(arch.opening ? 'opening-too-wide' : 'passage-too-wide', [...arch.path, 'width'], message, mend);
  return false;
}

export const wordOf = (arch: Arch): string => (arch.opening ? 'arch' : 'vault');

export const turnsOf = ({ baseZ, section, topZ }: Arch, grow: number): number[] => [
  baseZ,
  section.springingZ,
  section.shoulderZ(grow),
  topZ,
];

/** By what angle two outlines, grown by half the least piece each, meet at a height on a circle; 0 where one isn't. */
function lackingAt([a, b]: readonly [Arch, Arch], z: number, radius: number, grow: number): number {
  const halfAngle = ({ section, ring, baseZ }: Arch) =>
    asin(Math.min(1, section.halfWidthAt(z, ring + grow, baseZ - grow) / radius));
  const [one, other] = [halfAngle(a), halfAngle(b)];
  if (one === 0 || other === 0) return 0;
  return one + other - Math.abs(turnSigned(a.bearingRad - b.bearingRad));
}

/** The outlines grown by half the least piece each don't meet at any height, on the intrados. */
function checkApart(a: Held, b: Held, piece: number, units: LengthUnit, problems: ProblemList): void {
  const grow = piece / 2;
  const arches = [a.arch, b.arch] as const;
  const from = Math.max(0, ...arches.map((arch) => arch.baseZ - grow));
  const to = Math.min(...arches.map(({ section, ring }) => section.topZ(ring + grow)));
  if (from > to) return;
  let heights: readonly number[];
  if (a.excess > 0 || b.excess > 0) {
    // Where a top isn't settled, what counts is the foot, and that only if no way to mend the height parts them.
    const lowered = [loweredArch(a), loweredArch(b)] as const;
    const foot = Math.max(0, ...arches.map(({ baseZ }) => baseZ));
    if (!lowered[0] || !lowered[1] || lackingAt([lowered[0], lowered[1]], foot, a.dome.radius, grow) <= 0) return;
    heights = [foot];
  } else {
    // Domes lean inward and sections are nowhere wider than at their jambs.
    const [one, other] = arches.map(({ section, ring }) =>
      asin(Math.min(1, (section.width / 2 + ring + grow) / a.shape.radiusAt(to))),
    ) as [number, number];
    if (one + other < Math.abs(turnSigned(a.arch.bearingRad - b.arch.bearingRad))) return;
    heights = heightsBetween(
      from,
      to,
      arches.flatMap((arch) => turnsOf(arch, arch.ring + grow)),
    );
  }
  let lacking = 0;
  let worstZ = from;
  for (const z of heights) {
    const lack = lackingAt(arches, z, a.shape.radiusAt(z), grow);
    if (!(lack > lacking)) continue;
    lacking = lack;
    worstZ = z;
  }
  if (lacking >= SAME_ANGLE_RAD) tellApart(a, b, lacking, worstZ, piece, units, problems);
}

/** The arch with its top brought down by what it is too high, if its head leaves room for that. */
function loweredArch({ arch, excess }: Held): Arch | null {
  const height = arch.section.height - excess;
  return arch.section.head.rise > height ? null : { ...arch, section: sectionOf({ ...arch.section, height }) };
}

function tellApart(
  a: Seat,
  b: Seat,
  lacking: number,
  z: number,
  piece: number,
  units: LengthUnit,
  problems: ProblemList,
): void {
  const turn = `${formatNumber(Math.ceil(lacking / DEG / 0.1) * 0.1, 3)} deg`;
  const names = texts.twoNames(a.arch.id, b.arch.id);
  const left = texts.leaveLessThanShortest(formatLength(piece, units), formatLength(z, units));
  if (b.arch.opening)
    problems.add(
      'openings-meet',
      [...b.arch.path, 'bearing'],
      texts.archesTooNear(names, left),
      texts.turnOneAway(turn),
    );
  else if (a.arch.opening)
    problems.add(
      'passage-meets-opening',
      [...a.arch.path, 'bearing'],
      texts.archAndVaultTooNear(a.arch.id, b.arch.id, left),
      texts.turnAwayFromPassage(a.arch.id, turn),
    );
  else if (Math.abs(turnSigned(a.arch.bearingRad - b.arch.bearingRad)) < SAME_ANGLE_RAD)
    problems.add(
      'passages-meet',
      [...b.arch.path, 'between'],
      texts.passagesLeaveOnSame(names, a.dome.id),
      texts.removeOneOfThem,
    );
  else
    problems.add(
      'passages-meet',
      [...b.arch.path, 'between'],
      texts.vaultsTooNear(names, left, a.dome.id),
      texts.narrowOrMoveApart(turn, a.dome.id),
    );
}

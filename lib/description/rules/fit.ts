import * as texts from '../../base/texts/problems-domes.js';
import { formatLength, type LengthUnit } from '../../base/units.js';
import type { Draft, Placed } from '../draft.js';
import type { BlockRules, Dome } from '../house.js';
import type { ProblemList } from '../problem-list.js';
import { checkApart } from './apart.js';
import { type Arch, openingArch, passageEnds } from './arch.js';
import { heightsBetween } from './runs.js';
import { type Held, type Seat, turnsOf, wordOf } from './seat.js';
import { shapeOf, widestShapeOf } from './shape.js';

/** Half the width over the rings, as part of the inside radius at the same height. */
const WIDEST_ARCH = 0.9;

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

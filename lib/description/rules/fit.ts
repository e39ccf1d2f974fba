import { formatLength, formatNumber, type LengthUnit } from '../../base/units.js';
import { asin } from '../../math/elementary.js';
import { type Section, sectionOf } from '../../math/section.js';
import { DEG, turnSigned } from '../../math/vec.js';
import type { Draft, Placed } from '../draft.js';
import type { BlockRules, Dome, Opening } from '../house.js';
import type { Path, ProblemList } from '../problem-list.js';
import { type DomeShape, shapeOf } from './shape.js';

/** Half the width over the rings, as part of the inside radius at the same height. */
const WIDEST_ARCH = 0.9;
const SAMPLES = 96;

/** An opening's arch as it stands in its dome. */
interface Arch {
  readonly path: Path;
  readonly opening: Opening;
  readonly section: Section;
  readonly ring: number;
  /** Ring and jambs begin here: a barrel's at the floor, a flush ring's at the sill. */
  readonly baseZ: number;
  readonly topZ: number;
}

/** Openings fit their dome, and arches of one dome leave a piece of wall between them. */
export function checkFit(
  draft: Draft,
  domes: readonly Placed<Dome>[],
  openings: Draft['openings'],
  problems: ProblemList,
): void {
  const { blocks, units } = draft;
  if (!blocks) return;
  for (const { value: dome } of domes) {
    const shape = shapeOf(dome);
    const arches = openings
      .filter(({ value }) => value.in === dome.id)
      .map(archOf)
      .filter((arch) => fits(arch, dome, shape, blocks, units, problems));
    for (const [i, a] of arches.entries())
      for (const b of arches.slice(i + 1)) checkApart(a, b, shape, blocks.shortestPiece, units, problems);
  }
}

function archOf({ path, value: opening }: Placed<Opening>): Arch {
  const section = sectionOf(opening);
  const { ring, face } = opening.arch;
  const baseZ = face === 'flush' ? opening.sill : 0;
  return { path, opening, section, ring, baseZ, topZ: section.topZ(ring) };
}

function fits(
  arch: Arch,
  dome: Dome,
  shape: DomeShape,
  blocks: BlockRules,
  units: LengthUnit,
  problems: ProblemList,
): boolean {
  const { opening, section, ring, path, topZ } = arch;
  const say = (mm: number) => formatLength(mm, units);
  const limit = shape.archLimit(blocks);
  if (topZ > limit) {
    const under = dome.oculus ? 'the curb of its oculus' : 'its crown';
    const message = `The arch of "${opening.id}" reaches ${say(topZ)} above the floor (sill ${say(opening.sill)}, height ${say(opening.height)}, ring ${say(ring)}); under ${under} the dome "${dome.id}" leaves room up to ${say(limit)}.`;
    const mend = `Lower the opening by ${say(Math.ceil(topZ - limit))} or more, or make the dome higher.`;
    problems.add('opening-too-high', [...path, 'height'], message, mend);
    return false;
  }
  let worst = { ratio: 0, z: 0, half: 0, radius: 0 };
  for (const z of heights(arch, Math.max(0, arch.baseZ), topZ, ring)) {
    const half = section.halfWidthAt(z, ring, arch.baseZ);
    const radius = shape.radiusAt(z);
    if (half / radius > worst.ratio) worst = { ratio: half / radius, z, half, radius };
  }
  if (worst.ratio <= WIDEST_ARCH) return true;
  const message = `The arch of "${opening.id}" is ${say(2 * worst.half)} wide over its ring at ${say(worst.z)} above the floor, where the dome "${dome.id}" is ${say(2 * worst.radius)} wide inside; at most 0.9 of that (${say(2 * WIDEST_ARCH * worst.radius)}) is possible.`;
  problems.add(
    'opening-too-wide',
    [...path, 'width'],
    message,
    'Make the opening narrower or lower, or the dome larger.',
  );
  return false;
}

/** Heights between two levels: evenly, and where the outline turns. */
function heights(arch: Arch, from: number, to: number, grow: number): number[] {
  const even = Array.from({ length: SAMPLES + 1 }, (_, i) => from + ((to - from) * i) / SAMPLES);
  const turns = [arch.baseZ, arch.section.springingZ, arch.section.shoulderZ(grow), arch.topZ];
  return [...even, ...turns.filter((z) => z > from && z < to)];
}

/** The outlines grown by half the least piece each don't meet at any height, on the intrados. */
function checkApart(a: Arch, b: Arch, shape: DomeShape, piece: number, units: LengthUnit, problems: ProblemList): void {
  const grow = piece / 2;
  const angle = Math.abs(turnSigned((a.opening.bearingDeg - b.opening.bearingDeg) * DEG));
  const from = Math.max(0, a.baseZ - grow, b.baseZ - grow);
  const to = Math.min(a.section.topZ(a.ring + grow), b.section.topZ(b.ring + grow));
  if (from > to) return;
  let lacking = 0;
  let worstZ = from;
  for (const z of [...heights(a, from, to, a.ring + grow), ...heights(b, from, to, b.ring + grow)]) {
    const radius = shape.radiusAt(z);
    const halfAngle = (arch: Arch) => {
      const half = arch.section.halfWidthAt(z, arch.ring + grow, arch.baseZ - grow);
      return asin(Math.min(1, half / radius));
    };
    const [one, other] = [halfAngle(a), halfAngle(b)];
    if (one === 0 || other === 0 || !(one + other - angle > lacking)) continue;
    lacking = one + other - angle;
    worstZ = z;
  }
  if (lacking < 1e-9) return;
  const turn = formatNumber(Math.ceil(lacking / DEG / 0.1) * 0.1, 3);
  const message = `The arches of "${a.opening.id}" and "${b.opening.id}" leave less than the shortest piece of ${formatLength(piece, units)} between them at ${formatLength(worstZ, units)} above the floor.`;
  const mend = `Turn one ${turn} deg away from the other, or make them narrower.`;
  problems.add('openings-meet', [...b.path, 'bearing'], message, mend);
}

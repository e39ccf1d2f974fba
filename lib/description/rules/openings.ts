import { SAME_POINT } from '../../base/tolerances.js';
import { formatApart, formatLength, type LengthUnit } from '../../base/units.js';
import type { Draft } from '../draft.js';
import type { Head, Opening } from '../house.js';
import type { Path, ProblemList } from '../problem-list.js';

const LOWEST_SILL = 50;
/** Wall that a niche leaves behind it. */
const LEAST_BACK = 40;
/** Rise of the lowest segmental head as part of its width; below it the head is flat. */
const LOWEST_HEAD = 1 / 20;

/**
 * Rules within one opening or passage.
 * @returns those whose section holds, so that they can be held against their domes
 */
export function checkOpenings(draft: Draft, problems: ProblemList): Pick<Draft, 'openings' | 'passages'> {
  const { units, wall } = draft;
  const openings = draft.openings.filter(({ path, value }) => {
    checkUse(value, path, units, problems);
    checkRing(value, path, units, problems);
    if (wall && value.depth !== null && value.use === 'niche') checkNiche(value, wall.thickness, path, units, problems);
    return headHolds(value, path, units, problems);
  });
  const passages = draft.passages.filter(({ path, value }) => headHolds(value, path, units, problems));
  return { openings, passages };
}

interface Headed {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly head: Head;
}

function headHolds(opening: Headed, path: Path, units: LengthUnit, problems: ProblemList): boolean {
  const { width, height, head } = opening;
  const { shape, rise } = head;
  const half = width / 2;
  const at = [...path, 'head'];
  const refuse = (needed: string, limit: number): false => {
    const [given, bound] = formatApart(rise, limit, units);
    const message = `The ${shape} head of "${opening.id}" rises ${given}; it ${needed} (${bound}).`;
    problems.add('head-rise', at, message, 'Change the rise, remove it to take its default, or choose another shape.');
    return false;
  };
  if (shape === 'flat' && rise !== 0) return refuse('has no rise', 0);
  if (shape === 'semicircular' && Math.abs(rise - half) > SAME_POINT) return refuse('rises half its width', half);
  if (shape === 'segmental' && rise > half) return refuse('rises at most half its width', half);
  if (shape === 'segmental' && rise < width * LOWEST_HEAD)
    return refuse('rises at least a twentieth of its width', width * LOWEST_HEAD);
  if (shape === 'pointed' && rise <= half) return refuse('rises more than half its width', half);
  if (rise <= height) return true;
  const [given, whole] = formatApart(rise, height, units);
  const message = `The ${shape} head of "${opening.id}" rises ${given}, more than the whole height of ${whole}.`;
  const mend = `Give a height of at least ${formatLength(rise, units)}, or a lower head.`;
  problems.add('head-too-high', [...path, 'height'], message, mend);
  return false;
}

function checkUse(opening: Opening, path: Path, units: LengthUnit, problems: ProblemList): void {
  const { id, use, sill, depth } = opening;
  if (use === 'door' && sill !== 0) {
    const message = `The door "${id}" has a sill of ${formatLength(sill, units)}.`;
    problems.add('sill-of-door', [...path, 'sill'], message, 'Remove the sill, or make it a window.');
  }
  if (use !== 'door' && sill < LOWEST_SILL) {
    const [given, least] = formatApart(sill, LOWEST_SILL, units);
    const message = `The sill of "${id}" lies ${given} above the floor; the sill of a ${use} lies at least ${least} above it.`;
    problems.add('sill-too-low', [...path, 'sill'], message, 'Raise the sill, or make it a door.');
  }
  if (use === 'niche' && depth === null)
    problems.add('niche-depth', path, `The niche "${id}" has no depth.`, 'Add "depth".', 'key');
  if (use !== 'niche' && depth !== null) {
    const message = `The ${use} "${id}" has a depth, but goes through the wall.`;
    problems.add('depth-not-niche', [...path, 'depth'], message, 'Remove the depth, or write `use: niche`.');
  }
}

function checkRing(opening: Opening, path: Path, units: LengthUnit, problems: ProblemList): void {
  const { id, arch, frame, width, height } = opening;
  const at = [...path, 'arch', 'voussoirs'];
  if (arch.voussoirs !== null && arch.madeAs === 'cast')
    problems.add(
      'voussoirs-cast',
      at,
      `The arch of "${id}" is cast in one and has no voussoirs.`,
      'Write `made-as: voussoirs`, or remove their number.',
    );
  else if (arch.voussoirs !== null && arch.voussoirs % 2 === 0)
    problems.add(
      'voussoirs-even',
      at,
      `The arch of "${id}" has ${arch.voussoirs} voussoirs; only an odd number has a keystone.`,
      `Give ${arch.voussoirs - 1} or ${arch.voussoirs + 1}.`,
    );
  if (2 * frame < width && frame < height) return;
  const message = `Frames of ${formatLength(frame, units)} leave no clear opening in "${id}" (${formatLength(width, units)} by ${formatLength(height, units)}).`;
  problems.add('frame-too-wide', [...path, 'frame'], message, 'Make the frame narrower.');
}

function checkNiche(opening: Opening, thickness: number, path: Path, units: LengthUnit, problems: ProblemList): void {
  const { depth, arch, id } = opening;
  const most = thickness + (arch.face === 'flush' ? 0 : arch.face) - LEAST_BACK;
  if (depth === null || depth <= most) return;
  const [given, limit] = formatApart(depth, most, units);
  const message = `The niche "${id}" is ${given} deep; a wall of ${formatLength(LEAST_BACK, units)} must stay behind it, so at most ${limit} is possible.`;
  const mend = 'Make it shallower, or let its face stand out: `arch: { face: ... }`.';
  problems.add('niche-too-deep', [...path, 'depth'], message, mend);
}

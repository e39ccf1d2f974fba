import * as texts from '../../base/texts/problems-domes.js';
import { SAME_ANGLE_RAD } from '../../base/tolerances.js';
import { formatLength, formatNumber, type LengthUnit } from '../../base/units.js';
import { asin } from '../../math/elementary.js';
import { sectionOf } from '../../math/section.js';
import { DEG, turnSigned } from '../../math/vec.js';
import type { ProblemList } from '../problem-list.js';
import type { Arch } from './arch.js';
import { heightsBetween } from './runs.js';
import { type Held, type Seat, turnsOf } from './seat.js';

/** By what angle two outlines, grown by half the least piece each, meet at a height on a circle; 0 where one isn't. */
function lackingAt([a, b]: readonly [Arch, Arch], z: number, radius: number, grow: number): number {
  const halfAngle = ({ section, ring, baseZ }: Arch) =>
    asin(Math.min(1, section.halfWidthAt(z, ring + grow, baseZ - grow) / radius));
  const [one, other] = [halfAngle(a), halfAngle(b)];
  if (one === 0 || other === 0) return 0;
  return one + other - Math.abs(turnSigned(a.bearingRad - b.bearingRad));
}

/** The outlines grown by half the least piece each don't meet at any height, on the intrados. */
export function checkApart(a: Held, b: Held, piece: number, units: LengthUnit, problems: ProblemList): void {
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

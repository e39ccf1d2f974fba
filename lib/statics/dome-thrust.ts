import { SAME_POINT } from '../base/tolerances.js';
import type { Lune } from './lune.js';
import { frictionNeeded, geometricFactor, stands, type ThrustBody, type ThrustSection, thrustRange } from './thrust.js';
import { type ThrustPoint, thrustLine } from './thrust-line.js';
import type { PlacedTie } from './tie.js';

/** Symmetrical loads of a dome; weights are as they are, without load factors. */
export type SymmetricalCase = 'dead' | 'dead and snow';

/** What one lune of a dome does under the load that leaves it the least factor. Forces kN per radian, lengths mm. */
export interface DomeThrust {
  readonly loads: SymmetricalCase;
  /** Geometric factor under that load, the least of all. */
  readonly factor: number;
  /** Least thrust at the foot of the wall or footing; `null` when no thrust fits. */
  readonly least: number | null;
  /** Greatest thrust there when nothing but the crown pushes; `null` when none fits or nothing limits it. */
  readonly greatest: number | null;
  /** Least friction of the joints with which a thrust fits; `null` when none does. */
  readonly friction: number | null;
  /** The line that keeps farthest from the faces; empty when none fits at any thickness. */
  readonly line: readonly ThrustPoint[];
}

/** A lune as a body for the thrust programme: closed rings push only above `cutZ`, the tie pulls where it lies. */
export function bodyOf(lune: Lune, loads: SymmetricalCase, cutZ: number, tie: PlacedTie | null): ThrustBody {
  const snow = loads === 'dead' ? 0 : 1;
  let left = tie !== null && tie.strength > 0 ? { z: tie.z, most: tie.strength } : null;
  const sections = lune.sections.map((s): ThrustSection => {
    const pulls = left !== null && s.middle[1] <= left.z ? left : null;
    if (pulls) left = null;
    return {
      middle: s.middle,
      half: s.half,
      weight: s.dead.weight + snow * s.snow.weight,
      moment: s.dead.moment + snow * s.snow.moment,
      hoops: s.ring !== null && s.ring[0] >= cutZ && !pulls ? s.ring : null,
      ...(pulls ? { tie: pulls } : {}),
    };
  });
  return { sections, crown: lune.crown };
}

/** Runs the thrust programme on one lune under every load and tells of the worst. */
export function domeThrust(lune: Lune, cutZ: number, tie: PlacedTie | null): DomeThrust {
  const { loads, body, factor } = worstCase(lune, cutZ, tie);
  const crownOnly = { ...body, sections: body.sections.map((s) => ({ ...s, hoops: null })) };
  return {
    loads,
    factor,
    least: thrustRange(body)?.least ?? null,
    greatest: thrustRange(crownOnly)?.greatest ?? null,
    friction: factor >= 1 ? frictionNeeded(body) : null,
    line: factor > 0 ? thrustLine(body, 1.0001 / factor) : [],
  };
}

function worstCase(lune: Lune, cutZ: number, tie: PlacedTie | null) {
  const told = (loads: SymmetricalCase, body: ThrustBody) => ({ loads, body, factor: geometricFactor(body) });
  const dead = bodyOf(lune, 'dead', cutZ, tie);
  if (!hasSnow(lune)) return told('dead', dead);
  const snowed = told('dead and snow', bodyOf(lune, 'dead and snow', cutZ, tie));
  // Most often dead load alone needs less.
  return snowed.factor === 0 || stands(dead, 1 / snowed.factor) ? snowed : told('dead', dead);
}

export const hasSnow = (lune: Lune): boolean => (lune.sections[lune.sections.length - 1]?.snow.weight ?? 0) > 0;

/**
 * Pull of a ring at height z that holds the least thrust of what stands above it, kN; `null` when no thrust fits.
 * One lune's thrust per radian is the pull of the whole ring.
 */
export function pullAt(lune: Lune, loads: SymmetricalCase, cutZ: number, z: number): number | null {
  const above = lune.sections.filter((s) => s.middle[1] > z - SAME_POINT || s === lune.sections[0]);
  return thrustRange(bodyOf({ ...lune, sections: above }, loads, cutZ, null))?.least ?? null;
}

/** A section's figure by the height of its middle, between sections in proportion; ends held. */
export function atHeight(lune: Lune, z: number, of: (index: number) => number): number {
  const { sections } = lune;
  const next = sections.findIndex((s) => s.middle[1] <= z);
  if (next < 0) return of(sections.length - 1);
  if (next === 0) return of(0);
  const [high, low] = [sections[next - 1]?.middle[1] ?? z, sections[next]?.middle[1] ?? z];
  const t = high > low ? (high - z) / (high - low) : 0;
  return of(next - 1) + (of(next) - of(next - 1)) * t;
}

import type { Site } from '../description/house.js';
import { type DriftHeights, driftMoment, snowDrift } from './drift.js';
import { pressureOf } from './loads.js';
import type { Lune, LuneSection } from './lune.js';
import { type Pair, type PairSection, pairFactor, pairLines, tiltCapacity } from './pair.js';
import type { ThrustPoint } from './thrust.js';
import type { PlacedTie } from './tie.js';

/**
 * Loads that push a dome from one side, on an opposite pair of lunes as a tapered arch in the load's direction: an
 * estimate, since it leaves out what the rings carry. The first half is to windward.
 */
export type OneSidedLoad = 'drifted snow' | 'wind' | 'earthquake';

export interface OneSided {
  readonly load: OneSidedLoad;
  readonly factor: number;
  /** Lines of thrust, windward and leeward; empty when none fits. */
  readonly lines: readonly [readonly ThrustPoint[], readonly ThrustPoint[]];
  /** Of drifted snow, the greatest load on the plan, kPa; `null` otherwise. */
  readonly peakKpa: number | null;
  /** Of an earthquake, the greatest part of the weight that may push; `null` otherwise. */
  readonly capacity: number | null;
}

/** Adds at each section what one half bears above it. */
type Burden = (
  s: LuneSection,
  index: number,
) => {
  readonly weight: number;
  readonly moment: number;
  readonly push: number;
  readonly pushMoment: number;
};

const halfOf = (lune: Lune, tie: PlacedTie | null, burden: Burden): PairSection[] =>
  lune.sections.map((s, i) => {
    const more = burden(s, i);
    return {
      middle: s.middle,
      half: s.half,
      weight: s.dead.weight + more.weight,
      moment: s.dead.moment + more.moment,
      push: more.push,
      pushMoment: more.pushMoment,
      tied: tie !== null && s.middle[1] <= tie.z,
    };
  });

const tieOf = (tie: PlacedTie | null): Pair['tie'] =>
  tie && tie.strength > 0 ? { z: tie.z, most: tie.strength } : null;

function judge(load: OneSidedLoad, pair: Pair, capacity: number | null = null): OneSided {
  return { load, factor: pairFactor(pair), lines: pairLines(pair), capacity, peakKpa: null };
}

/** Dead load and an equivalent horizontal load of `coefficient` times it, towards the second half. */
export function earthquake(lune: Lune, tie: PlacedTie | null, coefficient: number): OneSided {
  const shaken =
    (sign: 1 | -1): Burden =>
    (s) => ({
      weight: 0,
      moment: 0,
      push: sign * coefficient * s.dead.weight,
      pushMoment: sign * coefficient * s.dead.height,
    });
  const pair: Pair = { halves: [halfOf(lune, tie, shaken(-1)), halfOf(lune, tie, shaken(1))], tie: tieOf(tie) };
  const still = halfOf(lune, tie, () => NOTHING);
  const heights = lune.sections.map((s) => s.dead.height);
  const capacity = tiltCapacity({ halves: [still, [...still]], tie: tieOf(tie) }, [heights, heights]);
  return judge('earthquake', pair, capacity);
}

const NOTHING = { weight: 0, moment: 0, push: 0, pushMoment: 0 };

/** Dead load and drifted snow, by the standard that the loads are put together by: see `snowDrift`. */
export function drift(lune: Lune, tie: PlacedTie | null, site: Site): OneSided {
  const law = snowDrift(lune, site);
  const reach = law.radii[2];
  const snowed =
    (kpa: DriftHeights): Burden =>
    (s) => {
      const edge = s.part === 'shell' ? Math.min(s.middle[0] + s.half[0], reach) : reach;
      const load = (power: 1 | 2) => pressureOf(driftMoment(law.radii, kpa, edge, power));
      return { weight: load(1), moment: load(2), push: 0, pushMoment: 0 };
    };
  const pair: Pair = {
    halves: [halfOf(lune, tie, snowed(law.windward)), halfOf(lune, tie, snowed(law.leeward))],
    tie: tieOf(tie),
  };
  return { ...judge('drifted snow', pair), peakKpa: Math.max(...law.leeward) };
}

/**
 * Dead load and wind: pressure coefficients linear in the angle along the meridian from the windward springing over
 * the crown line to the leeward springing, the springings' own on the stem wall. EN 1991-1-4:2005, 7.2.8 (from
 * memory). No pressure inside.
 */
export function wind(lune: Lune, tie: PlacedTie | null, kpa: number, coefficients: WindCoefficients): OneSided {
  const blown = (side: -1 | 1): Burden => {
    const sums = windBurdens(lune, kpa, (turn) => windCoefficient(coefficients, side * turn));
    return (_, i) => sums[i] ?? NOTHING;
  };
  return judge('wind', { halves: [halfOf(lune, tie, blown(-1)), halfOf(lune, tie, blown(1))], tie: tieOf(tie) });
}

export type WindCoefficients = readonly [number, number, number];

/**
 * Coefficients of a hemisphere that stands on the ground, rise half the width, no stem wall: +0.8, −1.2, 0.
 * EN 1991-1-4:2005, Figure 7.12 (a graph, read from memory).
 */
export const HEMISPHERE_ON_GROUND: WindCoefficients = [0.8, -1.2, 0];

/** Coefficient at `turn` of the arc along the wind: −1 windward springing, 0 crown line, 1 leeward springing. */
export const windCoefficient = ([windward, crown, leeward]: WindCoefficients, turn: number): number =>
  turn < 0 ? crown + (windward - crown) * -turn : crown + (leeward - crown) * turn;

/** Sums of wind pressure on the extrados above each section; `at` gives the coefficient from 0 (crown) to 1. */
function windBurdens(lune: Lune, kpa: number, at: (turn: number) => number) {
  const { sections } = lune;
  const springing = sections.filter((s) => s.part === 'shell').at(-1)?.normalRad ?? 0;
  const turnOf = (s: LuneSection) =>
    s.part === 'shell' ? Math.min(1, (Math.PI / 2 - s.normalRad) / (Math.PI / 2 - springing)) : 1;
  const outer = (s: LuneSection) => [s.middle[0] + s.half[0], s.middle[1] + s.half[1]] as const;
  let sum = NOTHING;
  return sections.map((s, i) => {
    const before = sections[i - 1];
    if (!before || s.part === 'footing') return sum;
    const [[r0, z0], [r1, z1]] = [outer(before), outer(s)];
    const pressure = pressureOf(kpa) * at((turnOf(before) + turnOf(s)) / 2);
    const r = (r0 + r1) / 2;
    const down = pressure * r * (r1 - r0);
    const inward = pressure * r * (z0 - z1);
    sum = {
      weight: sum.weight + down,
      moment: sum.moment + down * r,
      push: sum.push - inward,
      pushMoment: sum.pushMoment - (inward * (z0 + z1)) / 2,
    };
    return sum;
  });
}

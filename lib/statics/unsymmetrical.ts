import { THRUST_MISS } from '../base/tolerances.js';
import type { Site } from '../description/house.js';
import { type Combination, combinationsWith, type OneSidedLoad } from './combinations.js';
import { hasSnow } from './dome-thrust.js';
import { type DriftHeights, driftAbove, snowDrift } from './drift.js';
import { linePressure } from './joints.js';
import type { Growing, LineLimits } from './line-joints.js';
import { pressureOf } from './loads.js';
import { type Lune, type LuneSection, onCurb, surfacePoint } from './lune.js';
import { type BorneLoad, type Holding, MOST_PART, OneLine } from './one-line.js';
import { holdingPull, type OneSidedPull } from './one-sided-pull.js';
import { pairFactor, pairLines } from './pair.js';
import type { Burden, Pair, PairSection } from './pair-programme.js';
import { pressedRings } from './pressed-rings.js';
import type { ThrustPoint } from './thrust-line.js';
import type { PlacedTie } from './tie.js';
import { tiltCapacity } from './tilt.js';

/**
 * A load that pushes a dome from one side, on an opposite pair of lunes as a tapered arch in the load's direction: an
 * estimate, since it leaves out what the rings carry. The first half is to windward.
 */
export interface OneSided {
  readonly load: OneSidedLoad;
  /** Geometric factor under dead load and this one, without load factors. */
  readonly factor: number;
  /** Lines of thrust, windward and leeward; empty when none fits. */
  readonly lines: readonly [readonly ThrustPoint[], readonly ThrustPoint[]];
  /** Under the footing of the worse half, without load factors, kPa; `null` without a footing or where none fits. */
  readonly pressureKpa: number | null;
  /** Of drifted snow, the greatest load on the plan, kPa; `null` otherwise. */
  readonly peakKpa: number | null;
  /** Of wind, by what the pressure was multiplied; `null` otherwise. */
  readonly coefficients: WindCoefficients | null;
  /** Heights of the middles of the closed rings that may press in the one line of thrust, from the top down, mm. */
  readonly ringZ: readonly number[];
  /** Of an earthquake, the greatest part of the weight that may push; `null` otherwise. */
  readonly capacity: number | null;
  /** Put together with dead load and, but for drifted snow, even snow, with load factors. */
  readonly combined: readonly Combined[];
}

/** A combination, and how much of its load from one side the dome bears. */
export interface Combined extends Combination {
  /**
   * Part of the load from one side with its load factor that one line of thrust bears, within the wall, its strength,
   * its joints' friction and the tie's strength at once: from 1 on, all of it. It is sought no further than the least of
   * the combinations before it. `null` where no line keeps within all that under any part of it.
   */
  readonly borne: number | null;
  /** What keeps the load from growing further. */
  readonly heldBy: readonly Holding[];
  /** What it asks of a ring tie; `null` where no line keeps within the other limits, however strong that is. */
  readonly pull: OneSidedPull | null;
}

const NOTHING: Burden = { weight: 0, moment: 0, push: 0, pushMoment: 0 };

/** A dome, its tie, the height above which its rings are closed, and what its masonry and joints bear. */
export interface Standing {
  readonly lune: Lune;
  readonly tie: PlacedTie | null;
  readonly cutZ: number;
  /** Design strength of the masonry, MPa; `null` where it isn't known. */
  readonly strengthMpa: number | null;
  readonly friction: number;
}

/** Where a dome's ring tie lies, or would: over all that cuts its rings, or at the springing. */
export const ringLevel = ({ lune, tie, cutZ }: Pick<Standing, 'lune' | 'tie' | 'cutZ'>): number =>
  tie?.z ?? Math.max(cutZ, lune.dome.springingZ);

/** What comes on a dome from one side: at each section of the lune, of both halves. */
interface Sided extends Standing {
  readonly burdens: readonly [readonly Burden[], readonly Burden[]];
}

interface Factors {
  readonly dead: number;
  readonly snow: number;
  readonly load: number;
}

const AS_THEY_ARE: Factors = { dead: 1, snow: 0, load: 1 };

/** The dome as two halves under its loads times their factors; a closed tie as strong as its steel. */
function pairOf(sided: Sided, { dead, snow, load }: Factors): Pair {
  const { lune, tie } = sided;
  const tieZ = ringLevel(sided);
  const half = (which: 0 | 1): PairSection[] => {
    const burdens = grown(sided, which, load);
    const curb = curbFace(lune);
    return [
      ...curb,
      ...lune.sections.map((s, i) => {
        const more = burdens[curb.length + i] as Burden;
        return {
          middle: s.middle,
          half: s.half,
          weight: dead * s.dead.weight + snow * s.snow.weight + more.weight,
          moment: dead * s.dead.moment + snow * s.snow.moment + more.moment,
          push: more.push,
          pushMoment: more.pushMoment,
          tied: s.middle[1] <= tieZ,
        };
      }),
    ];
  };
  return {
    halves: [half(0), half(1)],
    tie: tie && tie.strength > 0 ? { z: tie.z, most: tie.strength } : null,
  };
}

/** What comes on a half from one side, times its factor, at each of its sections. */
const grown = ({ lune, burdens }: Sided, which: 0 | 1, load: number): Burden[] => [
  ...curbFace(lune).map(() => NOTHING),
  ...lune.sections.map((_, i) => {
    const { weight, moment, push, pushMoment } = burdens[which][i] ?? NOTHING;
    return { weight: load * weight, moment: load * moment, push: load * push, pushMoment: load * pushMoment };
  }),
];

/** Where the halves hand each other their thrust across an oculus: inside the curb, at its upright inner face. */
function curbFace({ dome, crown }: Lune): PairSection[] {
  if (!dome.curb) return [];
  const [low, high] = crown(1);
  return [
    {
      middle: [dome.curb.clearRadius, (low + high) / 2],
      half: [0, (high - low) / 2],
      ...NOTHING,
      tied: false,
    },
  ];
}

function judge(load: OneSidedLoad, sided: Sided, combinations: readonly Combination[]): OneSided {
  const pair = pairOf(sided, AS_THEY_ARE);
  const lines = pairLines(pair);
  return {
    load,
    factor: pairFactor(pair),
    lines,
    capacity: null,
    peakKpa: null,
    coefficients: null,
    ringZ: limitsOf(sided).rings.map(({ z }) => z),
    pressureKpa: footPressure(sided.lune, lines),
    combined: combine(() => sided, combinations),
  };
}

/** Under each combination, the one that asks most sought to the end: of others it is enough that they bear as much. */
function combine(sidedUnder: (one: Combination) => Sided, combinations: readonly Combination[]): Combined[] {
  let least = MOST_PART;
  return combinations.map((one) => {
    const sided = sidedUnder(one);
    const [growing, limits] = [growingUnder(sided, one), limitsOf(sided)];
    const line = new OneLine(growing, limits);
    const found = borneBy(line, least);
    least = Math.min(least, found?.factor ?? 0);
    const fits = line.leastPull();
    const holds = fits === null ? null : holdingPull(growing, limits, ringLevel(sided));
    return {
      ...one,
      borne: found?.factor ?? null,
      heldBy: found?.heldBy ?? [],
      pull: fits === null || holds === null ? null : { fits, holds },
    };
  });
}

/** What a line of thrust must keep within. */
const limitsOf = ({ lune, cutZ, strengthMpa, friction }: Standing): LineLimits => ({
  strengthMpa,
  friction,
  rings: pressedRings(lune.dome, cutZ),
  thickness: lune.dome.thickness,
});

/** The dome under a combination whose load from one side may grow; a ring where a tie lies, or would. */
function growingUnder(sided: Sided, one: Combination): Growing {
  const still = pairOf(sided, { ...one, load: 0 });
  return {
    pair: { ...still, tie: still.tie ?? { z: ringLevel(sided), most: 0 } },
    grows: [grown(sided, 0, one.load), grown(sided, 1, one.load)],
  };
}

/** The part of the load that is borne, up to `most`. Where more than all is asked, all of it is tried first. */
function borneBy(line: OneLine, most: number): BorneLoad | null {
  const all = line.solve(Math.min(1, most));
  return all && most > 1 && all.factor > 1 - THRUST_MISS ? line.solve(most) : all;
}

function footPressure({ sections }: Lune, lines: OneSided['lines']): number | null {
  const last = sections[sections.length - 1];
  return last?.part === 'footing' ? linePressure(lines, 2 * last.half[0], last.middle[0]) : null;
}

/**
 * Dead load and an equivalent horizontal load of `coefficient` times it, towards the second half. Where snow is
 * combined with it, its part pushes as well.
 */
export function earthquake(standing: Standing, coefficient: number, site: Site): OneSided {
  const { lune } = standing;
  const shaken = (sign: 1 | -1, snow: number): Burden[] =>
    lune.sections.map((s) => ({
      ...NOTHING,
      push: sign * coefficient * (s.dead.weight + snow * s.snow.weight),
      pushMoment: sign * coefficient * (s.dead.height + snow * s.snow.height),
    }));
  const sided = (snow: number): Sided => ({ ...standing, burdens: [shaken(-1, snow), shaken(1, snow)] });
  const bare = judge('earthquake', sided(0), []);
  const heights = [...curbFace(lune).map(() => 0), ...lune.sections.map((s) => s.dead.height)];
  const still = pairOf({ ...standing, burdens: [[], []] }, AS_THEY_ARE);
  return {
    ...bare,
    capacity: tiltCapacity(still, [heights, heights]),
    combined: combine(
      ({ snow }) => sided(snow),
      combinationsWith(site.combinations, 'earthquake', hasSnow(lune), site.seismicVertical ?? 0),
    ),
  };
}

/** Dead load and drifted snow, by the standard that the loads are put together by: see `snowDrift`. */
export function drift(standing: Standing, site: Site): OneSided {
  const { lune } = standing;
  const law = snowDrift(lune, site);
  const reach = law.radii[2];
  const snowed = (kpa: DriftHeights): Burden[] =>
    lune.sections.map((s) => {
      const edge = s.part === 'shell' ? Math.min(surfacePoint(lune, s)[0], reach) : reach;
      return { ...NOTHING, ...driftAbove(lune.dome.curb, law.radii, kpa, edge) };
    });
  const sided: Sided = { ...standing, burdens: [snowed(law.windward), snowed(law.leeward)] };
  const combinations = combinationsWith(site.combinations, 'drifted snow', true);
  return { ...judge('drifted snow', sided, combinations), peakKpa: Math.max(...law.leeward) };
}

/**
 * Dead load and wind: pressure coefficients linear along the meridian's arc from the windward springing over the crown
 * to the leeward springing, the springings' own on the stem wall. EN 1991-1-4:2005, 7.2.8: linear along arcs parallel to
 * the wind (from memory). On a pointed dome the crown line passes its apex as well. No pressure inside.
 */
export function wind(standing: Standing, site: Site, coefficients: WindCoefficients): OneSided {
  const { lune } = standing;
  const blown = (side: -1 | 1): Burden[] =>
    windBurdens(lune, site.windKpa ?? 0, (turn) => windCoefficient(coefficients, side * turn));
  const sided: Sided = { ...standing, burdens: [blown(-1), blown(1)] };
  return { ...judge('wind', sided, combinationsWith(site.combinations, 'wind', hasSnow(lune))), coefficients };
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

/** Sums of wind pressure on the rendered surface above each section; `at` gives the coefficient from 0 (crown) to 1. */
function windBurdens(lune: Lune, kpa: number, at: (turn: number) => number): Burden[] {
  const { sections } = lune;
  const { length } = lune.dome.shell;
  // A pointed extrados goes on past the intrados' crown.
  const turnOf = (s: LuneSection) => (s.part === 'shell' ? Math.max(0, 1 - s.s / length) : 1);
  const { curb } = lune.dome;
  const [first] = sections;
  // Curb and skylight are nearly level: the crown line's coefficient.
  let sum =
    curb && first ? { ...NOTHING, ...onCurb(curb, surfacePoint(lune, first)[0], pressureOf(kpa) * at(0)) } : NOTHING;
  return sections.map((s, i) => {
    const before = sections[i - 1];
    if (!before || s.part === 'footing') return sum;
    const [[r0, z0], [r1, z1]] = [surfacePoint(lune, before), surfacePoint(lune, s)];
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

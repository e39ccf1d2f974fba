import { remembered } from '../base/remembered.js';
import type { Intervals } from '../math/intervals.js';
import { turnPositive } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { bearingColumn, columnRuns, comesNear, freeBearing } from './column.js';
import { cuttersOf } from './lay.js';
import { freshKg } from './mass.js';
import { cutVolume } from './measure.js';
import { curbPerRadian, plugVolume, skewbackBodies } from './volumes.js';

/** What a cast piece belongs to: the ring at the springing, the oculus' curb, or the crown. */
export type RingPieceKind = 'skewback' | 'curb' | 'plug';

/** One cast piece of a dome's skewback ring or curb, or its crown plug. */
export interface RingPiece {
  readonly mark: string;
  readonly domeId: string;
  readonly kind: RingPieceKind;
  /** Bearings of its ends, joints taken off; a plug has the whole turn. */
  readonly startRad: number;
  readonly endRad: number;
  /** Whether arches, passages or earlier domes cut it. */
  readonly cut: boolean;
  /** mm³ */
  readonly volume: number;
}

export interface RingPieces {
  readonly pieces: readonly RingPiece[];
  /** Mortar between the segments, mm³. */
  readonly joints: number;
}

/** Fewest segments of a whole ring; none of a ring that cuts part is longer. */
const FEWEST = 3;

/** Skewback ring, curb and crown plug of every dome, in the order in which they are laid. */
export const ringPieces = remembered((setout: HouseSetout): RingPieces => {
  const all = setout.domes.flatMap((dome) => [
    skewbackSegments(setout, dome),
    curbSegments(setout, dome),
    plugPiece(dome),
  ]);
  return { pieces: all.flatMap((r) => r.pieces), joints: all.reduce((sum, r) => sum + r.joints, 0) };
});

const NONE: RingPieces = { pieces: [], joints: 0 };

/** In how many equal segments a stretch of a ring is cast, so that none is too heavy to lift freshly demoulded. */
function segmentsIn(setout: HouseSetout, volume: number): number {
  return Math.max(1, Math.ceil(freshKg(volume, setout.house) / setout.house.blocks.heaviestKg));
}

/** Each stretch that is left between cuts, in equal segments; the bearings at which cuts end it are left to the cuts. */
function skewbackSegments(setout: HouseSetout, dome: DomeSetout): RingPieces {
  if (!dome.skewback) return NONE;
  const cutters = cuttersOf(setout, dome);
  const inner = dome.springingRadius;
  const radius = inner + dome.thickness / 2;
  const half = setout.house.blocks.joint / 2 / radius;
  const middleZ = (dome.springingZ + (dome.skewback.bed[1] + dome.skewback.shoulderZ) / 2) / 2;
  const start = freeBearing(cutters.map((c) => ({ at: c.bearingRad, half: c.spreadAt(radius, middleZ) })));
  if (start === null) return NONE;
  const turn = [start, start + 2 * Math.PI] as const;
  const runs = columnRuns(bearingColumn(radius, middleZ, 1, turn), cutters);
  const foot = { narrowest: inner, lowest: dome.springingZ };
  const near = (bearings: Bearings) => cutters.filter((c) => comesNear(c, foot, bearings));
  const volumeOf = (bearings: Bearings) =>
    skewbackBodies(dome, bearings).reduce((sum, body) => sum + cutVolume(body, near(bearings)), 0);
  const parts: Bearings[] = [];
  let joints = 0;
  for (const { from, to, low, high } of stretchesOf(runs, turn)) {
    const shared = (count: number): Bearings[] => {
      const at = (i: number) => (i === 0 ? from : i === count ? to : low + ((high - low) * i) / count);
      return Array.from({ length: count }, (_, i) => [at(i), at(i + 1)]);
    };
    // No longer than a third of a turn: a cut at both ends of a body is measured at the nearer one alone.
    const least = Math.ceil(((high - low - half) / (2 * Math.PI)) * FEWEST);
    const volume = shared(least).reduce((sum, bearings) => sum + volumeOf(bearings), 0);
    for (const [start, end] of shared(Math.max(least, segmentsIn(setout, volume)))) {
      parts.push([start + half, end - half]);
      // Each joint is counted with what follows it; where a cut takes all, it comes to nothing.
      joints += volumeOf([start - half, start + half]);
    }
  }
  const middleOf = ([start, end]: Bearings) => turnPositive((start + end) / 2);
  parts.sort((a, b) => middleOf(a) - middleOf(b));
  const pieces = parts.map((bearings, k) => {
    const volume = volumeOf(bearings);
    return segment(dome, 'skewback', k, bearings, volume, near(bearings).length > 0);
  });
  return { pieces, joints };
}

type Bearings = readonly [number, number];

/** Stretches of a ring that cuts leave from `low` to `high`, each with its half of the cuts beside it. */
function stretchesOf(runs: Intervals, turn: Bearings) {
  const full = 2 * Math.PI;
  const [first, ...others] = runs;
  if (!first) return [];
  // Uncut, the ring starts at bearing 0 whatever stands elsewhere.
  if (others.length === 0) return [{ from: 0, to: full, low: 0, high: full }];
  // The turn starts where nothing is cut: its last stretch goes on with the first.
  const last = others.at(-1) as Bearings;
  const round: Bearings[] = [...others.slice(0, -1), [last[0], first[1] + (turn[1] - turn[0])]];
  return round.map(([low, high], k) => {
    const before = k === 0 ? (round.at(-1) as Bearings)[1] - full : (round[k - 1] as Bearings)[1];
    const next = k + 1 === round.length ? (round[0] as Bearings)[0] + full : (round[k + 1] as Bearings)[0];
    return { from: (before + low) / 2, to: (high + next) / 2, low, high };
  });
}

function curbSegments(setout: HouseSetout, dome: DomeSetout): RingPieces {
  if (!dome.curb) return NONE;
  const perRadian = curbPerRadian(dome);
  const half = setout.house.blocks.joint / (dome.curb.clearRadius + dome.curb.bedOuter[0]);
  const count = Math.max(FEWEST, segmentsIn(setout, 2 * Math.PI * perRadian));
  const module = (2 * Math.PI) / count;
  return {
    pieces: Array.from({ length: count }, (_, k) =>
      segment(dome, 'curb', k, [k * module + half, (k + 1) * module - half], (module - 2 * half) * perRadian, false),
    ),
    joints: count * 2 * half * perRadian,
  };
}

function plugPiece(dome: DomeSetout): RingPieces {
  if (!dome.plug) return NONE;
  return {
    pieces: [
      {
        mark: `${dome.id}-plug`,
        domeId: dome.id,
        kind: 'plug',
        startRad: 0,
        endRad: 2 * Math.PI,
        cut: false,
        volume: plugVolume(dome),
      },
    ],
    joints: 0,
  };
}

const segment = (
  dome: DomeSetout,
  kind: 'skewback' | 'curb',
  index: number,
  [startRad, endRad]: readonly [number, number],
  volume: number,
  cut: boolean,
): RingPiece => ({ mark: `${dome.id}-${kind}-${index + 1}`, domeId: dome.id, kind, startRad, endRad, cut, volume });

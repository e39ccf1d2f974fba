import { cos, hypot } from '../../math/elementary.js';
import { alongBearing, dot2, sub2, type Vec2 } from '../../math/vec.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import type { CutLine } from './cut-lines.js';
import type { PrintSizes } from './sizes.js';

/** Pegs and sockets are octagons: laid on a flat they need no support, nor does a socket that lies. */
export const SIDES = 8;
/** Distance of an octagon's corner from its middle, for one that is 1 from its middle to its flats. */
export const CORNER = 1 / cos(Math.PI / SIDES);
/** Places round a dome that are tried. */
const PLACES = 48;
/** Three pegs fit in one way only when the gaps between them differ so much (places). */
const UNEQUAL = 2;
/** A corbel's tip is so wide, as a share of its pad. */
export const TIP = 0.2;
/** Pegs stand so many of their pads' half widths from the axis. */
const LEAST_REACHES = 1.3;
/** Heights of a corbel that are tried. */
const CORBEL_STEPS = 12;

/** Pegs that stand on a wall below a level, with a pad on the inside where the wall alone is too thin for them. */
export interface StandingPegs {
  readonly level: number;
  /** Middles of the pegs in plan. */
  readonly at: readonly Vec2[];
}

/** Half sizes of a socket and of the pad round it, middle to flats. */
export const halves = ({ peg, thin, surface }: PrintSizes) => {
  const socket = peg.across / 2 + peg.clearance;
  return { peg: peg.across / 2, socket, pad: socket + thin + surface };
};

/** Half of a socket across its flats. */
export const socketHalf = (sizes: PrintSizes): number => halves(sizes).socket;

/** Across the corners of an octagon that is so far from its middle to its flats. */
export const octagonAcross = (half: number): number => 2 * half * CORNER;

/** Across the corners of a socket. */
export const socketSize = (sizes: PrintSizes): number => octagonAcross(socketHalf(sizes)) + 2 * sizes.surface;

/** How far a roof's sockets reach above its foot. */
export const socketDepth = ({ peg }: PrintSizes): number => peg.length + peg.end;

/**
 * Places for up to three pegs under a roof where the wall is whole and no upright cut passes, as far apart as can be but
 * not evenly.
 */
export function roofPegs(
  setout: HouseSetout,
  dome: DomeSetout,
  level: number,
  sizes: PrintSizes,
  lines: readonly CutLine[] = [],
): StandingPegs {
  return at(dome, level, sizes, spread(freePlaces(setout, dome, level, sizes, lines)));
}

/** The same on a wall that is parted between its openings: each stretch from opening to opening has a peg of its own. */
export function wallPegs(
  setout: HouseSetout,
  dome: DomeSetout,
  level: number,
  sizes: PrintSizes,
  lines: readonly CutLine[],
): StandingPegs {
  const { foot } = padPlace(dome, level, sizes);
  const free = freePlaces(setout, dome, level, sizes, lines, (point, reach) =>
    setout.domes.every((other) => {
      if (other.id === dome.id || other.topZ < foot) return true;
      return hypot(...sub2(point, other.at)) > other.outerRadiusAt(Math.max(0, foot)) + reach;
    }),
  );
  const chosen = spread(free);
  const held = runsOf(free).flatMap((run) => {
    const middle = run[Math.floor(run.length / 2)] as number;
    return run.some((k) => chosen.includes(k)) ? [] : [middle];
  });
  return at(dome, level, sizes, [...chosen, ...held]);
}

function at(dome: DomeSetout, level: number, sizes: PrintSizes, places: readonly number[]): StandingPegs {
  const { radius } = padPlace(dome, level, sizes);
  return {
    level,
    at: places.map((k): Vec2 => {
      const along = alongBearing((2 * Math.PI * k) / PLACES);
      return [dome.at[0] + radius * along[0], dome.at[1] + radius * along[1]];
    }),
  };
}

/** Places round a dome where the wall is whole. */
function freePlaces(
  setout: HouseSetout,
  dome: DomeSetout,
  level: number,
  sizes: PrintSizes,
  lines: readonly CutLine[],
  isClear: (point: Vec2, reach: number) => boolean = () => true,
): number[] {
  const { radius, foot } = padPlace(dome, level, sizes);
  const reach = halves(sizes).pad * CORNER;
  // Near a crown there is no room for them.
  if (!(radius > LEAST_REACHES * reach)) return [];
  /** Loose pegs reach across an upright cut. */
  const apart = reach + socketDepth(sizes) + sizes.thin;
  return Array.from({ length: PLACES }, (_, k) => k).filter((k) => {
    const along = alongBearing((2 * Math.PI * k) / PLACES);
    const [near, far] = [radius - reach, dome.springingRadius + dome.thickness].map(
      (r): Vec2 => [dome.at[0] + r * along[0], dome.at[1] + r * along[1]],
    ) as [Vec2, Vec2];
    const middle: Vec2 = [dome.at[0] + radius * along[0], dome.at[1] + radius * along[1]];
    return (
      [near, far].every((point) => isWhole(setout, dome, point, foot, reach) && isClear(point, reach)) &&
      lines.every(({ normal, offset }) => Math.abs(dot2(middle, normal) - offset) > apart)
    );
  });
}

/** Places in rows without a gap, round the turn as well. */
function runsOf(free: readonly number[]): number[][] {
  const runs: number[][] = [];
  for (const k of free) {
    const run = runs.at(-1);
    if (run?.at(-1) === k - 1) run.push(k);
    else runs.push([k]);
  }
  const [first, last] = [runs[0], runs.at(-1)];
  if (first && last && first !== last && first[0] === 0 && last.at(-1) === PLACES - 1) {
    runs.pop();
    runs[0] = [...last, ...first];
  }
  return runs;
}

/** Lowest level of what carries pegs on a level. */
export function carriedFrom(dome: DomeSetout, level: number, sizes: PrintSizes): number {
  const { inWall, foot } = padPlace(dome, level, sizes);
  return inWall ? level - sizes.thin : foot;
}

/** Distance of pegs from the dome's axis, so that sockets keep the thinnest wall outside; where corbels begin. */
export function padPlace(dome: DomeSetout, level: number, sizes: PrintSizes) {
  const { socket, pad } = halves(sizes);
  const { groove, thin, surface } = sizes;
  const top = level + socketDepth(sizes);
  const outside = dome.thickness - groove.depth - 2 * surface - thin - socket * CORNER;
  const offset = Math.min(dome.thickness / 2, outside);
  const radius = dome.radiusAt(top, offset);
  // Its collar is as high as a wall is thick.
  const wallAt = (drop: number) => dome.radiusAt(level - thin - drop, dome.thickness / 2);
  // A corbel grows out of the middle of the wall and leans in by 45 degrees, or as the wall does where that leans more.
  const drops = Array.from({ length: CORBEL_STEPS }, (_, i) => pad * (1 + i / 4));
  const drop = drops.find((d) => wallAt(d) - radius + pad * (1 - TIP) <= d) ?? (drops[0] as number);
  const inWall = radius - pad * CORNER >= dome.radiusAt(level);
  return { radius, foot: level - thin - drop, inWall };
}

function isWhole(setout: HouseSetout, dome: DomeSetout, point: Vec2, foot: number, reach: number): boolean {
  const beside = (axis: Vec2, along: Vec2, half: number, from: number, to: number) => {
    const away = sub2(point, axis);
    const v = dot2(away, along);
    const u = Math.abs(dot2(away, [along[1], -along[0]]));
    return u > half + reach || v < from || v > to + reach;
  };
  const clearOfArches = setout.arches.every(
    (arch) =>
      arch.dome.id !== dome.id ||
      arch.topZ < foot ||
      beside(dome.at, arch.along, arch.section.width / 2 + arch.ring, 0, Infinity),
  );
  const clearOfPassages = setout.passages.every(
    (passage) =>
      passage.topZ < foot ||
      beside(passage.domes[0].at, passage.along, passage.section.width / 2 + passage.ring, 0, passage.distance),
  );
  return clearOfArches && clearOfPassages;
}

/** Three places of those given with the widest least gap, unequal gaps first; all where there are fewer. */
function spread(free: readonly number[]): readonly number[] {
  let best: readonly number[] = [];
  let score = -1;
  const gap = (a: number, b: number) => Math.min((b - a + PLACES) % PLACES, (a - b + PLACES) % PLACES);
  for (const [i, a] of free.entries())
    for (let j = i + 1; j < free.length; j++) {
      const b = free[j] as number;
      const ab = gap(a, b);
      for (let k = j + 1; k < free.length; k++) {
        const c = free[k] as number;
        const bc = gap(b, c);
        const ca = gap(c, a);
        const least = Math.min(ab, bc, ca);
        const most = Math.max(ab, bc, ca);
        const middle = ab + bc + ca - least - most;
        const unequal = middle - least >= UNEQUAL && most - middle >= UNEQUAL;
        const value = least + (unequal ? PLACES : 0);
        if (value > score) [score, best] = [value, [a, b, c]];
      }
    }
  if (best.length > 0) return best;
  const [first] = free;
  if (first === undefined) return [];
  const last = free.reduce((far, k) => (gap(first, k) > gap(first, far) ? k : far), first);
  return last === first ? [first] : [first, last];
}

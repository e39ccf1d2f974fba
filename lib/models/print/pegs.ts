import { cos, sin } from '../../math/elementary.js';
import { alongBearing, dot2, sub2, turnPositive, type Vec2 } from '../../math/vec.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import type { Solid, SolidScope } from '../../solids/kernel.js';
import type { PrintSizes } from './sizes.js';
import { type Ring, skinOf } from './skin.js';

/** Pegs and sockets are octagons: laid on a flat they need no support, nor does a socket that lies. */
const SIDES = 8;
/** Distance of an octagon's corner from its middle, for one that is 1 from its middle to its flats. */
const CORNER = 1 / cos(Math.PI / SIDES);
/** Places round a dome that are tried. */
const PLACES = 48;
/** Three pegs fit in one way only when the gaps between them differ so much (places). */
const UNEQUAL = 2;
/** A corbel's tip is so wide, as a share of its pad. */
const TIP = 0.2;
/** Pegs stand so many of their pads' half widths from the axis. */
const LEAST_REACHES = 2;
/** Heights of a corbel that are tried. */
const CORBEL_STEPS = 12;

/** The pegs that hold a roof: on the wall below a level, with a pad on the inside where the wall alone is too thin. */
export interface RoofPegs {
  readonly level: number;
  /** Middles of the pegs in plan. */
  readonly at: readonly Vec2[];
}

/** Half sizes of a socket and of the pad round it, middle to flats. */
const halves = ({ peg, thin, surface }: PrintSizes) => {
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

/** Places for up to three pegs where the wall is whole, as far apart as can be but not evenly. */
export function roofPegs(setout: HouseSetout, dome: DomeSetout, level: number, sizes: PrintSizes): RoofPegs {
  const { radius, foot } = padPlace(dome, level, sizes);
  const { pad } = halves(sizes);
  const reach = pad * CORNER;
  // Near a crown there is no room for them.
  if (!(radius > LEAST_REACHES * reach)) return { level, at: [] };
  const free = Array.from({ length: PLACES }, (_, k) => k).filter((k) => {
    const bearing = (2 * Math.PI * k) / PLACES;
    const along = alongBearing(bearing);
    const [near, far] = [radius - reach, dome.springingRadius + dome.thickness].map(
      (r): Vec2 => [dome.at[0] + r * along[0], dome.at[1] + r * along[1]],
    ) as [Vec2, Vec2];
    return [near, far].every((point) => isWhole(setout, dome, point, foot, reach));
  });
  const at = spread(free).map((k): Vec2 => {
    const along = alongBearing((2 * Math.PI * k) / PLACES);
    return [dome.at[0] + radius * along[0], dome.at[1] + radius * along[1]];
  });
  return { level, at };
}

/** Distance of pegs from the dome's axis, so that sockets keep the thinnest wall outside; where corbels begin. */
function padPlace(dome: DomeSetout, level: number, sizes: PrintSizes) {
  const { socket, pad } = halves(sizes);
  const { groove, thin, surface } = sizes;
  const top = level + socketDepth(sizes);
  const outside = dome.thickness - groove.depth - 2 * surface - thin - socket * CORNER;
  const offset = Math.min(dome.thickness / 2, outside);
  const radius = dome.radiusAt(top, offset);
  const wallAt = (drop: number) => dome.radiusAt(level - drop, dome.thickness / 2);
  // A corbel grows out of the middle of the wall and leans in by 45 degrees, or as the wall does where that leans more.
  const drops = Array.from({ length: CORBEL_STEPS }, (_, i) => pad * (1 + i / 4));
  const drop = drops.find((d) => wallAt(d) - radius + pad * (1 - TIP) <= d) ?? (drops[0] as number);
  const inWall = radius - pad * CORNER >= dome.radiusAt(level);
  return { radius, foot: level - drop, wall: wallAt(drop), inWall };
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
    for (let j = i + 1; j < free.length; j++)
      for (let k = j + 1; k < free.length; k++) {
        const [b, c] = [free[j] as number, free[k] as number];
        const gaps = [gap(a, b), gap(b, c), gap(c, a)].sort((x, y) => x - y) as [number, number, number];
        const unequal = gaps[1] - gaps[0] >= UNEQUAL && gaps[2] - gaps[1] >= UNEQUAL;
        const value = gaps[0] + (unequal ? PLACES : 0);
        if (value > score) [score, best] = [value, [a, b, c]];
      }
  if (best.length > 0) return best;
  const [first] = free;
  if (first === undefined) return [];
  const last = free.reduce((far, k) => (gap(first, k) > gap(first, far) ? k : far), first);
  return last === first ? [first] : [first, last];
}

/** An upright octagon, or a tower of them: at each height half its width across the flats and where its middle is. */
export function tower(
  scope: SolidScope,
  part: string,
  floors: readonly { readonly z: number; readonly half: number; readonly at: Vec2 }[],
): Solid {
  const rings = floors.map(({ z, half, at }): Ring => {
    const bearings = Array.from({ length: SIDES }, (_, k) => turnPositive(((2 * k + 1) * Math.PI) / SIDES));
    const r = half * CORNER;
    return { bearings, corners: bearings.map((b) => [at[0] + r * sin(b), at[1] + r * cos(b), z] as const) };
  });
  const [low, high] = [floors[0], floors.at(-1)] as [(typeof floors)[0], (typeof floors)[0]];
  const { positions, triangles } = skinOf(rings, low.at, [low.z, high.z]);
  // The upper end closes over its own middle.
  positions.set([high.at[0], high.at[1], high.z], 3);
  return scope.solid(part, positions, triangles, () => part);
}

/** Pegs and what carries them, to be added below the level; pads to be added and sockets to be taken above it. */
export function roofPegBodies(
  scope: SolidScope,
  dome: DomeSetout,
  { level, at }: RoofPegs,
  sizes: PrintSizes,
  within: Solid,
): Record<'pegs' | 'pads' | 'sockets', Solid[]> {
  const { peg, socket, pad } = halves(sizes);
  const { radius, wall, foot, inWall: bare } = padPlace(dome, level, sizes);
  const { peg: size } = sizes;
  const deep = socketDepth(sizes);
  const bodies = at.map((middle) => {
    const out = Math.max(0, wall - radius) / radius;
    const inWall: Vec2 = [middle[0] + out * (middle[0] - dome.at[0]), middle[1] + out * (middle[1] - dome.at[1])];
    const upright = (part: string, half: number, from: number, to: number) =>
      tower(scope, part, [
        { z: from, half, at: middle },
        { z: to, half, at: middle },
      ]);
    const corbel = tower(scope, 'corbel', [
      { z: foot, half: pad * TIP, at: inWall },
      { z: level, half: pad, at: middle },
    ]);
    const chamfer = Math.min(size.across, size.length) / 4;
    return {
      pegs: [
        ...(bare ? [] : [scope.intersect('corbel', [corbel, within])]),
        tower(scope, 'peg', [
          { z: level - sizes.thin, half: peg, at: middle },
          { z: level + size.length - chamfer, half: peg, at: middle },
          { z: level + size.length, half: peg - chamfer, at: middle },
        ]),
      ],
      pads: bare ? [] : [scope.intersect('pad', [upright('pad', pad, level, level + deep + sizes.thin), within])],
      sockets: [upright('socket', socket, level - sizes.thin, level + deep)],
    };
  });
  return {
    pegs: bodies.flatMap((b) => b.pegs),
    pads: bodies.flatMap((b) => b.pads),
    sockets: bodies.flatMap((b) => b.sockets),
  };
}

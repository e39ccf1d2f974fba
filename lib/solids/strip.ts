import { atan2, hypot, square } from '../math/elementary.js';
import { dot2, sub2, type Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import type { PassageSetout } from '../setout/passage.js';
import { OVERRUN } from './arch-bodies.js';
import type { PlanFrame } from './faces.js';

/** A way through one dome's wall as a strip in plan, in a frame at the dome's axis. */
export interface Strip {
  readonly frame: PlanFrame;
  /** Half its width, ring and jambs included. */
  readonly half: number;
  /** Where prisms along it may start: in the room, near its wall. */
  readonly from: number;
  readonly to: number;
  readonly topZ: number;
}

/** Heights at which the room is asked how wide it is. */
const SAMPLES = 64;

/** An arch's strip, to past its flat face or past the dome's widest circle; facets miss the dome by `surface` at most. */
export function archStrip(arch: ArchSetout, surface: number): Strip {
  const { dome, along, across, section, ring, topZ, faceV } = arch;
  return {
    frame: { at: dome.at, along, across },
    half: section.width / 2 + ring,
    from: startOf(dome, arch, surface),
    to: (faceV ?? dome.springingRadius + dome.thickness) + OVERRUN,
    topZ,
  };
}

/** A passage's strip as seen from one of its two domes, to the other one's axis. */
export function passageStrip(passage: PassageSetout, end: 0 | 1, surface: number): Strip {
  const { domes, later, along, across, section, ring, distance, topZ } = passage;
  const dome = domes[end];
  const turn = (v: Vec2): Vec2 => (end === 0 ? v : [-v[0], -v[1]]);
  // The later dome's room ends where the earlier dome begins.
  const most = end === later ? distance - domes[(1 - end) as 0 | 1].outerRadiusAt(0) - OVERRUN : distance;
  return {
    frame: { at: dome.at, along: turn(along), across: turn(across) },
    half: section.width / 2 + ring,
    from: Math.max(0, Math.min(most, startOf(dome, passage, surface))),
    to: distance,
    topZ,
  };
}

/** The farthest start at which the whole outer section still lies in the room; 0 where there is none. */
function startOf(dome: DomeSetout, way: Pick<ArchSetout, 'topZ' | 'outerHalfAt'>, surface: number): number {
  let least = dome.springingRadius;
  for (let k = 0; k <= SAMPLES; k++) {
    const z = (way.topZ * k) / SAMPLES;
    const radius = dome.radiusAt(z) - surface;
    const rest = radius * radius - square(way.outerHalfAt(z));
    least = Math.min(least, radius > 0 && rest > 0 ? Math.sqrt(rest) : 0);
  }
  return Math.max(0, least - OVERRUN);
}

/** Distance in plan of a point from a strip. */
export function distanceToStrip({ frame, half, from, to }: Strip, point: Vec2): number {
  const away = sub2(point, frame.at);
  const [u, v] = [Math.abs(dot2(away, frame.across)), dot2(away, frame.along)];
  return hypot(Math.max(0, u - half), Math.max(0, from - v, v - to));
}

/** Half the angle under which a strip is seen from its frame's origin. */
export const sightOfStrip = ({ half, from }: Strip): number => atan2(half, from);

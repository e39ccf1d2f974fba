import type { Opening } from '../description/house.js';
import { type Section, sectionOf } from '../math/section.js';
import { alongBearing, DEG, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from './dome.js';

/** How deep the opening's clear space goes, from the room outward. */
export type ClearDepth =
  | { readonly kind: 'through' }
  /** Niche with a back parallel to the intrados. */
  | { readonly kind: 'parallel'; readonly depth: number }
  /** Niche in a barrel with a flat back at this distance from the dome's axis. */
  | { readonly kind: 'plane'; readonly v: number };

/**
 * An opening with its ring, jambs, barrel and spandrel. Plan frame at the dome's axis: `along` points out
 * along the bearing (v), `across` to the right of it seen from inside looking out (u).
 */
export interface ArchSetout {
  readonly id: string;
  readonly opening: Opening;
  readonly dome: DomeSetout;
  readonly bearingRad: number;
  readonly along: Vec2;
  readonly across: Vec2;
  readonly section: Section;
  readonly ring: number;
  /** Distance of the flat face from the dome's axis; `null` when flush: the ring follows the extrados. */
  readonly faceV: number | null;
  /** Lowest level of ring and jambs: the floor under a barrel, else the sill. */
  readonly baseZ: number;
  /** Top of the ring. */
  readonly topZ: number;
  readonly clear: ClearDepth;
  /** Half width of ring and jambs outside at height z, grown by `grow` (a joint); 0 outside. */
  outerHalfAt(z: number, grow?: number): number;
  /** Half width of the clear space at height z; 0 outside. */
  clearHalfAt(z: number): number;
}

export function setOutArch(opening: Opening, dome: DomeSetout): ArchSetout {
  const { arch } = opening;
  const bearingRad = opening.bearingDeg * DEG;
  const along = alongBearing(bearingRad);
  const section = sectionOf(opening);
  const faceV = arch.face === 'flush' ? null : dome.springingRadius + dome.thickness + arch.face;
  const baseZ = faceV === null ? opening.sill : 0;
  return {
    id: opening.id,
    opening,
    dome,
    bearingRad,
    along,
    across: [along[1], -along[0]],
    section,
    ring: arch.ring,
    faceV,
    baseZ,
    topZ: section.topZ(arch.ring),
    clear: clearDepth(opening, dome, faceV),
    outerHalfAt: (z, grow = 0) => section.halfWidthAt(z, arch.ring + grow, baseZ),
    clearHalfAt: (z) => section.halfWidthAt(z),
  };
}

function clearDepth(opening: Opening, dome: DomeSetout, faceV: number | null): ClearDepth {
  if (opening.depth === null) return { kind: 'through' };
  if (faceV === null) return { kind: 'parallel', depth: opening.depth };
  return { kind: 'plane', v: dome.springingRadius + opening.depth };
}

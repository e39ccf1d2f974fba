import type { HouseSetout } from '../setout/house.js';
import { type ArchPiece, archPieces } from './arch-pieces.js';
import { type RingPiece, ringPieces } from './ring-pieces.js';

/** All pieces of a house that are cast and laid one by one and are no blocks of a course. */
export interface CastPieces {
  /** Voussoirs, with the skewbacks that they spring from, opening by opening. */
  readonly arches: readonly ArchPiece[];
  /** Segments of skewback rings and curbs, crown plugs. */
  readonly rings: readonly RingPiece[];
  /** Mortar between them, mm³. */
  readonly joints: number;
}

/** The pieces of a house, each measured by itself. */
export function castPieces(setout: HouseSetout): CastPieces {
  const { joint } = setout.house.blocks;
  const arches = setout.arches.map((arch) => archPieces(arch, joint));
  const rings = ringPieces(setout);
  return {
    arches: arches.flatMap((a) => a.pieces),
    rings: rings.pieces,
    joints: rings.joints + arches.reduce((sum, a) => sum + a.joints, 0),
  };
}

import { atan2, cos, hypot, sin } from '../math/elementary.js';
import { monotoneRoot } from '../math/roots.js';
import { turnSigned, type Vec3 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import type { Block } from './block.js';
import type { Column, ColumnBody } from './column.js';
import { blockBodies } from './cut.js';
import type { Cutter } from './cutter.js';
import { halfAngleAt, moved, type PlacedBlock, placedBlock } from './placed.js';

/** A block's ring is looked at in so many places for where a cutter begins and ends. */
const LOOKS = 12;
/**
 * The block's own surfaces before any cut, those of its mould in its place, to mark cuts on. With curved faces the run
 * of a moved block is the angle about its parent's axis, counted from the bearing of the block's middle.
 */
export function blockSurface(house: HouseSetout, dome: DomeSetout, block: Block): ColumnBody {
  const placed = placedBlock(house, dome, block);
  if (placed.atHome || house.house.blocks.faces === 'flat') return blockBodies(house, dome, block)(block);
  const { bed, top, thickness } = placed;
  const middleRad = (block.startRad + block.endRad) / 2;
  return (i, j) => placedColumn(placed, middleRad, bed + i * (top - bed), j * thickness);
}

/** The ring of a moved block at arc length `s` of its parent and `depth` outside the intrados; without weight. */
function placedColumn(block: PlacedBlock, middleRad: number, s: number, depth: number): Column {
  const p = block.span.at(s);
  const r = p.r + depth * p.normal[0];
  const z = p.z + depth * p.normal[1];
  const half = halfAngleAt(block, r, z);
  const [sine, cosine] = [sin(middleRad), cos(middleRad)];
  const place = (t: number): Vec3 => {
    const [distance, up] = moved(block.motion, r * cos(t - middleRad), z);
    const across = r * sin(t - middleRad);
    return [distance * sine + across * cosine, distance * cosine - across * sine, up];
  };
  const [low, high] = [middleRad - half, middleRad + half];
  return { z, weight: 0, low, high, unit: r, place, cut: (cutter) => cutOf(place, [low, high], cutter) };
}

/** The run within which the cutter takes away, from its first place to its last. */
function cutOf(
  place: Column['place'],
  [low, high]: readonly [number, number],
  cutter: Cutter,
): readonly [number, number] | null {
  /** Negative where it is taken away. */
  const beside = (t: number): number => {
    const [x, y, z] = place(t);
    return Math.abs(turnSigned(atan2(x, y) - cutter.bearingRad)) - cutter.spreadAt(hypot(x, y), z);
  };
  const at = (k: number) => low + ((high - low) * k) / LOOKS;
  const looks = Array.from({ length: LOOKS + 1 }, (_, k) => beside(at(k)) < 0);
  const [first, last] = [looks.indexOf(true), looks.lastIndexOf(true)];
  if (first < 0) return null;
  return [
    first === 0 ? Number.NEGATIVE_INFINITY : monotoneRoot(beside, at(first - 1), at(first)),
    last === LOOKS ? Number.POSITIVE_INFINITY : monotoneRoot(beside, at(last), at(last + 1)),
  ];
}

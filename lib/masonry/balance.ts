import * as texts from '../base/texts/masonry-checks.js';
import type { HouseSetout } from '../setout/house.js';
import { type ArchVolumes, archVolumes, passageVolumes } from './arch-volumes.js';
import type { LaidHouse } from './block.js';
import { type CastPieces, castPieces } from './cast-pieces.js';
import { envelopeVolume } from './envelope.js';
import { cuttersOf } from './lay.js';
import type { RingPieceKind } from './ring-pieces.js';
import { bedJointVolume, blockRingVolume, cutJointVolume, perpendVolume } from './volumes.js';

/** Volumes by part, mm³, and the envelope that they must fill. */
export interface Balance {
  readonly blocks: number;
  readonly slivers: number;
  readonly bedJoints: number;
  readonly perpends: number;
  /** Where courses meet arches, passages and earlier domes. */
  readonly cutJoints: number;
  readonly skewbacks: number;
  readonly plugs: number;
  readonly curbs: number;
  /** Rings and barrels that are cast in one. */
  readonly heads: number;
  /** With the skewbacks that they spring from. */
  readonly voussoirs: number;
  /** Between voussoirs, and between segments of rings. */
  readonly pieceJoints: number;
  readonly jambs: number;
  readonly spandrels: number;
  readonly nicheBacks: number;
  readonly passages: number;
  /**
   * What flat faces, and moulds of other courses, leave between the blocks and the curved envelope (render fills it);
   * negative where blocks stand out of it by more.
   */
  readonly faceFill: number;
  readonly envelope: number;
  /** Sum of the parts over the envelope, less 1. */
  readonly error: number;
}

/** What the parts are called, in the order in which they are told. */
export const PART_NAMES: Readonly<Record<Exclude<keyof Balance, 'error' | 'envelope'>, string>> = {
  blocks: texts.blocks,
  bedJoints: texts.bedJoints,
  perpends: texts.perpends,
  cutJoints: texts.jointsAtArchesPassages,
  slivers: texts.remnantsLeftToMortar,
  faceFill: texts.makeUpOfFaces,
  skewbacks: texts.skewbackRings,
  plugs: texts.crownPlugs,
  curbs: texts.curbs,
  heads: texts.archRingsAndBarrels,
  voussoirs: texts.voussoirsAndTheirSkewbacks,
  pieceJoints: texts.jointsBetweenVoussoirs,
  jambs: texts.jambs,
  spandrels: texts.spandrels,
  nicheBacks: texts.nicheBacks,
  passages: texts.passages,
};

/** One of the parts that fill the envelope. */
export type BalancePart = keyof typeof PART_NAMES;

/**
 * Each part of the masonry computed by itself, held against shells less voids plus barrels and passages.
 * Within 1e-6 where nothing is cut and 1e-4 with cuts.
 */
export function balanceOf(house: HouseSetout, laid: LaidHouse, pieces: CastPieces = castPieces(house)): Balance {
  const { faces } = house.house.blocks;
  const sum = { bedJoints: 0, perpends: 0, cutJoints: 0 };
  let curved = 0;
  for (const dome of house.domes) {
    const cutters = cuttersOf(house, dome);
    for (const course of dome.courses) {
      sum.bedJoints += bedJointVolume(dome, course.index, cutters);
      const perpends = perpendVolume(house, dome, course.index, cutters);
      sum.perpends += perpends;
      if (faces === 'flat') curved += blockRingVolume(dome, course.index, cutters) - perpends;
    }
    sum.cutJoints += cutJointVolume(dome, cuttersOf(house, dome, 0), cutters);
  }
  const arches = house.arches.map(archVolumes);
  const passages = house.passages.map(passageVolumes).reduce((all, p) => all + p.head + p.jambs, 0);
  const envelope = envelopeVolume(house);
  const total = (pick: (a: ArchVolumes) => number) => arches.reduce((all, a) => all + pick(a), 0);
  const ofRings = (kind: RingPieceKind) => pieces.rings.reduce((all, p) => all + (p.kind === kind ? p.volume : 0), 0);
  const ofArches = (cast: boolean) =>
    pieces.arches.reduce((all, p) => all + ((p.kind === 'ring') === cast ? p.volume : 0), 0);
  const blocks = laid.blocks.reduce((all, b) => all + b.volume, 0);
  const slivers = laid.slivers.reduce((all, s) => all + s.volume, 0);
  const parts = {
    blocks,
    slivers,
    ...sum,
    // Blocks of other courses' moulds reach into bed joints and stand off faces.
    bedJoints: sum.bedJoints - laid.reach.beds,
    skewbacks: ofRings('skewback'),
    plugs: ofRings('plug'),
    curbs: ofRings('curb'),
    heads: ofArches(true),
    voussoirs: ofArches(false),
    pieceJoints: pieces.joints,
    jambs: total((a) => a.jambs),
    spandrels: total((a) => a.spandrel),
    nicheBacks: total((a) => a.back),
    passages,
    faceFill: faces === 'flat' ? curved - blocks - slivers : -laid.reach.faces,
  };
  const filled = Object.values(parts).reduce((all, v) => all + v, 0);
  return { ...parts, envelope, error: filled / envelope - 1 };
}

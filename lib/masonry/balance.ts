import type { HouseSetout } from '../setout/house.js';
import { archesOf } from '../setout/house.js';
import type { LaidHouse } from './block.js';
import { cuttersOf } from './lay.js';
import {
  type ArchVolumes,
  archEnvelope,
  archVolumes,
  bedJointVolume,
  blockRingVolume,
  curbVolume,
  perpendVolume,
  plugVolume,
  shellOfRevolution,
  skewbackVolume,
} from './volumes.js';

/** Volumes by part, mm³, and the envelope that they must fill. */
export interface Balance {
  readonly blocks: number;
  readonly slivers: number;
  readonly bedJoints: number;
  readonly perpends: number;
  readonly archJoints: number;
  readonly skewbacks: number;
  readonly plugs: number;
  readonly curbs: number;
  readonly heads: number;
  readonly jambs: number;
  readonly spandrels: number;
  readonly nicheBacks: number;
  /** What flat faces leave between the block and the curved envelope (render fills it); 0 for curved faces. */
  readonly faceFill: number;
  readonly envelope: number;
  /** Sum of the parts over the envelope, less 1. */
  readonly error: number;
}

/**
 * Each part of the masonry computed by itself, held against shells less voids plus barrels.
 * Within 1e-6 where nothing is cut and 1e-4 with cuts.
 */
export function balanceOf(house: HouseSetout, laid: LaidHouse): Balance {
  const { joint, faces } = house.house.blocks;
  const sum = { bedJoints: 0, perpends: 0, skewbacks: 0, plugs: 0, curbs: 0, envelope: 0 };
  const arches: ArchVolumes[] = [];
  let curved = 0;
  for (const dome of house.domes) {
    const cutters = cuttersOf(house, dome);
    for (const course of dome.courses) {
      sum.bedJoints += bedJointVolume(dome, course.index, cutters);
      const perpends = perpendVolume(dome, course.index, joint, cutters);
      sum.perpends += perpends;
      if (faces === 'flat') curved += blockRingVolume(dome, course.index, cutters) - perpends;
    }
    sum.skewbacks += skewbackVolume(dome, cutters);
    sum.plugs += plugVolume(dome);
    sum.curbs += curbVolume(dome);
    sum.envelope += shellOfRevolution(dome);
    for (const arch of archesOf(house, dome)) {
      arches.push(archVolumes(arch, joint));
      const { barrel, voidInShell } = archEnvelope(arch);
      sum.envelope += barrel - voidInShell;
    }
  }
  const total = (pick: (a: ArchVolumes) => number) => arches.reduce((all, a) => all + pick(a), 0);
  const blocks = laid.blocks.reduce((all, b) => all + b.volume, 0);
  const slivers = laid.slivers.reduce((all, s) => all + s.volume, 0);
  const parts = {
    blocks,
    slivers,
    bedJoints: sum.bedJoints,
    perpends: sum.perpends,
    archJoints: total((a) => a.joint),
    skewbacks: sum.skewbacks,
    plugs: sum.plugs,
    curbs: sum.curbs,
    heads: total((a) => a.head),
    jambs: total((a) => a.jambs),
    spandrels: total((a) => a.spandrel),
    nicheBacks: total((a) => a.back),
    faceFill: faces === 'flat' ? curved - blocks - slivers : 0,
  };
  const filled = Object.values(parts).reduce((all, v) => all + v, 0);
  return { ...parts, envelope: sum.envelope, error: filled / sum.envelope - 1 };
}

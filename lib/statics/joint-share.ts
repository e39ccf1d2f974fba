import { revolvedBox } from '../masonry/column.js';
import { wholeVolume } from '../masonry/measure.js';
import type { DomeSetout } from '../setout/dome.js';

const RING = [0, 2 * Math.PI] as const;

/** Part of a dome's uncut courses that is mortar: bed joints, and perpends as wedges about their mid-thickness. */
export function jointShare(dome: DomeSetout, joint: number): number {
  let mortar = 0;
  let all = 0;
  for (const { part, from, bed, to, count, midRadius } of dome.courses) {
    const ring = (low: number, high: number) =>
      wholeVolume(revolvedBox(dome[part], [low, high], [0, dome.thickness], RING));
    const blocks = ring(bed, to);
    const bedJoint = ring(from, bed);
    all += blocks + bedJoint;
    mortar += bedJoint + (blocks * count * joint) / (2 * Math.PI * midRadius);
  }
  return all > 0 ? mortar / all : 0;
}

import type { DomeSetout } from '../setout/dome.js';
import { alongArc, layerAt } from './layers.js';

/** Part of a dome's uncut courses that is mortar: bed joints, and perpends as wedges about their mid-thickness. */
export function jointShare(dome: DomeSetout, joint: number): number {
  let mortar = 0;
  let all = 0;
  for (const { part, from, bed, to, count, midRadius } of dome.courses) {
    const ring = (low: number, high: number) =>
      alongArc(dome[part].at, (p) => layerAt(p, 0, dome.thickness, 1), low, high).weight;
    const blocks = ring(bed, to);
    const bedJoint = ring(from, bed);
    all += blocks + bedJoint;
    mortar += bedJoint + (blocks * count * joint) / (2 * Math.PI * midRadius);
  }
  return all > 0 ? mortar / all : 0;
}

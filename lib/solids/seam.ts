import { lerp2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { abuts, archesOf, type HouseSetout, passagesOf } from '../setout/house.js';
import { meetingLevel } from '../setout/meeting.js';
import { spanPoint } from '../setout/span.js';
import type { DomeFacets } from './dome-outlines.js';
import { type Corner, type Outline, outlineOf, type Stretch } from './outline.js';

/**
 * Above its arches, passages and valleys a dome is a plain figure of revolution. There it is parted at a level, its
 * seam: booleans meet the lower part alone, and the rest is put on afterwards. That spares more than half of the work.
 */

/** Fewest stations above a seam that are worth the parting. */
const WORTH = 4;
/** Room that a seam keeps from all that lies below it, mm. */
const APART = 20;
/** Shares of a chord at which a seam may cross it. */
const SHARES = [0.5, 0.4, 0.6];

/** Level of a dome's seam; `null` where there is too little to spare. */
export function seamHeight(setout: HouseSetout, { dome, stations }: DomeFacets): number | null {
  const busy = busyHeight(setout, dome) + APART;
  const { curb, plug, shell, thickness } = dome;
  const top = curb?.bedS ?? plug?.bedS ?? shell.length;
  const inner = stations.filter((s) => s <= top).map((s) => shell.at(s).z);
  const first = inner.findIndex((z) => z > busy);
  const [low, high] = [inner[first], inner[first + 1]];
  if (first < 0 || first + WORTH > inner.length || low === undefined || high === undefined) return null;
  const outer = stations.map((s) => spanPoint(shell, s, thickness)[1]);
  const levels = SHARES.map((share) => low + (high - low) * share);
  const gap = (z: number) => Math.min(...outer.map((other) => Math.abs(other - z)));
  return levels.reduce((best, z) => (gap(z) > gap(best) ? z : best));
}

/** Top of all that meets a dome: springing or skewback, arches, passages, and the valleys along other domes. */
export function busyHeight(setout: HouseSetout, dome: DomeSetout): number {
  const others = setout.domes.filter((other) => abuts(setout, dome, other) || abuts(setout, other, dome));
  return Math.max(
    dome.springingZ,
    dome.skewback?.bed[1] ?? 0,
    ...archesOf(setout, dome).map((arch) => arch.topZ),
    ...passagesOf(setout, dome).map((passage) => passage.topZ),
    ...others.map((other) => meetingLevel(dome, other)),
  );
}

/** An outline parted at a level that it crosses once upward and once downward. */
export interface Parted {
  /** What lies below, closed by an edge of the given name. */
  readonly below: Outline;
  /** The rest, from where the outline rises through the level to where it comes back; not closed. */
  readonly above: readonly Corner[];
}

export function partedAt({ points, names }: Outline, z: number, seam: string): Parted {
  const corners = points.map((point, i): Corner => ({ name: names[i] as string, point }));
  const count = corners.length;
  const at = (i: number) => corners[i % count] as Corner;
  const isAbove = (i: number) => at(i).point[1] > z;
  const crossing = (i: number): Corner => {
    const [a, b] = [at(i).point, at(i + 1).point];
    return { name: at(i).name, point: [lerp2(a, b, (z - a[1]) / (b[1] - a[1]))[0], z] };
  };
  const up = corners.findIndex((_, i) => !isAbove(i) && isAbove(i + 1));
  const down = corners.findIndex((_, i) => isAbove(i) && !isAbove(i + 1));
  const between = (from: number, to: number) => {
    const kept: Corner[] = [];
    for (let i = from + 1; i % count !== (to + 1) % count; i++) kept.push(at(i));
    return kept;
  };
  const rise = crossing(up);
  const fall = crossing(down);
  const below = [fall, ...between(down, up), { name: seam, point: rise.point }];
  return {
    below: outlineOf(...below.map((corner): Stretch => [corner.name, [corner.point]])),
    above: [rise, ...between(up, down), { name: seam, point: fall.point }],
  };
}

import type { Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import type { FootingSetout } from '../setout/house.js';
import { spanPoint } from '../setout/span.js';

const STEPS = 60;

/** Half section of a dome's wall in (r, z), closed: from the floor up the inside, down the outside. */
export function wallOutline(dome: DomeSetout): Vec2[] {
  const { shell, curb, thickness, springingRadius: r } = dome;
  const end = curb?.bedS ?? shell.length;
  const at = (depth: number) =>
    Array.from({ length: STEPS + 1 }, (_, i): Vec2 => spanPoint(shell, (end * i) / STEPS, depth));
  const inner: Vec2[] = [[r, 0], ...at(0)];
  const outer = at(thickness).filter((p) => p[0] >= 0);
  const foot: Vec2[] = [
    [r + thickness, dome.skewback?.shoulderZ ?? dome.springingZ],
    [r + thickness, 0],
  ];
  const top: Vec2[] = curb
    ? [
        [curb.clearRadius, dome.heightAt(curb.clearRadius)],
        [curb.clearRadius, curb.topZ],
        [curb.bedOuter[0], curb.topZ],
      ]
    : [[0, dome.topZ]];
  return [...inner, ...top, ...outer.reverse(), ...foot];
}

export const footingOutline = ({ innerRadius: a, outerRadius: b, bottomZ }: FootingSetout): Vec2[] => [
  [a, 0],
  [b, 0],
  [b, bottomZ],
  [a, bottomZ],
];

/** Middle of the wall where its middle surface has this radius. */
export const middleAt = (dome: DomeSetout, r: number): Vec2 => [r, dome.heightAt(r, dome.thickness / 2)];

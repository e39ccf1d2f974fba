import * as texts from '../../base/texts/problems-site.js';
import { formatApart } from '../../base/units.js';
import { cross2, sub2, type Vec2 } from '../../math/vec.js';
import type { Draft } from '../draft.js';
import type { ProblemList } from '../problem-list.js';

/** Rules of footing, tie and plot. */
export function checkGround(draft: Draft, problems: ProblemList): void {
  checkTie(draft, problems);
  const { footing, wall, site, units } = draft;
  if (footing && wall) {
    if (footing.width < wall.thickness) {
      const [width, thickness] = formatApart(footing.width, wall.thickness, units);
      const message = texts.footingNarrowerThanWall(width, thickness);
      problems.add('footing-too-narrow', ['footing', 'width'], message, texts.makeItAtLeast);
    }
    for (const { value: dome } of draft.domes) {
      const most = 2 * dome.radius + wall.thickness;
      if (footing.width < most) continue;
      const [width, limit] = formatApart(footing.width, most, units);
      const message = texts.footingFillsDome(width, dome.id, limit);
      problems.add('footing-too-wide', ['footing', 'width'], message, texts.makeItNarrower);
    }
  }
  if (footing && site && footing.depth <= -site.ground) {
    const [depth, ground] = formatApart(footing.depth, -site.ground, units);
    const message = texts.footingEndsBelowFloor(depth, ground);
    problems.add('footing-too-shallow', ['footing', 'depth'], message, texts.makeItDeeper);
  }
  if (site?.plot && !isSimple(site.plot)) {
    const message = texts.sidesOfPlotCross;
    problems.add('plot-crossing', ['site', 'plot'], message, texts.listItsCorners);
  }
}

function checkTie({ tie, footing, domes, units }: Draft, problems: ProblemList): void {
  if (tie === null || tie === 'none') return;
  const path = ['tie', 'level'];
  if (tie.level === 'footing' && footing === null) {
    const message = texts.tieLiesInFooting;
    problems.add('tie-without-footing', path, message, texts.giveFootingOrWrite);
  }
  if (typeof tie.level !== 'number') return;
  for (const { value: dome } of domes) {
    const crown = dome.stemWall + dome.profile.rise;
    if (tie.level < crown) continue;
    const [level, limit] = formatApart(tie.level, crown, units);
    const message = texts.tieAboveCrown(level, dome.id, limit);
    problems.add('tie-too-high', path, message, texts.lowerItOrWrite);
  }
}

/** Whether a closed polygon has an area and no two sides that cross or touch beside their common corner. */
export function isSimple(corners: readonly Vec2[]): boolean {
  const n = corners.length;
  const corner = (i: number) => corners[i % n] as Vec2;
  const area = corners.reduce((sum, p, i) => sum + cross2(p, corner(i + 1)), 0) / 2;
  if (Math.abs(area) < 1) return false;
  for (let i = 0; i < n; i++)
    for (let j = i + 2; j < n; j++) {
      if (i === 0 && j === n - 1) continue;
      if (meet(corner(i), corner(i + 1), corner(j), corner(j + 1))) return false;
    }
  return true;
}

function meet(a: Vec2, b: Vec2, c: Vec2, d: Vec2): boolean {
  const side = (p: Vec2, q: Vec2, r: Vec2) => Math.sign(cross2(sub2(q, p), sub2(r, p)));
  const sides = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)] as const;
  if (sides.every((s) => s === 0)) {
    const overlap = (k: 0 | 1) =>
      Math.max(a[k], b[k]) >= Math.min(c[k], d[k]) && Math.max(c[k], d[k]) >= Math.min(a[k], b[k]);
    return overlap(0) && overlap(1);
  }
  return sides[0] !== sides[1] && sides[2] !== sides[3];
}

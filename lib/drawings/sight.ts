import { SIGHT_ASIDE, THIN_MASONRY } from '../base/tolerances.js';
import { dot2, type Vec2, type Vec3 } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { levelMaterial, uprightMaterial } from '../setout/material.js';
import { rayHouse } from './ray-house.js';

/** How a view looks at the house: where a point stands on paper, and whether masonry hides it. Exact; no mesh. */
export interface Sight {
  project(p: Vec3): Vec2;
  /** Whether a point of a surface is seen. */
  seesFace(p: Vec3): boolean;
  /** Whether a point of an edge is seen; `across`, asked where it has a say, is square to the edge's picture. */
  seesEdge(p: Vec3, across: () => Vec2): boolean;
}

/** Level sight along `look`; `right` points to the right on paper. */
export interface LevelSight extends Sight {
  readonly look: Vec2;
  readonly right: Vec2;
}

/** To the right on paper when looking along `look`. */
export const rightOf = (look: Vec2): Vec2 => [look[1], -look[0]];

export interface LevelOptions {
  /** Plan point that stands at x = 0 on paper. */
  readonly origin?: Vec2;
  /** Only what lies beyond this distance along `look` is seen, and only what lies beyond it hides. */
  readonly beyond?: number;
  /** What of the house stands above ground, or inside. */
  readonly shows: (p: Vec3) => boolean;
}

export function levelSight(house: HouseSetout, look: Vec2, options: LevelOptions): LevelSight {
  const right = rightOf(look);
  const { origin = [0, 0], beyond = Number.NEGATIVE_INFINITY, shows } = options;
  const back: Vec2 = [-look[0], -look[1]];
  const inWay = rayHouse(house, back);

  const reachOf = (q: Vec3) => q[0] * look[0] + q[1] * look[1] - beyond;

  const looks = (beside: readonly Vec3[]): boolean => {
    let [hidden, open] = [0, 0];
    const followed: Vec3[] = [];
    for (const q of beside) {
      const reach = reachOf(q);
      const at: Vec2 = [q[0], q[1]];
      // What lies before the viewer's plane isn't seen, whatever stands there.
      const quick = reach > THIN_MASONRY ? inWay(at).quickly(q[2], at, reach) : 'hidden';
      if (quick === 'face') return true;
      if (quick === 'hidden') hidden++;
      if (quick === 'void') open++;
      else followed.push(q);
    }
    if (hidden === beside.length || open === beside.length) return false;
    // Free towards the viewer, and on a surface.
    let free = open > 0;
    let near = false;
    for (const q of followed) {
      const reach = reachOf(q);
      const at: Vec2 = [q[0], q[1]];
      let clear = reach > THIN_MASONRY;
      for (const [from, to] of levelMaterial(inWay(at).house, q[2], at, back, [-THIN_MASONRY, reach])) {
        if (to > THIN_MASONRY && from < reach) clear = false;
        if (to > -THIN_MASONRY && from < THIN_MASONRY) near = true;
      }
      free ||= clear;
      if (free && near) return true;
    }
    return false;
  };
  return {
    look,
    right,
    project: (p) => [dot2([p[0] - origin[0], p[1] - origin[1]], right), p[2]],
    seesFace: (p) => shows(p) && looks([p]),
    seesEdge(p, across) {
      if (!shows(p)) return false;
      const [x, z] = across();
      const east = SIGHT_ASIDE * x * right[0];
      const north = SIGHT_ASIDE * x * right[1];
      const up = SIGHT_ASIDE * z;
      return looks([
        [p[0] + east, p[1] + north, p[2] + up],
        [p[0] - east, p[1] - north, p[2] - up],
      ]);
    },
  };
}

/** Sight downward from the level of a plan's cut: project north is up on paper. */
export function downSight(house: HouseSetout, cutZ: number): Sight {
  const inStrip = rayHouse(house, [0, 1]);
  const shows = (p: Vec3): boolean => p[2] < cutZ - THIN_MASONRY;
  const looks = (p: Vec3, beside: readonly Vec2[]): boolean => {
    let free = false;
    let near = false;
    for (const at of beside) {
      let blocked = false;
      for (const [from, to] of uprightMaterial(inStrip(at).house, at, [p[2] - THIN_MASONRY, cutZ])) {
        if (to > p[2] + THIN_MASONRY && from < cutZ) blocked = true;
        if (to > p[2] - THIN_MASONRY && from < p[2] + THIN_MASONRY) near = true;
      }
      free ||= !blocked;
    }
    return free && near;
  };
  return {
    project: (p) => [p[0], p[1]],
    seesFace: (p) => shows(p) && looks(p, [[p[0], p[1]]]),
    seesEdge(p, across) {
      if (!shows(p)) return false;
      const [x, y] = across();
      return looks(p, [
        [p[0] + SIGHT_ASIDE * x, p[1] + SIGHT_ASIDE * y],
        [p[0] - SIGHT_ASIDE * x, p[1] - SIGHT_ASIDE * y],
      ]);
    },
  };
}

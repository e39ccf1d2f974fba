import { CLEAR_LEVEL } from '../base/tolerances.js';
import type { ArchSetout } from '../setout/arch.js';
import type { HouseSetout } from '../setout/house.js';

/** Level of a plan's cut above the finished floor, mm: common practice, no source. */
export const PLAN_HEIGHT = 1200;
/** The same for low domes, of the lowest crown's height: nearer to it a plan would show the crown and not the wall. */
const LOW_SHARE = 0.6;
/** How far from it a plan may be cut so that more openings show, and the steps in between. */
const LEVEL_REACH = 200;
const LEVEL_STEP = 10;
/** How far below a head's crown a cut still shows the opening, and how much of its clear width it shows there at least. */
const UNDER_CROWN = 50;
const SHOWN_WIDTH = 0.5;

/** Whether a level plane goes through an opening so that it can be read off the plan. */
const cutsOpening = ({ section, clearHalfAt }: ArchSetout, z: number): boolean =>
  z > section.sill && z <= section.crownZ - UNDER_CROWN && clearHalfAt(z) >= (SHOWN_WIDTH * section.width) / 2;

/** The level nearest to the usual one, lower in low domes, that goes through the most openings: one under a crown shows nothing of its opening. */
export function planLevel(house: HouseSetout): number {
  const steps = Array.from({ length: LEVEL_REACH / LEVEL_STEP }, (_, i) => (i + 1) * LEVEL_STEP);
  const low = LOW_SHARE * Math.min(...house.domes.map((d) => d.crownZ));
  const usual = Math.min(PLAN_HEIGHT, LEVEL_STEP * Math.round(low / LEVEL_STEP));
  const levels = [usual, ...steps.flatMap((step) => [usual - step, usual + step])].filter((z) => z > 0);
  const shown = (z: number) => house.arches.filter((arch) => cutsOpening(arch, z)).length;
  return levels.reduce((best, z) => (shown(z) > shown(best) ? z : best));
}

/**
 * The level nearest above the asked one that only grazes nothing: a plane that touches a head's crown, a sill or a
 * springing without cutting it has no region to its one side. What is drawn moves by less than a line is wide.
 */
export function cutLevel(house: HouseSetout, asked: number): number {
  const grazed = [
    ...house.arches.flatMap(({ section, ring, baseZ }) => [
      baseZ,
      section.sill,
      section.springingZ,
      section.crownZ,
      section.shoulderZ(ring),
      section.topZ(ring),
    ]),
    ...house.passages.flatMap(({ section, ring }) => [
      section.springingZ,
      section.crownZ,
      section.shoulderZ(ring),
      section.topZ(ring),
    ]),
    ...house.domes.flatMap((dome) => [
      dome.springingZ,
      dome.crownZ,
      dome.topZ,
      ...(dome.skewback ? [dome.skewback.shoulderZ, dome.skewback.bed[1]] : []),
      ...(dome.curb ? [dome.curb.bedOuter[1], dome.heightAt(dome.curb.clearRadius)] : []),
      ...(dome.plug ? [dome.shell.at(dome.plug.bedS).z] : []),
    ]),
  ];
  let level = asked;
  while (grazed.some((z) => Math.abs(z - level) < CLEAR_LEVEL)) level += 2 * CLEAR_LEVEL;
  return level;
}

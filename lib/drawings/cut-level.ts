import { CLEAR_LEVEL } from '../base/tolerances.js';
import type { HouseSetout } from '../setout/house.js';

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

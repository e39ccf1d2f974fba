import type { HouseSetout } from '../../setout/house.js';
import type { Draft } from '../draft.js';
import { barrels } from './barrel.js';
import { crowns } from './crown.js';
import { valleyDetails } from './valley.js';
import { wallFoot } from './wall-foot.js';

/** Details of what a house has: wall foot, openings and valleys, and closer to the eye its crowns. */
export function details(house: HouseSetout): { readonly large: readonly Draft[]; readonly small: readonly Draft[] } {
  const foot = wallFoot(house);
  return { large: [...(foot ? [foot] : []), ...barrels(house), ...valleyDetails(house)], small: crowns(house) };
}

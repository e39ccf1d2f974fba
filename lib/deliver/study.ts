import type { House } from '../description/house.js';
import { type Balance, balanceOf } from '../masonry/balance.js';
import type { LaidHouse } from '../masonry/block.js';
import { layBlocks } from '../masonry/lay.js';
import { type HouseSetout, setOutHouse } from '../setout/house.js';
import { type Works, worksOf } from '../works/works.js';

/** Everything that is known of a house before solids and drawings are made. */
export interface Study {
  readonly setout: HouseSetout;
  readonly laid: LaidHouse;
  readonly balance: Balance;
  /** Worked out when first asked for. */
  readonly works: () => Works;
}

export function study(house: House): Study {
  const setout = setOutHouse(house);
  const laid = layBlocks(setout);
  const balance = balanceOf(setout, laid);
  let known: Works | undefined;
  const works = () => {
    known ??= worksOf(setout, laid, balance);
    return known;
  };
  return { setout, laid, balance, works };
}

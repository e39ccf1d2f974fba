import type { House } from '../description/house.js';
import { type Dwelling, dwellingOf } from '../dwelling/dwelling.js';
import { type Balance, balanceOf } from '../masonry/balance.js';
import type { LaidHouse } from '../masonry/block.js';
import { layBlocks } from '../masonry/lay.js';
import { type HouseSetout, setOutHouse } from '../setout/house.js';
import { type CourseLaying, layingOf } from '../statics/laying-courses.js';
import type { Statics } from '../statics/results.js';
import { staticsOf } from '../statics/statics.js';
import { tieSteelKg } from '../statics/tie.js';
import { type Works, worksOf } from '../works/works.js';

/** Everything that is known of a house before solids and drawings are made; each part worked out when first asked for. */
export interface Study {
  readonly setout: HouseSetout;
  readonly laid: LaidHouse;
  readonly balance: Balance;
  readonly statics: Statics;
  readonly laying: readonly CourseLaying[];
  readonly dwelling: Dwelling;
  readonly works: Works;
}

export function study(house: House): Study {
  const setout = setOutHouse(house);
  const laid = once(() => layBlocks(setout));
  const balance = once(() => balanceOf(setout, laid()));
  const statics = once(() => staticsOf(setout));
  const laying = once(() => layingOf(setout, laid()));
  const dwelling = once(() => dwellingOf(setout));
  const works = once(() => worksOf(setout, laid(), balance(), { ringSteelKg: tieSteelKg(setout) }));
  return {
    setout,
    get laid() {
      return laid();
    },
    get balance() {
      return balance();
    },
    get statics() {
      return statics();
    },
    get laying() {
      return laying();
    },
    get dwelling() {
      return dwelling();
    },
    get works() {
      return works();
    },
  };
}

function once<T extends object>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

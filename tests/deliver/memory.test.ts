import { beforeAll, describe, expect, it } from 'vitest';
import { Memory } from '../../lib/base/memory.js';
import type { House } from '../../lib/description/house.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { planMasonry } from '../../lib/masonry/plan.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { blockSolids } from '../../lib/solids/block-solids.js';
import { houseSolids } from '../../lib/solids/house-solids.js';
import type { Kernel } from '../../lib/solids/kernel.js';
import { passageOf } from '../solids/clusters.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';
import { nodeKernel } from '../tools/kernel.js';

const DOOR = { in: 'b', bearingDeg: 90, width: 900, height: 2000 };

/** Two domes that abut, and one apart: a way from one to the next, a door in each. */
const houseWith = (door: Partial<typeof DOOR>, more: Partial<House> = {}) =>
  houseOf({
    domes: [
      domeOf({ id: 'a' }),
      domeOf({ id: 'b', at: [5000, 0], shape: 'pointed', radius: 2600, rise: 3300 }),
      domeOf({ id: 'c', at: [0, 8000], radius: 2200 }),
    ],
    passages: [passageOf(['a', 'b'])],
    openings: [
      openingOf({ id: 'front', in: 'a', bearingDeg: 180 }),
      openingOf({ id: 'side', ...DOOR, ...door }),
      openingOf({ id: 'back', in: 'c', bearingDeg: 0 }),
    ],
    ...more,
  });

/** A memory that tells which contents it had to make something of. */
class WatchedMemory extends Memory {
  made: string[] = [];
  override recall<T extends object>(content: string, make: () => T): T {
    return super.recall(content, () => {
      this.made.push(content);
      return make();
    });
  }
}

let kernel: Kernel;
beforeAll(async () => {
  kernel = await nodeKernel();
});

/** All that a memory spares. */
function geometry(house: House, memory?: Memory) {
  const { setout } = planMasonry(setOutHouse(house));
  const laid = layBlocks(setout, memory);
  const options = { surface: 20, ...(memory && { memory }) };
  const made = {
    laid,
    parts: houseSolids(kernel, setout, options).parts,
    blocks: blockSolids(kernel, setout, laid.blocks, options),
  };
  memory?.turn();
  return made;
}

describe('a memory of what was made', () => {
  const memory = new WatchedMemory();
  const PLAIN = houseWith({});
  const WIDER = houseWith({ width: 1000 });
  beforeAll(() => void geometry(PLAIN, memory));

  /** What is made when a house comes after another, and of which domes. */
  function madeBy(house: House) {
    memory.made = [];
    const again = geometry(house, memory);
    const domes = memory.made.map((content) => /^\w+ .*?\{"id":"(\w+)"/.exec(content)?.[1]);
    return { again, domes: [...new Set(domes)] };
  }

  it('makes nothing again of the same house', () => {
    const { again } = madeBy(houseWith({}));
    expect(memory.made).toEqual([]);
    expect(again).toEqual(geometry(PLAIN));
  });

  it('of a door that is changed the geometry of its dome alone, the same as from nothing', () => {
    const { again, domes } = madeBy(WIDER);
    expect(domes).toEqual(['b']);
    expect(again).toEqual(geometry(WIDER));
  });

  it('lets go of what the last house did not ask for', () => {
    expect(madeBy(PLAIN).domes).toEqual(['b']);
  });

  it('of what an earlier dome changes that dome and the later one, of what all share everything', () => {
    const [a, ...others] = PLAIN.domes;
    const lower = houseWith({}, { domes: [{ ...(a as (typeof others)[number]), stemWall: 500 }, ...others] });
    expect(madeBy(lower).domes).toEqual(expect.arrayContaining(['a', 'b']));
    const thick = houseWith({}, { wall: { ...PLAIN.wall, thickness: PLAIN.wall.thickness + 10 } });
    const { again, domes } = madeBy(thick);
    expect(domes).toEqual(['a', 'b', 'c']);
    expect(again).toEqual(geometry(thick));
  });
});

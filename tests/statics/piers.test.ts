import { describe, expect, it } from 'vitest';
import type { Cutter } from '../../lib/masonry/cutter.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { unitLoads } from '../../lib/statics/loads.js';
import { luneOf } from '../../lib/statics/lune.js';
import { piersOf } from '../../lib/statics/piers.js';
import { domeOf, houseOf } from '../tools/house.js';

const DEG = Math.PI / 180;
const setout = setOutHouse(houseOf({ domes: [domeOf({ stemWall: 3000 })] }));
const [dome] = setout.domes;
if (!dome) throw new Error('no dome');
const lune = luneOf(dome, unitLoads(setout, dome), { renderInside: 0, renderOutside: 0, footing: null });

/** Takes `half` degrees to each side of a bearing, from a height up. */
const gap = (id: string, bearing: number, half: number, lowZ = 0): Cutter => ({
  id,
  bearingRad: bearing * DEG,
  lowZ,
  highZ: 2000,
  heights: [lowZ, 2000],
  spreadAt: (_, z) => (z >= lowZ && z < 2000 ? half * DEG : 0),
  chordAt: () => null,
  widestSpread: () => half * DEG,
  spreadsIn: () => [0, half * DEG],
});
/** Piers at a height: what they stand between, and their angle. */
const piers = (voids: readonly Cutter[], z = 0) =>
  piersOf(lune, voids)
    .filter((pier) => pier.z === z)
    .map((pier) => [pier.between.join(' '), Math.round((1e6 * pier.width) / 3125 / DEG) / 1e6]);

describe('piers between voids, told clockwise', () => {
  it('are what is left of the turn', () => {
    expect(piers([gap('a', 90, 10), gap('b', 350, 20)])).toEqual([
      ['a b', 230],
      ['b a', 70],
    ]);
  });

  it.each<readonly [string, readonly Cutter[]]>([
    ['the wider one after', [gap('a', 10, 3), gap('b', 12, 20)]],
    ['the wider one before', [gap('b', 12, 20), gap('a', 14, 3)]],
    ['over north', [gap('a', 355, 3), gap('b', 12, 20)]],
  ])('beside a void that swallows another stand as beside it alone: %s', (_, two) => {
    // From −8 to 32 degrees; the other from 170 to 190.
    expect(piers([...two, gap('c', 180, 10)]).sort()).toEqual([
      ['b c', 138],
      ['c b', 162],
    ]);
  });

  it('stand at every level at which a void begins, and gather half of each beside them', () => {
    const voids = [gap('door', 0, 10), gap('bay', 180, 20, 900)];
    expect(piers(voids)).toEqual([['door door', 340]]);
    expect(piers(voids, 900)).toEqual([
      ['door bay', 150],
      ['bay door', 150],
    ]);
    const [one] = piersOf(lune, voids).filter((p) => p.z === 900);
    expect(one?.gathered).toBeCloseTo(Math.PI * 3125, 6);
  });
});

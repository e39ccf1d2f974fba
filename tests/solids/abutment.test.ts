import { beforeAll, describe, expect, it } from 'vitest';
import { meshVolume } from '../../lib/documents/mesh-measure.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import type { Vec2 } from '../../lib/math/vec.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { type AbutmentOptions, abutment } from '../../lib/solids/abutment.js';
import { blockSolids } from '../../lib/solids/block-solids.js';
import { domeFacets } from '../../lib/solids/dome-outlines.js';
import type { Kernel } from '../../lib/solids/kernel.js';
import { rectangle } from '../../lib/solids/outline.js';
import { domeOf, houseOf } from '../tools/house.js';
import { nodeKernel } from '../tools/kernel.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await nodeKernel();
});

const RADIUS = 2450;
const NAMES = { bottom: 'disc', side: 'disc', top: 'disc' } as const;
/** What a later dome, so far away on a bearing, has in common with an earlier one's outside, mm³. */
const taken = (away: number, bearing: number, options: AbutmentOptions, surface: number, whole = false): number => {
  const [hall] = setOutHouse(houseOf()).domes;
  if (!hall) throw new Error('no dome');
  const axis: Vec2 = [away * Math.sin(bearing), away * Math.cos(bearing)];
  const [low, high] = options.heights;
  return kernel.scope((scope) => {
    // To a dome as wide as it is far away the whole outside is given.
    const later = { axis, radius: whole ? away : RADIUS };
    const heights = whole ? ([low - 137, high + 137] as const) : options.heights;
    const outside = abutment(scope, domeFacets(hall, surface), later, { ...options, heights });
    const disc = scope.revolve('disc', rectangle([0, low], [RADIUS, high], NAMES), 360, axis);
    return scope.volume(scope.intersect('taken', [outside, disc]));
  });
};

describe('what a later dome gives way to', () => {
  it.each<readonly [string, AbutmentOptions]>([
    ['from the floor up', { heights: [0, 2500] }],
    ['a course high', { heights: [1310, 1590], grow: 10 }],
    ['over a footing', { heights: [-400, 1500], footRadius: 3375 }],
    ['up past the crown', { heights: [600, 5000], grow: 10 }],
  ])('is all that it reaches of the earlier one’s outside, %s', (_, options) => {
    for (const away of [3300, 4600, 5600])
      for (const bearing of [0, 1, 5]) {
        const sector = taken(away, bearing, options, 6);
        const whole = taken(away, bearing, options, 6, true);
        expect(sector).toBeGreaterThan(0);
        expect(Math.abs(sector / whole - 1), `${away} mm away on ${bearing}`).toBeLessThan(1e-9);
      }
  });

  it('is at a stem wall the lens of two circles, the earlier one wider by the joint', () => {
    for (const grow of [0, 10]) {
      const [a, b, d] = [3250 + grow, RADIUS, 4600];
      const lens =
        a * a * Math.acos((d * d + a * a - b * b) / (2 * d * a)) +
        b * b * Math.acos((d * d + b * b - a * a) / (2 * d * b)) -
        Math.sqrt((-d + a + b) * (d + a - b) * (d - a + b) * (d + a + b)) / 2;
      expect(Math.abs(taken(4600, 1, { heights: [0, 500], grow }, 0.5) / (500 * lens) - 1)).toBeLessThan(2e-3);
    }
  });

  it('is there for a course whose slice begins at the very springing of the earlier dome', () => {
    // The third course begins at 510 mm; its slice 10 mm under that, at the hall's springing.
    const lab = domeOf({ id: 'lab', at: [5200, 0], radius: 2200, stemWall: 1000 });
    const setout = setOutHouse(houseOf({ domes: [domeOf({ stemWall: 500 }), lab] }));
    const cut = layBlocks(setout).blocks.filter((b) => b.domeId === 'lab' && b.course === 3 && b.cutBy.length > 0);
    expect(cut.length).toBeGreaterThan(1);
    const solid = blockSolids(kernel, setout, cut, { surface: 0.2 }).reduce((sum, mesh) => sum + meshVolume(mesh), 0);
    const laid = cut.reduce((sum, block) => sum + block.volume, 0);
    expect(Math.abs(solid / laid - 1)).toBeLessThan(2e-3);
  });
});

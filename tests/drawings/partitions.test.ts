import { describe, expect, it } from 'vitest';
import { planDraft } from '../../lib/drawings/plan.js';
import { sectionDraft } from '../../lib/drawings/section.js';
import { sectionPlane } from '../../lib/drawings/section-plane.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { partitionArea, partitionsOf } from '../../lib/setout/partition.js';
import { houseOf } from '../tools/house.js';

const wall = { in: 'hall', from: [-3000, 500], to: [3000, 500], thickness: 100, height: 2200, door: null } as const;
const only = (part: object = {}) => setOutHouse(houseOf({ partitions: [{ ...wall, ...part }] }));

describe('partitions', () => {
  it('have the face that geometry gives: under the dome, less the door', () => {
    // The plane y = 500 cuts the hemisphere of radius 3000 on a stem wall of 600 in a half circle of radius
    // sqrt(3000² - 500²) on the same springing; its area below 2200 mm, in closed form.
    const r = Math.sqrt(3000 ** 2 - 500 ** 2);
    const h = 1600;
    const segment = h * Math.sqrt(r * r - h * h) + r * r * Math.asin(h / r);
    const wanted = 2 * r * 600 + segment;
    const house = only();
    const [set] = partitionsOf(house);
    if (!set) throw new Error('one partition');
    expect(partitionArea(house, set) / wanted).toBeCloseTo(1, 3);
    const withDoor = only({ door: { at: 3000, width: 800, height: 2000 } });
    const [cut] = partitionsOf(withDoor);
    if (!cut) throw new Error('one partition');
    expect((partitionArea(house, set) - partitionArea(withDoor, cut)) / (800 * 2000)).toBeCloseTo(1, 1);
  });

  it('stand on the plan with their mark, and in a section as thick and as high as they are', () => {
    const house = only({ from: [-1500, 500], to: [1500, 500] });
    const words = planDraft(house)
      .draw(50)
      .layout.primitives.flatMap((p) => (p.kind === 'text' ? [p.text] : []));
    expect(words).toContain('P1');
    const section = sectionDraft(house, sectionPlane(house, { bearingDeg: 0 })).draw(50).layout.primitives;
    const boxes = section.flatMap((p) => {
      if (p.kind !== 'path' || p.layer !== 'cut' || !p.closed) return [];
      const at = p.segments.flatMap((s) => (s.kind === 'line' ? [s.from] : []));
      const [xs, zs] = [at.map((q) => q[0]), at.map((q) => q[1])];
      return [[Math.min(...xs), Math.max(...xs), Math.max(...zs)]];
    });
    expect(
      boxes.some(
        ([a, b, top]) => Math.abs((b as number) - (a as number) - 100) < 0.1 && Math.abs((top as number) - 2200) < 0.1,
      ),
    ).toBe(true);
  });
});

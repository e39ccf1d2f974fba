import { describe, expect, it } from 'vitest';
import { setOutHouse } from '../../lib/setout/house.js';
import { meetingLevel } from '../../lib/setout/meeting.js';
import { crossedAt, cutLevel, voidsOf } from '../../lib/statics/voids.js';
import { domeOf, houseOf } from '../tools/house.js';

type Circle = readonly [x: number, z: number, radius: number];

/** Upper one of the two points in which two circles of one plane meet: its height. */
function upperMeeting([x0, z0, a]: Circle, [x1, z1, b]: Circle): number {
  const apart = Math.hypot(x1 - x0, z1 - z0);
  const along = (a * a - b * b + apart * apart) / (2 * apart);
  return z0 + (along * (z1 - z0) + Math.sqrt(a * a - along * along) * (x1 - x0)) / apart;
}

// Hemispheres of 3.25 and 2.45 m outside whose centres lie 5 m apart, 0.6 and 0.3 m over the floor.
const domes = [domeOf(), domeOf({ id: 'lab', at: [3000, 4000], radius: 2200, stemWall: 300 })];
const setout = setOutHouse(houseOf({ domes }));
const [hall, lab] = setout.domes as [(typeof setout.domes)[number], (typeof setout.domes)[number]];
const top = upperMeeting([0, 600, 3250], [5000, 300, 2450]);

describe('two domes that abut', () => {
  it('meet up to where the circles of their section do, whichever is asked', () => {
    expect(top).toBeGreaterThan(600);
    expect(meetingLevel(lab, hall)).toBeCloseTo(top, 6);
    expect(meetingLevel(hall, lab)).toBeCloseTo(top, 6);
    // The later one's room ends against the earlier one's outside.
    const inside = upperMeeting([0, 600, 3250], [5000, 300, 2200]);
    expect(meetingLevel(lab, hall, (z) => lab.radiusAt(z))).toBeCloseTo(inside, 6);
  });

  it('do not meet where they stand apart, or touch', () => {
    const apart = (distance: number) => {
      const house = setOutHouse(houseOf({ domes: [domeOf(), domeOf({ id: 'lab', at: [distance, 0] })] }));
      return meetingLevel(house.domes[0] as typeof hall, house.domes[1] as typeof hall);
    };
    expect(apart(7000)).toBe(0);
    expect(apart(6500)).toBe(0);
    expect(apart(6499)).toBeGreaterThan(600);
  });

  it('leave the rings of the later closed above that level, and of the earlier everywhere', () => {
    expect(cutLevel(setout, lab)).toBeCloseTo(top, 6);
    expect(cutLevel(setout, hall)).toBe(0);
  });

  it('cross a hoop of the later in the middle of its wall up to where that meets the earlier one', () => {
    const middle = upperMeeting([0, 600, 3250], [5000, 300, 2325]);
    expect(crossedAt(setout, lab, middle - 1)).toEqual(['hall']);
    expect(crossedAt(setout, lab, middle + 1)).toEqual([]);
    expect(crossedAt(setout, hall, 100)).toEqual([]);
    // Seen from the later one's axis: 3 m west and 4 m south.
    const [seen] = voidsOf(setout, lab);
    expect(Math.sin(seen?.bearingRad ?? 0)).toBeCloseTo(-0.6, 9);
    expect(Math.cos(seen?.bearingRad ?? 0)).toBeCloseTo(-0.8, 9);
  });
});

import { describe, expect, it } from 'vitest';
import { setOutHouse } from '../../lib/setout/house.js';
import { FACES_ALONE, type Growing, type LineLimits } from '../../lib/statics/line-joints.js';
import { type BorneLoad, OneLine } from '../../lib/statics/one-line.js';
import { pairFactor } from '../../lib/statics/pair.js';
import type { Burden, PairSection } from '../../lib/statics/pair-programme.js';
import { pressedRings } from '../../lib/statics/pressed-rings.js';
import { domeOf, houseOf } from '../tools/house.js';
import { hemisphere } from '../tools/pairs.js';

const NOTHING: Burden = { weight: 0, moment: 0, push: 0, pushMoment: 0 };
const borne = (growing: Growing, limits: Partial<LineLimits>, most = 100): BorneLoad | null =>
  new OneLine(growing, { ...FACES_ALONE, ...limits }).solve(most);

/** A hemisphere of radius 1 and unit weight 1; part k of its weight pushes it, a tie pulls from 0.5 up. */
function shaken(t: number, count: number, tie: number): Growing {
  const [still, one] = [hemisphere(t, 0, count), hemisphere(t, 1, count)];
  const half = (which: 0 | 1) => still.halves[which].map((s) => ({ ...s, tied: s.middle[1] <= 0.5 }));
  const more = (which: 0 | 1) => one.halves[which].map(({ push, pushMoment }) => ({ ...NOTHING, push, pushMoment }));
  return {
    pair: { halves: [half(0), half(1)], tie: tie > 0 ? { z: 0.5, most: tie } : null },
    grows: [more(0), more(1)],
  };
}
const T = 0.2;
/** MPa of a strength in kN/mm2. */
const KN = 1000;

/** Two piers of weight 1 a radian on one joint each, from radius 2 to 4; what grows is as much again, at radius `at`, or a push at 0.6. */
function piers(grows: 'push' | { readonly at: number }, crownHalf = 0, tie: Growing['pair']['tie'] = null): Growing {
  const own = { weight: 1, moment: grows === 'push' ? 3 : grows.at };
  const base: PairSection = { ...NOTHING, ...own, middle: [3, 0], half: [1, 0], tied: tie !== null };
  const crown: PairSection = { ...NOTHING, middle: [0.5, 1], half: [0, crownHalf], tied: false };
  const more = (sign: 1 | -1): Burden =>
    grows === 'push'
      ? { weight: 0, moment: 0, push: sign, pushMoment: 0.6 * sign }
      : { weight: 1, moment: grows.at, push: 0, pushMoment: 0 };
  const [sections, above] = crownHalf > 0 ? [[crown, base], [NOTHING]] : [[base], []];
  return {
    pair: { halves: [sections, sections], tie },
    grows: [
      [...above, more(-1)],
      [...above, more(1)],
    ],
  };
}

describe('one line of thrust, by closed forms', () => {
  it.each([0.1, 0.25, 0.4])(
    'two piers that lean on each other slide when the push is %f of their weight',
    (friction) => {
      const found = borne(piers('push'), { friction });
      expect(found?.factor).toBeCloseTo(friction, 9);
      expect(found?.heldBy).toEqual(['friction']);
    },
  );

  it('a load that may stand in the middle is borne on the whole joint: f times its area, 2 · 3 a radian', () => {
    const found = borne(piers({ at: 2.3 }), { strengthMpa: 5 * KN });
    expect(1 + (found?.factor ?? 0)).toBeCloseTo(5 * 6, 6);
    expect(found?.heldBy).toEqual(['wall']);
  });

  it.each([2.2, 2.6, 3, 3.5, 3.9])('one that stands at radius %f, by a block from the nearer face', (at) => {
    // Without friction no thrust passes the crown. Block from `face` to `end`: ∫ r² dr / ∫ r dr is where it stands.
    const found = borne(piers({ at }, 0.1), { strengthMpa: 5 * KN, friction: 0 });
    const stands = (from: number, to: number) => ((2 / 3) * (to ** 3 - from ** 3)) / (to ** 2 - from ** 2);
    const face = at > stands(2, 4) ? 4 : 2;
    let [low, high] = [2, 4];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (stands(middle, face) > at) high = middle;
      else low = middle;
    }
    const area = Math.abs(face ** 2 - ((low + high) / 2) ** 2) / 2;
    expect((1 + (found?.factor ?? 0)) / (5 * area)).toBeCloseTo(1, 6);
  });

  it('a tie holds what turns outward from the foot’s inner face: its pull times (0.5 + 0.1) over the lever', () => {
    // Crown 1 up, ± 0.1; tie at 0.5; load at 1.4 turns about 2. A foot without friction takes no thrust.
    const found = borne(piers({ at: 1.4 }, 0.1, { z: 0.5, most: 3 }), { friction: 0 });
    expect(1 + (found?.factor ?? 0)).toBeCloseTo((3 * (0.5 + 0.1)) / (2 - 1.4), 9);
    expect(found?.heldBy).toContain('tie');
  });
});

describe('one line of thrust under all limits', () => {
  // By a programme of its own in another language (HiGHS): stresses of each joint fibre by fibre, 200 of them, so from
  // below; 21 joints either side, part of its weight that pushes.
  it.each([
    [3, null, 0, 0, 0.215082],
    [2, null, 0, 0, 0.164455],
    [3, 0.4, 0, 0, 0.201086],
    [3, 0.26, 0, 0, 0.08121],
    [null, 0.26, 0, 0, 0.083045],
    [3, 0.3, 0.02, 0, 0.142606],
    [3, 0.3, 0, 0.01, 0.123492],
    [3, 0.3, 0.02, 0.01, 0.142625],
  ])(
    'hemisphere: strength %s, friction %s, tie %f, ring at 0.9 of area %f: %f of its weight',
    (f, friction, tie, area, part) => {
      const rings = area > 0 ? [{ z: 0.9, area }] : [];
      const strengthMpa = f === null ? null : f * KN;
      const found = borne(shaken(T, 20, tie), { strengthMpa, friction, rings, thickness: T });
      expect(Math.abs((found?.factor ?? 0) / part - 1)).toBeLessThan(1e-4);
    },
  );

  it('passes every joint within its strength and friction, which is looked at joint by joint', () => {
    const [f, friction] = [3, 0.3];
    const growing = shaken(T, 60, 0.02);
    const found = borne(growing, { strengthMpa: f * KN, friction, thickness: T });
    const [h, k, shear, pull] = found?.at ?? [0, 0, 0, 0];
    const part = found?.factor ?? 0;
    let [hardest, roughest] = [0, 0];
    growing.pair.halves.forEach((half, which) => {
      half.forEach((s, i) => {
        const more = growing.grows[which === 0 ? 0 : 1][i] as Burden;
        const t = s.tied ? pull : 0;
        const down = s.weight + (which === 0 ? shear : -shear);
        const out = h + part * more.push - t;
        const [c, up] = [s.half[0] / (T / 2), s.half[1] / (T / 2)];
        const across = c * down + up * out;
        roughest = Math.max(roughest, Math.abs(c * out - up * down) / across);
        const turn = s.moment + part * more.pushMoment + k - 0.5 * t - s.middle[0] * down - s.middle[1] * out;
        // Block from the nearer face, as deep as N needs at f: what it can turn about the middle is more than M.
        const side = turn > 0 ? 1 : -1;
        const width = Math.max(s.middle[0], T);
        const fibres = 4000;
        let [force, moment] = [0, 0];
        for (let j = 0; j < fibres && force < across; j++) {
          const x = side * (T / 2 - ((j + 0.5) * T) / fibres);
          const more = Math.min(across - force, (f * (width + c * x) * T) / fibres);
          force += more;
          moment += more * side * x;
        }
        expect(force).toBeCloseTo(across, 9);
        hardest = Math.max(hardest, Math.abs(turn) / moment);
      });
    });
    expect(roughest).toBeLessThan(friction * (1 + 1e-6));
    expect(hardest).toBeLessThan(1 + 1e-4);
    // Both hold it.
    expect(roughest).toBeGreaterThan(friction * (1 - 1e-6));
    expect(hardest).toBeGreaterThan(1 - 1e-4);
    expect(pull).toBeLessThanOrEqual(0.02);
    expect([...(found?.heldBy ?? [])].sort()).toEqual(['friction', 'wall']);
  });

  it('with the faces alone bears a load just where the geometric factor is 1', () => {
    const found = borne(shaken(T, 60, 0), {});
    expect(found?.heldBy).toEqual(['wall']);
    expect(Math.abs(pairFactor(hemisphere(T, found?.factor ?? 0, 60)) - 1)).toBeLessThan(1e-5);
  });

  it('is sought no further than asked, and is none where even the load that stays has none', () => {
    const capped = borne(shaken(T, 20, 0), { strengthMpa: 3 * KN, thickness: T }, 0.1);
    expect(capped).toMatchObject({ factor: 0.1, heldBy: [] });
    expect(borne(shaken(0.03, 20, 0), {})).toBeNull();
    expect(borne(shaken(T, 20, 0), { strengthMpa: 0.5 * KN, thickness: T })).toBeNull();
  });

  it('may lean on two closed rings of a dome, from the top down, and on none where none is closed', () => {
    const dome = setOutHouse(houseOf({ domes: [domeOf({ stemWall: 0 })] })).domes[0];
    if (!dome) throw new Error('a dome');
    const rings = pressedRings(dome, 0);
    expect(rings).toHaveLength(2);
    expect(rings[0]?.z).toBeGreaterThan(rings[1]?.z ?? 0);
    expect(pressedRings(dome, 1e6)).toEqual([]);
  });
});

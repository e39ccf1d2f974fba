import { describe, expect, it } from 'vitest';
import { layBlocks } from '../../lib/masonry/lay.js';
import { wetDensity } from '../../lib/masonry/mass.js';
import { NO_REACH } from '../../lib/masonry/reach.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { layingChecks, runsOf } from '../../lib/statics/checks/laying.js';
import { layingOf } from '../../lib/statics/laying-courses.js';
import { strengthOf } from '../../lib/statics/strength.js';
import { domeOf, houseOf, MATERIAL, openingOf } from '../tools/house.js';

const layingIn = (part: Parameters<typeof houseOf>[0] = {}) => {
  const setout = setOutHouse(houseOf(part));
  const courses = layingOf(setout, layBlocks(setout));
  return { courses, checks: layingChecks(setout, courses, strengthOf(setout.house.material)) };
};

describe('courses while they are laid', () => {
  it('are of blocks that weigh more fresh, by the shrinkage and by what is cut off', () => {
    const house = houseOf({ openings: [openingOf()] });
    const setout = setOutHouse({ ...house, blocks: { ...house.blocks, shrinkage: 0.01 } });
    const { blocks } = layBlocks(setout);
    const one = blocks.filter((b) => b.course === 3);
    const whole = one.find((b) => b.cutBy.length === 0);
    const cut = one.filter((b) => b.cutBy.length > 0);
    expect(cut.length).toBeGreaterThan(0);
    const wetKg = (own: typeof one) =>
      layingOf(setout, { blocks: own, slivers: [], reach: NO_REACH })[2]?.wetKg as number;
    const fresh = ((whole?.volume ?? 0) / 0.99 ** 3 / 1e9) * wetDensity(house.material);
    expect(wetKg(one)).toBeCloseTo(fresh, 9);
    expect(wetKg(cut)).toBeCloseTo(fresh, 9);
  });

  it('slide from the friction angle on, and then never again stay', () => {
    const { courses } = layingIn();
    for (const c of courses) expect(c.slides).toBe(Math.tan(c.bedRad) > 0.4);
    const first = courses.findIndex((c) => c.hold !== 'nothing');
    // 1.5 times W (sin λ − μ cos λ) / μ, the rope's own friction of 0.5 over the wrap λ lost (derived).
    const hung = courses.filter((c) => c.hold === 'weight' && !c.tips);
    expect(hung.length).toBeGreaterThan(1);
    for (const { bedRad, dryKg, hangKg } of hung) {
      const pull = (dryKg * (Math.sin(bedRad) - 0.4 * Math.cos(bedRad))) / 0.4;
      expect(hangKg).toBeCloseTo(1.5 * pull * Math.exp(0.5 * bedRad), 1);
    }
    expect(courses.slice(first).every((c) => c.hold === 'weight' || c.hold === 'prop')).toBe(true);
    expect(courses.every((c) => c.hangKg === null || c.hangKg <= c.dryKg)).toBe(true);
    // A prop takes over for good.
    const prop = courses.findIndex((c) => c.hold === 'prop');
    expect(courses.slice(prop).every((c) => c.hold === 'prop')).toBe(true);
    expect(courses[prop - 1]?.hold).toBe('weight');
    expect(courses[prop - 1]?.weights).toBe(courses[prop - 1]?.blocks);
  });

  it('stay everywhere on a stem wall, and ask for props at once without friction', () => {
    const { courses } = layingIn({ material: { ...MATERIAL, friction: 0 } });
    for (const c of courses) expect(c.hold).toBe(c.bedRad === 0 ? 'nothing' : 'prop');
  });

  it('have their weight outside the chord of their inner corners on a stem wall: centre of a sector less its joint', () => {
    const upright = layingIn().courses.filter((c) => c.bedRad === 0 && c.overhang < 0);
    const lever = ((2 / 3) * (3250 ** 3 - 3000 ** 3)) / (3250 ** 2 - 3000 ** 2);
    expect(upright.length).toBeGreaterThan(1);
    for (const { blocks, overhang } of upright) {
      const half = Math.PI / blocks - 10 / 3125 / 2;
      expect(overhang).toBeCloseTo(3000 * Math.cos(half) - (lever * Math.sin(half)) / half, 6);
    }
  });

  it('need centering where an opening breaks their rings, until the first closed ring above', () => {
    const { courses, checks } = layingIn({
      domes: [domeOf({ stemWall: 300 })],
      openings: [openingOf({ height: 2300 })],
    });
    const broken = courses.filter((c) => c.brokenBy.length > 0);
    expect(broken.every((c) => c.brokenBy.join() === 'entrance' && c.hangKg === null)).toBe(true);
    const held = broken.filter((c) => c.hold === 'centering');
    expect(held.length).toBeGreaterThan(2);
    const closing = Math.max(...broken.map((c) => c.course)) + 1;
    expect(held.every((c) => c.closedAbove === closing)).toBe(true);
    const check = checks.find((c) => c.id === 'open-rings.hall');
    expect(check?.state).toBe('attention');
    expect(check?.advice).toContain(`until course ${closing}`);
  });

  it('a rough bed keeps each block, and yet the pier of an open ring tips', () => {
    const { courses } = layingIn({
      domes: [domeOf({ stemWall: 300 })],
      openings: [openingOf({ height: 2300 })],
      material: { ...MATERIAL, friction: 0.8 },
    });
    const tipping = courses.filter((c) => !c.slides && !c.tips && c.stackTips);
    expect(tipping.length).toBeGreaterThan(0);
    expect(tipping.every((c) => c.hold === 'centering')).toBe(true);
    // A thin arc of the middle surface, radius 3125, from 0 to the angle a has its centre at 3125 sin a / a.
    const first = Math.min(...tipping.map((c) => c.bedRad));
    expect((3125 * Math.sin(first + 0.08)) / (first + 0.08)).toBeLessThan(3030);
  });

  it('are judged with figures, and blocks against what one person lifts', () => {
    const { checks } = layingIn();
    expect(checks.map((c) => c.id)).toEqual([
      'laying.hall',
      'hung-weight.hall',
      'open-rings.hall',
      'ring-push.hall',
      'lifting-dry',
      'lifting-wet',
    ]);
    for (const c of checks) {
      expect(c.demand).toBeDefined();
      if (c.state !== 'ok') expect(c.advice, c.id).not.toBe('');
    }
    const heavy = layingIn({ blocks: { ...houseOf().blocks, length: 800, heaviestKg: 200 } }).checks;
    expect(heavy.find((c) => c.id === 'lifting-dry')?.advice).toContain('HSE CIS 37');
    expect(runsOf([1, 2, 3, 7, 9, 10])).toBe('1 to 3, 7, 9 to 10');
  });
});

import { describe, expect, it } from 'vitest';
import type { House } from '../../lib/description/house.js';
import { balanceOf } from '../../lib/masonry/balance.js';
import { masonryChecks } from '../../lib/masonry/checks.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const check = (id: string, blocks: Partial<House['blocks']> = {}, part: Partial<House> = {}) => {
  const house = houseOf(part);
  const setout = setOutHouse({ ...house, blocks: { ...house.blocks, ...blocks } });
  const laid = layBlocks(setout);
  return masonryChecks(setout, laid, balanceOf(setout, laid)).find((c) => c.id === id);
};

describe('checks of the masonry', () => {
  it('weighs the heaviest block fresh against the limit', () => {
    expect(check('block-mass')?.state).toBe('ok');
    const heavy = check('block-mass', { length: 900 });
    expect(heavy?.state).toBe('fails');
    // Some 0.89 × 0.24 × 0.25 m at 779.6 kg/m3, a little more for the wider extrados.
    expect(heavy?.demand?.value).toBeGreaterThan(0.89 * 0.24 * 0.25 * 779);
    expect(heavy?.ratio).toBeCloseTo((heavy?.demand?.value as number) / 20, 9);
  });

  it('names pieces beside an opening that are too short', () => {
    expect(check('shortest-piece')?.state).toBe('ok');
    const short = check('shortest-piece', { shortestPiece: 150 }, { openings: [openingOf()] });
    expect(short?.state).toBe('attention');
    expect(short?.advice).toMatch(/hall-\d+-\d+/);
  });

  it('says where laps are short, and that the masonry balances', () => {
    expect(check('least-lap.hall')?.state).toBe('attention');
    expect(check('least-lap.hall', { leastLap: 0 })?.state).toBe('ok');
    expect(check('masonry-balance')?.state).toBe('ok');
  });

  it('fails flat beds that cross the next course, and is silent on curved faces', () => {
    expect(check('flat-beds')).toBeUndefined();
    const flat = check('flat-beds', { faces: 'flat' });
    expect(flat?.state).toBe('fails');
    expect(flat?.ratio).toBeGreaterThan(1);
    expect(check('flat-beds', { faces: 'flat', length: 100, joint: 15, shortestPiece: 30 })?.state).toBe('ok');
  });
});

describe('the crown plug', () => {
  it('is weighed, and told where it is too heavy to lift by hand', () => {
    const plug = check('plug-mass.hall');
    expect(plug?.demand?.value).toBeGreaterThan(20);
    expect(plug?.state).toBe('attention');
    expect(check('plug-mass.hall', { heaviestKg: 200 })?.state).toBe('ok');
    const oculus = { radius: 350, curb: 150, upstand: 100 };
    expect(check('plug-mass.hall', {}, { domes: [{ ...domeOf(), oculus }] })).toBeUndefined();
  });
});

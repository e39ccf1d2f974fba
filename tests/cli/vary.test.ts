import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { MOST_VARIANTS, variantsOf } from '../../lib/deliver/vary.js';
import { temporaryFolder } from './folder/helpers.js';
import { HOUSE } from './houses.js';
import { call } from './in-process.js';

const temporary = temporaryFolder();
beforeEach(() => writeFileSync(join(temporary.path, 'house.yaml'), HOUSE));
const run = (...args: readonly string[]) => call(temporary.path, ...args);

const valuesOf = (...sets: readonly string[]) => variantsOf(sets).map(({ varied }) => Object.values(varied).join(' '));

describe('rows of values', () => {
  it.each([
    ['a=1..2/0.5', ['1', '1.5', '2']],
    ['a=2.5..2.8/0.1', ['2.5', '2.6', '2.7', '2.8']],
    ['a=3..1/1', ['3', '2', '1']],
    ['a=-1..1/1', ['-1', '0', '1']],
    ['a=1..2/0.4', ['1', '1.4', '1.8']],
    ['a=200..300/50 mm', ['200 mm', '250 mm', '300 mm']],
    ['a=0.1..0.3/0.1m', ['0.1 m', '0.2 m', '0.3 m']],
    ['a=x|y|2..3/1', ['x', 'y', '2', '3']],
    [`a=6'-10"|2 m`, [`6'-10"`, '2 m']],
  ])('%s', (set, values) => {
    expect(valuesOf(set)).toEqual(values);
  });

  it('make every pair, and what is the same in all is varied in none', () => {
    expect(valuesOf('a=1|2', 'b=x|y')).toEqual(['1 x', '1 y', '2 x', '2 y']);
    expect(variantsOf(['a=1', 'b=2|3'])).toEqual([
      { set: ['a=1', 'b=2'], varied: { b: '2' } },
      { set: ['a=1', 'b=3'], varied: { b: '3' } },
    ]);
  });

  it.each([
    ['a', 'set-unreadable'],
    ['a=1..2', 'vary-range'],
    ['a=1..2/0', 'vary-range'],
    ['a=1||2', 'vary-range'],
    [`a=1..${MOST_VARIANTS + 2}/1`, 'vary-range'],
  ])('%s is no row: told with how to write it', (set, code) => {
    expect(() => variantsOf([set])).toThrow(expect.objectContaining({ problems: [expect.objectContaining({ code })] }));
  });

  it('are not more than anyone compares, taken together', () => {
    expect(() => variantsOf(['a=1..30/1', 'b=1..30/1'])).toThrow(/more than 400/);
  });
});

describe('vary', () => {
  it('prints a table and a chart; each row is what the house with that value comes to', async () => {
    const { code, out, err } = await run(
      'vary',
      'house.yaml',
      '--set',
      'domes.room.radius=2..30/28',
      '--chart',
      'floor',
    );
    expect(code, err).toBe(0);
    const lines = out.split('\n');
    expect(lines[0]).toBe('Variants');
    expect(lines.find((line) => line.startsWith('2  '))).toMatch(
      /^2 +\d+\.\d\d +\d+ +\d+ .*(fails|attention): [\w.-]+$/,
    );
    // A variant that is no house says why, and the others are computed all the same.
    expect(lines.find((line) => line.startsWith('30  '))).toMatch(/^30 +value-range: /);
    expect(lines.find((line) => line.includes('█'))).toMatch(/^ {2}2 +█{40} \d+\.\d\d$/);
    expect(lines.find((line) => /^ {2}30 /.test(line))).toContain('none');
    const json = await run('vary', 'house.yaml', '--set', 'domes.room.radius=2', '--json');
    const { variants } = JSON.parse(json.out);
    const check = JSON.parse((await run('check', 'house.yaml', '--json')).out);
    const { figures } = variants[0];
    expect(figures.fails).toBe(check.checks.filter((c: { state: string }) => c.state === 'fails').length);
    // The floor of a dome of 2 m inside its render of 15 mm, on a stem wall: a circle.
    expect(figures.floor).toBeCloseTo(Math.PI * 1.985 * 1.985, 9);
    expect(out).toContain((Math.PI * 1.985 * 1.985).toFixed(2));
  });

  it('takes in every --set; of options that are given once the last counts', async () => {
    const sets = ['--set', 'domes.room.radius=2|2.2', '--set', 'wall.thickness=200mm|250mm'];
    const pairs = await run('vary', 'house.yaml', ...sets, '--chart', 'floor', '--chart', 'safety', '--json');
    expect(pairs.code, pairs.err).toBe(0);
    expect(JSON.parse(pairs.out).variants).toHaveLength(4);
    const both = ['--set', 'domes.room.radius=wide', '--set', 'wall.thickness=thick'];
    const wrong = await run('check', 'house.yaml', ...both);
    expect(wrong.code).toBe(3);
    expect(wrong.err).toContain('domes.room.radius');
    expect(wrong.err).toContain('wall.thickness');
  });

  it('says when no variant is a house: exit 3', async () => {
    const { code, out } = await run('vary', 'house.yaml', '--set', 'domes.room.radius=-1|0', '--csv');
    expect(code).toBe(3);
    expect(out).toContain('value-range');
  });

  it.each([
    [['vary', 'house.yaml'], 2, 'Option --set is missing.'],
    [['vary', 'house.yaml', '--set', 'a=1..2'], 3, 'has no step'],
    [['vary', 'house.yaml', '--set', 'a=1|2', '--chart', 'flor'], 2, 'Did you mean floor?'],
    [['table', 'house.yaml', 'blocks', '--csv', '--set', 'a'], 3, 'names no value'],
    [['table', 'house.yaml', 'blocks', '--format', 'cvs'], 2, 'Did you mean csv?'],
    [['table', 'house.yaml', 'blocks', '--format', 'json', '--csv'], 2, 'json and csv are two ways to print.'],
  ])('%j is told: exit %i', async (args, exit, told) => {
    const { code, out, err } = await run(...args);
    expect({ code, out }).toEqual({ code: exit, out: '' });
    expect(err).toContain(told);
  });
});

describe('compare', () => {
  it('tells what changed in figures, blocks, moulds, costs and checks', async () => {
    const more = 'prices: { currency: EUR, cement: { per: 25 kg, price: 6.20 } }\n';
    writeFileSync(
      join(temporary.path, 'after.yaml'),
      `${readFileSync(join(temporary.path, 'house.yaml'), 'utf8')}${more}`,
    );
    const same = JSON.parse((await run('compare', 'house.yaml', 'after.yaml', '--json')).out);
    expect(same.blocks).toEqual([{ dome: 'room', same: same.before.blocks, changed: 0, gone: 0, added: 0 }]);
    expect(same.moulds.gone).toEqual([]);
    expect(same.costs.find((c: { item: string }) => c.item === 'cement')).toMatchObject({ before: null });

    const { code, out } = await run('compare', 'house.yaml', 'after.yaml', '--set', 'domes.room.stem-wall=0.85');
    expect(code).toBe(0);
    for (const title of ['Figures', 'Blocks by mark', 'Moulds', 'Costs', 'Checks that changed'])
      expect(out).toMatch(new RegExp(`^${title}$`, 'm'));
    // Marks of both houses, each in one of the columns.
    const [, kept, changed, gone, added] = (/^room +(\d+) +(\d+) +(\d+) +(\d+)$/m.exec(out) ?? []).map(Number);
    const [, before, after] = (/^blocks +(\d+) +(\d+) /m.exec(out) ?? []).map(Number);
    const both = Number(kept) + Number(changed);
    expect([both + Number(gone), both + Number(added)]).toEqual([before, after]);
    expect(Number(kept)).toBeLessThan(Number(changed));
    // A figure is told to one decimal before and after, as in the row of variants, and the columns add up.
    const figures = [
      ...out.matchAll(/^(?:floor|masonry|least geometric factor of safety) .*?([\d.]+) +([\d.]+) +([+-]?[\d.]+)$/gm),
    ];
    expect(figures.length).toBe(3);
    for (const [line, ...told] of figures) {
      expect(new Set(told.map((value) => value.split('.')[1]?.length)).size, line).toBe(1);
      expect(Number(told[1]) - Number(told[0]), line).toBeCloseTo(Number(told[2]), 9);
    }
    expect(out).toMatch(/^least geometric factor of safety +\d+\.\d\d /m);
  });
});

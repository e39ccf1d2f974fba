import { mkdirSync, readdirSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { temporaryFolder } from './folder/helpers.js';
import { changed, HOUSE } from './houses.js';
import { ringcourse } from './program.js';

const temporary = temporaryFolder();

const repeat = (count: number, line: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => line(i)).join('');

/** Each alias stands for nine of the one before: a billion values if they were all written out. */
const ALIAS_BOMB = `${HOUSE}bomb: &b0 [x, x, x, x, x, x, x, x, x]\n${repeat(9, (i) => `b${i + 1}: &b${i + 1} [${Array(9).fill(`*b${i}`).join(', ')}]\n`)}`;

const WRONG: readonly (readonly [what: string, content: string | Uint8Array, told: RegExp])[] = [
  ['broken YAML', 'format: 1\ndomes: [ {id: a', /^house\.yaml:\d+:\d+: /m],
  ['a wrong type', changed('radius: 2.0', 'radius: [2]'), /^house\.yaml:7:\d+: .*radius/m],
  ['a text for a number', changed('radius: 2.0', 'radius: wide'), /^house\.yaml:7:\d+: .*radius/m],
  ['an unknown key', changed('radius: 2.0', 'radius: 2.0, radus: 3'), /^house\.yaml:7:\d+: .*radus/m],
  ['an unknown dome', changed('in: room', 'in: rom'), /^house\.yaml:9:\d+: .*rom[\s\S]*room/m],
  ['an opening higher than its dome', changed('height: 2.1', 'height: 4'), /^house\.yaml:9:\d+: /m],
  ['a wall thicker than its dome', changed('thickness: 0.2', 'thickness: 2.5'), /^house\.yaml:\d+:\d+: .*thick/m],
  ['an oculus wider than its dome', changed('radius: 0.3', 'radius: 3'), /^house\.yaml:7:\d+: .*oculus/m],
  ['a size that is no number', changed('radius: 2.0', 'radius: .nan'), /^house\.yaml:7:\d+: .*radius/m],
  ['an infinite size', changed('radius: 2.0', 'radius: .inf'), /^house\.yaml:7:\d+: .*radius/m],
  ['a size past all sense', changed('radius: 2.0', 'radius: 1e308'), /^house\.yaml:7:\d+: .*radius/m],
  ['a negative size', changed('radius: 2.0', 'radius: -2'), /^house\.yaml:7:\d+: .*radius/m],
  [
    'courses of 0.1 mm',
    changed('course-height: 0.25', 'course-height: 0.1 mm'),
    /^house\.yaml:5:\d+: .*course-height/m,
  ],
  ['an empty file', '', /^house\.yaml:1:1: /m],
  ['a file of blanks and a comment', '\n  \n# nothing\n', /^house\.yaml:\d+:\d+: /m],
  ['a binary file', Uint8Array.from({ length: 4096 }, (_, i) => (i * 197) % 256), /^house\.yaml:1:1: file-not-text/m],
  ['text in UTF-16', Buffer.from(`\ufeff${HOUSE}`, 'utf16le'), /^house\.yaml:1:1: file-not-text: .*UTF-16/m],
  [
    'a bad byte',
    Buffer.concat([Buffer.from('format: 1\nunits: '), Uint8Array.of(0xff)]),
    /^house\.yaml:2:8: file-not-text/m,
  ],
  ['a file of 10 MB', repeat(200_000, (i) => `- ${'house '.repeat(8)}${i}\n`), /^house\.yaml/m],
  ['a house of 10 MB', HOUSE + repeat(400_000, (i) => `key-number-${i}: some words\n`), /^house\.yaml/m],
  ['an alias bomb', ALIAS_BOMB, /^house\.yaml:15:\d+: yaml-expansion: .*expand too far[\s\S]*^1 problem;/m],
  ['20,000 nested brackets', '['.repeat(20_000), /^house\.yaml:\d+:\d+: /m],
  ['20,000 nested brackets, closed', `domes: ${'['.repeat(20_000)}${']'.repeat(20_000)}`, /^house\.yaml:\d+:\d+: /m],
  ['20,000 nested braces in JSON', '{"a":'.repeat(20_000), /^house\.yaml:\d+:\d+: /m],
  ['a prototype key', `${HOUSE}__proto__: { polluted: 1 }\n`, /^house\.yaml:10:\d+: .*__proto__/m],
  ['a constructor key', `${HOUSE}constructor: { prototype: { polluted: 1 } }\n`, /^house\.yaml:10:\d+: .*constructor/m],
  ['a prototype key inside', changed('radius: 2.0', 'radius: 2.0, __proto__: { at: [0, 0] }'), /^house\.yaml:7:\d+: /m],
  ['an id with a path separator', changed('id: room', 'id: ../../room'), /^house\.yaml:7:\d+: .*id/m],
  ['an id with a backslash', changed('id: room', "id: '..\\room'"), /^house\.yaml:7:\d+: .*id/m],
  ['an id with a NUL', changed('id: room', 'id: "ro\\0om"'), /^house\.yaml:7:\d+: .*id/m],
  ['a duplicate key', `${HOUSE}units: mm\n`, /^house\.yaml:10:\d+: /m],
  ['two documents', `${HOUSE}---\n${HOUSE}`, /^house\.yaml:\d+:\d+: /m],
  ['a later format', changed('format: 1', 'format: 2'), /^house\.yaml:1:\d+: .*format/m],
  ['no house at all', '42', /^house\.yaml:1:1: /m],
  ['a tag for code', changed('radius: 2.0', 'radius: !!js/function "x"'), /^house\.yaml:7:\d+: /m],
];

describe('a description that is wrong', () => {
  it.each(WRONG)('%s: exit 3, its place told, nothing written', (_, content, told) => {
    writeFileSync(join(temporary.path, 'house.yaml'), content);
    const { code, out, err } = ringcourse(temporary.path, 'build', 'house.yaml', '-o', 'out');
    expect({ code, out }).toEqual({ code: 3, out: '' });
    expect(err).toMatch(told);
    expect(readdirSync(temporary.path)).toEqual(['house.yaml']);
  });

  it('has all its problems told at once, each with how to mend it', () => {
    const text = changed('radius: 2.0', 'radus: 2.0')
      .replace('height: 2.1', 'height: tall')
      .replace('in: room', 'in: rom');
    writeFileSync(join(temporary.path, 'house.yaml'), text);
    const { code, err } = ringcourse(temporary.path, 'check', 'house.yaml');
    expect(code).toBe(3);
    for (const word of ['radus', 'tall', 'rom']) expect(err).toContain(word);
    const places = err.split('\n').filter((line) => line.startsWith('house.yaml:'));
    expect(places.length).toBeGreaterThanOrEqual(3);
    expect(err.split('\n').filter((line) => line.startsWith('    ')).length).toBe(places.length);
  });

  it('does not replace the package before it', () => {
    writeFileSync(join(temporary.path, 'house.yaml'), HOUSE);
    expect(ringcourse(temporary.path, 'build', 'house.yaml', '-o', 'out', '--only', 'tables').code).toBeOneOf([0, 4]);
    const before = readdirSync(join(temporary.path, 'out'), { recursive: true });
    writeFileSync(join(temporary.path, 'house.yaml'), changed('radius: 2.0', 'radius: -2'));
    expect(ringcourse(temporary.path, 'build', 'house.yaml', '-o', 'out').code).toBe(3);
    expect(readdirSync(join(temporary.path, 'out'), { recursive: true })).toEqual(before);
  });
});

describe('a house that no sheet can hold', () => {
  it('is drawn in parts that go on at match lines, and the summary says so', () => {
    const far = HOUSE.replace(/^domes:.*$/m, (line) => `${line}\n  - { id: far, at: [900, 0], radius: 2 }`);
    writeFileSync(join(temporary.path, 'house.yaml'), `${far}\ndrawings: { sheets: [plan] }\n`);
    const { code, out } = ringcourse(temporary.path, 'build', 'house.yaml', '-o', 'out', '--only', 'drawings');
    expect(code).toBeOneOf([0, 4]);
    expect(out).toMatch(/the house is larger than A1 at 1:200 and goes on at match lines/);
    const sheets = readdirSync(join(temporary.path, 'out', 'drawings')).filter((name) => name.endsWith('.dxf'));
    // A key, and the parts in which something stands.
    expect(sheets.length).toBeGreaterThanOrEqual(3);
  });
});

describe('a file that can not be read', () => {
  it.each([
    ['missing', () => {}],
    ['a folder', (path: string) => mkdirSync(path)],
    [
      '100 MB, larger than any description',
      (path: string) => {
        writeFileSync(path, HOUSE);
        truncateSync(path, 100 * 1024 * 1024);
      },
    ],
  ])('because it is %s: exit 5, nothing written', (_, plant) => {
    plant(join(temporary.path, 'house.yaml'));
    const before = readdirSync(temporary.path);
    for (const args of [
      ['build', 'house.yaml', '-o', 'out'],
      ['check', 'house.yaml'],
      ['table', 'house.yaml', 'blocks'],
    ]) {
      const { code, out, err } = ringcourse(temporary.path, ...args);
      expect({ code, out }).toEqual({ code: 5, out: '' });
      expect(err).toMatch(/^ringcourse: The description house\.yaml can't be read: .+\.\n {4}.+\.\n$/);
    }
    expect(readdirSync(temporary.path)).toEqual(before);
  });
});

import { describe, expect, test } from 'vitest';
import { LARGEST_FILE } from '../../lib/description/text/guard.js';
import { codesOf, problemsOf, withHall } from './helpers.js';

/** A quarter of the largest file: what it takes grows evenly with the size. */
const LONG = LARGEST_FILE / 4;
const filled = (piece: string): string => piece.repeat(Math.floor(LONG / piece.length));

describe('files that are no descriptions', () => {
  test('10 MB are refused before they are looked at', () => {
    // Looked at, the keys that stand twice would be told too.
    expect(codesOf('a: 1\n'.repeat(2_000_000))).toEqual(['file-too-large']);
    expect(codesOf(new Uint8Array(10_000_000))).toEqual(['file-too-large']);
  });

  test.each([
    ['a picture', Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0x00, 0x00])],
    ['UTF-16', Uint8Array.from([0xff, 0xfe, 0x66, 0x00, 0x6f, 0x00])],
    ['Latin-1', Uint8Array.from([0x74, 0x69, 0x74, 0x6c, 0x65, 0x3a, 0x20, 0xe9])],
    ['zero bytes', new Uint8Array(100)],
    ['bytes already decoded with losses', 'title: Caf\uFFFD'],
    ['half of a surrogate pair', 'title: \uD800'],
    ['an escape sequence of a terminal', 'title: \u001b[31mred'],
  ])('%s', (_name, content) => {
    expect(codesOf(content)).toEqual(['file-not-text']);
  });

  test.each(['', '\n\n', '# nothing', '---', '---\n...\n', new Uint8Array(0)])('empty: %j', (content) => {
    expect(codesOf(content)).toEqual(['file-empty']);
  });
});

describe('files made to hurt', () => {
  test.each([
    ['brackets', '['.repeat(20_000)],
    ['closed brackets', `${'['.repeat(20_000)}${']'.repeat(20_000)}`],
    ['brackets under a key', `a: ${'{b: '.repeat(20_000)}`],
    ['dashes in one line', '- '.repeat(20_000)],
    ['questions in one line', '? '.repeat(20_000)],
    ['indents', Array.from({ length: 600 }, (_, i) => `${' '.repeat(i)}a:`).join('\n')],
    ['indents with quotes before the brackets', `a: '"'\nb: ${'['.repeat(5000)}`],
  ])('nested: %s', (_name, text) => {
    expect(codesOf(text)).toEqual(['nesting-too-deep']);
  });

  test('aliases that unfold to a billion values are not unfolded', () => {
    const levels = Array.from({ length: 12 }, (_, i) => `l${i + 1}: &l${i + 1} [${`*l${i}, `.repeat(9)}1]`);
    const codes = codesOf(withHall(`l0: &l0 [1]\n${levels.join('\n')}`));
    expect(codes).toEqual(['yaml-expansion']);
  });

  test.each([
    ['keys', Array.from({ length: 5_000 }, (_, i) => `k${i}: 1`).join('\n')],
    ['equal keys', filled('k: 1\n')],
    ['list entries', `[${filled('1,').slice(2)}]`],
    ['domes', `format: 1\ndomes: [${filled('{},').slice(60)}]`],
    ['quotes', filled('"')],
    ['commas', `[${filled(',').slice(2)}]`],
    ['closing brackets', filled(']')],
    ['tags', filled('- !a b\n')],
    ['anchors', filled('&a ')],
    ['colons', filled('a: ')],
    ['comments', `a: 1\n${filled('# #\n').slice(8)}`],
    ['blanks', `a:${' '.repeat(LONG)}b`],
    ['backslashes', `a: "${filled('\\q').slice(6)}"`],
    ['one long key', `${filled('k').slice(4)}: 1`],
    ['a long quantity', withHall(`wall: { thickness: ${'1 '.repeat(100_000)} }`)],
    ['a long unit', withHall(`wall: { thickness: 1 ${'m'.repeat(200_000)} }`)],
    ['a long date', withHall(`project: { date: ${'1'.repeat(200_000)} }`)],
    ['a long id', `format: 1\ndomes: [{ id: ${'a'.repeat(200_000)}, radius: 3 }]`],
  ])('long: %s', { timeout: 30_000 }, (_name, text) => {
    const problems = problemsOf(text);
    expect(problems.length).toBeGreaterThan(0);
    expect(problems.length).toBeLessThanOrEqual(101);
    for (const { message, mend } of problems) expect(message.length + mend.length).toBeLessThan(1000);
  });

  test('keys of an object’s own machinery do nothing', () => {
    const text =
      '{ "format": 1, "domes": [{ "id": "a", "radius": 3, "__proto__": { "radius": 1 } }], "__proto__": { "slab": "none" } }';
    expect(codesOf(text)).toEqual(['key-unknown', 'key-unknown']);
    expect(codesOf(JSON.parse(text))).toEqual(['key-unknown', 'key-unknown']);
    expect(codesOf(withHall('prices: { currency: EUR, __proto__: { per: 1 kg, price: 1 } }'))).toEqual(['key-unknown']);
    expect(codesOf(withHall('toString: 1\nhasOwnProperty: 2'))).toEqual(['key-unknown', 'key-unknown']);
    expect(({} as { slab?: unknown }).slab).toBeUndefined();
  });
});

describe('objects that are no plain data', () => {
  const dome = { id: 'a', radius: 3 };
  const loop: Record<string, unknown> = { format: 1, domes: [dome] };
  loop.site = { plot: loop };
  let bomb: unknown[] = [1];
  for (let i = 0; i < 20; i++) bomb = [bomb, bomb, bomb];

  test.each<[string, object, string]>([
    ['a loop', loop, 'nesting-too-deep'],
    ['shared parts that unfold without end', { format: 1, domes: [dome], site: { plot: bomb } }, 'file-too-large'],
    ['a date', { format: 1, domes: [dome], project: { date: new Date(0) } }, 'value-type'],
    ['a map', new Map([['format', 1]]), 'value-type'],
    ['a function', { format: 1, domes: () => [dome] }, 'value-type'],
    ['a big integer', { format: 1, domes: [{ id: 'a', radius: 3n }] }, 'value-type'],
    [
      'an infinite number',
      { format: 1, domes: [{ id: 'a', radius: Number.POSITIVE_INFINITY }] },
      'quantity-unreadable',
    ],
    ['a hole in a list', { format: 1, domes: [dome, undefined] }, 'value-missing'],
    ['a list', [dome], 'value-type'],
  ])('%s', (_name, given, code) => {
    expect(codesOf(given)).toContain(code);
  });

  test.each([undefined, null, 5, 'text', true])('%s instead of an object', (given) => {
    // A text is a file's content to the helper, and wrong all the same.
    const problems = problemsOf(given as unknown as object);
    expect(problems.map((p) => p.code)).toEqual([
      given === undefined || given === null ? 'value-missing' : 'value-type',
    ]);
  });
});

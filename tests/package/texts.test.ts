import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readsLikeWording, sourcesUnder, type Wording, wordingIn, wordingOf } from '../tools/wording.js';

/** Where wording belongs. */
const TEXTS = /^(lib\/base\/texts\/|cli\/texts\/|lib\/page\/texts\.ts$)/;

/** What reads like wording and may stand elsewhere: where, which, and why. */
const ALLOWED: readonly { readonly files: RegExp; readonly texts: RegExp; readonly why: string }[] = [
  {
    files: /^lib\/description\/schema(\/|\.ts$)/,
    texts: /./,
    why: 'what a key means stands in its declaration, from which the JSON Schema and the table of keys are made',
  },
  {
    files: /^lib\/description\/starter\.ts$/,
    texts: /^( {2}- id: |# …\n# …\nformat: | {4}oculus: )/,
    why: 'keys and values of a first description; its comments and names are texts',
  },
  {
    files: /./,
    texts: /^(egress window|above openings|as built)$/,
    why: 'values of keys and options, as their users write them',
  },
  {
    files: /^lib\/(statics|works|drawings|masonry|tables)\//,
    texts:
      /^(dead and snow|drifted snow|test cubes|(lower|upper|curb|plug) bed|floor head|(up|down) the meridian|stem wall)$/,
    why: 'cases of results, told apart by their types',
  },
  {
    files: /^lib\/(description\/rules\/neighbours|drawings\/fit)\.ts$/,
    texts: /^(too deep|beside, wide)$/,
    why: 'cases within one file',
  },
  {
    files: /^lib\/(solids|models\/print)\//,
    texts: /^(…: (outside|room|roof|rim|pads|cutter|barrel|clear space|ground|vault)|outside of …)$/,
    why: 'names by which solids are found again',
  },
  {
    files: /^lib\/works\/(bill|quantities)\.ts$/,
    texts: /^ring steel$/,
    why: 'a name by which the bill finds a quantity',
  },
  {
    files: /^lib\/(masonry\/lay|solids\/(block|house)-solids)\.ts$/,
    texts: /^(course|blocks|parts)( …)+$/,
    why: 'names by which a memory finds what was made',
  },
  { files: /^lib\/base\/(reader-)?units\.ts$/, texts: /^(per cent|.*Btu.*)$/, why: 'names of units' },
  { files: /^lib\/writers\/html(-model)?-style\.ts$/, texts: /^\n:root \{/, why: 'a style sheet' },
  {
    files: /^lib\/writers\/html-model\.ts$/,
    texts: /^(s(cript|tyle)-src …|(default-src|base-uri|form-action) 'none'| checked| open)$/,
    why: 'what the page allows its browser, and attributes of its elements',
  },
  { files: /^lib\/writers\/pdf\/pen\.ts$/, texts: /^(cm\nBT\n|> 0\] TJ\nET\n)/, why: 'operators of a page of PDF' },
  { files: /^lib\/page\/shaders\.ts$/, texts: /^#version 300 es\n/, why: 'a program for the graphics card' },
  {
    files: /^lib\/page\/hatches\.ts$/,
    texts: /^(\n\w+ [\s\S]*if \(hatch == 0\)|repeating-linear-gradient\()/,
    why: 'the same hatch for the graphics card and for a style sheet',
  },
  { files: /^lib\/page\/main\.ts$/, texts: /^\(prefers-color-scheme: dark\)$/, why: 'a question to the browser' },
  {
    files: /^cli\/(commands|commands\/\w+|run)\.ts$/,
    texts: /^(new|check|build|watch|vary|compare|tables?|picture|completion|ringcourse) .*(house|\.yaml|--|>|…)/,
    why: 'calls of commands, as they are typed',
  },
  { files: /^cli\/commands\.ts$/, texts: /^…\n\n…\n\n {2}ringcourse … \[options\]$/, why: 'a call as it is typed' },
  { files: /^cli\/shells\/completion\.ts$/, texts: /./, why: 'scripts for shells' },
  {
    files: /^cli\/usage\.ts$/,
    texts: /^(Missing required|Not enough)/,
    why: 'words of the reader of arguments, to be known by',
  },
];

const allows = (one: (typeof ALLOWED)[number], { file, text }: Wording) => one.files.test(file) && one.texts.test(text);

const ROOT = new URL('../..', import.meta.url).pathname;
const files = [...sourcesUnder(ROOT, 'lib'), ...sourcesUnder(ROOT, 'cli')];
const outside = wordingOf(
  ROOT,
  files.filter((file) => !TEXTS.test(file)),
);

describe('wording', () => {
  it('stands in the folders of texts alone', () => {
    const stray = outside.filter((found) => !ALLOWED.some((one) => allows(one, found)));
    expect(stray.map(({ file, line, text }) => `${file}:${line}: ${text}`)).toEqual([]);
  });

  it('is allowed elsewhere for no reason that has gone', () => {
    expect(ALLOWED.filter((one) => !outside.some((found) => allows(one, found))).map(({ why }) => why)).toEqual([]);
  });

  it.each([
    [`add('too-low', ['sill'], 'The sill is too low.');`, 'The sill is too low.'],
    [`const note = \`Course \${n}\`;`, 'Course …'],
    [`const note = \`\${count} blocks\`;`, '… blocks'],
    [`names.join(' and ');`, ' and '],
    [`const column = { key: 'mass', label: 'mass' };`, 'mass'],
    [`const b = \`<p class="row">Look from \${place}</p>\`;`, '<p class="row">Look from …</p>'],
    [`const b = '<canvas aria-label="The model"></canvas>';`, '<canvas aria-label="The model"></canvas>'],
    [`throw new DocumentError('no-rows', 'The table is empty.');`, 'The table is empty.'],
    [`if (verdict === 'cast it') pour();`, 'cast it'],
  ])('is found: %s', (source, text) => {
    expect(wordingIn(source, 'planted.ts').map((found) => found.text)).toContain(text);
  });

  it.each([
    `import { a } from './two words.js';`,
    `type Way = 'up the wall' | 'down the wall';`,
    `throw new RangeError('a scale is positive');`,
    `const inputs = { 'dry density (kg/m3)': 600 };`,
    `const size = \`\${width} mm\`;`,
    `const id = 'block-table';`,
    `const b = \`<path d="\${d}" class="thin line"/>\`;`,
  ])('is not: %s', (source) => {
    expect(wordingIn(source, 'planted.ts')).toEqual([]);
  });

  it('counts two words, not symbols of units', () => {
    expect(['two words', 'word', '12 mm', 'kN … m', 'a-b'].map(readsLikeWording)).toEqual([
      true,
      false,
      false,
      false,
      false,
    ]);
  });

  it('stands in files of one subject each, which import nothing but types', () => {
    for (const file of files.filter((name) => TEXTS.test(name))) {
      const source = readFileSync(`${ROOT}${file}`, 'utf8');
      expect(source.split('\n').length, file).toBeLessThan(400);
      expect(source.match(/^import (?!type )/m), file).toBeNull();
    }
  });
});

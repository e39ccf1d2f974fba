import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import type { Problem } from '../../lib/base/problems.js';
import { CODES } from '../../lib/base/texts/problem-codes.js';
import { starterDescription } from '../../lib/description/starter.js';
import { problemsOf } from './helpers.js';

const STATION = readFileSync(new URL('./fixtures/station.yaml', import.meta.url), 'utf8');
const TEXTS = [STATION, starterDescription(), JSON.stringify(parse(STATION), null, 2)];

function checkProblem(problem: Problem): void {
  expect(Object.keys(CODES)).toContain(problem.code);
  expect(problem.message).toMatch(/^["A-Z]/);
  expect(problem.message).toMatch(/\.$/);
  expect(problem.mend).not.toBe('');
  expect(`${problem.path}${problem.message}${problem.mend}`).not.toMatch(/\p{Cc}|undefined|\[object/u);
}

const SCRAP = fc.oneof(
  fc.constantFrom(...'[]{}:,-#&*!|>\'"%@`~?\\\t\n 0.9eé−'.split('')),
  fc.constantFrom(
    '\n- ',
    ': ',
    '\n  ',
    '1e308',
    '.nan',
    '-.inf',
    'null',
    '<<: ',
    '__proto__',
    '---\n',
    '0.1 mm',
    'ft',
    '[[[[',
  ),
);

test('texts with a few scraps put in, cut out or exchanged are read or refused in our words (seed 41)', () => {
  const edit = fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    cut: fc.nat(12),
    put: fc.array(SCRAP, { maxLength: 3 }),
  });
  fc.assert(
    fc.property(fc.constantFrom(...TEXTS), fc.array(edit, { minLength: 1, maxLength: 4 }), (text, edits) => {
      let edited = text;
      for (const { at, cut, put } of edits) {
        const i = Math.floor(at * edited.length);
        edited = edited.slice(0, i) + put.join('') + edited.slice(i + cut);
      }
      const lines = edited.split('\n');
      for (const problem of problemsOf(edited)) {
        checkProblem(problem);
        if (problem.code === 'problems-more') continue;
        const { line, column } = problem.where ?? { line: 0, column: 0 };
        expect(line).toBeGreaterThanOrEqual(1);
        expect(line).toBeLessThanOrEqual(lines.length);
        expect(column).toBeGreaterThanOrEqual(1);
        expect(column).toBeLessThanOrEqual((lines[line - 1] as string).length + 1);
      }
    }),
    { seed: 41, numRuns: 500 },
  );
});

const VALUE = fc.oneof(
  fc.double(),
  fc.integer({ min: -5, max: 400 }),
  fc.constantFrom(
    Number.NaN,
    1e308,
    -0,
    '1e308 m',
    '0.1 mm',
    '6\'-10"',
    'none',
    'flush',
    'hall',
    'niche',
    'pointed',
    '',
    '5 kg',
    null,
    true,
  ),
  fc.string(),
  fc.anything({ maxDepth: 2 }),
);

type Tree = Record<string | number, unknown>;

test('objects with values exchanged, taken out or added are read or refused in our words (seed 42)', () => {
  const edit = fc.record({
    steps: fc.array(fc.nat(40), { minLength: 1, maxLength: 5 }),
    value: VALUE,
    kind: fc.constantFrom('set', 'drop', 'add'),
  });
  fc.assert(
    fc.property(fc.array(edit, { minLength: 1, maxLength: 3 }), fc.string(), (edits, key) => {
      const given: Tree = parse(STATION);
      for (const { steps, value, kind } of edits) {
        let node: Tree = given;
        for (const [i, step] of steps.entries()) {
          const keys = Object.keys(node);
          const name = keys[step % Math.max(1, keys.length)];
          if (name === undefined) break;
          const child = node[name];
          if (i < steps.length - 1 && typeof child === 'object' && child !== null) node = child as Tree;
          else if (kind === 'drop') delete node[name];
          else node[kind === 'set' ? name : key] = value;
          if (node !== child) continue;
        }
      }
      for (const problem of problemsOf(given)) checkProblem(problem);
    }),
    { seed: 42, numRuns: 500 },
  );
});

import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tools } from '../../cli/tools.js';
import { DescriptionError } from '../../lib/base/problems.js';
import { once } from '../../lib/base/remembered.js';
import { OUTPUT_GROUPS, type OutputGroup } from '../../lib/deliver/groups.js';
import { buildPackage } from '../../lib/deliver/package.js';
import type { House } from '../../lib/description/house.js';
import { readDescription } from '../../lib/description/read.js';
import { faultsIn } from './sound.js';

const TEXTS = ['garden-studio', 'low-store', 'creek-cabin'].map((name) => readFileSync(`samples/${name}.yaml`, 'utf8'));
const SEED = 20261129;
const COUNT = 500;
/** The usual run builds every so many'th of the houses that can be read; a long one each. */
const EVERY = process.env.SOAK === 'long' ? 1 : 36;

/** Values that a line may get in place of its own. */
const VALUES =
  '0 -1 1e9 1e-9 0.05 0.4 20 80 "1 mm" "100 m" .inf null ~ true none flush niche [] {} pointed 359.9 -360 ""';

/** One change of a text: a line deleted, doubled, swapped with another or given an extreme value, a number scaled, a byte. */
const change = fc.record({
  kind: fc.constantFrom('delete', 'double', 'swap', 'value', 'value', 'scale', 'scale', 'scale', 'byte'),
  at: fc.nat(100_000),
  other: fc.nat(100_000),
  value: fc.constantFrom(...VALUES.split(' ')),
  factor: fc.constantFrom(0.3, 0.5, 0.8, 0.95, 1.05, 1.3, 2, 3, 10),
});
type Change = typeof change extends fc.Arbitrary<infer T> ? T : never;

function changed(text: string, { kind, at, other, value, factor }: Change): string {
  const lines = text.split('\n');
  const [i, j] = [at % lines.length, other % lines.length];
  const line = lines[i] as string;
  if (kind === 'delete') lines.splice(i, 1);
  if (kind === 'double') lines.splice(i, 0, line);
  if (kind === 'swap') [lines[i], lines[j]] = [lines[j] as string, line];
  if (kind === 'value') lines[i] = line.replace(/: .*/, `: ${value}`);
  if (kind === 'scale') {
    const numbers = [...text.matchAll(/\d+(\.\d+)?/g)];
    const { 0: number, index } = numbers[at % numbers.length] as RegExpExecArray;
    return text.slice(0, index) + Number((Number(number) * factor).toFixed(3)) + text.slice(index + number.length);
  }
  if (kind === 'byte') {
    const k = at % text.length;
    return text.slice(0, k) + String.fromCharCode(other % 256) + text.slice(k + 1);
  }
  return lines.join('\n');
}

/** The house, or `null` where the text is refused; any other error goes on. */
function read(text: string): House | null {
  try {
    return readDescription(text, 'house.yaml');
  } catch (error) {
    if (error instanceof DescriptionError) return null;
    throw error;
  }
}

describe(`${COUNT} samples with a line or a number changed, seed ${SEED}`, () => {
  const mutants = fc
    .sample(fc.tuple(fc.constantFrom(...TEXTS), fc.array(change, { minLength: 1, maxLength: 2 })), {
      seed: SEED,
      numRuns: COUNT,
    })
    .map(([text, changes]) => changes.reduce(changed, text));
  const houses = once(() => mutants.flatMap((text) => read(text) ?? []));

  it('are refused in our words or read', () => {
    const { length } = houses();
    expect(length).toBeGreaterThan(COUNT / 10);
    expect(length).toBeLessThan(COUNT);
  });

  it('those that can be read are built, and each file is sound', async () => {
    const built = houses().filter((_, i) => i % EVERY === 0);
    for (const [i, house] of built.entries()) {
      const { files, checks } = await buildPackage(house, tools, {
        only: [OUTPUT_GROUPS[i % OUTPUT_GROUPS.length] as OutputGroup],
      }).catch((error: unknown) => {
        // A house may prove impossible only when it is built.
        if (error instanceof DescriptionError) return { files: [], checks: [] };
        throw error;
      });
      expect(await faultsIn(files), `house ${i}`).toEqual([]);
      expect(checks.find((c) => c.id === 'masonry-balance')?.state ?? 'ok', `house ${i}`).toBe('ok');
    }
  }, 3_600_000);
});

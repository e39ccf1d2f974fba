import { describe, expect, test } from 'vitest';
import type { ProfileShape } from '../../lib/description/house.js';
import { readDescription } from '../../lib/description/read.js';
import { PROFILE_SHAPES } from '../../lib/description/schema/domes.js';
import { STARTER_QUESTIONS, starterDescription } from '../../lib/description/starter.js';

const question = (key: string) => {
  const found = STARTER_QUESTIONS.find((one) => one.key === key);
  if (!found) throw new Error(`no question for ${key}`);
  return found;
};

describe('a first description', () => {
  test.each(PROFILE_SHAPES)('is sound whatever is answered: %s', (profile: ProfileShape) => {
    for (const units of ['m', 'ft'] as const)
      for (const radius of [1800, 6000])
        for (const [windows, oculus] of [
          [0, true],
          [3, false],
        ] as const) {
          const text = starterDescription({ units, radius, profile, windows, oculus });
          const house = readDescription(text, `${profile} ${units} ${radius} ${windows}`);
          expect(house.units).toBe(units);
          expect(Math.abs((house.domes[0]?.radius ?? 0) - radius)).toBeLessThan(25.4 / 32);
          expect(house.domes[0]?.profile.shape).toBe(profile);
          expect(house.domes[0]?.oculus === null).toBe(!oculus);
          expect(house.openings.filter(({ use }) => use === 'window')).toHaveLength(windows);
        }
  });

  test('its questions take the standard answer, and say what an answer must be', () => {
    for (const { standard, read } of STARTER_QUESTIONS)
      for (const units of ['m', 'ft'] as const) expect(read(standard(units), units)).toHaveProperty('value');
    expect(question('radius').read('3', 'm')).toEqual({ value: 3000 });
    expect(question('radius').read(`9'-6"`, 'ft')).toEqual({ value: 114 * 25.4 });
    expect(question('radius').read('50', 'm')).toEqual({ wrong: 'It is a length from 1.80 m to 6.00 m.' });
    expect(question('profile').read('pointd', 'm')).toMatchObject({
      wrong: expect.stringContaining('Did you mean pointed?'),
    });
    expect(question('windows').read('1.5', 'm')).toHaveProperty('wrong');
    expect(question('oculus').read('no', 'm')).toEqual({ value: false });
    expect(question('units').read('yards', 'm')).toHaveProperty('wrong');
  });
});

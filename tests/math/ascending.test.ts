import { describe, expect, it } from 'vitest';
import { ascending } from '../../lib/math/ascending.js';

describe('a list in ascending order of its keys', () => {
  it('is that of the language’s own stable sort, equals as they were', () => {
    for (let n = 0; n < 70; n++) {
      // Of few values, so that many are equal.
      const keys = Array.from({ length: n }, (_, k) => ((k * 7919) % 31) / 3 - 4);
      const list = keys.map((key, k) => ({ key, k }));
      const sorted = [...list].sort((a, b) => a.key - b.key);
      expect(ascending(list, Float64Array.from(keys))).toEqual(sorted);
    }
  });
});

import { expect, it } from 'vitest';
import { passageVolumes } from '../../lib/masonry/arch-volumes.js';
import type { HalfWidth } from '../../lib/masonry/prism.js';
import { setOutHouse } from '../../lib/setout/house.js';
import type { PassageSetout } from '../../lib/setout/passage.js';
import { sampleHouse } from '../tools/built.js';

/** Masonry of a passage between two half widths, to both sides, by very many level lines: it knows of no kinks. */
function byManyLines(passage: PassageSetout, from: number, to: number, inside: HalfWidth, outside: HalfWidth): number {
  const [rows, across] = [400, 200];
  let sum = 0;
  // Closer towards the ends, where a round head closes.
  const heightAt = (k: number) => from + ((to - from) * (1 - Math.cos((Math.PI * k) / rows))) / 2;
  for (let k = 0; k < rows; k++) {
    const [low, high] = [heightAt(k), heightAt(k + 1)];
    const z = (low + high) / 2;
    const [start, span] = [inside(z), outside(z) - inside(z)];
    for (let n = 0; n < across && span > 0; n++) {
      const [begins, ends] = passage.stretchAt(start + (span * (n + 0.5)) / across, z);
      sum += (ends - begins) * (high - low) * (span / across);
    }
  }
  return 2 * sum;
}

// Between domes that abut, a passage ends at the earlier one's wall or in the later one's room, side by side.
it.each(['family-house', 'courtyard-ring'])('vault and walls of each passage of %s', (name) => {
  const errors = setOutHouse(sampleHouse(name)).passages.flatMap((passage) => {
    const { section, topZ } = passage;
    const volumes = passageVolumes(passage);
    const outside: HalfWidth = (z) => passage.outerHalfAt(z);
    const walls = byManyLines(passage, 0, section.springingZ, () => section.width / 2, outside);
    const vault =
      byManyLines(passage, section.springingZ, section.crownZ, (z) => passage.clearHalfAt(z), outside) +
      byManyLines(passage, section.crownZ, topZ, () => 0, outside);
    return [Math.abs(volumes.jambs / walls - 1), Math.abs(volumes.head / vault - 1)];
  });
  expect(errors.length).toBeGreaterThan(5);
  expect(Math.max(...errors)).toBeLessThan(1e-5);
});

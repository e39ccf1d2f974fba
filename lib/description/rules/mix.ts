import { formatQuantity } from '../../base/units.js';
import { mixLimits } from '../../math/fresh-mix.js';
import type { Draft } from '../draft.js';
import type { ProblemList } from '../problem-list.js';

/** Rules of the mix: densities that cement, sand, water and foam can give together. */
export function checkMix(draft: Draft, problems: ProblemList): void {
  const { material, casting, units } = draft;
  if (!material) return;
  const { wet, dryMost } = mixLimits(material);
  const say = (density: number) => formatQuantity(density, 'density', units);
  const heavier = 'Give a lower density, less water, or more sand.';
  if (material.wetDensity === null && material.dryDensity >= dryMost) {
    const message = `A mix without any foam dries to ${say(dryMost)}, which is less than ${say(material.dryDensity)}.`;
    problems.add('mix-too-dense', ['material', 'dry-density'], message, heavier);
  }
  const fresh = (density: number | null, path: readonly string[], light: string, dense: string) => {
    if (density === null) return;
    if (density <= wet[0]) {
      const message = `The foam alone has ${say(wet[0])}: no mix with cement has a wet density of ${say(density)}.`;
      problems.add('mix-too-light', path, message, light);
    } else if (density >= wet[1]) {
      const message = `Cement, sand and water without any foam have ${say(wet[1])}: no mix has ${say(density)}.`;
      problems.add('mix-too-dense', path, message, dense);
    }
  };
  const light = `Give more than ${say(wet[0])}; foamed concrete is usually cast at ${say(400)} to ${say(1600)}.`;
  fresh(material.wetDensity, ['material', 'wet-density'], light, heavier);
  const weigh = 'Weigh the bucket again, its own mass taken off, and divide by its volume.';
  fresh(casting?.measuredWetDensity ?? null, ['casting', 'measured-wet-density'], weigh, weigh);
}

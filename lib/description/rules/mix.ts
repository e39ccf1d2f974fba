import * as texts from '../../base/texts/problems-site.js';
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
  const heavier = texts.giveLowerDensityLess;
  if (material.wetDensity === null && material.dryDensity >= dryMost) {
    const message = texts.mixWithoutAnyFoam(say(dryMost), say(material.dryDensity));
    problems.add('mix-too-dense', ['material', 'dry-density'], message, heavier);
  }
  const fresh = (density: number | null, path: readonly string[], light: string, dense: string) => {
    if (density === null) return;
    if (density <= wet[0]) {
      const message = texts.foamAloneHas(say(wet[0]), say(density));
      problems.add('mix-too-light', path, message, light);
    } else if (density >= wet[1]) {
      const message = texts.mixWithoutFoamHas(say(wet[1]), say(density));
      problems.add('mix-too-dense', path, message, dense);
    }
  };
  const light = texts.giveMoreThanFoamed(say(wet[0]), say(400), say(1600));
  fresh(material.wetDensity, ['material', 'wet-density'], light, heavier);
  const weigh = texts.weighBucketAgain;
  fresh(casting?.measuredWetDensity ?? null, ['casting', 'measured-wet-density'], weigh, weigh);
}

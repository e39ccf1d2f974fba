import { type Check, givenFigure } from '../base/figures.js';
import * as texts from '../base/texts/masonry-checks.js';
import type { LaidHouse } from './block.js';
import { longerForms } from './longer.js';
import { massKg, wetDensity } from './mass.js';
import { formDimensions } from './moulds/dimensions.js';
import type { MasonryPlan } from './plan.js';

/** How far longer blocks are cast. */
export const LIGHTER = texts.stopBoard;

/** Longer blocks are light enough as they are laid; as they leave their forms they still have what will be cut off. */
export function longerCheck(plan: Pick<MasonryPlan, 'setout' | 'moulds'>, laid: LaidHouse): Check[] {
  const { blocks, material } = plan.setout.house;
  const fresh = wetDensity(material);
  const forms = longerForms(plan, laid).map(({ id, form }) => {
    const { volume } = formDimensions(form, blocks);
    return { id, volume, kg: massKg(volume, fresh) };
  });
  const [first] = forms;
  if (!first) return [];
  const worst = forms.reduce((a, b) => (b.kg > a.kg ? b : a), first);
  const heavy = forms.filter(({ kg }) => kg > blocks.heaviestKg);
  return [
    {
      id: 'longer-mass',
      statement: texts.longerBlocksAreLight(worst.id),
      state: heavy.length === 0 ? 'ok' : 'attention',
      demand: givenFigure('longer-mass.wet', texts.wetMassOfHeaviest, worst.kg, 'kg', {
        formula: texts.volumeOfFormWet,
        source: texts.wetMassSource,
        inputs: {
          'volume of the form (L)': worst.volume / 1e6,
          'wet density (kg/m3)': fresh,
          'too heavy': heavy.map(({ id }) => id).join(' '),
        },
        limit: texts.formFilledFromHead,
      }),
      capacity: givenFigure('longer-mass.limit', texts.heaviestBlockInputs, blocks.heaviestKg, 'kg'),
      ratio: worst.kg / blocks.heaviestKg,
      source: texts.limitFromDescriptionHse,
      advice:
        heavy.length === 0
          ? texts.nothingToChangeAtAll
          : texts.hoistTakesTheseBlocks(heavy.map(({ id }) => id).join(', '), LIGHTER),
    },
  ];
}

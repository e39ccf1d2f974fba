import { type Check, givenFigure } from '../base/figures.js';
import type { LaidHouse } from './block.js';
import { longerForms } from './longer.js';
import { massKg, wetDensity } from './mass.js';
import { formDimensions } from './moulds/dimensions.js';
import type { MasonryPlan } from './plan.js';

/** How to have less to lift than the whole form holds. */
export const LIGHTER =
  'A longer block that is cut weighs more when it leaves its form than when it is laid. A stop board across the form, a little past the longest edge that the table of cuts leaves from the head kept, saves lifting and mix.';

/** Longer blocks are light enough as they are laid; as they leave their forms they still have what will be cut off. */
export function longerCheck(plan: Pick<MasonryPlan, 'setout' | 'moulds'>, laid: LaidHouse): Check[] {
  const { blocks, material } = plan.setout.house;
  const fresh = wetDensity(material);
  const forms = longerForms(plan, laid).map(({ id, placed }) => {
    const { volume } = formDimensions(placed, blocks);
    return { id, volume, kg: massKg(volume, fresh) };
  });
  const [first] = forms;
  if (!first) return [];
  const worst = forms.reduce((a, b) => (b.kg > a.kg ? b : a), first);
  const heavy = forms.filter(({ kg }) => kg > blocks.heaviestKg);
  return [
    {
      id: 'longer-mass',
      statement: `Longer blocks, ${worst.id} the heaviest, are light enough to lift out of their forms before they are cut.`,
      state: heavy.length === 0 ? 'ok' : 'attention',
      demand: givenFigure('longer-mass.wet', 'wet mass of the heaviest longer block', worst.kg, 'kg', {
        formula: 'volume of the form × wet density',
        source: 'derived; mix balance after ACI 523.3R',
        inputs: {
          'volume of the form (L)': worst.volume / 1e6,
          'wet density (kg/m3)': fresh,
          'too heavy': heavy.map(({ id }) => id).join(' '),
        },
        limit: 'a form filled from head to head',
      }),
      capacity: givenFigure('longer-mass.limit', 'heaviest block', blocks.heaviestKg, 'kg'),
      ratio: worst.kg / blocks.heaviestKg,
      source: 'limit from the description; HSE CIS 37 names more than 20 kg lifted by one person as high risk',
      advice:
        heavy.length === 0
          ? 'Nothing to change.'
          : `A hoist takes these blocks out of their forms: ${heavy.map(({ id }) => id).join(', ')}. ${LIGHTER}`,
    },
  ];
}

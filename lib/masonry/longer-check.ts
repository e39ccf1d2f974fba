import { type Check, givenFigure } from '../base/figures.js';
import type { LaidHouse } from './block.js';
import { longerForms } from './longer.js';
import { massKg, wetDensity } from './mass.js';
import { formDimensions } from './moulds/dimensions.js';
import type { MasonryPlan } from './plan.js';

/** How far longer blocks are cast. */
export const LIGHTER =
  'A longer block that is cut is cast from the head that it keeps to a stop board just past its cut; the table of cuts tells where along each edge the board stands. The other head is not needed then, and the form is as long as the longest of its blocks.';

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
        limit: 'filled as far as the stop board of the longest',
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

import { type Check, givenFigure } from '../base/figures.js';
import { figureText } from '../base/reader-units.js';
import * as texts from '../base/texts/masonry-checks.js';
import { formatLength } from '../base/units.js';
import type { DomeSetout } from '../setout/dome.js';
import { volumePerRadian } from './bond/ring.js';
import { freshKg } from './mass.js';
import type { MasonryPlan } from './plan.js';

/** Blocks are as long as asked for, unless such ones would be too heavy; silent where none is shortened for that. */
export function lengthCheck({ setout, courses }: Pick<MasonryPlan, 'setout' | 'courses'>): Check[] {
  const { house, domes } = setout;
  const { length, heaviestKg } = house.blocks;
  const shortened = courses.flatMap(({ domeId, course }) => {
    const dome = domes.find(({ id }) => id === domeId) as DomeSetout;
    const around = 2 * Math.PI * course.midRadius;
    const kgPerMm = freshKg(2 * Math.PI * volumePerRadian(dome, course), house) / around;
    const kg = kgPerMm * length;
    if (kg <= heaviestKg || course.count <= Math.round(around / length)) return [];
    return [{ mark: `${domeId}-${course.index}`, kg, laid: around / course.count, most: heaviestKg / kgPerMm }];
  });
  const [first] = shortened;
  if (!first) return [];
  const worst = shortened.reduce((a, b) => (b.kg > a.kg ? b : a), first);
  const [shortest, longest] = [Math.min, Math.max].map((of) => of(...shortened.map(({ laid }) => laid))) as [
    number,
    number,
  ];
  const { units } = house;
  const written = (mm: number) => formatLength(Math.floor(mm), units);
  return [
    {
      id: 'block-length',
      statement: texts.blocksAreAsLong(formatLength(length, units)),
      state: 'attention',
      demand: givenFigure('block-length.wet', texts.wetMassOfLengthAsked, worst.kg, 'kg', {
        formula: texts.wetMassOfShare,
        source: texts.wetMassSource,
        inputs: { course: worst.mark, 'courses of shorter blocks': shortened.length },
      }),
      capacity: givenFigure('block-length.limit', texts.heaviestBlockInputs, heaviestKg, 'kg'),
      ratio: worst.kg / heaviestKg,
      source: texts.limitFromDescriptionHse,
      advice: texts.blocksAreShorter(
        shortened.length,
        written(shortest),
        written(longest),
        written(Math.min(...shortened.map(({ most }) => most))),
        figureText(Math.ceil(worst.kg), 'kg', units),
      ),
    },
  ];
}

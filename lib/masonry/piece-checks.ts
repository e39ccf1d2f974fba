import { type Check, givenFigure } from '../base/figures.js';
import type { HouseSetout } from '../setout/house.js';
import type { CastPieces } from './cast-pieces.js';
import { freshKg, wetDensity } from './mass.js';

/** Mass of what is lifted beside the blocks: voussoirs of each arch, segments of rings. Rings cast in one stay in their place. */
export function pieceChecks(house: HouseSetout, { arches, rings }: CastPieces): Check[] {
  const stones = arches.filter(({ kind }) => kind !== 'ring' && kind !== 'skewback');
  const ids = [...new Set(stones.map(({ archId }) => archId))];
  const segments = rings.filter(({ kind }) => kind !== 'plug');
  return [
    ...ids.map((id) => {
      const own = stones.filter(({ archId }) => archId === id);
      return massCheck(house, own, {
        id: `voussoir-mass.${id}`,
        what: `voussoir of opening ${id}`,
        fails: 'fails',
        advice: (ratio) =>
          `Give it \`arch.voussoirs: ${moreOf(own.length, ratio)}\` or more, a thinner ring, or a hoist.`,
      });
    }),
    ...(segments.length === 0
      ? []
      : [
          massCheck(house, segments, {
            id: 'segment-mass',
            what: 'segment of a skewback ring or curb',
            fails: 'attention',
            advice: () => 'Lift it with a hoist, or cast it in its place.',
          }),
        ]),
  ];
}

/** The odd number of voussoirs that makes the heaviest light enough, as far as masses go by numbers. */
const moreOf = (count: number, ratio: number): number => 2 * Math.ceil((count * ratio - 1) / 2) + 1;

interface MassRule {
  readonly id: string;
  readonly what: string;
  readonly fails: 'fails' | 'attention';
  readonly advice: (ratio: number) => string;
}

function massCheck(
  { house }: HouseSetout,
  pieces: readonly { readonly mark: string; readonly volume: number }[],
  { id, what, fails, advice }: MassRule,
): Check {
  const heaviest = pieces.reduce((a, b) => (b.volume > a.volume ? b : a));
  const wet = freshKg(heaviest.volume, house);
  const limit = house.blocks.heaviestKg;
  return {
    id,
    statement: `The heaviest ${what}, ${heaviest.mark}, is light enough to lift freshly demoulded.`,
    state: wet <= limit ? 'ok' : fails,
    demand: givenFigure(`${id}.wet`, `wet mass of the heaviest ${what}`, wet, 'kg', {
      formula: 'volume / (1 − shrinkage)³ × wet density',
      source: 'derived',
      inputs: {
        'dry volume (L)': heaviest.volume / 1e6,
        'wet density (kg/m3)': wetDensity(house.material),
        shrinkage: house.blocks.shrinkage,
      },
    }),
    capacity: givenFigure(`${id}.limit`, 'heaviest block', limit, 'kg'),
    ratio: wet / limit,
    source: 'limit from the description; HSE CIS 37 names more than 20 kg lifted by one person as high risk',
    advice: wet <= limit ? 'Nothing to change.' : advice(wet / limit),
  };
}

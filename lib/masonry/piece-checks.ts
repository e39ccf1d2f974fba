import { type Check, givenFigure } from '../base/figures.js';
import * as texts from '../base/texts/masonry-checks.js';
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
        what: texts.voussoirOfOpening(id),
        fails: 'fails',
        advice: (ratio) => texts.giveItArchVoussoirs(moreOf(own.length, ratio)),
      });
    }),
    ...(segments.length === 0
      ? []
      : [
          massCheck(house, segments, {
            id: 'segment-mass',
            what: texts.segmentOfSkewbackRing,
            fails: 'attention',
            advice: () => texts.liftItWithHoist,
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
    statement: texts.heaviestIsLightEnough(what, heaviest.mark),
    state: wet <= limit ? 'ok' : fails,
    demand: givenFigure(`${id}.wet`, texts.wetMassOfHeaviestPiece(what), wet, 'kg', {
      formula: texts.wetMassOfPieceFormula,
      source: texts.derived,
      inputs: {
        'dry volume (L)': heaviest.volume / 1e6,
        'wet density (kg/m3)': wetDensity(house.material),
        shrinkage: house.blocks.shrinkage,
      },
    }),
    capacity: givenFigure(`${id}.limit`, texts.heaviestBlockInputs, limit, 'kg'),
    ratio: wet / limit,
    source: texts.limitFromDescriptionHse,
    advice: wet <= limit ? texts.nothingToChangeAtAll : advice(wet / limit),
  };
}

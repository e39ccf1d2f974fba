import { type Check, givenFigure } from '../../base/figures.js';
import * as texts from '../../base/texts/statics-shell.js';
import type { HouseSetout } from '../../setout/house.js';
import type { DomeStatics } from '../results.js';
import { computed, ratioOf, SAFE_THEOREM } from './judge.js';

/**
 * The soil under a dome that is pushed from one side, on the line of thrust that keeps farthest from the faces, without
 * load factors: an estimate. A missing bearing capacity is asked for where dead load and snow are judged.
 */
export function oneSidedSoilCheck(setout: HouseSetout, { id: dome, footing, oneSided }: DomeStatics): Check[] {
  const { bearingCapacityKpa } = setout.house.site;
  if (!footing || bearingCapacityKpa === null || oneSided.length === 0) return [];
  const gathered = Math.max(footing.gathering, footing.jamb?.times ?? 1);
  const pressed = oneSided.flatMap(({ load, pressureKpa }) =>
    pressureKpa === null ? [] : [{ under: texts.deadLoadAnd(load), kpa: pressureKpa * gathered }],
  );
  const worst = pressed.reduce<(typeof pressed)[number] | null>(
    (most, one) => (most === null || one.kpa > most.kpa ? one : most),
    null,
  );
  const without = oneSided.find(({ pressureKpa }) => pressureKpa === null);
  const over = worst !== null && worst.kpa > bearingCapacityKpa;
  const id = `one-sided-bearing.${dome}`;
  const demand =
    worst &&
    computed(`${id}.demand`, texts.pressureOneSided, worst.kpa, 'kPa', texts.pressureOfLine, SAFE_THEOREM, {
      kind: 'estimate',
      'worst under': worst.under,
    });
  return [
    {
      id,
      statement: texts.soilBearsOneSided(dome),
      state: over ? 'fails' : 'attention',
      ...(demand ? { demand, ratio: ratioOf(demand.value, bearingCapacityKpa) } : {}),
      capacity: givenFigure(`${id}.capacity`, texts.bearingCapacity, bearingCapacityKpa, 'kPa'),
      source: SAFE_THEOREM,
      advice: [
        texts.estimateOnWholeLunes,
        over ? ` ${texts.widerFooting}` : '',
        without ? texts.noThrustUnder(texts.deadLoadAnd(without.load)) : '',
      ].join(''),
    },
  ];
}

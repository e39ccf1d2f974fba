import { type Check, givenFigure } from '../base/figures.js';
import * as texts from '../base/texts/rooms.js';
import type { HouseSetout } from '../setout/house.js';
import type { Dwelling } from './dwelling.js';
import { openingChecks } from './opening-checks.js';
import { roomChecks } from './room-checks.js';

/** Dwelling rules as information, the edition named; ids stay the same from version to version. */
export const dwellingChecks = (setout: HouseSetout, dwelling: Dwelling): Check[] => [
  ...roomChecks(dwelling),
  ...openingChecks(setout, dwelling),
  ...setbackCheck(setout, dwelling.fromEdge),
];

function setbackCheck({ house }: HouseSetout, fromEdge: number | null): Check[] {
  const { plot, setback } = house.site;
  const id = 'setback';
  const statement = texts.houseKeepsItsDistance;
  const source = texts.descriptionAndLocalCode;
  if (fromEdge === null || setback === null) {
    const lacking = [plot === null ? '`site.plot`' : '', setback === null ? '`site.setback`' : ''];
    return [
      {
        id,
        statement,
        state: 'attention',
        source,
        advice: texts.missingInput(lacking.filter((key) => key !== '').join(texts.andBetween)),
      },
    ];
  }
  return [
    {
      id,
      statement,
      state: fromEdge >= setback ? 'ok' : 'fails',
      demand: givenFigure(`${id}.wanted`, texts.leastDistance, setback, 'mm'),
      capacity: givenFigure(`${id}.found`, texts.distanceOfFinishedWalls, fromEdge, 'mm', {
        formula: texts.leastDistanceOfDomes,
        source: texts.derived,
      }),
      ratio: fromEdge > 0 ? setback / fromEdge : Number.MAX_VALUE,
      source,
      advice: fromEdge >= setback ? '' : texts.moveHouseMm(Math.ceil(setback - fromEdge)),
    },
  ];
}

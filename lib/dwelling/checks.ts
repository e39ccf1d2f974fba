import { type Check, givenFigure } from '../base/figures.js';
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
  const statement = 'The house keeps its distance from the edge of the plot.';
  const source = 'the description; the local code governs';
  if (fromEdge === null || setback === null) {
    const lacking = [plot === null ? '`site.plot`' : '', setback === null ? '`site.setback`' : ''];
    return [
      {
        id,
        statement,
        state: 'attention',
        source,
        advice: `Missing input: ${lacking.filter((key) => key !== '').join(' and ')}.`,
      },
    ];
  }
  return [
    {
      id,
      statement,
      state: fromEdge >= setback ? 'ok' : 'fails',
      demand: givenFigure(`${id}.wanted`, 'least distance', setback, 'mm'),
      capacity: givenFigure(`${id}.found`, 'distance of the finished walls', fromEdge, 'mm', {
        formula:
          'least distance of domes and flat faces, render included, from the sides of the plot; footings left out',
        source: 'derived',
      }),
      ratio: fromEdge > 0 ? setback / fromEdge : Number.MAX_VALUE,
      source,
      advice: fromEdge >= setback ? '' : `Move the house ${Math.ceil(setback - fromEdge)} mm or more inward.`,
    },
  ];
}

import { type Check, givenFigure } from '../base/figures.js';
import type { House } from '../description/house.js';
import { undrawableLetters } from '../documents/text-size.js';
import { printChecks } from '../models/print/checks.js';
import type { HouseSetout } from '../setout/house.js';

/** Checks that need no more than the set-out. */
export function setoutChecks(setout: HouseSetout): Check[] {
  return [...letterCheck(setout.house), ...frostCheck(setout.house), ...printChecks(setout)];
}

/** Texts of the title block and names of rooms with letters that the drawings' font has not. */
function letterCheck({ project, rooms }: House): Check[] {
  const texts: readonly (readonly [key: string, text: string])[] = [
    ['project.title', project.title],
    ['project.number', project.number],
    ['project.address', project.address],
    ['project.client', project.client],
    ['project.drawn-by', project.drawnBy],
    ['project.revision', project.revision],
    ...rooms.map((room, i) => [`rooms[${i}].name`, room.name] as const),
  ];
  const bad = texts.flatMap(([key, text]) => {
    const letters = undrawableLetters(text).slice(0, MOST_LETTERS).join(' ');
    return letters === '' ? [] : [`\`${key}\` (${letters})`];
  });
  if (bad.length === 0) return [];
  return [
    {
      id: 'drawing-letters',
      statement: `Every letter of the description's texts can be drawn; a box stands for some in ${bad.join(', ')}.`,
      state: 'attention',
      source: 'the font of the drawings, DejaVu Sans, letter by letter from left to right',
      advice: 'Write these texts in Latin, Greek or Cyrillic letters.',
    },
  ];
}

/** So many letters are named for each text. */
const MOST_LETTERS = 8;

function frostCheck(house: House): Check[] {
  const { footing, site } = house;
  if (!footing) return [];
  const base = {
    id: 'footing-frost',
    statement: 'The footing reaches below frost.',
    source: 'common practice, no source; the local code governs',
  };
  const depth = footing.depth + site.ground;
  const demand = givenFigure('footing-frost.depth', 'depth of the footing below ground', depth, 'mm', {
    formula: 'footing depth below the floor, less the ground level below the floor',
    source: 'derived',
    inputs: { 'footing depth (mm)': footing.depth, 'ground (mm)': site.ground },
  });
  if (site.frostDepth === null) {
    return [{ ...base, state: 'attention', demand, advice: 'Missing input: `site.frost-depth`.' }];
  }
  return [
    {
      ...base,
      state: depth >= site.frostDepth ? 'ok' : 'fails',
      demand,
      capacity: givenFigure('footing-frost.frost', 'frost depth below ground', site.frostDepth, 'mm'),
      ratio: depth > 0 ? site.frostDepth / depth : Number.MAX_VALUE,
      advice: 'Make `footing.depth` larger.',
    },
  ];
}

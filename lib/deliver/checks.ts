import { type Check, givenFigure } from '../base/figures.js';
import * as texts from '../base/texts/description-checks.js';
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
  const written: readonly (readonly [key: string, text: string])[] = [
    ['project.title', project.title],
    ['project.number', project.number],
    ['project.address', project.address],
    ['project.client', project.client],
    ['project.drawn-by', project.drawnBy],
    ['project.revision', project.revision],
    ...rooms.map((room, i) => [`rooms[${i}].name`, room.name] as const),
  ];
  const bad = written.flatMap(([key, text]) => {
    const letters = undrawableLetters(text).slice(0, MOST_LETTERS).join(' ');
    return letters === '' ? [] : [`\`${key}\` (${letters})`];
  });
  if (bad.length === 0) return [];
  return [
    {
      id: 'drawing-letters',
      statement: texts.everyLetterCanBeDrawn(bad.join(', ')),
      state: 'attention',
      source: texts.fontOfDrawings,
      advice: texts.writeTheseTexts,
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
    statement: texts.footingReachesBelowFrost,
    source: texts.commonPracticeLocalCode,
  };
  const depth = footing.depth + site.ground;
  const demand = givenFigure('footing-frost.depth', texts.depthOfFootingBelow, depth, 'mm', {
    formula: texts.footingDepthBelowFloor,
    source: texts.derived,
    inputs: { 'footing depth (mm)': footing.depth, 'ground (mm)': site.ground },
  });
  if (site.frostDepth === null) {
    return [{ ...base, state: 'attention', demand, advice: texts.missingInputSiteFrost }];
  }
  return [
    {
      ...base,
      state: depth >= site.frostDepth ? 'ok' : 'fails',
      demand,
      capacity: givenFigure('footing-frost.frost', texts.frostDepthBelowGround, site.frostDepth, 'mm'),
      ratio: depth > 0 ? site.frostDepth / depth : Number.MAX_VALUE,
      advice: texts.makeFootingDepthLarger,
    },
  ];
}

import { type Check, givenFigure } from '../../base/figures.js';
import * as texts from '../../base/texts/print.js';
import type { HouseSetout } from '../../setout/house.js';
import { planPrint, workableScale } from './plan.js';

/** Whether the house can be printed at its scale, whether walls are thickened for it, and whether there is the course asked for. */
export function printChecks(setout: HouseSetout): Check[] {
  return [scaleCheck(setout), wallCheck(setout), ...looseCheck(setout)];
}

function scaleCheck(setout: HouseSetout): Check {
  const { scale } = setout.house.print;
  const { obstacles } = planPrint(setout);
  const base = { id: 'print-scale', source: texts.derived };
  if (obstacles.length === 0) return { ...base, statement: texts.modelCanBePrinted(scale), state: 'ok', advice: '' };
  const why = obstacles.map(({ message }) => message);
  const other = workableScale(setout);
  return {
    ...base,
    statement: texts.modelCannotBePrinted(scale, why),
    state: 'fails',
    advice: other === null ? texts.noUsualScaleWorks : texts.setPrintScaleNearest(other),
  };
}

function wallCheck({ house: { print, wall } }: HouseSetout): Check {
  const atScale = wall.thickness / print.scale;
  return {
    id: 'print-thickness',
    statement: texts.wallIsThickEnough(print.scale),
    state: atScale >= print.thinnest ? 'ok' : 'attention',
    demand: givenFigure('print-thickness.least', texts.thinnestPrintedWall, print.thinnest, 'mm'),
    capacity: givenFigure('print-thickness.wall', texts.wallAtPrintScale, atScale, 'mm', {
      formula: texts.wallThicknessScale,
      source: texts.derived,
      inputs: { 'thickness (mm)': wall.thickness, scale: print.scale },
    }),
    ratio: print.thinnest / atScale,
    source: texts.description,
    advice: texts.modelsWallIsThickened(Math.max(1, Math.floor(wall.thickness / print.thinnest))),
  };
}

function looseCheck({ house, domes }: HouseSetout): Check[] {
  const wanted = house.print.looseBlocks;
  const dome = domes.find(({ id }) => id === wanted?.in);
  if (!wanted || !dome || dome.courses.some(({ index }) => index === wanted.course)) return [];
  return [
    {
      id: 'print-loose-blocks',
      statement: texts.hasCourseToPrint(dome.id, wanted.course),
      state: 'attention',
      source: texts.description,
      advice: texts.setPrintLooseBlocks(dome.courses.length),
    },
  ];
}

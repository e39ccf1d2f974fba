import { type Check, givenFigure } from '../../base/figures.js';
import type { HouseSetout } from '../../setout/house.js';
import { planPrint, workableScale } from './plan.js';

/** Whether the house can be printed at its scale, whether walls are thickened for it, and whether there is the course asked for. */
export function printChecks(setout: HouseSetout): Check[] {
  return [scaleCheck(setout), wallCheck(setout), ...looseCheck(setout)];
}

function scaleCheck(setout: HouseSetout): Check {
  const { scale } = setout.house.print;
  const { obstacles } = planPrint(setout);
  const base = { id: 'print-scale', source: 'derived', statement: `The model can be printed at 1:${scale}.` };
  if (obstacles.length === 0) return { ...base, state: 'ok', advice: '' };
  const why = obstacles.map(({ message }) => message).join('; ');
  const other = workableScale(setout);
  return {
    ...base,
    statement: `${base.statement.slice(0, -1)}: ${why}.`,
    state: 'fails',
    advice:
      other === null
        ? 'No usual scale works with this bed, nozzle and thinnest wall: change `print.bed`, `print.nozzle` or `print.thinnest`.'
        : `Set \`print.scale: ${other}\`, the nearest usual scale that works; or change \`print.bed\`, \`print.nozzle\` or \`print.thinnest\`.`,
  };
}

function wallCheck({ house: { print, wall } }: HouseSetout): Check {
  const atScale = wall.thickness / print.scale;
  return {
    id: 'print-thickness',
    statement: `The wall is thick enough to print at 1:${print.scale} as it is.`,
    state: atScale >= print.thinnest ? 'ok' : 'attention',
    demand: givenFigure('print-thickness.least', 'thinnest printed wall', print.thinnest, 'mm'),
    capacity: givenFigure('print-thickness.wall', 'wall at print scale', atScale, 'mm', {
      formula: 'wall thickness / scale',
      source: 'derived',
      inputs: { 'thickness (mm)': wall.thickness, scale: print.scale },
    }),
    ratio: print.thinnest / atScale,
    source: 'the description',
    advice: `The model’s wall is thickened outward. At 1:${Math.max(1, Math.floor(wall.thickness / print.thinnest))} or larger it would not be.`,
  };
}

function looseCheck({ house, domes }: HouseSetout): Check[] {
  const wanted = house.print.looseBlocks;
  const dome = domes.find(({ id }) => id === wanted?.in);
  if (!wanted || !dome || dome.courses.some(({ index }) => index === wanted.course)) return [];
  return [
    {
      id: 'print-loose-blocks',
      statement: `${dome.id} has a course ${wanted.course} to print as loose blocks.`,
      state: 'attention',
      source: 'the description',
      advice: `Set \`print.loose-blocks.course\` from 1 to ${dome.courses.length}.`,
    },
  ];
}

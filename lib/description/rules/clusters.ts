import type { Draft, Placed } from '../draft.js';
import type { Dome } from '../house.js';
import type { ProblemList } from '../problem-list.js';
import { bodiesOf } from './body.js';
import { checkClearance } from './clearance.js';
import { isSimple } from './ground.js';
import { Neighbours } from './neighbours.js';
import { checkPassages } from './passages.js';
import { checkPlot } from './plot.js';
import { openedIn, passedBetween } from './ways.js';

/** Rules between the domes of a house and what stands out from them. */
export function checkClusters(
  draft: Draft,
  domes: readonly Placed<Dome>[],
  openings: Draft['openings'],
  passages: Draft['passages'],
  problems: ProblemList,
): void {
  const { blocks, wall, units, site, footing } = draft;
  if (!blocks || !wall) return;
  const bodies = bodiesOf(draft, domes);
  const neighbours = new Neighbours(bodies, blocks, units);
  neighbours.check(problems);
  const opened = openedIn(bodies, openings);
  const passed = passedBetween(bodies, passages);
  checkPassages(neighbours, passed, problems);
  checkClearance(neighbours, opened, passed, problems);
  const plot = site?.plot;
  if (plot && isSimple(plot) && footing !== undefined)
    checkPlot(plot, footing, wall.thickness, bodies, opened, passed, units, problems);
}

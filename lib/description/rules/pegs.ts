import { formatApart } from '../../base/units.js';
import { hypot } from '../../math/elementary.js';
import type { Draft } from '../draft.js';
import type { ProblemList } from '../problem-list.js';

/** Pegs nearer together than this make tapes cross too flat everywhere. */
const LEAST_APART = 1000;

/** Rules of the two datum pegs: apart, and not on a dome's axis, from where a tape has no length. */
export function checkPegs(draft: Draft, problems: ProblemList): void {
  const { settingOut, domes, units } = draft;
  if (!settingOut?.pegs) return;
  const [a, b] = settingOut.pegs;
  const apart = hypot(b[0] - a[0], b[1] - a[1]);
  if (apart < LEAST_APART) {
    const [given, least] = formatApart(apart, LEAST_APART, units);
    const message = `The two pegs are ${given} apart; tapes from pegs less than ${least} apart cross too flat.`;
    problems.add('pegs-together', ['setting-out', 'pegs'], message, 'Set them further apart, beside the house.');
  }
  for (const [i, peg] of settingOut.pegs.entries())
    for (const { value: dome } of domes) {
      if (hypot(peg[0] - dome.at[0], peg[1] - dome.at[1]) > dome.radius) continue;
      const message = `The peg stands inside dome "${dome.id}", where its wall and slab will be built.`;
      problems.add('peg-in-dome', ['setting-out', 'pegs', i], message, 'Move it outside the house.');
    }
}

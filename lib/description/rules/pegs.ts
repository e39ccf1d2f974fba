import * as texts from '../../base/texts/problems-site.js';
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
    const message = texts.twoPegsAreApart(given, least);
    problems.add('pegs-together', ['setting-out', 'pegs'], message, texts.setThemFurtherApart);
  }
  for (const [i, peg] of settingOut.pegs.entries())
    for (const { value: dome } of domes) {
      if (hypot(peg[0] - dome.at[0], peg[1] - dome.at[1]) > dome.radius) continue;
      const message = texts.pegStandsInsideDome(dome.id);
      problems.add('peg-in-dome', ['setting-out', 'pegs', i], message, texts.moveItOutsideHouse);
    }
}

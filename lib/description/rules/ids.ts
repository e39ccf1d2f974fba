import { shown } from '../../base/quantities.js';
import { nearest } from '../../base/suggest.js';
import * as texts from '../../base/texts/problems-values.js';
import type { Draft } from '../draft.js';
import { type ProblemList, pathText } from '../problem-list.js';
import { idFault } from '../schema/leaves.js';

/** Ids are unique over the whole house, since marks and file names come from them; references name domes. */
export function checkIds(draft: Draft, problems: ProblemList): void {
  const first = new Map<string, string>();
  for (const { path, value } of draft.ids) {
    const holder = first.get(value);
    if (holder === undefined) first.set(value, pathText(path.slice(0, -1)));
    else {
      const message = texts.idIsAlready(shown(value), holder);
      problems.add('id-duplicate', path, message, texts.giveEachDomeOpening);
    }
  }

  const domes = draft.ids.filter(({ path }) => path[0] === 'domes').map(({ value }) => value);
  for (const { path, value } of draft.references) {
    // An unfit reference is told as such by the schema.
    if (domes.includes(value) || idFault(value)) continue;
    const near = nearest(value, domes);
    const hint = near === null ? '' : texts.didYouMeanThen(near);
    const list = domes.slice(0, 12).map(shown).join(', ');
    problems.add('reference-unknown', path, texts.noDomeHasId(value), texts.domesAre(hint, list));
  }

  for (const { path, value } of draft.passages) {
    const [from, to] = value.between;
    if (from === to && domes.includes(from))
      problems.add(
        'passage-ends',
        [...path, 'between'],
        texts.passageJoinsToItself(value.id, from),
        texts.nameTwoDifferentDomes,
      );
  }
}

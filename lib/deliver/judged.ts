import { CAUTIONS } from '../base/cautions.js';
import type { Check } from '../base/figures.js';
import { dwellingChecks } from '../dwelling/checks.js';
import { masonryChecks } from '../masonry/checks.js';
import { longerCheck } from '../masonry/longer-check.js';
import { planChecks } from '../masonry/plan-checks.js';
import type { CheckGroup, HouseVerdict } from '../report/house-report.js';
import { layingChecks } from '../statics/checks/laying.js';
import { releaseCheck } from '../works/mould-release.js';
import { worksChecks } from '../works/works.js';
import { setoutChecks } from './checks.js';
import type { Study } from './study.js';

export type Judgement = HouseVerdict & { readonly checks: readonly Check[] };

/** Every check of a house by subject, and in one list. */
export function judged(known: Study): Judgement {
  const { setout, plan, laid, balance, statics, laying, dwelling, works } = known;
  const groups: CheckGroup[] = [
    {
      id: 'masonry',
      title: 'Blocks',
      checks: [...masonryChecks(setout, laid, balance, known.pieces), ...longerCheck(plan, laid), ...planChecks(plan)],
    },
    { id: 'statics', title: 'Will it stand', checks: known.stands },
    { id: 'laying', title: 'While it is built', checks: layingChecks(setout, laying, statics.strength) },
    { id: 'dwelling', title: 'To live in it', checks: dwellingChecks(setout, dwelling) },
    { id: 'works', title: 'Casting and costs', checks: [...releaseCheck(plan, laid), ...worksChecks(works)] },
    { id: 'setout', title: 'Ground, drawings, model', checks: setoutChecks(setout) },
  ];
  return { groups, checks: groups.flatMap((g) => g.checks), summary: summaryOf(known), cautions: CAUTIONS };
}

function summaryOf({ setout, plan, laid, balance }: Study): string[] {
  const cut = laid.blocks.filter((b) => b.cutBy.length > 0).length;
  const { domes, arches } = setout;
  const courses = domes.reduce((n, d) => n + d.courses.length, 0);
  return [
    `${count(domes.length, 'dome')}, ${count(courses, 'course')}, ${count(arches.length, 'opening')}`,
    `${count(laid.blocks.length, 'block')}, ${cut} of them cut; ${count(laid.slivers.length, 'remnant')} left to mortar`,
    `${plan.bond} bond; ${count(plan.moulds.moulds.length, 'mould')}, ${plan.moulds.proven ? 'proven the fewest' : `at least ${plan.moulds.atLeast} needed`}`,
    `masonry ${(balance.envelope / 1e9).toFixed(3)} m3, of it blocks ${(balance.blocks / 1e9).toFixed(3)} m3`,
  ];
}

const count = (n: number, noun: string): string => `${n} ${noun}${n === 1 ? '' : 's'}`;

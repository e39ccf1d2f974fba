import type { Check } from '../base/figures.js';
import { CAUTIONS } from '../base/texts/cautions.js';
import * as texts from '../base/texts/description-checks.js';
import type { House } from '../description/house.js';
import { dwellingChecks } from '../dwelling/checks.js';
import { masonryChecks } from '../masonry/checks.js';
import { longerCheck } from '../masonry/longer-check.js';
import { planChecks } from '../masonry/plan-checks.js';
import type { CheckGroup, HouseVerdict } from '../report/house-report.js';
import { layingChecks } from '../statics/checks/laying.js';
import { tableUnits } from '../tables/units.js';
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
      title: texts.blocks,
      checks: [...masonryChecks(setout, laid, balance, known.pieces), ...longerCheck(plan, laid), ...planChecks(plan)],
    },
    { id: 'statics', title: texts.willItStand, checks: known.stands },
    { id: 'laying', title: texts.whileItIsBuilt, checks: layingChecks(setout, laying, statics.strength) },
    { id: 'dwelling', title: texts.toLiveInIt, checks: dwellingChecks(setout, dwelling) },
    { id: 'works', title: texts.castingAndCosts, checks: [...releaseCheck(plan, laid), ...worksChecks(works)] },
    { id: 'setout', title: texts.groundDrawingsModel, checks: setoutChecks(setout) },
  ];
  return { groups, checks: groups.flatMap((g) => g.checks), summary: summaryOf(known), cautions: CAUTIONS };
}

function summaryOf({ setout, plan, laid, balance }: Study): string[] {
  const cut = laid.blocks.filter((b) => b.cutBy.length > 0).length;
  const { domes, arches } = setout;
  const courses = domes.reduce((n, d) => n + d.courses.length, 0);
  return [
    `${count(domes.length, 'dome')}, ${count(courses, 'course')}, ${count(arches.length, 'opening')}`,
    texts.blocksCutAndLeft(count(laid.blocks.length, 'block'), cut, count(laid.slivers.length, 'remnant')),
    texts.bondAndMoulds(
      plan.bond,
      count(plan.moulds.moulds.length, 'mould'),
      plan.moulds.proven ? texts.provenFewest : texts.atLeastNeeded(plan.moulds.atLeast),
    ),
    texts.masonryVolume(volumeText(balance.envelope, setout.house), volumeText(balance.blocks, setout.house)),
  ];
}

/** A volume of masonry, mm³, for the summary; in feet also in yards, which concrete is bought by. */
function volumeText(mm3: number, house: House): string {
  const { volume, concrete } = tableUnits(house.units);
  if (volume.unit === concrete.unit) return `${volume.of(mm3).toFixed(3)} ${volume.unit}`;
  return texts.inCubicFeetAndYards(volume.of(mm3).toFixed(1), concrete.of(mm3).toFixed(2));
}

const count = (n: number, noun: string): string => `${n} ${noun}${n === 1 ? '' : 's'}`;

import { SAME_DAY } from '../base/tolerances.js';
import { type LeastCounts, leastCounts } from './least-vector.js';

/** Something laid in one go: a course, or a skewback ring. Days are whole and count from 1. */
export interface Stage {
  readonly id: string;
  readonly domeId: string;
  /** `null` for a skewback ring. */
  readonly course: number | null;
  /** First day on which all its blocks may be laid. */
  readonly readyDay: number;
  /** Ids of arches that it goes past. */
  readonly past: readonly string[];
}

/** An arch to cast or lay on centering. */
export interface ArchJob {
  readonly id: string;
  /** Arches of one family are formed by the same centering. */
  readonly family: string;
  /** Days that casting it takes, jambs first; at least 1. */
  readonly days: number;
  /** First day on which it may be cast or laid. */
  readonly readyDay: number;
}

export interface LayingRules {
  /** Days from laying an arch to striking its centering. */
  readonly strike: number;
  readonly coursesPerDay: number;
}

export interface LaidStage extends Stage {
  readonly from: number;
  readonly to: number;
}

export interface LaidArch extends ArchJob {
  /** First day of casting, and the last, on which its ring is closed. */
  readonly from: number;
  readonly day: number;
  readonly strikeDay: number;
}

export interface LayingPlan {
  readonly stages: readonly LaidStage[];
  readonly arches: readonly LaidArch[];
  /** Day on which each dome's curb or plug is set: the one after its last course. */
  readonly closes: readonly { readonly domeId: string; readonly day: number }[];
  readonly lastDay: number;
}

/**
 * Arches one at a time, in the order in which laying comes past them, each as soon as it is ready and a form of its
 * family is free (the day after it was struck); courses in their order, each when it is cured, the one below it is
 * laid and every arch that it goes past is struck.
 */
export function layingPlan(
  stages: readonly Stage[],
  jobs: readonly ArchJob[],
  forms: ReadonlyMap<string, number>,
  rules: LayingRules,
): LayingPlan {
  const arches = placeArches(jobs, forms, rules.strike);
  const struck = new Map(arches.map((a) => [a.id, a.strikeDay]));
  const laid: LaidStage[] = [];
  const closes: { domeId: string; day: number }[] = [];
  // Time in days from the morning of day 1.
  let time = 0;
  for (const [i, stage] of stages.entries()) {
    const open = Math.max(stage.readyDay, ...stage.past.map((id) => struck.get(id) ?? 0)) - 1;
    const start = Math.max(time, open);
    time = start + 1 / rules.coursesPerDay;
    laid.push({ ...stage, from: Math.floor(start + SAME_DAY) + 1, to: Math.ceil(time - SAME_DAY) });
    if (stages[i + 1]?.domeId === stage.domeId) continue;
    time = Math.ceil(time - SAME_DAY) + 1;
    closes.push({ domeId: stage.domeId, day: time });
  }
  const lastDay = Math.max(0, ...closes.map((c) => c.day), ...arches.map((a) => a.strikeDay));
  return { stages: laid, arches, closes, lastDay };
}

function placeArches(jobs: readonly ArchJob[], forms: ReadonlyMap<string, number>, strike: number): LaidArch[] {
  const taken = new Set<number>();
  const freeFrom = new Map<string, number[]>();
  return jobs.map((job) => {
    const own = freeFrom.get(job.family) ?? Array.from({ length: forms.get(job.family) ?? 1 }, () => 1);
    freeFrom.set(job.family, own);
    const soonest = own.reduce((best, day, i) => (day < (own[best] as number) ? i : best), 0);
    let from = Math.max(job.readyDay, own[soonest] as number);
    const spell = (first: number) => Array.from({ length: job.days }, (_, i) => first + i);
    while (spell(from).some((d) => taken.has(d))) from++;
    for (const d of spell(from)) taken.add(d);
    const day = from + job.days - 1;
    const strikeDay = day + strike;
    own[soonest] = strikeDay + 1;
    return { ...job, from, day, strikeDay };
  });
}

/** The fewest forms of each family with which the last crown closes as early as with a form for every arch. */
export function fewestForms(
  stages: readonly Stage[],
  jobs: readonly ArchJob[],
  rules: LayingRules,
): { readonly families: readonly string[] } & LeastCounts {
  const families = [...new Set(jobs.map((job) => job.family))];
  const upper = families.map((family) => jobs.filter((job) => job.family === family).length);
  const closing = (counts: readonly number[]) => {
    const forms = new Map(families.map((family, i) => [family, counts[i] as number]));
    return Math.max(0, ...layingPlan(stages, jobs, forms, rules).closes.map((c) => c.day));
  };
  const best = closing(upper);
  const found = leastCounts(
    families.map(() => 1),
    upper,
    (counts) => closing(counts) <= best,
  );
  return { families, ...(found ?? { counts: upper, proven: true }) };
}

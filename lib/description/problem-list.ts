import { DescriptionError, type Problem, type Where } from '../base/problems.js';
import { shown } from '../base/quantities.js';
import type { ProblemCode } from '../base/texts/problem-codes.js';
import * as texts from '../base/texts/problems-values.js';

/** Keys and list positions from the top of the description. */
export type Path = readonly (string | number)[];

/** Finds where a path's value, or its key, stands in the text; `undefined` for descriptions given as objects. */
export type Locate = (path: Path, part: 'key' | 'value') => Where | undefined;

/** More than these are not listed: nobody mends more at a time. */
const MOST_PROBLEMS = 100;

/** `openings[0].width`; the whole description is `description`. */
export function pathText(path: Path): string {
  if (path.length === 0) return 'description';
  return path.map((step, i) => (typeof step === 'number' ? `[${step}]` : `${i ? '.' : ''}${shown(step)}`)).join('');
}

/** Collects problems; a place that already has a problem of the same code keeps the first. */
export class ProblemList {
  readonly #problems = new Map<string, Problem>();
  readonly #locate: Locate;
  #more = 0;

  constructor(locate: Locate) {
    this.#locate = locate;
  }

  get empty(): boolean {
    return this.#problems.size === 0;
  }

  /** @param at the part of the path that is wrong, or its place where the path alone doesn't tell it. */
  add(code: ProblemCode, path: Path, message: string, mend: string, at: 'key' | 'value' | Where = 'value'): void {
    const name = pathText(path);
    const where = typeof at === 'string' ? this.#locate(path, at) : at;
    const key = `${code} ${name} ${where ? `${where.line}:${where.column}` : ''}`;
    if (this.#problems.has(key)) return;
    if (this.#problems.size >= MOST_PROBLEMS) {
      this.#more++;
      return;
    }
    this.#problems.set(key, { code, path: name, ...(where ? { where } : {}), message, mend });
  }

  /** Takes over the problems of another text. */
  take(other: ProblemList): void {
    for (const [key, problem] of other.#problems) this.#problems.set(`${problem.where?.file} ${key}`, problem);
  }

  /** @throws DescriptionError with every problem, in the order of the text, when there is any. */
  throwIfAny(): void {
    if (this.empty) return;
    const problems = [...this.#problems.values()].sort(inTextOrder);
    if (this.#more > 0) {
      const mend = texts.mendProblemsAboveFirst;
      problems.push({
        code: 'problems-more' satisfies ProblemCode,
        path: 'description',
        message: texts.thereAreMoreProblems(this.#more),
        mend,
      });
    }
    throw new DescriptionError(problems);
  }
}

function inTextOrder(a: Problem, b: Problem): number {
  if (!a.where || !b.where) return 0;
  return a.where.line - b.where.line || a.where.column - b.where.column;
}

import type { z } from 'zod';
import { shown } from '../base/quantities.js';
import { nearest } from '../base/suggest.js';
import type { ProblemCode } from './codes.js';
import { keysAt } from './json-schema.js';
import { type Path, type ProblemList, pathText } from './problem-list.js';
import type { LeafFault } from './schema/leaves.js';

type Issue = z.core.$ZodIssue;

export interface Told {
  /** Keys that nobody knows and that are near no known one: the rest can still be read without them. */
  readonly strays: readonly Path[];
  /** Known keys that unknown ones are near to, as paths in text. */
  readonly misspelt: ReadonlySet<string>;
  /** Nothing but strays was wrong. */
  readonly strayOnly: boolean;
}

/**
 * Tells the schema's issues with one value as problems, in words of ours.
 * @param raw the value as read, standing at `path`
 * @param mute codes that are not told, because an earlier problem would make them noise
 */
export function tellIssues(
  issues: readonly Issue[],
  raw: unknown,
  path: Path,
  problems: ProblemList,
  mute: ReadonlySet<ProblemCode>,
): Told {
  const teller = new Teller(raw, path, problems, mute);
  // Unknown keys first: a missing key that is only misspelt is one problem, not two.
  const flat = issues.flatMap((issue) => teller.flat(issue, []));
  const strangers = flat.filter((issue) => issue.code === 'unrecognized_keys');
  for (const issue of strangers) teller.unknownKeys(issue as z.core.$ZodIssueUnrecognizedKeys);
  for (const issue of flat) if (issue.code !== 'unrecognized_keys') teller.tell(issue);
  return {
    strays: teller.strays,
    misspelt: teller.misspelt,
    strayOnly: strangers.length === flat.length && teller.misspelt.size === 0,
  };
}

class Teller {
  readonly strays: Path[] = [];
  readonly misspelt = new Set<string>();

  constructor(
    readonly raw: unknown,
    readonly base: Path,
    readonly problems: ProblemList,
    readonly mute: ReadonlySet<ProblemCode>,
  ) {}

  /** An issue with its path from the value; for alternatives, the issues of the one that was meant. */
  flat(issue: Issue, prefix: Path): Issue[] {
    const path = [...prefix, ...(issue.path as Path)] as (string | number)[];
    const here = { ...issue, path } as Issue;
    if (here.code !== 'invalid_union') return [here];
    const value = this.valueAt(path);
    // A word where a word may stand was meant as that word, not as the quantity beside it.
    if (typeof value === 'string' && !/\d/.test(value) && wordsOf(here).length > 0) return [here];
    const meant = here.errors.find((branch) => branch.some((i) => i.path.length > 0 || !isKindIssue(i)));
    return meant ? meant.flatMap((inner) => this.flat(inner, path)) : [here];
  }

  unknownKeys(issue: z.core.$ZodIssueUnrecognizedKeys): void {
    const parent = [...this.base, ...(issue.path as Path)];
    const known = keysAt(parent);
    const present = this.valueAt(issue.path as Path);
    const free = known.filter((key) => !(isMapping(present) && key in present));
    for (const key of issue.keys) {
      const near = nearest(key, free) ?? nearest(key, known);
      const path = [...parent, key];
      if (near === null) this.strays.push(path);
      else this.misspelt.add(pathText([...parent, near]));
      const list = known.length > 0 ? ` Known here: ${known.join(', ')}.` : '';
      const mend = near === null ? `Remove it.${list}` : `Did you mean "${near}"?`;
      this.problems.add('key-unknown', path, `The key "${shown(key)}" is unknown.`, mend, 'key');
    }
  }

  tell(issue: Issue): void {
    const path = [...this.base, ...(issue.path as Path)];
    const value = this.valueAt(issue.path as Path);
    if (issue.code === 'custom') this.fault(issue.params?.fault as LeafFault, path);
    else if (value === undefined) this.missing(path);
    else if (value === null)
      this.add('value-missing', path, `${subjectOf(path)} has no value.`, 'Give a value, or remove the key.');
    else if (issue.code === 'invalid_value') this.choice(issue.values.map(String), value, path);
    else if (issue.code === 'too_small') this.count(value, `at least ${entries(Number(issue.minimum))}`, path);
    else if (issue.code === 'too_big') this.count(value, `at most ${entries(Number(issue.maximum))}`, path);
    else if (issue.code === 'invalid_union' && typeof value === 'string' && wordsOf(issue).length > 0) {
      const other = issue.errors.flat().some((i) => i.code === 'custom') ? 'a quantity' : 'keys with values';
      this.choice(wordsOf(issue), value, path, `, or ${other}`);
    } else this.kind(expectation(issue), value, path);
  }

  count(value: unknown, needed: string, path: Path): void {
    const given = entries(Array.isArray(value) ? value.length : 0);
    this.add('list-length', path, `${subjectOf(path)} has ${given}.`, `Give ${needed}.`);
  }

  fault(fault: LeafFault, path: Path): void {
    this.add(fault.code, path, `${subjectOf(path)} ${fault.said}`, fault.mend);
  }

  missing(path: Path): void {
    if (this.misspelt.has(pathText(path))) return;
    const last = path[path.length - 1];
    if (typeof last !== 'string') this.add('value-missing', path, `${subjectOf(path)} has no value.`, 'Give a value.');
    else this.add('key-missing', path, `The key "${last}" is missing.`, 'Add it; it has no default.', 'key');
  }

  choice(words: readonly string[], value: unknown, path: Path, other = ''): void {
    if (typeof value !== 'string') {
      this.kind(words.map((w) => `"${w}"`).join(' or '), value, path);
      return;
    }
    const near = nearest(value, words);
    const hint = near === null ? '' : `Did you mean "${near}"? `;
    this.add(
      'value-choice',
      path,
      `${subjectOf(path)} is "${shown(value)}", which is no choice here.`,
      `${hint}Choices: ${words.join(', ')}${other}.`,
    );
  }

  kind(expected: string, value: unknown, path: Path): void {
    const subject = subjectOf(path);
    if (typeof value === 'number' && !Number.isFinite(value)) {
      this.add('quantity-unreadable', path, `${subject} is ${value}, which is no number.`, `Give ${expected}.`);
      return;
    }
    const colon = path.length === 0 && typeof value === 'string' ? ' Is the space after a colon missing?' : '';
    this.add('value-type', path, `${subject} is ${kindOf(value)}.`, `Give ${expected}.${colon}`);
  }

  add(code: ProblemCode, path: Path, message: string, mend: string, part: 'key' | 'value' = 'value'): void {
    if (!this.mute.has(code)) this.problems.add(code, path, message, mend, part);
  }

  valueAt(path: Path): unknown {
    let value = this.raw;
    for (const step of path) {
      if (typeof value !== 'object' || value === null) return undefined;
      value = (value as Record<string | number, unknown>)[step];
    }
    return value;
  }
}

export const isMapping = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isKindIssue = (issue: Issue): boolean =>
  issue.code === 'invalid_type' || issue.code === 'invalid_value' || issue.code === 'invalid_union';

const wordsOf = (issue: z.core.$ZodIssueInvalidUnion): string[] =>
  issue.errors.flat().flatMap((i) => (i.code === 'invalid_value' ? i.values.map(String) : []));

const entries = (n: number): string => (n === 1 ? '1 entry' : `${n} entries`);

function expectation(issue: Issue): string {
  // Leaves carry their own word for what they are.
  if (!/^Invalid|^Too/.test(issue.message)) return issue.message;
  if (issue.code === 'invalid_union') return 'a word or keys with values';
  if (issue.code !== 'invalid_type') return 'another value';
  return issue.expected === 'array' || issue.expected === 'tuple' ? 'a list' : 'keys with values';
}

function kindOf(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'string') return `the text "${shown(value)}"`;
  if (typeof value === 'number') return `the number ${value}`;
  return typeof value === 'boolean' ? `the word ${value}` : 'a group of keys';
}

/** What a sentence about a path begins with. */
export function subjectOf(path: Path): string {
  const last = path[path.length - 1];
  if (last === undefined) return 'The description';
  if (typeof last === 'string') return `"${shown(last)}"`;
  const list = path.slice(0, -1).findLast((step) => typeof step === 'string');
  return `Entry ${last + 1} of "${list ?? 'the list'}"`;
}

import type { z } from 'zod';
import { shown } from '../base/quantities.js';
import { nearest } from '../base/suggest.js';
import type { ProblemCode } from '../base/texts/problem-codes.js';
import * as texts from '../base/texts/problems-values.js';
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
      const list = known.length > 0 ? texts.knownHere(known.join(', ')) : '';
      const mend = near === null ? texts.removeIt(list) : texts.didYouMean(near);
      this.problems.add('key-unknown', path, texts.keyIsUnknown(shown(key)), mend, 'key');
    }
  }

  tell(issue: Issue): void {
    const path = [...this.base, ...(issue.path as Path)];
    const value = this.valueAt(issue.path as Path);
    if (issue.code === 'custom') this.fault(issue.params?.fault as LeafFault, path);
    else if (value === undefined) this.missing(path);
    else if (value === null)
      this.add('value-missing', path, texts.hasNoValue(subjectOf(path)), texts.giveValueOrRemove);
    else if (issue.code === 'invalid_value') this.choice(issue.values.map(String), value, path);
    else if (issue.code === 'too_small') this.count(value, texts.atLeast(texts.entries(Number(issue.minimum))), path);
    else if (issue.code === 'too_big') this.count(value, texts.atMost(texts.entries(Number(issue.maximum))), path);
    else if (issue.code === 'invalid_union' && typeof value === 'string' && wordsOf(issue).length > 0) {
      const other = issue.errors.flat().some((i) => i.code === 'custom') ? texts.aQuantity : texts.keysWithValues;
      this.choice(wordsOf(issue), value, path, texts.orOther(other));
    } else this.kind(expectation(issue), value, path);
  }

  count(value: unknown, needed: string, path: Path): void {
    const given = texts.entries(Array.isArray(value) ? value.length : 0);
    this.add('list-length', path, texts.hasGiven(subjectOf(path), given), texts.giveThis(needed));
  }

  fault(fault: LeafFault, path: Path): void {
    this.add(fault.code, path, `${subjectOf(path)} ${fault.said}`, fault.mend);
  }

  missing(path: Path): void {
    if (this.misspelt.has(pathText(path))) return;
    const last = path[path.length - 1];
    if (typeof last !== 'string') this.add('value-missing', path, texts.hasNoValue(subjectOf(path)), texts.giveValue);
    else this.add('key-missing', path, texts.keyIsMissing(last), texts.addIt, 'key');
  }

  choice(words: readonly string[], value: unknown, path: Path, other = ''): void {
    if (typeof value !== 'string') {
      this.kind(words.map((w) => `"${w}"`).join(texts.orBetween), value, path);
      return;
    }
    const near = nearest(value, words);
    const hint = near === null ? '' : texts.didYouMeanThen(near);
    this.add(
      'value-choice',
      path,
      texts.isNoChoice(subjectOf(path), shown(value)),
      texts.choices(hint, words.join(', '), other),
    );
  }

  kind(expected: string, value: unknown, path: Path): void {
    const subject = subjectOf(path);
    if (typeof value === 'number' && !Number.isFinite(value)) {
      this.add('quantity-unreadable', path, texts.isNoNumber(subject, value), texts.giveThis(expected));
      return;
    }
    const colon = path.length === 0 && typeof value === 'string' ? texts.isSpaceAfterColon : '';
    this.add('value-type', path, texts.isGiven(subject, kindOf(value)), texts.giveAndColon(expected, colon));
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

function expectation(issue: Issue): string {
  // Leaves carry their own word for what they are.
  if (!/^Invalid|^Too/.test(issue.message)) return issue.message;
  if (issue.code === 'invalid_union') return texts.wordOrKeys;
  if (issue.code !== 'invalid_type') return texts.anotherValue;
  return issue.expected === 'array' || issue.expected === 'tuple' ? texts.aList : texts.keysWithValues;
}

function kindOf(value: unknown): string {
  if (Array.isArray(value)) return texts.aList;
  if (typeof value === 'string') return texts.theText(shown(value));
  if (typeof value === 'number') return texts.theNumber(value);
  return typeof value === 'boolean' ? texts.theWord(value) : texts.groupOfKeys;
}

/** What a sentence about a path begins with. */
export function subjectOf(path: Path): string {
  const last = path[path.length - 1];
  if (last === undefined) return texts.theDescription;
  if (typeof last === 'string') return `"${shown(last)}"`;
  const list = path.slice(0, -1).findLast((step) => typeof step === 'string');
  return texts.entryOf(last + 1, list ?? texts.theList);
}

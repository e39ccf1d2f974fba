import { shown } from '../base/quantities.js';
import * as texts from '../base/texts/problems-file.js';
import type { Path, ProblemList } from './problem-list.js';
import { DEEPEST, LARGEST_FILE } from './text/guard.js';
import { RESERVED_KEYS } from './text/tree.js';

/**
 * A copy of a description given as an object, of plain data only: lists and mappings without prototype, texts,
 * numbers, `null`. Anything else (functions, dates, class instances, loops) is told as a problem; keys whose
 * value is `undefined` are left out.
 */
export function plainData(given: unknown, problems: ProblemList): unknown {
  return new Copier(problems).copy(given, []);
}

class Copier {
  // As many values as a file of the largest size could hold; shared parts count each time they are met.
  #left = LARGEST_FILE / 2;

  constructor(readonly problems: ProblemList) {}

  copy(given: unknown, path: Path): unknown {
    if (this.#left-- <= 0) {
      const mend = texts.checkThatParts;
      this.problems.add('file-too-large', [], texts.descriptionHoldsTooMany, mend);
      return undefined;
    }
    if (given === null || ['string', 'number', 'boolean', 'undefined'].includes(typeof given)) return given;
    if (path.length > DEEPEST) {
      this.problems.add('nesting-too-deep', path.slice(0, 6), texts.listsOrKeys, texts.checkForLoop);
      return undefined;
    }
    if (Array.isArray(given)) return Array.from(given, (item, i) => this.copy(item, [...path, i]));
    if (typeof given !== 'object' || !isPlain(given)) {
      const mend = texts.giveTextsNumbersLists;
      this.problems.add('value-type', path, texts.somethingOtherThanPlain, mend);
      return undefined;
    }
    const out: Record<string, unknown> = Object.create(null);
    for (const [key, value] of Object.entries(given)) {
      if (RESERVED_KEYS.has(key))
        this.problems.add('key-unknown', [...path, key], texts.keyIsNotAllowed(shown(key)), texts.removeIt, 'key');
      else if (value !== undefined) out[key] = this.copy(value, [...path, key]);
    }
    return out;
  }
}

function isPlain(given: object): boolean {
  const prototype = Object.getPrototypeOf(given);
  // An object of another realm has that realm's Object.prototype, whose own prototype is null.
  return prototype === null || Object.getPrototypeOf(prototype) === null;
}

import { isAlias, isMap, isScalar, isSeq, type ParsedNode, parseDocument, Scalar } from 'yaml';
import { shown } from '../../base/quantities.js';
import * as texts from '../../base/texts/problems-file.js';
import type { Path, ProblemList } from '../problem-list.js';
import { expansionOf, MOST_VALUES } from './aliases.js';
import { DEEPEST, tellEmpty } from './guard.js';
import type { Places } from './places.js';
import { syntaxProblem } from './syntax.js';

/** Keys that would reach into an object's own machinery. */
export const RESERVED_KEYS: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

const MOST_SYNTAX_PROBLEMS = 5;
const TOO_DEEP = texts.listsOrKeys;

/**
 * Well-formed YAML or JSON, the text that `guardedText` gave, to plain data (objects without prototype, lists, texts,
 * numbers, `null`), with all that a description has no use for told as problems. `undefined` when the text is not
 * well-formed.
 * Numbers not in their shortest form stay text, so that a project number 014 keeps its zero.
 */
export function readTree(text: string, places: Places, problems: ProblemList): unknown {
  const document = parseDocument(text, {
    schema: 'failsafe',
    prettyErrors: false,
    // Its own check is quadratic; keys are held against a set below.
    uniqueKeys: false,
    logLevel: 'error',
  });
  if (document.errors.length > 0) {
    const json = /^\s*[{[]/.test(text) || /\.json$/i.test(places.file);
    for (const error of document.errors.slice(0, MOST_SYNTAX_PROBLEMS)) {
      const where = places.at(error.pos[0]);
      if (error.code === 'MULTIPLE_DOCS')
        problems.add('file-documents', [], texts.secondDocumentBeginsHere, texts.keepOneHouse, where);
      else if (error.code === 'RESOURCE_EXHAUSTION')
        problems.add('nesting-too-deep', [], TOO_DEEP, texts.checkBracketsAndIndents, where);
      else {
        const { message, mend } = syntaxProblem(error, json);
        problems.add('file-syntax', [], message, mend, where);
      }
    }
    return undefined;
  }
  if (document.contents === null || isBlank(document.contents)) {
    tellEmpty(problems);
    return undefined;
  }
  const { values, at } = expansionOf(document.contents);
  if (values > MOST_VALUES && at > 0) {
    const message = texts.aliasesExpandTooFar(MOST_VALUES);
    problems.add('yaml-expansion', [], message, texts.removeAliasesAndWrite, places.at(at));
    return undefined;
  }
  return new TreeReader(places, problems).value(document.contents, []);
}

class TreeReader {
  constructor(
    readonly places: Places,
    readonly problems: ProblemList,
  ) {}

  value(node: ParsedNode | null, path: Path, key?: number): unknown {
    this.places.set(path, node && !isBlank(node) ? node.range[0] : (key ?? node?.range[0] ?? 0), key);
    if (node === null) return null;
    if (isAlias(node)) {
      this.problems.add('yaml-alias', path, texts.aliasStandsHere(shown(node.source)), texts.writeValueOut);
      return undefined;
    }
    if (node.tag !== undefined)
      this.problems.add('yaml-tag', path, texts.tagStandsHere(shown(node.tag)), texts.removeTag);
    if (isScalar(node)) return scalar(node);
    if (path.length >= DEEPEST) {
      this.problems.add('nesting-too-deep', path, TOO_DEEP, texts.checkBracketsAndIndents);
      return undefined;
    }
    if (isSeq(node)) return node.items.map((item, i) => this.value(item as ParsedNode | null, [...path, i]));
    if (isMap(node)) return this.mapping(node.items as { key: ParsedNode; value: ParsedNode | null }[], path);
    return undefined;
  }

  mapping(items: readonly { key: ParsedNode; value: ParsedNode | null }[], path: Path): Record<string, unknown> {
    const out: Record<string, unknown> = Object.create(null);
    const seen = new Set<string>();
    for (const { key, value } of items) {
      const start = key.range[0];
      const where = this.places.at(start);
      if (!isScalar(key)) {
        const mend = texts.usePlainWord;
        this.problems.add('key-not-text', path, texts.keyIsNotPlain, mend, where);
        continue;
      }
      const name = String(key.value);
      const here = [...path, name];
      if (seen.has(name)) {
        const first = this.places.locate(here, 'key')?.line;
        const message = texts.keyStandsAlready(shown(name), first);
        this.problems.add('key-duplicate', here, message, texts.keepOneOfThem, where);
        continue;
      }
      seen.add(name);
      this.places.set(here, start, start);
      if (name === '<<') {
        this.problems.add('yaml-merge', here, texts.mergeKeyStandsHere, texts.writeKeysOutWhere);
        continue;
      }
      if (RESERVED_KEYS.has(name)) {
        this.problems.add('key-unknown', here, texts.keyIsNotAllowed(name), texts.removeIt);
        continue;
      }
      out[name] = this.value(value, here, start);
    }
    return out;
  }
}

const isBlank = (node: ParsedNode): boolean => isScalar(node) && node.type === Scalar.PLAIN && node.source === '';

function scalar(node: Scalar): unknown {
  const text = String(node.value);
  if (node.type !== Scalar.PLAIN) return text;
  if (/^(~|null|Null|NULL)?$/.test(text)) return null;
  return /^-?\d/.test(text) && String(Number(text)) === text ? Number(text) : text;
}

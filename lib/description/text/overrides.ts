import type { Where } from '../../base/problems.js';
import { shown } from '../../base/quantities.js';
import { nearest } from '../../base/suggest.js';
import * as texts from '../../base/texts/problems-file.js';
import { type Path, ProblemList } from '../problem-list.js';
import { guardedText } from './guard.js';
import { Places } from './places.js';
import { RESERVED_KEYS, readTree } from './tree.js';

/** One value put in the place of what a description says: `domes.hall.radius=2.5`. */
export interface Override {
  readonly path: readonly (string | number)[];
  /** As it would stand in the file. */
  readonly value: string;
}

/** Names joined by dots; an entry of a list is named by its `id`, or by its place from 0 as in `at[0]`. */
const PATH = /^[A-Za-z_][\w-]*(\.[\w-]+|\[\d{1,4}\])*$/;
const HOW = texts.writeItLikeDomes;

/** Sections that are lists of entries with ids. */
const LISTS = ['domes', 'openings', 'passages', 'rooms'];
/** Keys whose value is a word, or keys of which `shape` is that word. */
const SHAPED = ['profile', 'head'];

/** `undefined` where the text is no override. */
export function parseOverride(text: string): Override | undefined {
  const [, path, value] = /^([^=]*)=(.*)$/s.exec(text) ?? [];
  if (path === undefined || value === undefined || value.trim() === '' || !PATH.test(path.trim())) return undefined;
  const steps = [...path.trim().matchAll(/[\w-]+/g)].map(([step]) => (/^\d+$/.test(step) ? Number(step) : step));
  return { path: steps, value };
}

/**
 * The tree of a description with values put in their places; what was read stays as it is.
 * @param sets as on the command line; each is told of as the file `--set PATH`
 */
export function withOverrides(tree: unknown, sets: readonly string[], places: Places, problems: ProblemList): unknown {
  return sets.reduce((tree, set) => withOverride(tree, set, places, problems), tree);
}

function withOverride(tree: unknown, set: string, places: Places, problems: ProblemList): unknown {
  const override = parseOverride(set);
  const where: Where = { file: texts.setOption(shown(set.replace(/=.*/s, ''))), line: 1, column: 1 };
  if (!override) {
    const message = texts.setNamesNoValue(shown(set));
    problems.add('set-unreadable', [], message, HOW, where);
    return tree;
  }
  const own = new Places(where.file);
  const faults = new ProblemList(own.locate);
  const text = guardedText(override.value, own, faults);
  const value = text === null ? undefined : readTree(text, own, faults);
  if (!faults.empty) {
    problems.take(faults);
    return tree;
  }
  return new Setter(override, value, where, places, problems).into(tree, 0, []);
}

class Setter {
  constructor(
    readonly override: Override,
    readonly value: unknown,
    readonly where: Where,
    readonly places: Places,
    readonly problems: ProblemList,
  ) {}

  /** A copy of `node`, which stands at `path`, with the value put in `depth` steps down the override's path. */
  into(node: unknown, depth: number, path: Path): unknown {
    const step = this.override.path[depth];
    if (step === undefined) {
      this.places.override(path, this.where);
      return this.value;
    }
    if (Array.isArray(node)) return this.intoList(node, step, depth, path);
    const key = String(step);
    const last = path[path.length - 1];
    if (node === undefined || node === null) {
      if (LISTS.includes(String(last))) return this.nowhere(node, path, texts.hasNoSuchEntry(last, shown(key)), []);
      return this.intoMapping(Object.create(null), key, depth, path);
    }
    if (typeof node === 'object') return this.intoMapping(node as Record<string, unknown>, key, depth, path);
    if (typeof node === 'string' && SHAPED.includes(String(last)))
      return this.intoMapping({ shape: node }, key, depth, path);
    return this.nowhere(node, path, texts.valueHasNoKey(String(last), shown(key)), []);
  }

  intoMapping(node: Record<string, unknown>, key: string, depth: number, path: Path): unknown {
    if (RESERVED_KEYS.has(key)) return this.nowhere(node, path, texts.keyIsNotAllowed(key), []);
    const made: Record<string, unknown> = Object.assign(Object.create(null), node);
    const value = this.into(made[key], depth + 1, [...path, key]);
    if (value !== undefined) made[key] = value;
    return made;
  }

  intoList(node: readonly unknown[], step: string | number, depth: number, path: Path): unknown {
    const ids = node.map((entry) => (entry as { id?: unknown } | null)?.id);
    const index = ids.includes(String(step)) ? ids.indexOf(String(step)) : typeof step === 'number' ? step : -1;
    if (index < 0 || index >= node.length) {
      const known = ids.filter((id): id is string => typeof id === 'string');
      return this.nowhere(node, path, texts.hasNoSuchEntry(String(path[path.length - 1]), shown(String(step))), known);
    }
    return node.map((entry, i) => (i === index ? this.into(entry, depth + 1, [...path, i]) : entry));
  }

  nowhere(node: unknown, path: Path, message: string, known: readonly string[]): unknown {
    const asked = String(this.override.path[path.length] ?? '');
    const near = nearest(asked, known);
    const list = known.length > 0 ? texts.thereAreThese(known.join(', ')) : HOW;
    this.problems.add('set-nowhere', path, message, near === null ? list : texts.didYouMean(near), this.where);
    return node;
  }
}

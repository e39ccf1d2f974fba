import { LENGTH_UNITS, type LengthUnit } from '../base/units.js';
import { houseOf } from './draft.js';
import type { House } from './house.js';
import { isMapping } from './issues.js';
import { plainData } from './plain.js';
import { ProblemList } from './problem-list.js';
import { checkRules } from './rules.js';
import type { Description } from './schema.js';
import { readSections } from './sections.js';
import { guardedText } from './text/guard.js';
import { withOverrides } from './text/overrides.js';
import { Places } from './text/places.js';
import { readTree } from './text/tree.js';

/** How a description is read. */
export interface ReadOptions {
  /**
   * Values put in the place of what the file says: `domes.hall.radius=2.5`, `site.snow=1.2 kPa`, `openings.bay.head={ shape: flat }`.
   * An entry of a list is named by its id, or by its place from 0: `domes.hall.at[0]=1.5`.
   */
  readonly set?: readonly string[];
}

/**
 * Reads a description file, YAML or JSON.
 * @param content the file's bytes (UTF-8) or text, at most 256 kB
 * @param fileName as it shall stand in problems
 * @throws DescriptionError with every problem found, each with file, line and column
 */
export function readDescription(content: string | Uint8Array, fileName: string, options: ReadOptions = {}): House {
  const places = new Places(fileName);
  const problems = new ProblemList(places.locate);
  const text = guardedText(content, places, problems);
  const tree = text === null ? undefined : readTree(text, places, problems);
  const set = tree === undefined ? [] : (options.set ?? []);
  return houseOfTree(withOverrides(tree, set, places, problems), problems);
}

/** The unit that a description's lengths are in and that tables of it are printed in; `m` where none can be told. */
export function descriptionUnits(content: string | Uint8Array, set: readonly string[] = []): LengthUnit {
  const places = new Places('');
  const problems = new ProblemList(places.locate);
  const text = guardedText(content, places, problems);
  const tree = text === null ? undefined : readTree(text, places, problems);
  const units = isMapping(tree)
    ? (withOverrides(tree, set, places, problems) as Record<string, unknown>).units
    : undefined;
  return LENGTH_UNITS.find((unit) => unit === units) ?? 'm';
}

/**
 * Reads a description given as a plain object.
 * @throws DescriptionError with every problem found, each with the path of its key
 */
export function houseFrom(description: Description): House {
  const problems = new ProblemList(() => undefined);
  return houseOfTree(plainData(description, problems), problems);
}

function houseOfTree(tree: unknown, problems: ProblemList): House {
  // A tree that is missing altogether has its problem told already, unless the caller gave nothing at all.
  const draft = tree === undefined && !problems.empty ? undefined : readSections(tree, problems);
  if (draft?.unitsKnown) checkRules(draft, problems);
  problems.throwIfAny();
  if (!draft) throw new Error('a description without problems gave no draft');
  return houseOf(draft);
}

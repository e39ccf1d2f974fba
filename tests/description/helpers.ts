import { DescriptionError, type Problem } from '../../lib/base/problems.js';
import { houseFrom, readDescription } from '../../lib/description/read.js';

/** Stands in a text where a problem is expected; taken out before reading. */
export const MARK = '‸';

export interface Marked {
  readonly text: string;
  readonly line: number;
  readonly column: number;
}

export function marked(withMark: string): Marked {
  const at = withMark.indexOf(MARK);
  if (at < 0) throw new Error('the text has no mark');
  const before = withMark.slice(0, at).split('\n');
  return { text: withMark.replace(MARK, ''), line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}

/** Problems of a text or object; an empty list when it is read. Any other exception passes through. */
export function problemsOf(given: string | Uint8Array | object, fileName = 'house.yaml'): readonly Problem[] {
  try {
    if (typeof given === 'string' || given instanceof Uint8Array) readDescription(given, fileName);
    else houseFrom(given as Parameters<typeof houseFrom>[0]);
    return [];
  } catch (error) {
    if (error instanceof DescriptionError) return error.problems;
    throw error;
  }
}

export const codesOf = (given: string | Uint8Array | object): string[] => problemsOf(given).map((p) => p.code);

/** A sound one-dome description in YAML, with more sections after it. */
export const withHall = (more = '', dome = 'radius: 3.0, stem-wall: 0.6'): string =>
  `format: 1\ndomes: [{ id: hall, ${dome} }]\n${more}`;

/** The hall with its outside 3.25 m from its axis, then more domes and sections. */
export const withDomes = (domes: string, more = ''): string =>
  `format: 1\ndomes: [{ id: hall, radius: 3.0, stem-wall: 0.6 }, ${domes}]\n${more}`;

/** A sound passage from the hall in flow style. */
export const passage = (to: string, more = 'width: 0.9, height: 1.9', id = 'link'): string =>
  `{ id: ${id}, between: [hall, ${to}], ${more} }`;

/** A sound opening of the hall in flow style; `more` overrides nothing, so leave out what it sets. */
export const opening = (more: string, id = 'bay'): string => `{ id: ${id}, in: hall, bearing: 90, ${more} }`;

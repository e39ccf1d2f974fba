import * as texts from '../../base/texts/problems-file.js';
import type { ProblemList } from '../problem-list.js';
import type { Places } from './places.js';

/** Largest description that is read, in bytes or characters: some thousand openings' worth. */
export const LARGEST_FILE = 262_144;
/** Deepest nesting of lists and keys; a description needs five. */
export const DEEPEST = 24;

/**
 * Text of a description file, which places count in from now on, or `null` with the problem told. Everything here is
 * linear in the size, and a file that is too large is refused before it is looked at.
 */
export function guardedText(content: string | Uint8Array, places: Places, problems: ProblemList): string | null {
  if (content.length > LARGEST_FILE) {
    const size = texts.kilobytes((content.length / 1024).toFixed(0));
    const mend = texts.descriptionIsAtMost(LARGEST_FILE / 1024);
    problems.add('file-too-large', [], texts.fileIsLarge(size), mend);
    return null;
  }
  const text = typeof content === 'string' ? content.replace(/^\uFEFF/, '') : decoded(content);
  // Control characters, halves of surrogate pairs, and the mark that a decoder sets for bytes that are no text.
  if (text === null || /[^\t\n\r\P{Cc}\x85]|\p{Cs}|\uFFFD|\uFFFE|\uFFFF/u.test(text)) {
    problems.add('file-not-text', [], texts.fileIsNotPlain, texts.saveItAsPlain);
    return null;
  }
  if (text.replace(/^[ \t]*#.*$/gm, '').trim() === '') {
    tellEmpty(problems);
    return null;
  }
  places.read(text);
  const deep = tooDeepAt(text);
  if (deep !== null) {
    const mend = texts.atMostLevels(DEEPEST);
    problems.add('nesting-too-deep', [], texts.listsOrKeys, mend, places.at(deep));
    return null;
  }
  return text;
}

export function tellEmpty(problems: ProblemList): void {
  problems.add('file-empty', [], texts.fileDescribesNothing, texts.startFromRingcourseNew);
}

function decoded(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/**
 * Where the nesting of YAML or JSON goes past `DEEPEST`, counted from above by a scan that keeps no tree: open brackets
 * outside comments, dashes in a row, and indents that grow from line to line.
 */
function tooDeepAt(text: string): number | null {
  let brackets = 0;
  const indents: number[] = [];
  for (const { 0: line, index: start } of text.matchAll(/[^\r\n]+/g)) {
    const lead = /^(?:[ \t]|[-?:](?=[ \t]|$))*/.exec(line)?.[0] ?? '';
    const content = line.slice(lead.length);
    if (content === '' && !/[-?:]/.test(lead)) continue;
    if (content.startsWith('#')) continue;
    while (indents.length > 0 && (indents[indents.length - 1] as number) >= lead.length) indents.pop();
    indents.push(lead.length);
    // Every dash but the first opens a list within the line.
    const dashes = [...lead.matchAll(/[-?:]/g)].map((dash) => dash.index);
    const levels = indents.length + Math.max(0, dashes.length - 1);
    if (levels > DEEPEST) return start + (dashes[dashes.length - (levels - DEEPEST)] ?? lead.length);
    for (const [i, sign] of [...content.replace(/\s#.*$/, '')].entries()) {
      if (sign === ']' || sign === '}') brackets = Math.max(0, brackets - 1);
      else if ((sign === '[' || sign === '{') && ++brackets > DEEPEST) return start + lead.length + i;
    }
  }
  return null;
}

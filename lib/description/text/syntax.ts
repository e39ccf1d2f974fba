import type { YAMLError } from 'yaml';

const NOT_CLOSED = 'A bracket is opened and not closed.';
const CLOSE_IT = 'Find above where it opens, and close it.';
const MISSING: readonly (readonly [raw: RegExp, message: string])[] = [
  [/Missing , or :/, 'A comma or a colon is missing.'],
  [/Missing ,/, 'A comma is missing between two entries.'],
  [/after :|map values/, 'A colon, or the space after it, is missing.'],
  [/without -/, 'An entry of a list has no dash, or the indent does not fit the lines above.'],
  [/Comments/, 'The # of a comment has no space before it.'],
];

/** What is wrong in well-formedness, in words of our own; the parser's messages stay inside. */
export function syntaxProblem(error: YAMLError, json: boolean): { message: string; mend: string } {
  const look = json
    ? 'Check commas, quotes and brackets here and in the line above.'
    : 'Check indents, colons, quotes and brackets here and in the line above.';
  switch (error.code) {
    case 'TAB_AS_INDENT':
      return { message: 'A tab is used to indent.', mend: 'Indent with spaces.' };
    case 'BAD_INDENT':
      if (/end with/.test(error.message)) return { message: NOT_CLOSED, mend: CLOSE_IT };
      return { message: 'The indent does not fit the lines above.', mend: 'Line it up with its neighbours.' };
    case 'MISSING_CHAR':
      return missing(error.message, look);
    case 'BLOCK_AS_IMPLICIT_KEY':
    case 'MULTILINE_IMPLICIT_KEY':
      return { message: 'A second key stands in the same line, or a quote or bracket is not closed.', mend: look };
    case 'BLOCK_IN_FLOW':
      return {
        message: 'A comma is missing between two entries, or a list of dashes stands inside brackets.',
        mend: look,
      };
    case 'BAD_DQ_ESCAPE':
      return {
        message: 'A backslash in double quotes is followed by an unknown sign.',
        mend: 'Write \\\\ for a backslash.',
      };
    case 'BAD_SCALAR_START':
      return { message: 'A value starts with a sign that has a meaning of its own.', mend: 'Put the value in quotes.' };
    case 'UNEXPECTED_TOKEN':
      return {
        message: 'Something stands here that does not belong.',
        mend: json ? look : `${look} Inside '...' a ' is written twice.`,
      };
    case 'KEY_OVER_1024_CHARS':
      return { message: 'A key is more than 1024 characters long.', mend: look };
    default:
      return { message: `The text is not well-formed ${json ? 'JSON' : 'YAML'} here.`, mend: look };
  }
}

function missing(raw: string, look: string): { message: string; mend: string } {
  if (/quote/.test(raw)) return { message: 'A quote is opened and not closed.', mend: CLOSE_IT };
  if (/end with/.test(raw)) return { message: NOT_CLOSED, mend: CLOSE_IT };
  const found = MISSING.find(([pattern]) => pattern.test(raw));
  return { message: found?.[1] ?? 'A sign or a space is missing.', mend: look };
}

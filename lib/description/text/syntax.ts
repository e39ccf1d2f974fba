import type { YAMLError } from 'yaml';
import * as texts from '../../base/texts/problems-file.js';

const NOT_CLOSED = texts.bracketIsOpened;
const CLOSE_IT = texts.findAboveWhere;
const MISSING: readonly (readonly [raw: RegExp, message: string])[] = [
  [/Missing , or :/, texts.commaOrColon],
  [/Missing ,/, texts.commaIsMissingBetween],
  [/after :|map values/, texts.colonOrSpaceAfter],
  [/without -/, texts.entryOfList],
  [/Comments/, texts.commentNeedsSpace],
];

/** What is wrong in well-formedness, in words of our own; the parser's messages stay inside. */
export function syntaxProblem(error: YAMLError, json: boolean): { message: string; mend: string } {
  const look = json ? texts.checkCommasQuotes : texts.checkIndentsColonsQuotes;
  switch (error.code) {
    case 'TAB_AS_INDENT':
      return { message: texts.tabIsUsed, mend: texts.indentWithSpaces };
    case 'BAD_INDENT':
      if (/end with/.test(error.message)) return { message: NOT_CLOSED, mend: CLOSE_IT };
      return { message: texts.indentDoesNotFit, mend: texts.lineItUp };
    case 'MISSING_CHAR':
      return missing(error.message, look);
    case 'BLOCK_AS_IMPLICIT_KEY':
    case 'MULTILINE_IMPLICIT_KEY':
      return { message: texts.secondKeyStands, mend: look };
    case 'BLOCK_IN_FLOW':
      return {
        message: texts.commaIsMissingBetweenTwo,
        mend: look,
      };
    case 'BAD_DQ_ESCAPE':
      return {
        message: texts.backslashInDoubleQuotes,
        mend: texts.writeDoubleBackslash,
      };
    case 'BAD_SCALAR_START':
      return { message: texts.valueStartsWithSign, mend: texts.putValueInQuotes };
    case 'UNEXPECTED_TOKEN':
      return {
        message: texts.somethingStandsHere,
        mend: json ? look : texts.quoteInsideIsDoubled(look),
      };
    case 'KEY_OVER_1024_CHARS':
      return { message: texts.keyIsMore, mend: look };
    default:
      return { message: texts.textIsNotWellFormed(json), mend: look };
  }
}

function missing(raw: string, look: string): { message: string; mend: string } {
  if (/quote/.test(raw)) return { message: texts.quoteIsOpened, mend: CLOSE_IT };
  if (/end with/.test(raw)) return { message: NOT_CLOSED, mend: CLOSE_IT };
  const found = MISSING.find(([pattern]) => pattern.test(raw));
  return { message: found?.[1] ?? texts.signOrSpace, mend: look };
}

/** What is wrong with the text of a description, or with values put in from outside, and how to mend it. */

export const kilobytes = (count: string): string => `${count} kB`;
export const descriptionIsAtMost = (largestFile: number): string =>
  `A description is at most ${largestFile} kB; check that this is the right file.`;
export const fileIsLarge = (size: string): string => `The file is ${size} large.`;
export const fileIsNotPlain = 'The file is not plain text.';
export const saveItAsPlain = 'Save it as plain text in UTF-8.';
export const atMostLevels = (deepest: number): string =>
  `At most ${deepest} levels are read; check the brackets and the indents.`;
export const listsOrKeys = 'Lists or keys are nested too deep.';
export const fileDescribesNothing = 'The file describes nothing.';
export const startFromRingcourseNew = 'Start from `ringcourse new house.yaml`.';
export const writeItLikeDomes =
  'Write it like `domes.hall.radius=2.5`: keys and ids joined by dots, then = and the value.';
export const setOption = (set: string): string => `--set ${set}`;
export const setNamesNoValue = (set: string): string => `\`--set ${set}\` names no value to put in.`;
export const hasNoSuchEntry = (last: string | number | undefined, key: string): string =>
  `"${last}" has no entry ${key}.`;
export const valueHasNoKey = (last: string, key: string): string => `"${last}" is a value and has no key ${key}.`;
export const keyIsNotAllowed = (key: string): string => `The key "${key}" is not allowed.`;
export const thereAreThese = (known: string): string => `There are: ${known}.`;
export const didYouMean = (near: string): string => `Did you mean "${near}"?`;
export const bracketIsOpened = 'A bracket is opened and not closed.';
export const findAboveWhere = 'Find above where it opens, and close it.';
export const commaOrColon = 'A comma or a colon is missing.';
export const commaIsMissingBetween = 'A comma is missing between two entries.';
export const colonOrSpaceAfter = 'A colon, or the space after it, is missing.';
export const entryOfList = 'An entry of a list has no dash, or the indent does not fit the lines above.';
export const commentNeedsSpace = 'The # of a comment has no space before it.';
export const checkCommasQuotes = 'Check commas, quotes and brackets here and in the line above.';
export const checkIndentsColonsQuotes = 'Check indents, colons, quotes and brackets here and in the line above.';
export const tabIsUsed = 'A tab is used to indent.';
export const indentWithSpaces = 'Indent with spaces.';
export const indentDoesNotFit = 'The indent does not fit the lines above.';
export const lineItUp = 'Line it up with its neighbours.';
export const secondKeyStands = 'A second key stands in the same line, or a quote or bracket is not closed.';
export const commaIsMissingBetweenTwo =
  'A comma is missing between two entries, or a list of dashes stands inside brackets.';
export const backslashInDoubleQuotes = 'A backslash in double quotes is followed by an unknown sign.';
export const writeDoubleBackslash = 'Write \\\\ for a backslash.';
export const valueStartsWithSign = 'A value starts with a sign that has a meaning of its own.';
export const putValueInQuotes = 'Put the value in quotes.';
export const somethingStandsHere = 'Something stands here that does not belong.';
export const quoteInsideIsDoubled = (look: string): string => `${look} Inside '...' a ' is written twice.`;
export const keyIsMore = 'A key is more than 1024 characters long.';
export const textIsNotWellFormed = (json: boolean): string =>
  `The text is not well-formed ${json ? 'JSON' : 'YAML'} here.`;
export const quoteIsOpened = 'A quote is opened and not closed.';
export const signOrSpace = 'A sign or a space is missing.';
export const secondDocumentBeginsHere = 'A second document begins here.';
export const keepOneHouse = 'Keep one house in a file.';
export const checkBracketsAndIndents = 'Check brackets and indents.';
export const aliasesExpandTooFar = (mostValues: number): string =>
  `The aliases in this file expand too far: written out it would hold more than ${mostValues} values.`;
export const removeAliasesAndWrite = 'Remove the aliases, and write out the few values.';
export const aliasStandsHere = (source: string): string => `An alias stands here: *${source}.`;
export const writeValueOut = 'Write the value out.';
export const tagStandsHere = (tag: string): string => `A tag stands here: ${tag}.`;
export const removeTag = 'Remove the tag.';
export const usePlainWord = 'Use a plain word as the key, without brackets, * or ?.';
export const keyIsNotPlain = 'A key is not a plain word.';
export const keyStandsAlready = (key: string, line: number | undefined): string =>
  `The key "${key}" stands already in line ${line}.`;
export const keepOneOfThem = 'Keep one of them.';
export const mergeKeyStandsHere = 'A merge key stands here.';
export const writeKeysOutWhere = 'Write the keys out where they are needed.';
export const removeIt = 'Remove it.';
export const checkThatParts = 'Check that parts are not repeated over and over.';
export const descriptionHoldsTooMany = 'The description holds too many values.';
export const checkForLoop = 'Check for a loop.';
export const giveTextsNumbersLists = 'Give texts, numbers, lists and plain objects.';
export const somethingOtherThanPlain = 'Something other than plain data stands here.';

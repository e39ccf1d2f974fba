/** What is wrong with keys, values and names and how to mend it. */

export const knownHere = (known: string): string => ` Known here: ${known}.`;
export const removeIt = (list: string): string => `Remove it.${list}`;
export const didYouMean = (near: string): string => `Did you mean "${near}"?`;
export const keyIsUnknown = (key: string): string => `The key "${key}" is unknown.`;
export const hasNoValue = (path: string): string => `${path} has no value.`;
export const giveValueOrRemove = 'Give a value, or remove the key.';
export const atLeast = (minimum: number | string): string => `at least ${minimum}`;
export const atMost = (maximum: number | string): string => `at most ${maximum}`;
export const keysWithValues = 'keys with values';
export const orOther = (other: string): string => `, or ${other}`;
export const hasGiven = (path: string, given: string): string => `${path} has ${given}.`;
export const giveThis = (needed: string): string => `Give ${needed}.`;
export const giveValue = 'Give a value.';
export const keyIsMissing = (last: string): string => `The key "${last}" is missing.`;
export const addIt = 'Add it; it has no default.';
export const orBetween = ' or ';
export const didYouMeanThen = (near: string): string => `Did you mean "${near}"? `;
export const isNoChoice = (path: string, value: string): string => `${path} is "${value}", which is no choice here.`;
export const choices = (hint: string, words: string, other: string): string => `${hint}Choices: ${words}${other}.`;
export const isNoNumber = (subject: string, value: number): string => `${subject} is ${value}, which is no number.`;
export const isSpaceAfterColon = ' Is the space after a colon missing?';
export const isGiven = (subject: string, value: string): string => `${subject} is ${value}.`;
export const giveAndColon = (expected: string, colon: string): string => `Give ${expected}.${colon}`;
export const entries = (n: number): string => (n === 1 ? '1 entry' : `${n} entries`);
export const wordOrKeys = 'a word or keys with values';
export const anotherValue = 'another value';
export const theText = (value: string): string => `the text "${value}"`;
export const theNumber = (value: number): string => `the number ${value}`;
export const theWord = (value: boolean): string => `the word ${value}`;
export const groupOfKeys = 'a group of keys';
export const theDescription = 'The description';
export const theList = 'the list';
export const entryOf = (last: number, list: string): string => `Entry ${last} of "${list}"`;
export const keyFormatIsMissing = 'The key "format" is missing.';
export const formatIsLater = (format: number, known: number): string =>
  `The file is of format ${format}, which a later version of ringcourse reads; this one reads format ${known}.`;
export const formatIsNone = (format: number): string =>
  `"format" is no format of a description; this version reads format ${format}.`;
export const installLaterVersion = (format: number): string =>
  `Install a later version, or write \`format: ${format}\` and change what is told then; CHANGELOG.md says what each format changed.`;
export const writeFormat = (format: number): string => `Write \`format: ${format}\`.`;
export const hasEntries = (key: string, count: number): string => `"${key}" has ${count} entries.`;
export const addItAlone = 'Add it.';
export const giveListOrRemove = 'Give a list, or remove the key.';
export const isNoList = (path: string): string => `${path} is no list.`;
export const giveList = 'Give a list.';
export const mendProblemsAboveFirst = 'Mend the problems above first, then read the description again.';
export const thereAreMoreProblems = (more: number): string => `There are ${more} more problems.`;
export const cannotNameItem = (item: string): string => `"${item}" can't name an item.`;
export const useSmallLetters = 'Use small letters a-z, digits and hyphens.';
export const examplePrice = (item: string): string => `${item}: { per: 25 kg, price: 6.20 }`;
export const priceUnreadable = (item: string): string => `The price of "${item}" can't be read.`;
export const writeItLikeUnits = (hint: string, example: string, priceUnits: string): string =>
  `${hint}Write it like ${example}; units: ${priceUnits}.`;
export const pricesHaveNoCurrency = 'The prices have no currency.';
export const currencyIsNotThree = 'The currency is not three capitals.';
export const writeCurrency = 'Write it by its three letters, like `currency: EUR`.';
export const idIsAlready = (id: string, holder: string): string => `The id "${id}" is already that of ${holder}.`;
export const giveEachDomeOpening = 'Give each dome, opening, passage and room an id of its own.';
export const noDomeHasId = (id: string): string => `No dome has the id "${id}".`;
export const domesAre = (hint: string, list: string): string => `${hint}Domes: ${list}.`;
export const passageJoinsToItself = (id: string, domeId: string): string =>
  `The passage "${id}" joins "${domeId}" to itself.`;
export const nameTwoDifferentDomes = 'Name two different domes.';
export const atFloor = 'at the floor';
export const atAboveFloor = (height: string): string => `at ${height} above the floor`;
export const descriptionOfCastBlock = 'Description of a cast-block dome house';
export const unitsAre = (kind: string): string => `Units: ${kind}.`;
export const rangeIs = (range: string): string => `Range: ${range}.`;
export const defaultIs = (defaultText: string): string => `Default: ${defaultText}.`;
export const rangeFromTo = (least: string, most: string): string => `${least} to ${most}`;
export const oneOf = (choices: string): string => `one of ${choices}`;
export const orInList = '; or ';
export const listOf = (count: number): string => `list of ${count}`;
export const aQuantity = 'a quantity';
export const aList = 'a list';
export const plainList = 'list';

/** Wording about quantities, their units and their measures. */
import type { QuantityKind } from '../units.js';

/** What a kind is called in a sentence, and an example of how to write it. */
export const KIND_WORDS: Readonly<Record<QuantityKind, { readonly noun: string; readonly example: string }>> = {
  length: { noun: 'a length', example: '2.1 m' },
  angle: { noun: 'an angle', example: '180 deg' },
  pressure: { noun: 'a pressure', example: '0.8 kPa' },
  density: { noun: 'a density', example: '600 kg/m3' },
  mass: { noun: 'a mass', example: '20 kg' },
  volume: { noun: 'a volume', example: '100 L' },
  flow: { noun: 'a delivery rate', example: '38 L/min' },
  duration: { noun: 'a time', example: '28 days' },
  fraction: { noun: 'a percentage', example: '0.25 %' },
};

export const hasNoUnit = `has no unit.`;
export const writeItsUnit = (kind: string): string => `Write its unit: ${kind}.`;
export const isLargerThanAnything = 'is larger than anything that can be measured.';
export const giveSize = 'Give the size that is meant.';
export const feetMustBeWhole = (written: string): string =>
  `is "${written}"; before inches the feet must be whole, and the inches fewer than 12.`;
export const writeFeetAndInches = `Write it like 6'-10 1/2" or 6 ft 10.5 in.`;
export const isOfOtherKind = (noun: string, unit: string, neededNoun: string): string =>
  `is ${noun} (${unit}); ${neededNoun} is needed here.`;
export const giveItIn = (noun: string, kind: string): string => `Give ${noun} in ${kind}.`;
export const didYouMean = (near: string): string => `Did you mean "${near}"? `;
export const hasUnknownUnit = (unit: string): string => `has the unknown unit "${unit}".`;
export const acceptedHere = (hint: string, kind: string): string => `${hint}Accepted here: ${kind}.`;
export const isUnreadable = (written: string, noun: string): string =>
  `is "${written}", which can't be read as ${noun}.`;
export const writeDecimalsWithPoint = (comma: string): string =>
  `Write decimals with a point${comma} and thousands without a separator.`;
export const writeItLike = (example: string, kind: string): string =>
  `Write it like ${example}${kind === 'length' ? ` or 6'-10 1/2"` : ''}.`;
export const daysLong = (figure: string): string => `${figure} days`;
export const asGiven = 'as given';
export const theDescription = 'the description';

import { nearest } from './suggest.js';
import * as texts from './texts/quantities.js';
import { findUnit, type QuantityKind, UNITS, type Unit } from './units.js';

/** Why a written quantity can't be taken; `code` is stable. */
export interface QuantityFault {
  readonly code:
    | 'quantity-unreadable'
    | 'quantity-size'
    | 'quantity-unit'
    | 'quantity-unit-missing'
    | 'quantity-kind'
    | 'quantity-feet-inches';
  /** A predicate: its subject is the key that the quantity stands at. */
  readonly message: string;
  readonly mend: string;
}

export type QuantityResult = { readonly value: number } | { readonly fault: QuantityFault };

interface Term {
  readonly amount: number;
  readonly whole: boolean;
  readonly unit: string;
}

const LONGEST = 60;
const NUMBER = String.raw`\d+[ -]\d+\/\d+|\d+\/\d+|(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?`;
// The power of `ft3` isn't taken when a further term follows, so that `6ft3in` is six feet three.
const POWER = String.raw`[23](?![\d.]*\s*[A-Za-z'"])`;
const UNIT = String.raw`['"%°]|[A-Za-z]+(?:${POWER})?(?:\/[A-Za-z]+(?:${POWER})?)?`;
const TERM = new RegExp(String.raw`\s*(${NUMBER})\s*(${UNIT})?\s*`, 'y');

/**
 * Reads a quantity into the base unit of its kind (mm, degrees, kPa, kg/m3, kg, L/min, days, fraction).
 * @param bare name of the unit of a number without one; `null` where the unit must be written.
 */
export function parseQuantity(written: number | string, kind: QuantityKind, bare: string | null): QuantityResult {
  if (typeof written === 'number') {
    if (!Number.isFinite(written)) return unreadable(String(written), kind);
    return inUnit({ amount: written, whole: Number.isInteger(written), unit: '' }, kind, bare);
  }
  const text = plainQuantity(written);
  const sign = text.startsWith('-') ? -1 : 1;
  const terms = text.length > LONGEST ? null : readTerms(text.replace(/^[+-]\s*/, ''));
  if (!terms) return unreadable(written, kind);
  const [first, second] = terms;
  if (!first) return unreadable(written, kind);
  const result = second ? feetAndInches(written, first, second, kind) : inUnit(first, kind, bare);
  // Adding 0 turns a negative zero into zero.
  return 'value' in result ? { value: sign * result.value + 0 } : result;
}

/** Reads a plain number, a decimal or a fraction without unit; `null` when it is none. */
export function parseNumber(written: number | string): number | null {
  if (typeof written === 'number') return Number.isFinite(written) ? written + 0 : null;
  const text = plainQuantity(written);
  const terms = text.length > LONGEST ? null : readTerms(text.replace(/^[+-]\s*/, ''));
  const term = terms?.[0];
  if (!term || terms.length > 1 || term.unit !== '' || !Number.isFinite(term.amount)) return null;
  return (text.startsWith('-') ? -term.amount : term.amount) + 0;
}

/** Typographic signs to the plain ones that the grammar knows. */
function plainQuantity(written: string): string {
  if (written.length > 4 * LONGEST) return written;
  return written
    .trim()
    .replace(/[′‘’]/g, "'")
    .replace(/''|[″“”]/g, '"')
    .replace(/[−–]/g, '-')
    .replace(/⁄/g, '/')
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/\^(?=[23])/g, '')
    .replace(/(?<=[A-Za-z])\s*\/\s*(?=[A-Za-z])/g, '/')
    .replace(/per cent/i, '%')
    .replace(/\s+/g, ' ');
}

function readTerms(text: string): Term[] | null {
  const terms: Term[] = [];
  let at = 0;
  while (at < text.length) {
    TERM.lastIndex = at;
    const match = TERM.exec(text);
    const figure = match?.[1];
    if (!match || figure === undefined || terms.length === 2) return null;
    const amount = readAmount(figure);
    if (amount === null) return null;
    terms.push({ amount, whole: /^\d+$/.test(figure), unit: match[2] ?? '' });
    at = TERM.lastIndex;
    // The customary dash between feet and inches: 6'-10".
    if (terms.length === 1 && text[at] === '-') at++;
  }
  return terms;
}

function readAmount(figure: string): number | null {
  const parts = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(figure);
  if (!parts) return Number(figure);
  const bottom = Number(parts[3]);
  return bottom === 0 ? null : Number(parts[1] ?? 0) + Number(parts[2]) / bottom;
}

function inUnit(term: Term, kind: QuantityKind, bare: string | null): QuantityResult {
  const name = term.unit === '' ? bare : term.unit;
  if (name === null) return fault('quantity-unit-missing', texts.hasNoUnit, texts.writeItsUnit(accepted(kind)));
  const unit = findUnit(kind, name);
  if (!unit) return wrongUnit(name, kind);
  const value = term.amount * unit.factor;
  if (Number.isFinite(value)) return { value: decimal(value) };
  return fault('quantity-size', texts.isLargerThanAnything, texts.giveSize);
}

function feetAndInches(written: string, first: Term, second: Term, kind: QuantityKind): QuantityResult {
  const named = [first, second].map((t) => findUnit('length', t.unit)?.name);
  if (kind !== 'length' || named[0] !== 'ft' || named[1] !== 'in') return unreadable(written, kind);
  if (!first.whole || second.amount >= 12)
    return fault('quantity-feet-inches', texts.feetMustBeWhole(shown(written)), texts.writeFeetAndInches);
  return { value: decimal((first.amount * 12 + second.amount) * (findUnit('length', 'in') as Unit).factor) };
}

/** Without the last bit's noise: 2.01 m is 2010 mm, not 2009.9999999999998. */
const decimal = (value: number): number => Number(value.toPrecision(15)) + 0;

function wrongUnit(name: string, kind: QuantityKind): QuantityResult {
  const { noun } = texts.KIND_WORDS[kind];
  for (const other of Object.keys(UNITS) as QuantityKind[])
    if (other !== kind && findUnit(other, name))
      return fault(
        'quantity-kind',
        texts.isOfOtherKind(texts.KIND_WORDS[other].noun, name, noun),
        texts.giveItIn(noun, accepted(kind)),
      );
  const near = nearest(
    name,
    UNITS[kind].flatMap((u) => [u.name, ...u.aliases]),
  );
  const hint = near === null ? '' : texts.didYouMean(near);
  return fault('quantity-unit', texts.hasUnknownUnit(name), texts.acceptedHere(hint, accepted(kind)));
}

function unreadable(written: string, kind: QuantityKind): QuantityResult {
  const { noun, example } = texts.KIND_WORDS[kind];
  // Three digits after a comma may as well be thousands.
  const comma = /^\s*([+-]?\d+),(\d\d?)(?![\d,.])/.exec(written);
  return fault(
    'quantity-unreadable',
    texts.isUnreadable(shown(written), noun),
    /\d,\d/.test(written)
      ? texts.writeDecimalsWithPoint(comma ? ` (${comma[1]}.${comma[2]})` : '')
      : texts.writeItLike(example, kind),
  );
}

const accepted = (kind: QuantityKind): string => UNITS[kind].map((u) => u.name).join(', ');

function fault(code: QuantityFault['code'], message: string, mend: string): { fault: QuantityFault } {
  return { fault: { code, message, mend } };
}

/** The user's own words in a message: one line, no control characters, at most 40 characters. */
export function shown(written: string): string {
  const line = written.slice(0, 80).replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}\uFFFD]+/gu, ' ');
  return line.length > 40 ? `${line.slice(0, 39)}…` : line;
}

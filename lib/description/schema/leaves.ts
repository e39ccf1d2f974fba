import { z } from 'zod';
import { parseNumber, parseQuantity, shown } from '../../base/quantities.js';
import type { ProblemCode } from '../../base/texts/problem-codes.js';
import { KIND_WORDS } from '../../base/texts/quantities.js';
import { formatNumber, formatQuantity, type LengthUnit, type QuantityKind } from '../../base/units.js';

/** What a leaf of the schema knows of itself, for documents; stands in its metadata under `leaf`. */
export interface LeafDoc {
  readonly kind: QuantityKind | 'number' | 'count' | 'text' | 'id' | 'date';
  /** Bounds in the base unit of the kind. */
  readonly least?: number;
  readonly most?: number;
  /** The unit of a number without one; `null` where the unit must be written. */
  readonly bare?: string | null;
  /** In words, where the default follows from other keys. */
  readonly defaultText?: string;
}

export interface Bounds {
  readonly least: number;
  readonly most: number;
  readonly defaultText?: string;
}

/** Rides on an issue of the schema. `said` continues a sentence whose subject is the key. */
export interface LeafFault {
  readonly code: ProblemCode;
  readonly said: string;
  readonly mend: string;
}

export const ID_PATTERN = '^[a-z][a-z0-9-]{0,31}$';
const ID = new RegExp(ID_PATTERN);
// Names that one operating system keeps for devices, with or without an extension.
const DEVICE = /^(con|prn|aux|nul|com\d|lpt\d)$/;
const LONGEST_TEXT = 200;
const UNFIT = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\uFFFD\u202A-\u202E\u2066-\u2069]/u;

/** Why a text can't be an id, or `null` when it can. */
export function idFault(id: string): LeafFault | null {
  if (DEVICE.test(id))
    return {
      code: 'id-unsafe',
      said: `is "${id}", a name that some systems keep for devices.`,
      mend: 'Take another id.',
    };
  // Results are kept in objects by id, and there it would find what every object has.
  if (id === 'constructor')
    return {
      code: 'id-unsafe',
      said: `is "${id}", a name that the program keeps for itself.`,
      mend: 'Take another id.',
    };
  if (ID.test(id)) return null;
  return {
    code: 'id-unsafe',
    said: `is "${shown(id)}", which can't name parts and files.`,
    mend: 'Use small letters a-z, digits and hyphens, a letter first, at most 32 characters.',
  };
}

interface IssueSink {
  readonly issues: { push(issue: { code: 'custom'; input: unknown; params: Record<string, unknown> }): unknown };
}

function refuse(ctx: IssueSink, input: unknown, fault: LeafFault): never {
  ctx.issues.push({ code: 'custom', input, params: { fault } });
  return z.NEVER;
}

const figure = (expected: string) => z.union([z.number(), z.string()], { error: expected });

/** The leaves of the schema for a file whose bare lengths are in `units`. */
export function leavesIn(units: LengthUnit) {
  const quantity = (kind: QuantityKind, about: string, bounds: Bounds, bare: string | null) =>
    figure(KIND_WORDS[kind].noun)
      .meta({ description: about, leaf: { kind, bare, ...bounds } satisfies LeafDoc })
      .transform((written, ctx): number => {
        const result = parseQuantity(written, kind, bare);
        if ('fault' in result) {
          const { code, message, mend } = result.fault;
          return refuse(ctx, written, { code, said: message, mend });
        }
        const { least, most } = bounds;
        if (result.value >= least && result.value <= most) return result.value;
        const [given, low, high] = [result.value, least, most].map((v) => formatQuantity(v, kind, units));
        const bound = result.value < least ? `less than ${low}` : `more than ${high}`;
        return refuse(ctx, written, {
          code: 'value-range',
          said: `is ${given}, ${bound}.`,
          mend: `Give ${KIND_WORDS[kind].noun} from ${low} to ${high}.`,
        });
      });

  const plain = (about: string, bounds: Bounds, whole: boolean) =>
    figure(whole ? 'a whole number' : 'a number')
      .meta({ description: about, leaf: { kind: whole ? 'count' : 'number', ...bounds } satisfies LeafDoc })
      .transform((written, ctx): number => {
        const value = parseNumber(written);
        const range = `from ${formatNumber(bounds.least)} to ${formatNumber(bounds.most)}`;
        const mend = `Give a ${whole ? 'whole ' : ''}number ${range}, without a unit.`;
        const given = shown(String(written));
        if (value === null)
          return refuse(ctx, written, { code: 'value-number', said: `is "${given}", which is no plain number.`, mend });
        if (value < bounds.least || value > bounds.most)
          return refuse(ctx, written, { code: 'value-range', said: `is ${given}, outside ${range.slice(5)}.`, mend });
        if (whole && !Number.isInteger(value))
          return refuse(ctx, written, { code: 'value-whole', said: `is ${given}, not a whole number.`, mend });
        return value;
      });

  return {
    units,
    length: (about: string, bounds: Bounds) => quantity('length', about, bounds, units),
    /** A length whose bare number is in mm whatever the file's units: a printer's sizes. */
    millimetres: (about: string, bounds: Bounds) => quantity('length', about, bounds, 'mm'),
    bearing: (about: string) => quantity('angle', about, { least: -360, most: 360 }, 'deg'),
    quantity: (kind: Exclude<QuantityKind, 'length' | 'angle'>, about: string, bounds: Bounds) =>
      quantity(kind, about, bounds, null),
    number: (about: string, bounds: Bounds) => plain(about, bounds, false),
    count: (about: string, bounds: Bounds) => plain(about, bounds, true),

    text: (about: string, defaultText?: string) =>
      z
        .union([z.string(), z.number()], { error: 'text' })
        .meta({ description: about, leaf: { kind: 'text', ...(defaultText ? { defaultText } : {}) } satisfies LeafDoc })
        .transform((written, ctx): string => {
          const text = String(written);
          if (text.length <= LONGEST_TEXT && !UNFIT.test(text)) return text;
          return refuse(ctx, written, {
            code: 'value-text',
            said: text.length > LONGEST_TEXT ? `is ${text.length} characters long.` : 'holds control characters.',
            mend: `Give one line of plain text, at most ${LONGEST_TEXT} characters.`,
          });
        }),

    id: (about: string) =>
      z
        .string({ error: 'an id' })
        .meta({ description: about, pattern: ID_PATTERN, leaf: { kind: 'id' } satisfies LeafDoc })
        .transform((written, ctx): string => {
          const fault = idFault(written);
          return fault ? refuse(ctx, written, fault) : written;
        }),

    date: (about: string) =>
      z
        .string({ error: 'a date' })
        .meta({
          description: about,
          pattern: String.raw`^\d{4}-\d{2}-\d{2}$`,
          leaf: { kind: 'date', defaultText: 'undated' } satisfies LeafDoc,
        })
        .transform((written, ctx): string => {
          if (isDate(written)) return written;
          return refuse(ctx, written, {
            code: 'date-unreal',
            said: `is "${shown(written)}", which is no date of the calendar.`,
            mend: 'Write year, month and day like 2026-05-04.',
          });
        }),
  };
}

export type Leaves = ReturnType<typeof leavesIn>;

function isDate(text: string): boolean {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!parts) return false;
  const [year, month, day] = parts.slice(1).map(Number) as [number, number, number];
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  return year >= 1900 && day >= 1 && day <= (days[month - 1] ?? 0);
}

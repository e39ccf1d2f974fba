import type { z } from 'zod';
import type { ProblemCode } from '../base/texts/problem-codes.js';
import * as texts from '../base/texts/problems-values.js';
import { LENGTH_UNITS, type LengthUnit } from '../base/units.js';
import type { Draft, Placed } from './draft.js';
import { isMapping, subjectOf, tellIssues } from './issues.js';
import {
  blocksFrom,
  castingFrom,
  centeringFrom,
  domeFrom,
  drawingsFrom,
  footingFrom,
  materialFrom,
  openingFrom,
  partitionFrom,
  passageFrom,
  printFrom,
  projectFrom,
  roomFrom,
  settingOutFrom,
  siteFrom,
  slabFrom,
  tieFrom,
  wallFrom,
  warmthFrom,
} from './normal.js';
import { pricesFrom } from './prices.js';
import { type Path, type ProblemList, pathText } from './problem-list.js';
import { type DescriptionSchema, descriptionSchema, LISTS } from './schema.js';

type Input = Readonly<Record<string, unknown>>;
/** The format that this version reads. */
const FORMAT = 1;

type Mute = ReadonlySet<ProblemCode>;

/**
 * Reads every section and every entry of a list by itself, so that a problem in one hides none in another.
 * @param input plain data: the whole description
 */
export function readSections(input: unknown, problems: ProblemList): Draft | undefined {
  const units = unitsOf(input);
  // Without the unit of bare lengths nothing can be said of their size.
  const mute: Mute = new Set(units === undefined ? (['value-range'] as const) : []);
  const schema = descriptionSchema(units ?? 'm');
  const reader = new SectionReader(problems, mute);
  const top = reader.top(input, schema);
  if (!top) return undefined;

  const { shape } = schema;
  const section = <T>(key: string, part: z.ZodType<T>) => reader.section(top, key, part);
  const wall = map(section('wall', shape.wall), wallFrom);
  const footing = section('footing', shape.footing);
  const prices = section('prices', shape.prices);
  return {
    units: units ?? 'm',
    unitsKnown: units !== undefined,
    project: map(section('project', shape.project), projectFrom),
    site: map(section('site', shape.site), siteFrom),
    wall,
    blocks: map(section('blocks', shape.blocks), blocksFrom),
    domes: reader.list(top, 'domes', shape.domes.element).map((e) => placed(e, domeFrom)),
    openings: reader.list(top, 'openings', shape.openings.unwrap().element).map((e) => placed(e, openingFrom)),
    passages: reader.list(top, 'passages', shape.passages.unwrap().element).map((e) => placed(e, passageFrom)),
    rooms: reader.list(top, 'rooms', shape.rooms.unwrap().element).map((e) => placed(e, roomFrom)),
    partitions: reader.list(top, 'partitions', shape.partitions.unwrap().element).map((e) => placed(e, partitionFrom)),
    footing: footing === undefined || !wall ? undefined : footingFrom(footing, wall.thickness),
    slab: map(section('slab', shape.slab), slabFrom),
    tie: tieFrom(section('tie', shape.tie)),
    material: map(section('material', shape.material), materialFrom),
    casting: map(section('casting', shape.casting), castingFrom),
    settingOut: map(section('setting-out', shape['setting-out']), settingOutFrom),
    centering: map(section('centering', shape.centering), centeringFrom),
    warmth: map(section('warmth', shape.warmth), warmthFrom),
    drawings: map(section('drawings', shape.drawings), drawingsFrom),
    print: map(section('print', shape.print), printFrom),
    prices: map(prices, (p) => pricesFrom(p, problems)),
    ids: idsOf(top),
    references: referencesOf(top),
  };
}

const map = <T, U>(value: T | undefined, to: (value: T) => U): U | undefined =>
  value === undefined ? undefined : to(value);
const placed = <T, U>({ path, value }: Placed<T>, to: (value: T) => U): Placed<U> => ({ path, value: to(value) });

/** The unit of bare lengths; `undefined` when what is written names none. */
function unitsOf(input: unknown): LengthUnit | undefined {
  if (!isMapping(input) || !('units' in input)) return 'm';
  return LENGTH_UNITS.find((unit) => unit === input.units);
}

function idsOf(top: Input): Placed<string>[] {
  return Object.keys(LISTS).flatMap((key) => {
    const list = top[key];
    if (!Array.isArray(list)) return [];
    return list.flatMap((entry, i) =>
      isMapping(entry) && typeof entry.id === 'string' ? [{ path: [key, i, 'id'], value: entry.id }] : [],
    );
  });
}

function referencesOf(top: Input): Placed<string>[] {
  const { domes } = top;
  if (!Array.isArray(domes) || !domes.every((dome) => isMapping(dome) && typeof dome.id === 'string')) return [];
  const found: Placed<unknown>[] = [];
  for (const key of ['openings', 'passages', 'rooms', 'partitions']) {
    const list = top[key];
    if (!Array.isArray(list)) continue;
    for (const [i, entry] of list.entries()) {
      if (!isMapping(entry)) continue;
      found.push({ path: [key, i, 'in'], value: entry.in });
      if (Array.isArray(entry.between))
        for (const [end, value] of entry.between.entries()) found.push({ path: [key, i, 'between', end], value });
    }
  }
  const { print } = top;
  if (isMapping(print) && isMapping(print['loose-blocks']))
    found.push({ path: ['print', 'loose-blocks', 'in'], value: print['loose-blocks'].in });
  return found.filter((ref): ref is Placed<string> => typeof ref.value === 'string');
}

class SectionReader {
  #misspelt: ReadonlySet<string> = new Set();

  constructor(
    readonly problems: ProblemList,
    readonly mute: Mute,
  ) {}

  /** Checks the sections' names, `format` and `units`; the sections themselves follow one by one. */
  top(input: unknown, schema: DescriptionSchema): Input | undefined {
    if (!isMapping(input)) {
      const parsed = schema.safeParse(input);
      if (!parsed.success) tellIssues(parsed.error.issues, input, [], this.problems, this.mute);
      return undefined;
    }
    const own = Object.keys(schema.shape).filter((key) => key !== 'format' && key !== 'units');
    const frame = Object.fromEntries(Object.entries(input).filter(([key]) => !own.includes(key)));
    const { format, ...named } = frame;
    if (format === undefined && !('format' in input))
      this.problems.add('key-missing', ['format'], texts.keyFormatIsMissing, 'Write `format: 1`.', 'key');
    else if (format !== 1 && format !== '1') this.otherFormat(format);
    const parsed = schema.pick({ units: true }).strict().safeParse(named);
    if (!parsed.success) this.#misspelt = tellIssues(parsed.error.issues, named, [], this.problems, this.mute).misspelt;
    return input;
  }

  /** The first format is 1, so that only a later one can be another's. */
  otherFormat(format: unknown): void {
    const later = typeof format === 'number' && Number.isInteger(format) && format > FORMAT;
    const message = later ? texts.formatIsLater(format, FORMAT) : texts.formatIsNone(FORMAT);
    const mend = later ? texts.installLaterVersion(FORMAT) : texts.writeFormat(FORMAT);
    this.problems.add('format-unknown', ['format'], message, mend);
  }

  section<T>(top: Input, key: string, schema: z.ZodType<T>): T | undefined {
    return this.#misspelt.has(key) && !(key in top) ? undefined : this.sound(schema, top[key], [key]);
  }

  list<T>(top: Input, key: keyof typeof LISTS, element: z.ZodType<T>): Placed<T>[] {
    const { least, most } = LISTS[key];
    const list = top[key] ?? (key in top || least > 0 ? undefined : []);
    if (!Array.isArray(list)) {
      if (!this.#misspelt.has(key)) this.noList(top, key);
      return [];
    }
    if (list.length < least || list.length > most) {
      const number = list.length < least ? texts.atLeast(least) : texts.atMost(most);
      this.problems.add('list-length', [key], texts.hasEntries(key, list.length), texts.giveThis(number));
    }
    return list.slice(0, most).flatMap((raw, i) => {
      const path = [key, i];
      const value = this.sound(element, raw, path);
      return value === undefined ? [] : [{ path, value }];
    });
  }

  noList(top: Input, key: string): void {
    const path = [key];
    if (!(key in top)) this.problems.add('key-missing', path, texts.keyIsMissing(key), texts.addItAlone, 'key');
    else if (top[key] === null || top[key] === undefined)
      this.problems.add('value-missing', path, texts.hasNoValue(subjectOf(path)), texts.giveListOrRemove);
    else this.problems.add('value-type', path, texts.isNoList(subjectOf(path)), texts.giveList);
  }

  /** The value when nothing but keys unknown everywhere was wrong with it. */
  sound<T>(schema: z.ZodType<T>, raw: unknown, path: Path): T | undefined {
    const parsed = schema.safeParse(raw);
    if (parsed.success) return parsed.data;
    const told = tellIssues(parsed.error.issues, raw, path, this.problems, this.mute);
    if (!told.strayOnly) return undefined;
    const again = schema.safeParse(without(raw, path, new Set(told.strays.map(pathText))));
    return again.success ? again.data : undefined;
  }
}

/** A copy of plain data without the entries at the named paths. */
function without(raw: unknown, path: Path, strays: ReadonlySet<string>): unknown {
  if (Array.isArray(raw)) return raw.map((item, i) => without(item, [...path, i], strays));
  if (!isMapping(raw)) return raw;
  const kept = Object.entries(raw).filter(([key]) => !strays.has(pathText([...path, key])));
  return Object.fromEntries(kept.map(([key, value]) => [key, without(value, [...path, key], strays)]));
}

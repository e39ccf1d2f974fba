import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CAUTION } from '../../lib/base/texts/cautions.js';
import { checkHouse, houseTable, houseTables } from '../../lib/deliver/package.js';
import { TABLES } from '../../lib/deliver/tables.js';
import type { House } from '../../lib/description/house.js';
import { readDescription } from '../../lib/description/read.js';
import type { Table } from '../../lib/documents/table.js';
import { auditTable, columnHead } from '../../lib/documents/table-audit.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const sample = (name: string): House => readDescription(readFileSync(`samples/${name}.yaml`, 'utf8'), `${name}.yaml`);
const house = houseOf({ openings: [openingOf()] });
const of = async (id: string, described: House = house): Promise<Table> => {
  const table = await houseTable(described, id);
  if (!table) throw new Error(`no table ${id}`);
  return table;
};
const column = (table: Table, key: string) => table.rows.map((row) => row[key] as number);

describe.each(['garden-studio', 'creek-cabin', 'chain-chapel', 'low-store', 'family-house'])(
  'tables of %s',
  async (name) => {
    const tables = await houseTables(sample(name));

    it('are those that are listed, each cell of its column’s kind', () => {
      expect(tables.map((t) => t.id)).toEqual(TABLES.map((t) => t.id));
      expect(new Set(tables.map((t) => t.id)).size).toBe(tables.length);
      for (const table of tables) auditTable(table);
    });

    it('have the unit of every measure in its header, metric or feet and pounds alone', () => {
      const feet = name === 'creek-cabin';
      // A value stands beside its unit; a ratio has none.
      const bare = ['value', 'factor', 'untied', 'ratio'];
      const foreign = feet ? /^(mm|m|m2|m3|kg|L|kg\/m3)$/ : /^(in|ft|ft2|ft3|lb|gal|lb\/ft3|fl oz)$/;
      for (const { id, columns, rows } of tables) {
        const named = columns.some((c) => c.key === 'unit');
        for (const c of columns) {
          if (c.kind !== 'number' || named) continue;
          expect(c.unit === undefined ? 'no unit' : '', `${id}: ${columnHead(c)}`).toBe(
            bare.includes(c.key) ? 'no unit' : '',
          );
          expect(c.unit ?? '', `${id}: ${c.label}`).not.toMatch(foreign);
        }
        if (named && id !== 'warmth') for (const row of rows) expect(row.unit ?? '', id).not.toMatch(foreign);
      }
    });

    it('laying: a hoist for each block over 20 kg, dry or as it leaves its form (HSE CIS 37), and for no other', () => {
      const laying = tables.find((t) => t.id === 'laying');
      const most = laying?.columns.find((c) => c.key === 'wet')?.unit === 'lb' ? 20 / 0.45359237 : 20;
      for (const { dome, course, dry, wet, lift } of laying?.rows ?? [])
        expect(String(lift).includes('hoist'), `${dome}-${course}: ${lift}`).toBe(
          Math.max(dry as number, wet as number) > most,
        );
    });

    it('carry the caution where the hand is', () => {
      const notes = (id: string) => tables.find((t) => t.id === id)?.notes ?? [];
      for (const id of [
        'pegs',
        'laying',
        'rooms',
        'dwelling',
        'circles',
        'bearings',
        'radius-pole',
        'calendar',
        'forms',
        'centering-ribs',
        'quantities',
      ])
        expect(notes(id), id).toContain(CAUTION.authority);
      for (const id of ['laying', 'radius-pole', 'meridian-template', 'calendar', 'forms', 'lagging'])
        expect(notes(id), id).toContain(CAUTION.rings);
      for (const id of ['mix', 'foam-correction', 'laying']) expect(notes(id), id).toContain(CAUTION.cement);
      for (const id of ['mould-copies', 'laying']) expect(notes(id)).toContain(CAUTION.lifting);
      expect(notes('warmth').join()).toContain('Moist blocks');
    });
  },
);

describe('single tables', () => {
  it('radius pole: a row a course and one for the crown, whole millimetres, length and angle give the edge', async () => {
    const table = await of('radius-pole');
    expect(table.rows).toHaveLength(
      ((await houseTables(house)).find((t) => t.id === 'courses')?.rows.length as number) + 1,
    );
    for (const row of table.rows) {
      const [length, angle, pivot] = [row.length, row.angle, row['pivot-level']] as number[] as [
        number,
        number,
        number,
      ];
      expect(length * Math.cos((angle * Math.PI) / 180)).toBeCloseTo(row.radius as number, 6);
      expect(pivot + length * Math.sin((angle * Math.PI) / 180)).toBeCloseTo(row.level as number, 6);
    }
    expect(table.columns.filter((c) => c.unit === 'mm').every((c) => c.decimals === 0)).toBe(true);
  });

  it('meridian template: rows where no pole reaches, and says so where none is needed', async () => {
    const chain = houseOf({ domes: [domeOf({ shape: 'catenary', radius: 2500, rise: 2800 })] });
    expect((await of('meridian-template', chain)).rows.length).toBeGreaterThan(20);
    expect((await of('template-boards', chain)).rows.length).toBeGreaterThan(1);
    expect((await of('meridian-template')).rows).toEqual([]);
    expect((await of('meridian-template')).notes?.[0]).toContain('No template is needed');
  });

  it('mix: the batch is its share of the whole', async () => {
    const table = await of('mix');
    const shares = column(table, 'batch').map((v, i) => (v ?? 0) / (column(table, 'cubic')[i] ?? 1));
    for (const [i, share] of shares.entries()) if (table.rows[i]?.batch !== null) expect(share).toBeCloseTo(0.1, 9);
    expect(table.rows.find((r) => r.what === 'mixer running')?.batch).toBeNull();
    const mixed = await of('mix', { ...house, casting: { ...house.casting, mixerLitresPerMinute: 40 } });
    expect(mixed.rows.find((r) => r.what === 'mixer running')?.batch).toBeCloseTo(2.5, 9);
  });

  it('calendar: who fills just the moulds that its words name casts every piece once, longer blocks by themselves', async () => {
    const tables = new Map((await houseTables(sample('family-house'))).map((table) => [table.id, table]));
    const rows = (id: string) => tables.get(id)?.rows ?? [];
    const copies = rows('mould-copies');
    const order = copies.map((r) => r.mould as string);
    const filled = new Map<string, number>();
    for (const { cast } of rows('calendar'))
      for (const words of ((cast as string | null) ?? '').split('; ').filter((w) => w !== '')) {
        const [names, count] = words.split(': ') as [string, string];
        const [first, last] = names.split(/ (?:to|and) /) as [string, string | undefined];
        for (const mould of order.slice(order.indexOf(first), order.indexOf(last ?? first) + 1))
          filled.set(mould, (filled.get(mould) ?? 0) + Number.parseInt(count, 10));
      }
    expect(Object.fromEntries(filled)).toEqual(Object.fromEntries(copies.map((r) => [r.mould, r.pieces])));
    const forms = [...new Set([...rows('long-moulds').map((r) => r.mould), ...rows('voussoirs').map((r) => r.form)])];
    for (const form of forms.filter((f) => !`${f}`.endsWith(' ring'))) expect(order).toContain(form);
  });

  it('calendar: days ascend, pours are those of the copies table', async () => {
    const days = column(await of('calendar'), 'day');
    expect([...days].sort((a, b) => a - b)).toEqual(days);
    const sum = (values: readonly (number | null)[]) => values.reduce((all: number, v) => all + (v ?? 0), 0);
    expect(sum(column(await of('calendar'), 'pours'))).toBe(sum(column(await of('mould-copies'), 'pieces')));
  });

  it('bill: a missing price leaves the total empty and says so; nothing is ever zero for want of a price', async () => {
    const bill = await of('bill');
    const total = bill.rows.find((r) => r.item === 'total');
    expect(total?.cost).toBeNull();
    expect(total?.missing).toMatch(/^\d+ of \d+ lines unknown$/);
    expect(bill.rows.every((r) => r.cost === null)).toBe(true);
    expect(bill.notes?.[0]).toContain('unknown, not zero');
  });

  it('warmth: says what it is computed with, and where each value comes from', async () => {
    const { notes = [] } = await of('warmth', {
      ...house,
      warmth: { ...house.warmth, groundConductivity: 1.5, door: 2.5 },
    });
    const told = notes.join(' ');
    for (const part of ['ground of 1.5 W/(m K)', 'doors of 2.5 W/(m2 K)', 'ISO 10456', 'ISO 13370', 'no source'])
      expect(told).toContain(part);
  });

  it('forms: the days of an arch that is cast on several begin with its first', async () => {
    const casting = { ...house.casting, mixerLitresPerMinute: 1 };
    const [row] = (await of('forms', { ...house, casting })).rows;
    expect(row?.cast as number).toBeGreaterThan(row?.from as number);
    const days = (await of('calendar', { ...house, casting })).rows.filter((r) => r.arches !== null).map((r) => r.day);
    expect([days[0], days.at(-1)]).toEqual([row?.from, row?.cast]);
    expect(row?.strike).toBe((row?.cast as number) + casting.archStrikeDays);
  });

  it('quantities: net and waste make the order', async () => {
    for (const { net, waste, gross } of (await of('quantities')).rows)
      if (net !== null) expect((net as number) + (waste as number)).toBeCloseTo(gross as number, 9);
  });
});

describe('checks of the works', () => {
  const check = (id: string, part: Partial<House['casting']> = {}) =>
    checkHouse({ ...house, casting: { ...house.casting, ...part } }).checks.find((c) => c.id === id);

  it('target days that can not be met fail, with the least possible', () => {
    const failed = check('casting-days', { targetDays: 1 });
    expect(failed?.state).toBe('fails');
    const least = failed?.demand?.value as number;
    expect(failed?.statement).toContain(`the least possible is ${least} day`);
    expect(check('casting-days', { targetDays: least })?.state).toBe('ok');
    expect(check('casting-days')).toBeUndefined();
  });

  it('a mixer that is not known is named, and one that is too small to fill a block in a day fails', () => {
    expect(check('casting-mixer')?.advice).toContain('casting.mixer');
    expect(check('casting-mixer', { mixerLitresPerMinute: 38 })).toBeUndefined();
    expect(check('casting-day', { mixerLitresPerMinute: 0.1, hoursPerDay: 0.5 })).toMatchObject({ state: 'fails' });
  });
});

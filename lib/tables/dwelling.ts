import { CAUTION } from '../base/cautions.js';
import type { Cell, Table } from '../documents/table.js';
import { dwellingChecks } from '../dwelling/checks.js';
import { areaOf } from '../dwelling/clear.js';
import type { Dwelling } from '../dwelling/dwelling.js';
import { AIR_SHARE, EDITION, LIGHT_SHARE } from '../dwelling/rules.js';
import type { HouseSetout } from '../setout/house.js';
import { numberColumn, tableUnits, textColumn } from './units.js';

const NOTES = [
  `Information by ${EDITION}, partly from memory; the code in force where the house stands governs.`,
  CAUTION.authority,
];

/** One row a room: its floor by headroom, glazing and air. */
export function roomTable(house: HouseSetout, { rooms }: Dwelling): Table {
  const units = tableUnits(house.house.units);
  const area = (m2: number) => units.area.of(m2);
  return {
    id: 'rooms',
    title: 'Rooms',
    columns: [
      textColumn('room', 'room'),
      textColumn('name', 'name'),
      textColumn('dome', 'dome'),
      textColumn('use', 'use'),
      numberColumn('floor', 'floor', units.area),
      numberColumn('low', 'floor under 1524 mm (5 ft) or more', units.area),
      numberColumn('bath', 'under 2032 mm (6 ft 8 in) or more', units.area),
      numberColumn('full', 'under 2134 mm (7 ft) or more', units.area),
      numberColumn('width', 'least width under 1524 mm (5 ft)', units.site),
      numberColumn('highest', 'highest point', units.site),
      numberColumn('glazing-wanted', '8 % of the floor', units.area),
      numberColumn('glazing', 'glazing', units.area),
      numberColumn('air-wanted', '4 % of the floor', units.area),
      numberColumn('air', 'openings for air', units.area),
      textColumn('escape', 'ways to escape'),
    ],
    rows: rooms.map((r) => ({
      room: r.room.id,
      name: r.room.name,
      dome: r.room.in,
      use: r.room.use,
      floor: area(r.floor),
      low: area(r.low),
      bath: area(r.bath),
      full: area(r.full),
      width: units.site.of(r.width),
      highest: units.site.of(r.highest),
      'glazing-wanted': area(LIGHT_SHARE * r.floor),
      glazing: area(r.glazing),
      'air-wanted': area(AIR_SHARE * r.floor),
      air: area(r.air),
      escape: r.escapes.join(', '),
    })),
    notes: [
      rooms.length === 0
        ? 'No rooms are described.'
        : 'A room is its whole dome to the finished faces; rooms in one dome are measured as one.',
      'Barrels and passages add no floor here; the oculus adds no glazing.',
      ...NOTES,
    ],
  };
}

/** One row a rule, and one a clear opening: what is asked for, what the house gives. */
export function dwellingTable(house: HouseSetout, dwelling: Dwelling): Table {
  const units = tableUnits(house.house.units);
  const inUnits = (value: number, unit: string): { value: number; unit: string } =>
    unit === 'm2'
      ? { value: units.area.of(value), unit: units.area.unit }
      : { value: units.length.of(value), unit: units.length.unit };
  const sizes = dwelling.openings.flatMap(({ id, use, clear }) =>
    (
      [
        ['clear width', clear.width, 'mm'],
        ['clear height', clear.height, 'mm'],
        ['lower edge above the floor', clear.sill, 'mm'],
        ['clear area', areaOf(clear), 'm2'],
      ] as const
    ).map(([label, value, unit]) => {
      const shown = inUnits(value, unit);
      return {
        what: `${use} ${id}: ${label}`,
        wanted: null,
        found: shown.value,
        unit: shown.unit,
        state: '',
        rule: '',
      };
    }),
  );
  const rules = dwellingChecks(house, dwelling).map((check): Record<string, Cell> => {
    const { demand, capacity, state, statement, source } = check;
    if (!demand || !capacity) return { what: statement, wanted: null, found: null, unit: '', state, rule: source };
    const most = demand.id.endsWith('.found');
    const first = inUnits(demand.value, demand.unit);
    const second = inUnits(capacity.value, capacity.unit);
    return {
      what: statement,
      wanted: most ? second.value : first.value,
      found: most ? first.value : second.value,
      unit: first.unit,
      state,
      rule: `${most ? capacity.label : demand.label}; ${source}`,
    };
  });
  return {
    id: 'dwelling',
    title: 'To live in it',
    columns: [
      textColumn('what', 'what'),
      { key: 'wanted', label: 'asked for', kind: 'number', decimals: 2 },
      { key: 'found', label: 'in this house', kind: 'number', decimals: 2 },
      textColumn('unit', 'unit'),
      textColumn('state', 'state'),
      textColumn('rule', 'rule'),
    ],
    rows: [...rules, ...sizes],
    notes: ['Clear: the rectangle inside the arch less frame and leaf.', ...NOTES],
  };
}

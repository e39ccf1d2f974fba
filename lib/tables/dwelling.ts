import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-house.js';
import type { Cell, Table } from '../documents/table.js';
import { dwellingChecks } from '../dwelling/checks.js';
import { areaOf } from '../dwelling/clear.js';
import type { Dwelling } from '../dwelling/dwelling.js';
import { AIR_SHARE, EDITION, LIGHT_SHARE } from '../dwelling/rules.js';
import type { HouseSetout } from '../setout/house.js';
import { numberColumn, tableUnits, textColumn } from './units.js';

const NOTES = [texts.informationByPartly(EDITION), CAUTION.authority];

/** One row a room: its floor by headroom, glazing and air. */
export function roomTable(house: HouseSetout, { rooms }: Dwelling): Table {
  const units = tableUnits(house.house.units);
  const area = (m2: number) => units.area.of(m2);
  return {
    id: 'rooms',
    title: texts.rooms,
    columns: [
      textColumn('room', texts.room),
      textColumn('name', texts.nameWord),
      textColumn('dome', texts.dome),
      textColumn('use', texts.use),
      numberColumn('floor', texts.floor, units.area),
      numberColumn('low', texts.floorUnder5Ft, units.area),
      numberColumn('bath', texts.floorUnder6Ft8, units.area),
      numberColumn('full', texts.floorUnder7Ft, units.area),
      numberColumn('width', texts.leastWidthUnder5Ft, units.site),
      numberColumn('highest', texts.highestPoint, units.site),
      numberColumn('glazing-wanted', texts.leastGlazingColumn, units.area),
      numberColumn('glazing', texts.glazing, units.area),
      numberColumn('air-wanted', texts.leastOpeningsColumn, units.area),
      numberColumn('air', texts.openingsForAir, units.area),
      textColumn('escape', texts.waysToEscape),
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
      rooms.length === 0 ? texts.noRoomsAreDescribed : texts.roomIsItsWhole,
      texts.barrelsAndPassagesAdd,
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
        [texts.clearWidth, clear.width, 'mm'],
        [texts.clearHeight, clear.height, 'mm'],
        [texts.lowerEdgeAboveFloor, clear.sill, 'mm'],
        [texts.clearArea, areaOf(clear), 'm2'],
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
    title: texts.toLiveInIt,
    columns: [
      textColumn('what', texts.what),
      { key: 'wanted', label: texts.askedFor, kind: 'number', decimals: 2 },
      { key: 'found', label: texts.inThisHouse, kind: 'number', decimals: 2 },
      textColumn('unit', texts.unit),
      textColumn('state', texts.state),
      textColumn('rule', texts.rule),
    ],
    rows: [...rules, ...sizes],
    notes: [texts.clearRectangleInsideArch, ...NOTES],
  };
}

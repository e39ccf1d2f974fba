import { CAUTION } from '../base/cautions.js';
import type { Table } from '../documents/table.js';
import type { HouseSetout } from '../setout/house.js';
import type { Calendar } from '../works/calendar.js';
import { countColumn, numberColumn, tableUnits, textColumn } from './units.js';

const list = (names: readonly string[]): string | null => (names.length > 0 ? names.join(', ') : null);

/** What is cast, struck and laid on each day. */
export function calendarTable(house: HouseSetout, calendar: Calendar): Table {
  const units = tableUnits(house.house.units);
  const { casting } = house.house;
  const fresh = (mm3: number) => (mm3 / 1e6) * (1 + casting.waste);
  const mixer = casting.mixerLitresPerMinute;
  return {
    id: 'calendar',
    title: 'Casting and laying calendar',
    columns: [
      countColumn('day', 'day'),
      textColumn('cast', 'cast, by mould'),
      countColumn('pours', 'pours'),
      numberColumn('mix', 'fresh mix, waste included', units.liquid),
      { key: 'mixer', label: 'mixer', kind: 'number', unit: 'min', decimals: 0 },
      textColumn('arches', 'arches cast or laid on centering'),
      textColumn('strike', 'centering struck'),
      textColumn('laid', 'courses laid'),
      textColumn('crown', 'crown closed'),
    ],
    rows: calendar.days.map((day) => ({
      day: day.day,
      cast: list(day.cast.map((c) => `${c.mould} × ${c.pieces}`)),
      pours: day.cast.length > 0 ? day.cast.reduce((sum, c) => sum + c.pieces, 0) : null,
      mix: day.cast.length > 0 ? units.liquid.of(fresh(day.mix)) : null,
      mixer: day.cast.length > 0 && mixer !== null ? fresh(day.mix) / mixer : null,
      arches: list(day.arches),
      strike: list(day.struck),
      laid: list(day.laid),
      crown: list(day.closed),
    })),
    notes: [
      `Working days from 1; days without work are left out. At most ${calendar.poursPerDay} pours a day, as the ${calendar.limitedBy} allows.`,
      `Blocks leave their moulds after ${casting.demouldDays} days, are laid from ${casting.readyToLayDays} days after casting on, and only when their cubes have the strength; centering stands ${casting.archStrikeDays} days.`,
      'Each arch is cast after the blocks and struck before a course goes past its crown. In the cold everything takes longer: cubes decide, not this calendar.',
      CAUTION.rings,
      CAUTION.cubes,
      CAUTION.authority,
    ],
  };
}

/** How many copies of each mould to make. */
export function mouldCopyTable(house: HouseSetout, calendar: Calendar): Table {
  const units = tableUnits(house.house.units);
  const days = calendar.targetDays === null ? '' : `; asked: ${calendar.targetDays}`;
  return {
    id: 'mould-copies',
    title: 'Copies of moulds',
    columns: [
      textColumn('mould', 'mould'),
      countColumn('pieces', 'pieces to cast'),
      countColumn('copies', 'copies to make'),
      numberColumn('volume', 'volume of one piece', units.pieceVolume),
    ],
    rows: calendar.moulds.map(({ mould, pieces, copies, volume }) => ({
      mould,
      pieces,
      copies,
      volume: units.pieceVolume.of(volume),
    })),
    notes: [
      `${calendar.moulds.reduce((sum, m) => sum + m.copies, 0)} copies cast everything in ${calendar.castingDays} days${days}; the least possible with any number of moulds is ${calendar.leastDays}.`,
      calendar.mouldsProven
        ? 'No smaller number of copies does it in these days: proven by search.'
        : 'A smaller number of copies may do: the search was cut short.',
      'Oil moulds with release agent, not with waste oil.',
      CAUTION.lifting,
    ],
  };
}

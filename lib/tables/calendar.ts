import { CAUTION } from '../base/cautions.js';
import { formatQuantity } from '../base/units.js';
import type { Table } from '../documents/table.js';
import type { HouseSetout } from '../setout/house.js';
import type { Calendar } from '../works/calendar.js';
import { countColumn, numberColumn, tableUnits, textColumn } from './units.js';

/** Moulds next to each other in the list of copies that are filled as often are told as one stretch. */
function castText(cast: Calendar['days'][number]['cast'], place: ReadonlyMap<string, number>): string | null {
  const stretches: { first: string; last: string; moulds: number; pieces: number }[] = [];
  for (const { mould, pieces } of cast) {
    const now = stretches[stretches.length - 1];
    if (now?.pieces === pieces && place.get(mould) === (place.get(now.last) as number) + 1) {
      now.last = mould;
      now.moulds++;
    } else stretches.push({ first: mould, last: mould, moulds: 1, pieces });
  }
  const texts = stretches.map(({ first, last, moulds, pieces }) => {
    const all = first === last ? first : moulds === 2 ? `${first} and ${last}` : `${first} to ${last}`;
    return `${all}: ${pieces}${moulds > 1 ? ' each' : ''}`;
  });
  return texts.length > 0 ? texts.join('; ') : null;
}

const list = (names: readonly string[]): string | null => (names.length > 0 ? names.join(', ') : null);

const days = (count: number): string => formatQuantity(count, 'duration', 'm');

/** What is cast, struck and laid on each day. */
export function calendarTable(house: HouseSetout, calendar: Calendar): Table {
  const units = tableUnits(house.house.units);
  const { casting } = house.house;
  const fresh = (mm3: number) => (mm3 / 1e6) * (1 + casting.waste);
  const mixer = casting.mixerLitresPerMinute;
  const place = new Map(calendar.moulds.map(({ mould }, i) => [mould, i]));
  return {
    id: 'calendar',
    title: 'Casting and laying calendar',
    columns: [
      countColumn('day', 'day'),
      textColumn('cast', 'cast, pieces by mould'),
      countColumn('pours', 'pours'),
      numberColumn('mix', 'fresh mix to pour, waste included', units.liquid),
      { key: 'mixer', label: 'mixer', kind: 'number', unit: 'min', decimals: 0 },
      textColumn('arches', 'arches cast or laid on centering'),
      textColumn('strike', 'centering struck'),
      textColumn('laid', 'courses laid'),
      textColumn('crown', 'crown closed'),
    ],
    rows: calendar.days.map((day) => ({
      day: day.day,
      cast: castText(day.cast, place),
      pours: day.cast.length > 0 ? day.cast.reduce((sum, c) => sum + c.pieces, 0) : null,
      mix: day.mix > 0 ? units.liquid.of(fresh(day.mix)) : null,
      mixer: day.mix > 0 && mixer !== null ? fresh(day.mix) / mixer : null,
      arches: list(day.arches),
      strike: list(day.struck),
      laid: list(day.laid),
      crown: list(day.closed),
    })),
    notes: [
      `Working days from 1; days without work are left out. At most ${calendar.poursPerDay} pours a day, as the ${calendar.limitedBy} allows.`,
      `From casting to demoulding ${days(casting.demouldDays)}, to laying ${days(casting.readyToLayDays)} and then only when the cubes have their strength; centering stands ${days(casting.archStrikeDays)}.`,
      shrinkageNote(house),
      'Moulds are told in the order of the table of their copies. A ring, jambs and what else is cast of an opening take the fresh mix of its days; one that takes more than the mixer’s day is cast on several, jambs first.',
      'Each arch is cast after the blocks and struck before a course goes past its crown. In the cold everything takes longer: cubes decide, not this calendar.',
      CAUTION.rings,
      CAUTION.cubes,
      CAUTION.authority,
    ],
  };
}

/** Why more is poured than the dry pieces measure. */
const shrinkageNote = ({ house }: HouseSetout): string =>
  `Fresh mix is what fills the moulds: larger than the dry pieces by the drying shrinkage of ${Math.round(house.blocks.shrinkage * 1e4) / 100} % in every length.`;

/** How many copies of each mould to make. */
export function mouldCopyTable(house: HouseSetout, calendar: Calendar): Table {
  const units = tableUnits(house.house.units);
  const asked = calendar.targetDays === null ? '' : `; asked: ${calendar.targetDays}`;
  return {
    id: 'mould-copies',
    title: 'Copies of moulds',
    columns: [
      textColumn('mould', 'mould'),
      countColumn('pieces', 'pieces to cast'),
      countColumn('copies', 'copies to make'),
      numberColumn('volume', 'fresh mix for one piece, the mould full', units.pieceVolume),
    ],
    rows: calendar.moulds.map(({ mould, pieces, copies, volume }) => ({
      mould,
      pieces,
      copies,
      volume: units.pieceVolume.of(volume),
    })),
    notes: [
      `${calendar.moulds.reduce((sum, m) => sum + m.copies, 0)} copies cast everything in ${calendar.castingDays} days${asked}; the least possible with any number of moulds is ${calendar.leastDays}.`,
      calendar.mouldsProven
        ? 'No smaller number of copies does it in these days: proven by search.'
        : 'A smaller number of copies may do: the search was cut short.',
      shrinkageNote(house),
      'The form of a ring’s segments is made for the longest; a loose end makes the shorter ones.',
      'Oil moulds with release agent, not with waste oil.',
      CAUTION.lifting,
    ],
  };
}

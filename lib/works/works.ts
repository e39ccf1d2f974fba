import { type Check, givenFigure } from '../base/figures.js';
import type { House } from '../description/house.js';
import type { Balance } from '../masonry/balance.js';
import type { LaidHouse } from '../masonry/block.js';
import type { HouseSetout } from '../setout/house.js';
import { type Bill, billChecks, billOf } from './bill.js';
import { type Calendar, calendarOf, courseMould, type MouldOf } from './calendar.js';
import { type Centre, centresOf } from './centering.js';
import { mixChecks } from './mix.js';
import { type Quantity, quantitiesOf, type RingSteelKg } from './quantities.js';

/** What crew and owner need beside the blocks. */
export interface Works {
  readonly house: House;
  readonly centres: readonly Centre[];
  readonly calendar: Calendar;
  readonly quantities: readonly Quantity[];
  /** Fresh mix for everything that is cast of it, waste included. */
  readonly mixLitres: number;
  readonly bill: Bill;
}

/** What the works need of other stages. */
export interface WorksOptions {
  /** Which mould each block is cast in; one for each course when missing. */
  readonly mouldOf?: MouldOf;
  /** Steel of closed ring ties; unknown when missing, and then the bill has no total. */
  readonly ringSteelKg?: RingSteelKg;
}

/** Centering, calendar, quantities, bill and warmth of a laid house. */
export function worksOf(house: HouseSetout, laid: LaidHouse, balance: Balance, options: WorksOptions = {}): Works {
  const centres = centresOf(house);
  const calendar = calendarOf(house, laid, options.mouldOf ?? courseMould);
  const ringSteelKg = options.ringSteelKg ?? null;
  const quantities = quantitiesOf({ house, laid, balance, centres, calendar, ringSteelKg });
  const mix = quantities.reduce((sum, q) => sum + (q.stuff === 'mix' ? (q.net ?? 0) + q.waste : 0), 0);
  return {
    house: house.house,
    centres,
    calendar,
    quantities,
    mixLitres: mix * 1000,
    bill: billOf(house.house, quantities),
  };
}

/** Checks of mix, casting days and costs. */
export const worksChecks = ({ house, calendar, bill }: Works): Check[] => [
  ...mixChecks(house.material, house.casting),
  ...castingChecks(house, calendar),
  ...billChecks(house, bill),
];

const CREW_SOURCE = 'derived from mixer, crew and hours of the description';

function castingChecks({ casting }: House, calendar: Calendar): Check[] {
  const { poursPerDay, limitedBy, castingDays, leastDays, targetDays } = calendar;
  if (poursPerDay < 1) {
    return [
      {
        id: 'casting-day',
        statement: 'No block can be cast in a day: there is no calendar.',
        state: 'fails',
        source: CREW_SOURCE,
        advice:
          limitedBy === 'crew'
            ? 'Raise `casting.crew` or `casting.hours-per-day`, or lower `casting.minutes-per-block`.'
            : 'Use a larger mixer, or make the blocks smaller.',
      },
    ];
  }
  return [
    ...mixerCheck(casting.mixerLitresPerMinute),
    ...ringCheck(calendar.overDay),
    ...targetCheck(targetDays, castingDays, leastDays, poursPerDay),
  ];
}

function mixerCheck(mixer: number | null): Check[] {
  if (mixer !== null) return [];
  return [
    {
      id: 'casting-mixer',
      statement: 'The mixer delivers enough for the pours of a day.',
      state: 'attention',
      source: CREW_SOURCE,
      advice: 'Missing input: `casting.mixer`; the calendar counts with the crew alone.',
    },
  ];
}

function ringCheck(overDay: readonly string[]): Check[] {
  if (overDay.length === 0) return [];
  return [
    {
      id: 'casting-rings',
      statement: 'The mixer delivers each arch ring and vault in one day, without a cold joint.',
      state: 'attention',
      source: CREW_SOURCE,
      advice: `Concerned: ${overDay.join(', ')}. Use a larger mixer or a second one, lay the ring of voussoirs, or have the engineer place a joint square to the ring.`,
    },
  ];
}

function targetCheck(target: number | null, taken: number, least: number, pours: number): Check[] {
  if (target === null) return [];
  const met = taken <= target;
  return [
    {
      id: 'casting-days',
      statement: met
        ? 'All blocks are cast in the days asked for.'
        : `All blocks can't be cast in the days asked for; the least possible is ${least} ${least === 1 ? 'day' : 'days'}.`,
      state: met ? 'ok' : 'fails',
      demand: givenFigure('casting-days.taken', 'days of casting', taken, 'days', {
        formula: 'pieces / pours a day, rounded up, where moulds are no limit',
        source: CREW_SOURCE,
        inputs: { 'pours a day': pours },
      }),
      capacity: givenFigure('casting-days.target', 'days asked for', target, 'days'),
      ratio: taken / target,
      source: CREW_SOURCE,
      advice: `Give at least \`casting.target-days: ${least}\`, a larger crew, longer days, or a larger mixer.`,
    },
  ];
}

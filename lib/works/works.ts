import { type Check, givenFigure } from '../base/figures.js';
import * as texts from '../base/texts/works.js';
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

const CREW_SOURCE = texts.derivedFromMixerCrew;

function castingChecks({ casting }: House, calendar: Calendar): Check[] {
  const { poursPerDay, limitedBy, castingDays, leastDays, targetDays } = calendar;
  if (poursPerDay < 1) {
    return [
      {
        id: 'casting-day',
        statement: texts.noBlockCan,
        state: 'fails',
        source: CREW_SOURCE,
        advice: limitedBy === 'crew' ? texts.raiseCastingCrew : texts.useLargerMixer,
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
      statement: texts.mixerDeliversEnough,
      state: 'attention',
      source: CREW_SOURCE,
      advice: texts.missingInputCastingMixer,
    },
  ];
}

function ringCheck(overDay: readonly string[]): Check[] {
  if (overDay.length === 0) return [];
  return [
    {
      id: 'casting-rings',
      statement: texts.mixerDeliversEachArch,
      state: 'attention',
      source: CREW_SOURCE,
      advice: texts.concernedUseLargerMixer(overDay.join(', ')),
    },
  ];
}

function targetCheck(target: number | null, taken: number, least: number, pours: number): Check[] {
  if (target === null) return [];
  const met = taken <= target;
  return [
    {
      id: 'casting-days',
      statement: met ? texts.allBlocksAreCast : texts.blocksCannotBeCast(least),
      state: met ? 'ok' : 'fails',
      demand: givenFigure('casting-days.taken', texts.daysOfCasting, taken, 'days', {
        formula: texts.piecesPoursDayRounded,
        source: CREW_SOURCE,
        inputs: { 'pours a day': pours },
      }),
      capacity: givenFigure('casting-days.target', texts.daysAsked, target, 'days'),
      ratio: taken / target,
      source: CREW_SOURCE,
      advice: texts.giveAtLeastCasting(least),
    },
  ];
}

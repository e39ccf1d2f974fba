import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-works.js';
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
  const told = stretches.map(({ first, last, moulds, pieces }) => {
    if (moulds === 1) return texts.piecesOfOne(first, pieces);
    return moulds === 2 ? texts.piecesOfTwo(first, last, pieces) : texts.piecesOfMany(first, last, pieces);
  });
  return told.length > 0 ? told.join('; ') : null;
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
    title: texts.castingAndLayingCalendar,
    columns: [
      countColumn('day', texts.day),
      textColumn('cast', texts.castPiecesByMould),
      countColumn('pours', texts.pours),
      numberColumn('mix', texts.freshMixWasteIncluded, units.liquid),
      { key: 'mixer', label: texts.mixer, kind: 'number', unit: 'min', decimals: 0 },
      textColumn('arches', texts.archesCastOrLaid),
      textColumn('strike', texts.centeringStruck),
      textColumn('laid', texts.coursesLaid),
      textColumn('crown', texts.crownClosed),
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
      texts.workingDaysFrom1(calendar.poursPerDay, calendar.limitedBy),
      texts.fromCastingToDemoulding(
        days(casting.demouldDays),
        days(casting.readyToLayDays),
        days(casting.archStrikeDays),
      ),
      shrinkageNote(house),
      texts.mouldsInOrderOfCopies,
      texts.eachArchIsCast,
      CAUTION.rings,
      CAUTION.cubes,
      CAUTION.authority,
    ],
  };
}

/** Why more is poured than the dry pieces measure. */
const shrinkageNote = ({ house }: HouseSetout): string =>
  texts.freshMixFillsMoulds(Math.round(house.blocks.shrinkage * 1e4) / 100);

/** How many copies of each mould to make. */
export function mouldCopyTable(house: HouseSetout, calendar: Calendar): Table {
  const units = tableUnits(house.house.units);
  const asked = calendar.targetDays === null ? '' : texts.askedDays(calendar.targetDays);
  return {
    id: 'mould-copies',
    title: texts.copiesOfMoulds,
    columns: [
      textColumn('mould', texts.mould),
      countColumn('pieces', texts.piecesToCast),
      countColumn('copies', texts.copiesToMake),
      numberColumn('volume', texts.volumeOfOnePiece, units.pieceVolume),
    ],
    rows: calendar.moulds.map(({ mould, pieces, copies, volume }) => ({
      mould,
      pieces,
      copies,
      volume: units.pieceVolume.of(volume),
    })),
    notes: [
      texts.copiesCastEverything(
        calendar.moulds.reduce((sum, m) => sum + m.copies, 0),
        calendar.castingDays,
        asked,
        calendar.leastDays,
      ),
      calendar.mouldsProven ? texts.noSmallerNumber : texts.smallerNumberOfCopies,
      shrinkageNote(house),
      texts.formOfRingSegments,
      texts.oilMouldsWithRelease,
      CAUTION.lifting,
    ],
  };
}

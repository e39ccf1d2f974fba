import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-setting-out.js';
import type { Table } from '../documents/table.js';
import { DEG } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { chordMarks, groundCircles, pegsOf } from '../works/pegs.js';
import { degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

const ALIKE = texts.measureLevelWithOne;

/** Where each peg goes: coordinates, tapes from the two datum pegs, distances to check. */
export function pegTable(house: HouseSetout): Table {
  const { site } = tableUnits(house.house.units);
  return {
    id: 'pegs',
    title: texts.pegs,
    columns: [
      textColumn('peg', texts.peg),
      numberColumn('east', texts.eastOfOrigin, site),
      numberColumn('north', texts.northOfOrigin, site),
      numberColumn('tape-a', texts.tapeFromPeg, site),
      numberColumn('tape-b', texts.tapeFromPegB, site),
      textColumn('side', texts.sideLooking),
      { ...degreesColumn('crossing', texts.tapesCross), decimals: 0 },
      textColumn('check-1', texts.checkTo),
      numberColumn('check-1-distance', texts.checkDistance, site),
      textColumn('check-2', texts.secondCheck),
      numberColumn('check-2-distance', texts.secondCheckDistance, site),
    ],
    rows: pegsOf(house).map(({ name, at, tapes, side, crossingDeg, checks: [first, second] }) => ({
      peg: name,
      east: site.of(at[0]),
      north: site.of(at[1]),
      'tape-a': site.of(tapes[0]),
      'tape-b': site.of(tapes[1]),
      side,
      crossing: crossingDeg,
      'check-1': first?.to ?? null,
      'check-1-distance': first ? site.of(first.distance) : null,
      'check-2': second?.to ?? null,
      'check-2-distance': second ? site.of(second.distance) : null,
    })),
    notes: [
      texts.eastAndNorth,
      texts.domesMarkLies,
      house.house.settingOut.pegs ? texts.tapesThatCrossFlatter : texts.pegsPlacedByProgram,
      ALIKE,
      CAUTION.authority,
    ],
  };
}

/** Circles to scribe round each axis before digging and before the first course. */
export function circleTable(house: HouseSetout): Table {
  const { site } = tableUnits(house.house.units);
  return {
    id: 'circles',
    title: texts.circlesOnGround,
    columns: [
      textColumn('dome', texts.dome),
      textColumn('circle', texts.circle),
      numberColumn('radius', texts.radiusFromAxis, site),
      numberColumn('level', texts.levelOfWhatItSets, site),
      numberColumn('across', texts.checkRightAcross, site),
      numberColumn('quarter', texts.checkChordOfQuarter, site),
    ],
    rows: groundCircles(house).map(({ domeId, what, radius, z }) => ({
      dome: domeId,
      circle: what,
      radius: site.of(radius),
      level: site.of(z),
      across: site.of(2 * radius),
      quarter: site.of(radius * Math.SQRT2),
    })),
    notes: [texts.levelsAreAboveFinished, texts.supportSidesOfTrench, ALIKE, CAUTION.authority],
  };
}

/** Openings and passages on the inside circle of each wall, by chords from the dome's mark. */
export function bearingTable(house: HouseSetout): Table {
  const { site } = tableUnits(house.house.units);
  return {
    id: 'bearings',
    title: texts.bearingsByChord,
    columns: [
      textColumn('dome', texts.dome),
      textColumn('place', texts.placeOnInsideCircle),
      degreesColumn('bearing', texts.bearingFromProjectNorth),
      textColumn('way', texts.wayRoundFromMark),
      numberColumn('chord', texts.chordFromMark, site),
      numberColumn('check', texts.checkChordFromOpposite, site),
    ],
    rows: chordMarks(house).map(({ domeId, what, bearingRad, way, chord, checkChord }) => ({
      dome: domeId,
      place: what,
      bearing: bearingRad / DEG,
      way,
      chord: site.of(chord),
      check: site.of(checkChord),
    })),
    notes: [texts.leftAndRightFromInside, ALIKE, CAUTION.authority],
  };
}

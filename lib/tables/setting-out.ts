import { CAUTION } from '../base/cautions.js';
import type { Table } from '../documents/table.js';
import { DEG } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { chordMarks, groundCircles, pegsOf } from '../works/pegs.js';
import { degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

const ALIKE =
  'Measure level, with one tape pulled alike; a check that misses by more than 5 mm or 1/4 in tells of a slip: measure again before digging.';

/** Where each peg goes: coordinates, tapes from the two datum pegs, distances to check. */
export function pegTable(house: HouseSetout): Table {
  const { site } = tableUnits(house.house.units);
  return {
    id: 'pegs',
    title: 'Pegs',
    columns: [
      textColumn('peg', 'peg'),
      numberColumn('east', 'east of the origin', site),
      numberColumn('north', 'north of the origin', site),
      numberColumn('tape-a', 'tape from peg A', site),
      numberColumn('tape-b', 'tape from peg B', site),
      textColumn('side', 'side, looking from A to B'),
      { ...degreesColumn('crossing', 'tapes cross at'), decimals: 0 },
      textColumn('check-1', 'check to'),
      numberColumn('check-1-distance', 'check distance', site),
      textColumn('check-2', 'second check to'),
      numberColumn('check-2-distance', 'second check distance', site),
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
      'East and north are of the plan, where north is project north. Drive pegs A and B first and check the distance between them; then each peg where its two tapes meet.',
      'A dome’s mark lies on the inside circle of its wall, due project north of its axis: bearings are taped from it.',
      house.house.settingOut.pegs
        ? 'Tapes that cross flatter than 30 or wider than 150 degrees place a peg badly along the line between: lean on its checks.'
        : 'Pegs A and B were placed by the program, clear of the footings; `setting-out.pegs` moves them.',
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
    title: 'Circles on the ground',
    columns: [
      textColumn('dome', 'dome'),
      textColumn('circle', 'circle'),
      numberColumn('radius', 'radius from the axis', site),
      numberColumn('level', 'level of what it sets', site),
      numberColumn('across', 'check: right across', site),
      numberColumn('quarter', 'check: chord of a quarter', site),
    ],
    rows: groundCircles(house).map(({ domeId, what, radius, z }) => ({
      dome: domeId,
      circle: what,
      radius: site.of(radius),
      level: site.of(z),
      across: site.of(2 * radius),
      quarter: site.of(radius * Math.SQRT2),
    })),
    notes: [
      'Levels are above the finished floor. The trench also goes under barrels and passages: see the plan.',
      'Support the sides of a trench, and keep its edge free of loads.',
      ALIKE,
      CAUTION.authority,
    ],
  };
}

/** Openings and passages on the inside circle of each wall, by chords from the dome's mark. */
export function bearingTable(house: HouseSetout): Table {
  const { site } = tableUnits(house.house.units);
  return {
    id: 'bearings',
    title: 'Bearings by chord',
    columns: [
      textColumn('dome', 'dome'),
      textColumn('place', 'place on the inside circle'),
      degreesColumn('bearing', 'bearing from project north'),
      textColumn('way', 'way round from the mark'),
      numberColumn('chord', 'chord from the mark', site),
      numberColumn('check', 'check: chord from opposite the mark', site),
    ],
    rows: chordMarks(house).map(({ domeId, what, bearingRad, way, chord, checkChord }) => ({
      dome: domeId,
      place: what,
      bearing: bearingRad / DEG,
      way,
      chord: site.of(chord),
      check: site.of(checkChord),
    })),
    notes: [
      'Left and right are seen from inside looking out. Between the two jambs the tape must read the clear width.',
      ALIKE,
      CAUTION.authority,
    ],
  };
}

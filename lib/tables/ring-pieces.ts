import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-pieces.js';
import type { Table } from '../documents/table.js';
import type { CastPieces } from '../masonry/cast-pieces.js';
import { freshKg, massKg } from '../masonry/mass.js';
import type { RingPieceKind } from '../masonry/ring-pieces.js';
import { sin } from '../math/elementary.js';
import { DEG, turnPositive } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

const KINDS: Readonly<Record<RingPieceKind, string>> = {
  skewback: texts.segmentOfSkewbackRing,
  curb: texts.segmentOfCurb,
  plug: texts.crownPlug,
};

/** Segments of skewback rings and curbs, and crown plugs: place, size, mass. */
export function ringPieceTable(house: HouseSetout, pieces: CastPieces): Table {
  const units = tableUnits(house.house.units);
  const { material, blocks } = house.house;
  const domes = new Map(house.domes.map((dome) => [dome.id, dome]));
  return {
    id: 'ring-pieces',
    title: texts.segmentsOfRings,
    columns: [
      textColumn('mark', texts.mark),
      textColumn('dome', texts.dome),
      textColumn('kind', texts.kind),
      degreesColumn('start', texts.bearingOfItsStart),
      degreesColumn('end', texts.bearingOfItsEnd),
      numberColumn('inner-radius', texts.innerRadius, units.length),
      numberColumn('outer-radius', texts.outerRadius, units.length),
      numberColumn('inner-chord', texts.innerChord, units.length),
      numberColumn('outer-chord', texts.outerChord, units.length),
      textColumn('state', texts.wholeOrCut),
      numberColumn('volume', texts.volume, units.pieceVolume),
      numberColumn('dry-mass', texts.dryMass, units.mass),
      numberColumn('wet-mass', texts.wetMass, units.mass),
    ],
    rows: pieces.rings.map(({ mark, domeId, kind, startRad, endRad, cut, volume }) => {
      const [inner, outer] = radiiOf(domes.get(domeId) as DomeSetout, kind);
      const chord = (r: number) => (kind === 'plug' ? null : units.length.of(2 * r * sin((endRad - startRad) / 2)));
      return {
        mark,
        dome: domeId,
        kind: KINDS[kind],
        start: kind === 'plug' ? null : turnPositive(startRad) / DEG,
        end: kind === 'plug' ? null : turnPositive(endRad) / DEG,
        'inner-radius': kind === 'plug' ? null : units.length.of(inner),
        'outer-radius': units.length.of(outer),
        'inner-chord': chord(inner),
        'outer-chord': chord(outer),
        state: cut ? 'cut' : 'whole',
        volume: units.pieceVolume.of(volume),
        'dry-mass': units.mass.of(massKg(volume, material.dryDensity)),
        'wet-mass': units.mass.of(freshKg(volume, house.house)),
      };
    }),
    notes: [
      texts.ringsAreParted(units.mass.of(blocks.heaviestKg).toFixed(1), units.mass.unit),
      texts.sizesAreThoseOfDryPiece(Math.round(blocks.shrinkage * 1e4) / 100),
      texts.sectionsOfRings,
      CAUTION.rings,
      CAUTION.lifting,
      CAUTION.authority,
    ],
  };
}

function radiiOf(dome: DomeSetout, kind: RingPieceKind): readonly [number, number] {
  if (kind === 'curb' && dome.curb) return [dome.curb.clearRadius, dome.curb.bedOuter[0]];
  if (kind === 'plug' && dome.plug) {
    const p = dome.shell.at(dome.plug.bedS);
    return [0, p.r + dome.thickness * p.normal[0]];
  }
  return [dome.springingRadius, dome.springingRadius + dome.thickness];
}

import { CAUTION } from '../base/cautions.js';
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
  skewback: 'segment of the skewback ring',
  curb: 'segment of the curb',
  plug: 'crown plug',
};

/** Segments of skewback rings and curbs, and crown plugs: place, size, mass. */
export function ringPieceTable(house: HouseSetout, pieces: CastPieces): Table {
  const units = tableUnits(house.house.units);
  const { material, blocks } = house.house;
  const domes = new Map(house.domes.map((dome) => [dome.id, dome]));
  return {
    id: 'ring-pieces',
    title: 'Segments of rings, and crown plugs',
    columns: [
      textColumn('mark', 'mark'),
      textColumn('dome', 'dome'),
      textColumn('kind', 'kind'),
      degreesColumn('start', 'bearing of its start'),
      degreesColumn('end', 'bearing of its end'),
      numberColumn('inner-radius', 'inner radius', units.length),
      numberColumn('outer-radius', 'outer radius', units.length),
      numberColumn('inner-chord', 'inner chord', units.length),
      numberColumn('outer-chord', 'outer chord', units.length),
      textColumn('state', 'whole or cut'),
      numberColumn('volume', 'volume', units.pieceVolume),
      numberColumn('dry-mass', 'dry mass', units.mass),
      numberColumn('wet-mass', 'wet mass', units.mass),
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
      `Rings are parted so that no segment is heavier than ${units.mass.of(blocks.heaviestKg).toFixed(1)} ${units.mass.unit} freshly demoulded; joints between segments are as thick as all others. A segment beside an opening is cut there; its chords are those before the cut.`,
      `Sizes are those of the dry piece: make its form larger by the drying shrinkage of ${Math.round(blocks.shrinkage * 1e4) / 100} %.`,
      'Sections of the rings are drawn on the sheets; bearings run clockwise from project north.',
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

import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-pieces.js';
import type { Table } from '../documents/table.js';
import { type ArchPieceKind, archForm, archPieceSizes } from '../masonry/arch-pieces.js';
import type { CastPieces } from '../masonry/cast-pieces.js';
import { freshKg, massKg } from '../masonry/mass.js';
import { DEG } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { HouseSetout } from '../setout/house.js';
import { degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

const KINDS: Readonly<Record<ArchPieceKind, string>> = {
  ring: texts.ringCastInOne,
  springer: texts.springer,
  voussoir: texts.voussoir,
  keystone: texts.keystone,
  skewback: texts.skewback,
};

/** Every stone of the arches, and the rings that are cast in one: sizes, which are alike, masses. */
export function voussoirTable(house: HouseSetout, pieces: CastPieces): Table {
  const units = tableUnits(house.house.units);
  const length = (mm: number | undefined) => (mm === undefined ? null : units.length.of(mm));
  const { material, blocks } = house.house;
  const arches = new Map(house.arches.map((arch) => [arch.id, arch]));
  return {
    id: 'voussoirs',
    title: texts.voussoirsAndArchRings,
    columns: [
      textColumn('mark', texts.mark),
      textColumn('opening', texts.opening),
      textColumn('kind', texts.kind),
      textColumn('form', texts.form),
      textColumn('mirrored', texts.mirrored),
      numberColumn('soffit-arc', texts.soffitArc, units.length),
      numberColumn('soffit-chord', texts.soffitChord, units.length),
      numberColumn('back-arc', texts.backArc, units.length),
      numberColumn('back-chord', texts.backChord, units.length),
      numberColumn('ring', texts.fromSoffitToBack, units.length),
      degreesColumn('angle', texts.angleBetweenItsJoints),
      numberColumn('depth-soffit-lower', texts.depthOnSoffitLower, units.length),
      numberColumn('depth-soffit-upper', texts.depthOnSoffitUpper, units.length),
      numberColumn('depth-back-lower', texts.depthOnBackLower, units.length),
      numberColumn('depth-back-upper', texts.depthOnBackUpper, units.length),
      numberColumn('volume', texts.volume, units.pieceVolume),
      numberColumn('dry-mass', texts.dryMass, units.mass),
      numberColumn('wet-mass', texts.wetMass, units.mass),
    ],
    rows: pieces.arches.map((piece) => {
      const arch = arches.get(piece.archId) as ArchSetout;
      const { soffit, back, angleRad, depth } = archPieceSizes(arch, piece);
      return {
        mark: piece.mark,
        opening: piece.archId,
        kind: KINDS[piece.kind],
        form: archForm(piece),
        mirrored: piece.side === 'right' ? 'yes' : '',
        'soffit-arc': length(soffit?.arc),
        'soffit-chord': length(soffit?.chord),
        'back-arc': length(back.arc),
        'back-chord': length(back.chord),
        ring: length(arch.ring),
        angle: piece.kind === 'ring' ? null : angleRad / DEG,
        'depth-soffit-lower': length(depth.soffitLower),
        'depth-soffit-upper': length(depth.soffitUpper),
        'depth-back-lower': length(depth.backLower),
        'depth-back-upper': length(depth.backUpper),
        volume: units.pieceVolume.of(piece.volume),
        'dry-mass': units.mass.of(massKg(piece.volume, material.dryDensity)),
        'wet-mass': units.mass.of(freshKg(piece.volume, house.house)),
      };
    }),
    notes: [
      texts.numberedFromLeft(units.length.of(blocks.joint).toFixed(units.length.decimals), units.length.unit),
      texts.depthsRunAlongBearing,
      texts.stonesOfOneForm,
      texts.sizesAreThoseOfDry(Math.round(blocks.shrinkage * 1e4) / 100),
      CAUTION.rings,
      CAUTION.lifting,
      CAUTION.authority,
    ],
  };
}

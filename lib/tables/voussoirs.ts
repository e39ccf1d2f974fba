import { CAUTION } from '../base/cautions.js';
import type { Table } from '../documents/table.js';
import { type ArchPieceKind, archForm, archPieceSizes } from '../masonry/arch-pieces.js';
import type { CastPieces } from '../masonry/cast-pieces.js';
import { freshKg, massKg } from '../masonry/mass.js';
import { DEG } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { HouseSetout } from '../setout/house.js';
import { degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

const KINDS: Readonly<Record<ArchPieceKind, string>> = {
  ring: 'ring cast in one',
  springer: 'springer',
  voussoir: 'voussoir',
  keystone: 'keystone',
  skewback: 'skewback',
};

/** Every stone of the arches, and the rings that are cast in one: sizes, which are alike, masses. */
export function voussoirTable(house: HouseSetout, pieces: CastPieces): Table {
  const units = tableUnits(house.house.units);
  const length = (mm: number | undefined) => (mm === undefined ? null : units.length.of(mm));
  const { material, blocks } = house.house;
  const arches = new Map(house.arches.map((arch) => [arch.id, arch]));
  return {
    id: 'voussoirs',
    title: 'Voussoirs and arch rings',
    columns: [
      textColumn('mark', 'mark'),
      textColumn('opening', 'opening'),
      textColumn('kind', 'kind'),
      textColumn('form', 'form'),
      textColumn('mirrored', 'mirrored'),
      numberColumn('soffit-arc', 'soffit, arc', units.length),
      numberColumn('soffit-chord', 'soffit, chord', units.length),
      numberColumn('back-arc', 'back, arc', units.length),
      numberColumn('back-chord', 'back, chord', units.length),
      numberColumn('ring', 'from soffit to back', units.length),
      degreesColumn('angle', 'angle between its joints'),
      numberColumn('depth-soffit-lower', 'depth on the soffit, lower end', units.length),
      numberColumn('depth-soffit-upper', 'depth on the soffit, upper end', units.length),
      numberColumn('depth-back-lower', 'depth on the back, lower end', units.length),
      numberColumn('depth-back-upper', 'depth on the back, upper end', units.length),
      numberColumn('volume', 'volume', units.pieceVolume),
      numberColumn('dry-mass', 'dry mass', units.mass),
      numberColumn('wet-mass', 'wet mass', units.mass),
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
      `Numbered from left to right seen from outside; the joints between them are ${units.length.of(blocks.joint).toFixed(units.length.decimals)} ${units.length.unit} thick, and the springers stand as much above their beds.`,
      'Depths run along the bearing, from the room to the flat face or to the extrados; the lower end is the one nearer to the springing. Upper ends of keystones are at the crown.',
      'Stones of one form are mirror images of one another. Skewbacks are cast with the jambs or laid on them; those of a flat arch rise at 60° (common practice, no source).',
      `Sizes are those of the dry stone: make its form larger by the drying shrinkage of ${Math.round(blocks.shrinkage * 1e4) / 100} %.`,
      CAUTION.rings,
      CAUTION.lifting,
      CAUTION.authority,
    ],
  };
}

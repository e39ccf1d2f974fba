import { DEFAULT_SURFACE } from '../base/tolerances.js';
import type { Mesh } from '../documents/mesh.js';
import type { ArchPiece } from '../masonry/arch-pieces.js';
import type { CastPieces } from '../masonry/cast-pieces.js';
import type { HouseSetout } from '../setout/house.js';
import { frameOf } from './arch-bodies.js';
import type { SolidOptions } from './house-solids.js';
import type { Kernel, Solid, SolidScope } from './kernel.js';
import { pieceOutline } from './piece-outline.js';
import { ringPieceSolid } from './ring-piece-solids.js';
import { type Site, sitesOf } from './site.js';

/**
 * Voussoirs with their skewbacks, segments of skewback rings and curbs, and crown plugs, each as its own solid in its
 * place, named by its mark. Faces of voussoirs: `soffit`, `back`, `joint`, `bed`, `face` (the flat face), `intrados`,
 * `extrados`; of segments `joint` and those of their ring. Throws an `Error` naming the piece when the kernel fails on it.
 */
export function pieceSolids(
  kernel: Kernel,
  setout: HouseSetout,
  pieces: CastPieces,
  options: SolidOptions = {},
): Mesh[] {
  const { surface = DEFAULT_SURFACE } = options;
  return kernel.scope((scope) => {
    const sites = sitesOf(scope, setout, surface);
    const arches = pieces.arches.map((piece) => {
      const site = sites.find(({ arches }) => arches.some((arch) => arch.id === piece.archId));
      if (!site) throw new Error(`${piece.mark} belongs to no opening of the house`);
      return scope.scope((inner) => inner.mesh(piece.mark, archStone(inner, piece, site)));
    });
    const rings = pieces.rings.map((piece) => {
      const site = sites.find(({ dome }) => dome.id === piece.domeId);
      if (!site) throw new Error(`${piece.mark} belongs to no dome of the house`);
      return scope.scope((inner) => inner.mesh(piece.mark, ringPieceSolid(inner, setout, piece, site)));
    });
    return [...arches, ...rings];
  });
}

/** A stone of an arch, from the room to the flat face, or to the extrados. */
function archStone(scope: SolidScope, piece: ArchPiece, site: Site): Solid {
  const arch = site.arches.find((a) => a.id === piece.archId) as Site['arches'][number];
  const strip = site.stripOf(arch);
  const outline = pieceOutline(arch, piece, site.facets.sagitta);
  const prism = (to: number) => scope.prism(piece.mark, outline, frameOf(arch), [strip.from, to], ['axis', 'face']);
  const taken = [site.within(strip, 0, 'intrados'), ...site.earlierAlong(strip)];
  if (arch.faceV !== null) return scope.subtract(piece.mark, prism(arch.faceV), taken);
  const wall = site.within(strip, arch.dome.thickness, 'extrados');
  return scope.subtract(piece.mark, scope.intersect(piece.mark, [prism(strip.to), wall]), taken);
}

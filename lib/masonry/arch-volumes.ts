import { remembered } from '../base/remembered.js';
import type { ArchSetout } from '../setout/arch.js';
import type { PassageSetout } from '../setout/passage.js';
import {
  type Depth,
  domeBreaks,
  type HalfWidth,
  onSurface,
  passageKinks,
  prismVolume,
  sectionBreaks,
} from './prism.js';

/** Volumes of the cast pieces round one opening or passage, mm³, each by its own quadrature. */
export interface ArchVolumes {
  /** Ring, barrel or vault over the head's springing. */
  readonly head: number;
  readonly jambs: number;
  /** Wall under the sill between the jambs of a barrel. */
  readonly spandrel: number;
  /** Back of a niche. */
  readonly back: number;
}

const NOTHING: HalfWidth = () => 0;

/** The pieces of one arch, from the intrados to the extrados or to the flat face. */
export const archVolumes = remembered((arch: ArchSetout): ArchVolumes => {
  const { dome, section, ring, baseZ, faceV } = arch;
  const inner = onSurface(dome, 0);
  const outer: Depth = faceV === null ? onSurface(dome, dome.thickness) : () => faceV;
  const masonry: Depth = (u, z) => outer(u, z) - inner(u, z);
  const clear: HalfWidth = (z) => section.halfWidthAt(z);
  const jamb: HalfWidth = () => section.width / 2;
  const outside: HalfWidth = (z) => arch.outerHalfAt(z);
  const breaks = [...sectionBreaks(section, [0, ring]), ...domeBreaks(dome)];
  const part = (from: number, to: number, halves: readonly [HalfWidth, HalfWidth], depth = masonry) =>
    to > from ? prismVolume([from, to], halves, depth, breaks) : 0;
  return {
    head: part(section.springingZ, arch.topZ, [clear, outside]),
    jambs: part(baseZ, section.springingZ, [jamb, outside]),
    spandrel: part(baseZ, section.sill, [NOTHING, jamb]),
    back:
      arch.clear.kind === 'through'
        ? 0
        : part(section.sill, section.crownZ, [NOTHING, clear], (u, z) => outer(u, z) - nicheBack(arch)(u, z)),
  };
});

/** How far from the axis a niche's back lies. */
export function nicheBack({ clear, dome }: ArchSetout): Depth {
  if (clear.kind === 'parallel') return onSurface(dome, clear.depth);
  return () => (clear.kind === 'plane' ? clear.v : Number.POSITIVE_INFINITY);
}

/** The pieces of one passage, from room to room. */
export const passageVolumes = remembered((passage: PassageSetout): ArchVolumes => {
  const { section, domes, ring } = passage;
  const depth: Depth = (u, z) => {
    const [start, end] = passage.stretchAt(u, z);
    return end - start;
  };
  const breaks = [...sectionBreaks(section, [0, ring]), ...domes.flatMap(domeBreaks)];
  const kinks = passageKinks(passage);
  const outside: HalfWidth = (z) => passage.outerHalfAt(z);
  const clear: HalfWidth = (z) => passage.clearHalfAt(z);
  return {
    head: prismVolume([section.springingZ, passage.topZ], [clear, outside], depth, breaks, kinks),
    jambs: prismVolume([0, section.springingZ], [() => section.width / 2, outside], depth, breaks, kinks),
    spandrel: 0,
    back: 0,
  };
});

import * as texts from '../../base/texts/print.js';
import type { House, Opening } from '../../description/house.js';
import { setOutArch } from '../../setout/arch.js';
import { type DomeSetout, setOutDome } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { setOutPassage } from '../../setout/passage.js';
import type { PrintSizes } from './sizes.js';

/** One size that the model has otherwise than the house, both in mm of the house. */
export interface Thickened {
  /** `wall`, `curb of hall`, `ring of entrance`, `face of entrance`, `depth of shelf`. */
  readonly what: string;
  readonly from: number;
  readonly to: number;
}

export interface PrintSetout {
  readonly setout: HouseSetout;
  readonly thickened: readonly Thickened[];
}

/**
 * The house with every wall as thick as the printer makes it, grooves and facets taken off. Rooms and clear spaces stay
 * as they are: what is too thin grows outward. A niche alone, which has the wall behind it, becomes shallower.
 */
export function printSetout(setout: HouseSetout, sizes: PrintSizes): PrintSetout {
  const { house } = setout;
  const thickened: Thickened[] = [];
  const atLeast = (what: string, from: number, least: number): number => {
    if (from < least) thickened.push({ what, from, to: least });
    return Math.max(from, least);
  };
  const plain = sizes.thin + sizes.surface;
  const thickness = atLeast('wall', house.wall.thickness, plain + sizes.groove.depth);

  const domes = setout.domes.map((dome, i): DomeSetout => {
    const described = house.domes[i] as House['domes'][number];
    const { oculus } = described;
    const curb = oculus && atLeast(texts.curbOf(dome.id), oculus.curb, plain);
    const made = setOutDome(
      { ...described, oculus: oculus && { ...oculus, curb: curb as number } },
      { ...house.wall, thickness },
      house.blocks,
    );
    // Courses are told on the intrados, which stays; a wider curb takes the place of the last.
    const courses = dome.courses.filter((c) => c.part === 'stem' || c.to <= (made.curb?.bedS ?? Infinity));
    return { ...made, courses, plug: dome.plug };
  });
  const own = ({ id }: DomeSetout) => domes.find((d) => d.id === id) as DomeSetout;

  const opening = (described: Opening): Opening => {
    const { id, depth, arch } = described;
    const ring = arch.face === 'flush' ? arch.ring : atLeast(texts.ringOf(id), arch.ring, plain);
    if (depth === null) return { ...described, arch: { ...arch, ring } };
    if (arch.face === 'flush') {
      const most = thickness - plain - sizes.groove.depth;
      if (depth > most) thickened.push({ what: texts.depthOf(id), from: depth, to: most });
      return { ...described, depth: Math.min(depth, most) };
    }
    const face = atLeast(texts.faceOf(id), arch.face, depth + plain - thickness);
    return { ...described, arch: { ...arch, ring, face } };
  };
  const passages = setout.passages.map((passage) => {
    const ring = atLeast(texts.ringOf(passage.id), passage.ring, plain);
    return setOutPassage({ ...passage.passage, ring }, [own(passage.domes[0]), own(passage.domes[1])], passage.later);
  });
  return {
    setout: {
      ...setout,
      domes,
      arches: setout.arches.map((arch) => setOutArch(opening(arch.opening), own(arch.dome))),
      passages,
    },
    thickened,
  };
}

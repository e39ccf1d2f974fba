import type { Block } from '../masonry/block.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import type { PassageSetout } from '../setout/passage.js';
import { spanPoint } from '../setout/span.js';
import { abutment } from './abutment.js';
import { archCutter, OVERRUN } from './arch-bodies.js';
import { type DomeFacets, domeFacets } from './dome-outlines.js';
import type { Solid, SolidScope } from './kernel.js';
import { passageCutter } from './passage-bodies.js';

/** Gives the body that cuts a block, by the id of what cuts it; throws when the house has nothing of that id. */
export type CutterFinder = (id: string, block: Block, dome: DomeSetout) => Solid;

/**
 * What cuts blocks, made when first asked for, each grown by the joint: the outer sections of arches and passages,
 * and the outsides of earlier domes, of which each course gets its own slice towards its dome.
 */
export function blockCutters(scope: SolidScope, setout: HouseSetout, surface: number): CutterFinder {
  const grow = setout.house.blocks.joint;
  const sagitta = surface / 2;
  const facets = new Map<string, DomeFacets>();
  const made = new Map<string, Solid>();
  const once = <T>(known: Map<string, T>, key: string, make: () => T): T => {
    const found = known.get(key) ?? make();
    known.set(key, found);
    return found;
  };
  const sources = new Map<string, ArchSetout | PassageSetout | DomeSetout>();
  for (const source of [...setout.arches, ...setout.passages, ...setout.domes]) sources.set(source.id, source);

  return (id, block, dome) => {
    const source = sources.get(id);
    if (!source) throw new Error(`block ${block.mark} is cut by ${id}, which the house does not have`);
    const name = `cut:${id}`;
    if ('dome' in source) return once(made, id, () => archCutter(scope, source, { grow, sagitta, name }));
    if ('domes' in source) return once(made, id, () => passageCutter(scope, source, { grow, sagitta, name }));
    return once(made, `${id} ${dome.id} ${block.course}`, () => {
      const outside = once(facets, id, () => domeFacets(source, surface));
      const span = dome[block.part];
      const [low, high] = [span.at(block.bed).z, spanPoint(span, block.top, dome.thickness)[1]];
      // The outside leans inward: a course is widest at its bed.
      const radius = spanPoint(span, block.bed, dome.thickness)[0];
      const heights = [low - OVERRUN, high + OVERRUN] as const;
      return abutment(scope, outside, { axis: dome.at, radius }, { heights, grow, name });
    });
  };
}

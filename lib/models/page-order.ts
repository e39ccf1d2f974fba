import type { LaidBlock } from '../masonry/block.js';
import { type HouseSetout, passagesOf } from '../setout/house.js';

/** What a step of building adds. */
export type BuildStep =
  | { readonly kind: 'ground' }
  | { readonly kind: 'course'; readonly domeId: string; readonly course: number }
  | { readonly kind: 'part'; readonly part: string };

/**
 * The order of building: footing and slab, then dome after dome as described, course upon course; an arch or passage
 * before the first course that is cut at it, the skewback before the shell, curb or plug at the end.
 */
export function buildOrder(setout: HouseSetout, blocks: readonly LaidBlock[]): BuildStep[] {
  const steps: BuildStep[] = [{ kind: 'ground' }];
  const done = new Set<string>();
  const addPart = (part: string) => {
    if (!done.has(part)) steps.push({ kind: 'part', part });
    done.add(part);
  };
  const partOf = new Map([
    ...setout.arches.map((a) => [a.id, `arch:${a.id}`] as const),
    ...setout.passages.map((p) => [p.id, `passage:${p.id}`] as const),
  ]);
  for (const dome of setout.domes) {
    const own = blocks.filter((b) => b.domeId === dome.id);
    for (const { index, part } of dome.courses) {
      if (part === 'shell' && dome.skewback) addPart(`${dome.id}:skewback`);
      const cutBy = new Set(own.filter((b) => b.course === index).flatMap((b) => b.cutBy));
      for (const [id, name] of partOf) if (cutBy.has(id)) addPart(name);
      steps.push({ kind: 'course', domeId: dome.id, course: index });
    }
    // What no course is cut at stands in the crown or beside all blocks.
    for (const arch of setout.arches) if (arch.dome.id === dome.id) addPart(`arch:${arch.id}`);
    for (const passage of passagesOf(setout, dome)) addPart(`passage:${passage.id}`);
    addPart(`${dome.id}:${dome.curb ? 'curb' : 'plug'}`);
  }
  return steps;
}

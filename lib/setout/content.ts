import type { Course, CourseCast } from './courses.js';
import type { DomeSetout } from './dome.js';
import { archesOf, earlierThan, type HouseSetout, passagesOf } from './house.js';

/**
 * What parts of a house are made of, as texts: where these are equal, the parts are. They hold what the description says,
 * and nothing of the rest of the house.
 */

/** A dome with its arches: rules of the house, the dome, what opens it, and the domes that it meets. */
export function domeContent(setout: HouseSetout, dome: DomeSetout): string {
  const { wall, blocks, footing, slab } = setout.house;
  const passages = passagesOf(setout, dome);
  const met = [...earlierThan(setout, dome), ...passages.flatMap((p) => p.domes)].map(({ id }) =>
    described(setout, id),
  );
  return JSON.stringify([
    [wall, blocks, footing, slab],
    described(setout, dome.id),
    archesOf(setout, dome).map((arch) => arch.opening),
    passages.map(({ passage, later }) => [passage, later]),
    met,
  ]);
}

/** One course of a dome, and those whose moulds its blocks come out of. */
export function courseContent(setout: HouseSetout, dome: DomeSetout, course: Course): string {
  const parent = (cast: CourseCast | null | undefined) => {
    if (!cast) return null;
    const { domeId, course: index } = cast.parent;
    const { part, bed, to } = setout.domes.find((d) => d.id === domeId)?.courses[index - 1] ?? {};
    return [described(setout, domeId), part, bed, to];
  };
  return `${domeContent(setout, dome)} ${JSON.stringify([course, parent(course.cast), parent(course.mix?.cast)])}`;
}

const described = ({ house }: HouseSetout, id: string) => house.domes.find((dome) => dome.id === id);

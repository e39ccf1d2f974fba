import type { Course } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';

/** The same house with other courses; arches and passages go with the domes they belong to. */
export function withCourses(setout: HouseSetout, change: (dome: DomeSetout, course: Course) => Course): HouseSetout {
  const domes = setout.domes.map((dome) => ({ ...dome, courses: dome.courses.map((course) => change(dome, course)) }));
  const own = ({ id }: DomeSetout) => domes.find((d) => d.id === id) as DomeSetout;
  return {
    ...setout,
    domes,
    arches: setout.arches.map((arch) => ({ ...arch, dome: own(arch.dome) })),
    passages: setout.passages.map((p) => ({ ...p, domes: [own(p.domes[0]), own(p.domes[1])] as const })),
  };
}

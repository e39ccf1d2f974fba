import type { House } from '../../description/house.js';
import type { Course } from '../../setout/courses.js';
import type { DomeSetout } from '../../setout/dome.js';
import { revolvedBox } from '../column.js';
import { massKg, wetDensity } from '../mass.js';
import { wholeVolume } from '../measure.js';

/** Mass of a course's masonry freshly demoulded, kg for each radian of the ring. */
export function wetKgPerRadian({ material }: House, dome: DomeSetout, course: Course): number {
  const volume = wholeVolume(revolvedBox(dome[course.part], [course.bed, course.to], [0, dome.thickness], [0, 1]));
  return massKg(volume, wetDensity(material));
}

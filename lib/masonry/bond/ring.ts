import type { Course } from '../../setout/courses.js';
import type { DomeSetout } from '../../setout/dome.js';
import { revolvedBox } from '../column.js';
import { wholeVolume } from '../measure.js';

/** A course's masonry, mm³ for each radian of the ring. */
export const volumePerRadian = (dome: DomeSetout, course: Course): number =>
  wholeVolume(revolvedBox(dome[course.part], [course.bed, course.to], [0, dome.thickness], [0, 1]));

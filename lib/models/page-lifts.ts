import type { Vec2, Vec3 } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { stuffOf } from './page-scene.js';

/** Drawn apart, a course rises over the one below by this share of the courses' height. */
const APART = 1.1;
/** Arches move out of the wall, and the ground sinks, by this much, mm. */
const ARCH_OUT = 1200;
const GROUND_DOWN = 700;
/** Domes part by this share of their distance from the middle of all. */
const DOMES_APART = 0.35;
/** How far each thing moves when the model is drawn apart. */
export function liftsOf(setout: HouseSetout) {
  const { domes, arches } = setout;
  const middle = domes.reduce<Vec2>((s, d) => [s[0] + d.at[0] / domes.length, s[1] + d.at[1] / domes.length], [0, 0]);
  const rise = setout.house.blocks.courseHeight * APART;
  const placed = new Map(
    domes.map((dome) => {
      const out: Vec2 = [(dome.at[0] - middle[0]) * DOMES_APART, (dome.at[1] - middle[1]) * DOMES_APART];
      const stem = dome.courses.filter((c) => c.part === 'stem').length;
      const at = (level: number): Vec3 => [out[0], out[1], level * rise];
      return [dome.id, { out, at, stem, top: dome.courses.length + 1.5 }] as const;
    }),
  );
  const nowhere: Vec3 = [0, 0, 0];
  return {
    course({ domeId, course }: { readonly domeId: string; readonly course: number }): Vec3 {
      const own = placed.get(domeId);
      return own ? own.at(course - 1 + (own.stem > 0 && course > own.stem ? 1 : 0)) : nowhere;
    },
    part(name: string): Vec3 {
      const [first = '', last = ''] = name.split(':');
      if (stuffOf(name) === 'ground') return [0, 0, -GROUND_DOWN];
      if (first === 'arch') {
        const arch = arches.find((a) => a.id === last);
        const own = arch && placed.get(arch.dome.id);
        return arch && own
          ? [own.out[0] + arch.along[0] * ARCH_OUT, own.out[1] + arch.along[1] * ARCH_OUT, 0]
          : nowhere;
      }
      const own = placed.get(first);
      return own ? own.at(last === 'skewback' ? own.stem : own.top) : nowhere;
    },
  };
}

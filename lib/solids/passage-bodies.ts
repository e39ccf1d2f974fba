import type { PassageSetout } from '../setout/passage.js';
import { type Level, OVERRUN } from './arch-bodies.js';
import type { PlanFrame } from './faces.js';
import type { Solid, SolidScope } from './kernel.js';
import { sectionPolygon } from './sections.js';
import type { Site } from './site.js';

export const passageFrame = ({ domes, along, across }: PassageSetout): PlanFrame => ({
  at: domes[0].at,
  along,
  across,
});

/** A passage's section grown by `grow`, from axis to axis and from a level up; `name` is that of all other faces. */
export function passagePrism(
  scope: SolidScope,
  passage: PassageSetout,
  grow: number,
  [from, bottom]: Level,
  { sagitta, name }: { readonly sagitta: number; readonly name: string },
): Solid {
  const outline = sectionPolygon(passage.section, grow, from, sagitta, { bottom, sides: name });
  return scope.prism(`${passage.id}: vault`, outline, passageFrame(passage), [0, passage.distance], [name, name]);
}

/** The outer section of vault and walls grown by `grow`, open below at the floor. */
export function passageCutter(
  scope: SolidScope,
  passage: PassageSetout,
  { grow, sagitta, name }: { readonly grow: number; readonly sagitta: number; readonly name: string },
): Solid {
  return passagePrism(scope, passage, passage.ring + grow, [-OVERRUN, name], { sagitta, name });
}

/** The clear space of a passage from a level up whose face is named: the floor, or none. */
export const passageClear = (scope: SolidScope, passage: PassageSetout, threshold: Level, sagitta: number): Solid =>
  passagePrism(scope, passage, 0, threshold, { sagitta, name: `vault:${passage.id}` });

/** One passage as a part: vault and walls from room to room. */
export function passagePart(scope: SolidScope, passage: PassageSetout, sites: readonly [Site, Site]): Solid {
  const part = `passage:${passage.id}`;
  const { sagitta } = sites[0].facets;
  const whole = passagePrism(scope, passage, passage.ring, [0, 'base'], { sagitta, name: part });
  const clear = passageClear(scope, passage, [-OVERRUN, 'base'], sagitta);
  // The small cut first: the large ones then meet no more than they must.
  const hollow = scope.subtract(part, whole, [clear]);
  return scope.subtract(
    part,
    hollow,
    sites.map((site) => site.openRoom()),
  );
}

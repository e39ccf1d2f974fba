import type { ArchSetout } from '../setout/arch.js';
import type { PlanFrame } from './faces.js';
import type { Solid, SolidScope } from './kernel.js';
import { rectangle } from './outline.js';
import { sectionPolygon } from './sections.js';
import type { Site } from './site.js';

/** Cutting bodies run past what they cut by this much (mm), so that no two faces coincide. */
export const OVERRUN = 10;

/** A level and the name of the face that lies on it. */
export type Level = readonly [z: number, name: string];

export const frameOf = ({ dome, along, across }: ArchSetout): PlanFrame => ({ at: dome.at, along, across });

/** The outer section of ring and jambs grown by `grow`, from inside the room out to `v`, open below at the floor. */
export function archCutter(
  scope: SolidScope,
  arch: ArchSetout,
  options: { readonly grow: number; readonly sagitta: number; readonly name: string },
): Solid {
  const { dome, section, ring, baseZ } = arch;
  const { grow, sagitta, name } = options;
  const from = baseZ > 0 ? baseZ : -OVERRUN;
  const outline = sectionPolygon(section, ring + grow, from, sagitta, { bottom: name, sides: name });
  const to = dome.springingRadius + dome.thickness + OVERRUN;
  return scope.prism(`${arch.id}: cutter`, outline, frameOf(arch), [0, to], [name, name]);
}

/** A barrel's prism with its jambs down to a level whose face is named, from the room to the flat face. */
export function barrelPrism(scope: SolidScope, arch: ArchSetout, [from, bottom]: Level, site: Site): Solid {
  const outline = sectionPolygon(arch.section, arch.ring, from, site.facets.sagitta, {
    bottom,
    sides: `arch:${arch.id}`,
  });
  const v = [site.stripOf(arch).from, arch.faceV ?? 0] as const;
  return scope.prism(`${arch.id}: barrel`, outline, frameOf(arch), v, ['axis', `face:${arch.id}`]);
}

/**
 * The clear space of an opening or niche from the room out, and from a level up whose face is named: its sill, or the
 * floor at a door.
 */
export function clearSpace(scope: SolidScope, arch: ArchSetout, [from, bottom]: Level, site: Site): Solid {
  const { section, clear, id } = arch;
  const name = `opening:${id}`;
  const outline = sectionPolygon(section, 0, from, site.facets.sagitta, { bottom, sides: name });
  const back = `niche-back:${id}`;
  const part = `${id}: clear space`;
  const strip = site.stripOf(arch);
  if (clear.kind === 'plane') return scope.prism(part, outline, frameOf(arch), [strip.from, clear.v], [name, back]);
  const through = scope.prism(part, outline, frameOf(arch), [strip.from, strip.to], [name, name]);
  if (clear.kind === 'through') return through;
  return scope.intersect(part, [through, site.within(strip, clear.depth, back)]);
}

/**
 * One arch as a part. A barrel: its prism less the room and its clear space, solid under the sill.
 * A flush ring: its section within the masonry. Both give way to earlier domes.
 */
export function archPart(scope: SolidScope, arch: ArchSetout, site: Site): Solid {
  const part = `arch:${arch.id}`;
  const strip = site.stripOf(arch);
  const taken = [site.clear(arch, [-OVERRUN, 'base']), site.within(strip, 0, 'intrados'), ...site.earlierAlong(strip)];
  if (arch.faceV !== null) return scope.subtract(part, barrelPrism(scope, arch, [0, 'base'], site), taken);
  const outline = sectionPolygon(arch.section, arch.ring, arch.baseZ, site.facets.sagitta, {
    bottom: part,
    sides: part,
  });
  const section = scope.prism(part, outline, frameOf(arch), [strip.from, strip.to], [part, part]);
  const wall = site.within(strip, arch.dome.thickness, 'extrados');
  return scope.subtract(part, scope.intersect(part, [section, wall]), taken);
}

/** Ground under a prism that is `half` wide to each side, from its origin out, between two levels. */
export function groundUnder(
  scope: SolidScope,
  {
    id,
    frame,
    half,
    to,
  }: { readonly id: string; readonly frame: PlanFrame; readonly half: number; readonly to: number },
  [bottom, top]: readonly [number, number],
  names: { readonly bottom: string; readonly side: string; readonly top: string },
): Solid {
  const outline = rectangle([-half, bottom], [half, top], names);
  return scope.prism(`${id}: ground`, outline, frame, [0, to], [names.side, names.side]);
}

import type { ArchSetout } from '../setout/arch.js';
import { type DomeFacets, filledTo } from './dome-outlines.js';
import type { PlanFrame } from './faces.js';
import type { Solid, SolidScope } from './kernel.js';
import { rectangle } from './outline.js';
import { sectionPolygon } from './sections.js';
import type { Site } from './site.js';

/** Cutting bodies run past what they cut by this much (mm), so that no two faces coincide. */
export const OVERRUN = 10;

export const frameOf = ({ dome, along, across }: ArchSetout): PlanFrame => ({ at: dome.at, along, across });

/** How far out an arch's cuts reach: past its flat face, or past the dome's widest circle. */
const reach = ({ dome, faceV }: ArchSetout): number => (faceV ?? dome.springingRadius + dome.thickness) + OVERRUN;

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

/** A barrel's full prism with its jambs down to a level whose face is named, from the axis to the flat face. */
export function barrelPrism(
  scope: SolidScope,
  arch: ArchSetout,
  [from, bottom]: readonly [level: number, name: string],
  sagitta: number,
): Solid {
  const outline = sectionPolygon(arch.section, arch.ring, from, sagitta, { bottom, sides: `arch:${arch.id}` });
  return scope.prism(`${arch.id}: barrel`, outline, frameOf(arch), [0, arch.faceV ?? 0], ['axis', `face:${arch.id}`]);
}

/** The clear space of an opening or niche from a level up whose face is named: its sill, or the floor at a door. */
export function clearSpace(
  scope: SolidScope,
  arch: ArchSetout,
  facets: DomeFacets,
  [from, bottom]: readonly [level: number, name: string],
): Solid {
  const { section, clear, id } = arch;
  const name = `opening:${id}`;
  const outline = sectionPolygon(section, 0, from, facets.sagitta, { bottom, sides: name });
  const back = `niche-back:${id}`;
  const part = `${id}: clear space`;
  if (clear.kind === 'plane') return scope.prism(part, outline, frameOf(arch), [0, clear.v], [name, back]);
  const through = scope.prism(part, outline, frameOf(arch), [0, reach(arch)], [name, name]);
  if (clear.kind === 'through') return through;
  const { segments, dome } = facets;
  const limit = scope.revolve(part, filledTo(facets, clear.depth, -2 * OVERRUN, back), segments, dome.at);
  return scope.intersect(part, [through, limit]);
}

/**
 * One arch as a part. A barrel: its prism less the room and its clear space, solid under the sill.
 * A flush ring: its section within the masonry.
 */
export function archPart(scope: SolidScope, arch: ArchSetout, site: Site): Solid {
  const part = `arch:${arch.id}`;
  const { sagitta } = site.facets;
  const clear = site.clear(arch, [-OVERRUN, 'base']);
  // The small cut first: the large one then meets no more than it must.
  const hollowed = (solid: Solid) => scope.subtract(part, scope.subtract(part, solid, [clear]), [site.openRoom()]);
  if (arch.faceV !== null) return hollowed(barrelPrism(scope, arch, [0, 'base'], sagitta));
  const outline = sectionPolygon(arch.section, arch.ring, arch.baseZ, sagitta, { bottom: part, sides: part });
  const section = scope.prism(part, outline, frameOf(arch), [0, reach(arch)], [part, part]);
  return hollowed(scope.intersect(part, [section, site.outer()]));
}

/** Ground plan under a barrel, `margin` wider than its jambs on each side and longer than its flat face. */
export function groundUnder(
  scope: SolidScope,
  arch: ArchSetout,
  margin: number,
  z: readonly [number, number],
  name: string,
): Solid {
  const half = arch.section.width / 2 + arch.ring + margin;
  const outline = rectangle([-half, z[0]], [half, z[1]], { bottom: name, side: name, top: name });
  const to = (arch.faceV ?? 0) + margin;
  return scope.prism(`${arch.id}: ground`, outline, frameOf(arch), [0, to], [name, name]);
}

import { hypot } from '../math/elementary.js';
import { dot2, sub2, type Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import { type DomeFacets, filledTo } from './dome-outlines.js';
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
export function barrelPrism(scope: SolidScope, arch: ArchSetout, [from, bottom]: Level, sagitta: number): Solid {
  const outline = sectionPolygon(arch.section, arch.ring, from, sagitta, { bottom, sides: `arch:${arch.id}` });
  return scope.prism(`${arch.id}: barrel`, outline, frameOf(arch), [0, arch.faceV ?? 0], ['axis', `face:${arch.id}`]);
}

/** The clear space of an opening or niche from a level up whose face is named: its sill, or the floor at a door. */
export function clearSpace(scope: SolidScope, arch: ArchSetout, facets: DomeFacets, [from, bottom]: Level): Solid {
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
 * A flush ring: its section within the masonry. Both give way to earlier domes.
 */
export function archPart(scope: SolidScope, arch: ArchSetout, site: Site): Solid {
  const part = `arch:${arch.id}`;
  const { sagitta } = site.facets;
  const clear = site.clear(arch, [-OVERRUN, 'base']);
  const half = arch.section.width / 2 + arch.ring;
  const earlier = site.giveWay({
    radius: hypot(half, reach(arch)),
    heights: [-OVERRUN, arch.topZ + OVERRUN],
    name: () => part,
    meets: (dome) => distanceToStrip(frameOf(arch), half, reach(arch), dome.at) < dome.outerRadiusAt(0),
  });
  // The small cut first: the large ones then meet no more than they must.
  const hollowed = (solid: Solid) =>
    scope.subtract(part, scope.subtract(part, solid, [clear]), [site.fullRoom(), ...earlier]);
  if (arch.faceV !== null) return hollowed(barrelPrism(scope, arch, [0, 'base'], sagitta));
  const outline = sectionPolygon(arch.section, arch.ring, arch.baseZ, sagitta, { bottom: part, sides: part });
  const section = scope.prism(part, outline, frameOf(arch), [0, reach(arch)], [part, part]);
  return hollowed(scope.intersect(part, [section, site.outer()]));
}

/** Distance in plan of a point from a strip that is `half` wide to each side, from its frame's origin out. */
function distanceToStrip({ at, along, across }: PlanFrame, half: number, to: number, point: Vec2): number {
  const from = sub2(point, at);
  const [u, v] = [Math.abs(dot2(from, across)), dot2(from, along)];
  return hypot(Math.max(0, u - half), Math.max(0, -v, v - to));
}

/** Ground plan of a prism that is `half` wide to each side, from its origin out, between two levels. */
export function groundUnder(
  scope: SolidScope,
  {
    id,
    frame,
    half,
    to,
  }: { readonly id: string; readonly frame: PlanFrame; readonly half: number; readonly to: number },
  z: readonly [number, number],
  name: string,
): Solid {
  const outline = rectangle([-half, z[0]], [half, z[1]], { bottom: name, side: name, top: name });
  return scope.prism(`${id}: ground`, outline, frame, [0, to], [name, name]);
}

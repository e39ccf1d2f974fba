import type { Mesh } from '../documents/mesh.js';
import { archCutter, archPart } from './arch-bodies.js';
import { crownPiece, shellRing, skewbackRing, stemWall, wallAndShell } from './dome-outlines.js';
import { footingPart, slabPart } from './ground-bodies.js';
import type { Solid, SolidScope } from './kernel.js';
import type { Outline } from './outline.js';
import type { Site } from './site.js';

/** The parts of one dome, each by its own booleans; see `HouseSolids.parts` for their names. */
export function domeParts(scope: SolidScope, site: Site): Mesh[] {
  const { dome, facets, arches, ground } = site;
  const cutters = arches.map((arch) => ({
    arch,
    solid: archCutter(scope, arch, { grow: 0, sagitta: facets.sagitta, name: `arch:${arch.id}` }),
  }));
  /** A ring of the masonry less the arches that reach its height. */
  const ring = (outline: Outline, part: string): Solid => {
    const heights = outline.points.map((p) => p[1]);
    const [low, high] = [Math.min(...heights), Math.max(...heights)];
    const near = cutters.filter(({ arch }) => arch.baseZ < high && arch.topZ > low).map((c) => c.solid);
    return scope.subtract(part, scope.revolve(part, outline, facets.segments, dome.at), near);
  };
  const outlines: [string, Outline | null][] = dome.skewback
    ? [
        // A skewback parts the wall from the shell: they would touch along one edge only.
        ['stem-wall', stemWall(facets)],
        ['skewback', skewbackRing(facets)],
        ['shell', shellRing(facets)],
      ]
    : [['shell', wallAndShell(facets)]];
  outlines.push([dome.curb ? 'curb' : 'plug', crownPiece(facets)]);

  const parts: Mesh[] = [];
  const add = (part: string, solid: Solid) => parts.push(scope.mesh(part, solid));
  for (const [name, outline] of outlines) {
    if (outline) add(`${dome.id}:${name}`, ring(outline, `${dome.id}:${name}`));
  }
  for (const arch of arches) add(`arch:${arch.id}`, archPart(scope, arch, site));
  if (ground.footing) add(`${dome.id}:footing`, footingPart(scope, ground, ground.footing, site.footingPlate()));
  if (ground.slab) add(`${dome.id}:slab`, slabPart(scope, ground, ground.slab));
  return parts;
}

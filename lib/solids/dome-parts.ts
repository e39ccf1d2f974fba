import type { Mesh } from '../documents/mesh.js';
import type { PassageSetout } from '../setout/passage.js';
import { archCutter, archPart, OVERRUN } from './arch-bodies.js';
import { withCaps } from './cap.js';
import { crownPiece, shellRing, skewbackRing, stemWall, wallAndShell } from './dome-outlines.js';
import type { Solid, SolidScope } from './kernel.js';
import type { Outline } from './outline.js';
import { passageCutter } from './passage-bodies.js';
import { belowSeam, capOf, type Site } from './site.js';

/** The parts of one dome and its arches, each by its own booleans; see `HouseSolids.parts` for their names. */
export function domeParts(scope: SolidScope, site: Site, passages: readonly PassageSetout[]): Mesh[] {
  const { dome, facets, arches } = site;
  const { sagitta } = facets;
  const cutters = [
    ...arches.map((arch) => ({
      low: arch.baseZ,
      high: arch.topZ,
      solid: archCutter(scope, arch, { grow: 0, sagitta, name: `arch:${arch.id}` }),
    })),
    ...passages.map((passage) => ({
      low: 0,
      high: passage.topZ,
      solid: passageCutter(scope, passage, { grow: 0, sagitta, name: `passage:${passage.id}` }),
    })),
  ];
  /** A ring of the masonry less the arches and passages that reach its height, and the earlier domes in its way. */
  const ring = (outline: Outline, part: string): Solid => {
    const heights = outline.points.map((p) => p[1]);
    const [low, high] = [Math.min(...heights), Math.max(...heights)];
    const near = cutters.filter((c) => c.low < high && c.high > low).map((c) => c.solid);
    const radius = Math.max(...outline.points.map((p) => p[0]));
    const earlier = site.giveWay({ radius, heights: [low - OVERRUN, high + OVERRUN], name: ({ id }) => `dome:${id}` });
    return scope.subtract(part, scope.revolve(part, outline, facets.segments, dome.at), [...near, ...earlier]);
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
  for (const [name, outline] of outlines) {
    if (!outline) continue;
    const part = `${dome.id}:${name}`;
    const cap = name === 'shell' ? capOf(site, outline) : null;
    const lower = cap ? belowSeam(outline, site.seam, cap.seam) : outline;
    parts.push(withCaps(scope.mesh(part, ring(lower, part)), cap ? [cap] : []));
  }
  for (const arch of arches) parts.push(scope.mesh(`arch:${arch.id}`, archPart(scope, arch, site)));
  return parts;
}

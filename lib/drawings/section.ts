import { formatAngle } from '../base/measures.js';
import type { View } from '../documents/drawing.js';
import { cos, sin } from '../math/elementary.js';
import { DEG, dot2, type Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import { archesOf, type HouseSetout } from '../setout/house.js';
import { uprightAxis } from './axes.js';
import { placeChain, places, rowsFrom } from './dims.js';
import { type Draft, type DraftedView, footedView } from './draft.js';
import { mainLevels, openingLevels } from './elevation.js';
import { sideAt } from './extent.js';
import { figureBox } from './fit.js';
import { Layout } from './layout.js';
import { placeLevels } from './levels.js';
import { PATTERN_OF, type Part } from './parts.js';
import { sectionFigure } from './section-figure.js';
import { type SectionOptions, sectionPlane } from './section-plane.js';
import { baseWords, profileWords, projectWords, wallWords, writtenUnits } from './words.js';

export interface SectionViewOptions extends SectionOptions {
  /** 50 stands for 1:50; default: the largest standard scale at which the view fits A3. */
  readonly scale?: number;
}

/**
 * An upright section through a dome's axis: what is cut, what is seen beyond, levels and main sizes.
 * @throws RangeError when no dome has the id that is asked for.
 */
export const sectionView = (house: HouseSetout, options: SectionViewOptions = {}): View =>
  footedView(sectionDraft(house, options), projectWords(house.house), options.scale);

/** @throws RangeError when no dome has the id that is asked for. */
export function sectionDraft(house: HouseSetout, options: SectionOptions = {}): Draft {
  const plane = sectionPlane(house, options);
  const { dome } = plane;
  const { primitives, cut } = sectionFigure(house, plane);
  const { ground } = house.house.site;
  const all = figureBox(cut.loops());
  const openings = archesOf(house, dome).flatMap((arch) => {
    const off = (arch.opening.bearingDeg - plane.bearingDeg) * DEG;
    const reach = arch.faceV ?? dome.springingRadius + dome.thickness;
    if (Math.abs(sin(off)) * reach >= arch.section.width / 2) return [];
    return [{ arch, cos: cos(off), side: cos(off) > 0 ? ('right' as const) : ('left' as const) }];
  });
  const on = (side: 'left' | 'right'): ArchSetout[] => openings.filter((o) => o.side === side).map((o) => o.arch);
  const footing = house.footings.find((f) => f.domeId === dome.id);
  const slab = house.slabs.find((s) => s.domeId === dome.id);

  const draw = (scale: number): DraftedView => {
    const layout = new Layout(scale, writtenUnits(house.house));
    layout.add(...primitives, ...uprightAxis(0, all.min[1] - layout.mm(3), dome.topZ + layout.mm(4)));
    const below = all.min[1] - layout.mm(1);
    const under = rowsFrom(layout, below, -1);
    const [r, t] = [dome.springingRadius, dome.thickness];
    const bare = ([-1, 1] as const).find((s) => on(s < 0 ? 'left' : 'right').every((a) => a.faceV === null));
    if (footing && bare) {
      const ends = places([bare * footing.innerRadius, bare * footing.outerRadius]);
      placeChain(layout, { angleDeg: 0, places: ends, from: () => below, prefix: 'footing ' }, under);
    }
    const faces = ([-1, 1] as const).map((s) => {
      const barrel = openings.find((o) => o.arch.faceV !== null && (o.side === 'right') === s > 0);
      const face = barrel ? (barrel.arch.faceV as number) / Math.abs(barrel.cos) : r + t;
      return [s * r, s * face];
    });
    placeChain(layout, { angleDeg: 0, places: places(faces.flat()), from: () => below }, under);
    placeChain(layout, { angleDeg: 0, places: places(faces.map((f) => f[1] as number)), from: () => below }, under);
    if (dome.curb) {
      const above = dome.topZ + layout.mm(1);
      const bore = places([-dome.curb.clearRadius, dome.curb.clearRadius]);
      placeChain(layout, { angleDeg: 0, places: bore, from: () => above, prefix: 'Ø' }, rowsFrom(layout, above, 1));
    }

    const crown = dome.curb ? dome.heightAt(dome.curb.clearRadius) : dome.crownZ;
    const columns = rowsFrom(layout, cut.ground[1] - layout.mm(3), 1);
    const side = (z: number, away: 1 | -1) => sideAt(house, plane.right, z, away) - dot2(plane.through, plane.right);
    const upright = (zs: readonly number[], prefix = '') =>
      placeChain(layout, { angleDeg: 90, places: places(zs), from: (z) => side(z, 1), prefix }, columns);
    upright([0, dome.springingZ, crown, dome.topZ]);
    for (const { arch } of openings) upright([arch.section.sill, arch.section.crownZ], `${arch.id} `);
    if (slab) upright([slab.bottomZ, 0], 'slab ');
    if (footing) upright([footing.bottomZ, 0], 'footing ');
    upright([ground, dome.topZ]);
    const levels = [
      ...mainLevels(house, [dome]),
      { z: crown, label: dome.curb ? 'edge of oculus' : 'crown, intrados' },
      ...openings.flatMap((o) => openingLevels(o.arch)),
    ];
    placeLevels(layout, levels, cut.ground[0], (z) => (z > ground ? side(z, -1) : cut.ground[0]));

    const used = (Object.keys(PATTERN_OF) as Part[]).filter((p) => cut.loops(p).length > 0).map((p) => PATTERN_OF[p]);
    const foot = {
      title: TITLE,
      notes: [
        `Through the axis of ${dome.id}, to bearing ${formatAngle(plane.bearingDeg)} at the right.`,
        profileWords(dome, layout.units),
      ],
      general: [wallWords(house.house, layout.units), baseWords(house.house, layout.units)],
      patterns: [...new Set(used)],
    };
    return { layout, foot };
  };
  const top = Math.max(...house.domes.map((d) => d.topZ));
  const figure = { min: [cut.ground[0], all.min[1]] as Vec2, max: [cut.ground[1], top] as Vec2 };
  return { id: 'section-a', figure, units: writtenUnits(house.house), draw };
}

const TITLE = 'Section A-A';

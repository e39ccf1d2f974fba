import { formatAngle, formatLength } from '../base/measures.js';
import * as texts from '../base/texts/drawing-plans.js';
import { ONE_SIZE } from '../base/tolerances.js';
import type { View } from '../documents/drawing.js';
import { dot2 } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { uprightAxis } from './axes.js';
import { type ChainSpec, legibleChains, namedRowsFrom, placeChain, placeChainFree, places, rowsFrom } from './dims.js';
import { type Draft, type DraftedView, footedView } from './draft.js';
import { mainLevels, vaultLevels } from './elevation.js';
import { beyondPlane, sideAt } from './extent.js';
import { figureBox, type ScaleOptions } from './fit.js';
import { Layout } from './layout.js';
import { type LevelNote, placeLevels } from './levels.js';
import { partitionCuts } from './partitions.js';
import { PATTERN_OF, type Part } from './parts.js';
import { asideDomes, crownOf, cutDome, cutPassages } from './section-domes.js';
import { sectionFigure } from './section-figure.js';
import { type SectionOptions, type SectionPlane, sectionPlane } from './section-plane.js';
import { baseWords, profileWords, projectWords, wallWords, wordsOf, writtenUnits } from './words.js';

/** Rows a millimetre of paper apart that are tried in a room, so that a figure finds its place between two joints. */
const ROOM_ROWS = 36;

export interface SectionViewOptions extends SectionOptions, ScaleOptions {}

/**
 * An upright section through a dome's axis: what is cut, what is seen beyond, levels and main sizes.
 * @throws RangeError when no dome has the id that is asked for.
 */
export const sectionView = (house: HouseSetout, options: SectionViewOptions = {}): View =>
  footedView(sectionDraft(house, sectionPlane(house, options)), projectWords(house.house), options);

export function sectionDraft(house: HouseSetout, plane: SectionPlane): Draft {
  const units = writtenUnits(house.house);
  const { primitives, cut } = sectionFigure(house, plane);
  const { ground } = house.house.site;
  const all = figureBox(cut.loops());
  const domes = plane.domes.map((dome) => cutDome(house, plane, dome));
  const aside = asideDomes(house, plane, (p) => cut.partAt(p) !== null);
  const single = domes.length === 1;
  const passages = cutPassages(house, plane);
  const seen = beyondPlane(house, plane.through, plane.look);
  const vaults = [...domes.flatMap((d) => d.arches), ...passages];
  const top = Math.max(...seen.domes.map((d) => d.topZ));
  const [slab] = house.slabs;
  const [footing] = house.footings;

  const walls = partitionCuts(house, plane, cut.ground);

  const draw = (scale: number): DraftedView => {
    const layout = new Layout(scale, units);
    layout.add(...primitives, ...walls);
    for (const { x, dome } of domes) layout.add(...uprightAxis(x, all.min[1] - layout.mm(3), dome.topZ + layout.mm(4)));

    const below = all.min[1] - layout.mm(1);
    const under = rowsFrom(layout, below, -1);
    const level = (xs: readonly number[], prefix = '') =>
      placeChain(layout, { angleDeg: 0, places: places(xs), from: () => below, prefix }, under);
    const footed = domes.find((d) => d.footing !== null);
    if (footed?.footing) level(footed.footing, texts.footingSize);
    for (const { faces } of domes) level(faces);
    for (const { faces } of aside) level(faces);
    if (!single) level(domes.map((d) => d.x));
    level([Math.min(...domes.flatMap((d) => d.faces)), Math.max(...domes.flatMap((d) => d.faces))]);
    const columns = namedRowsFrom(layout, cut.ground[1] - layout.mm(3));
    const middle = dot2(plane.through, plane.right);
    const side = (z: number, away: 1 | -1) => sideAt(seen, plane.right, z, away) - middle;
    const upright = (zs: readonly number[], more: Pick<ChainSpec, 'prefix' | 'lastPrefix' | 'name'> = {}) => {
      for (const chain of legibleChains(layout, places(zs)))
        placeChain(layout, { angleDeg: 90, places: chain, from: (z) => side(z, 1), ...more }, columns);
    };
    for (const { dome } of domes)
      upright([0, dome.springingZ, crownOf(dome), dome.topZ], single ? {} : { name: dome.id });
    for (const { section, id } of vaults) upright([section.sill, section.crownZ], { name: id });
    // A ring is as thick over its crown as beside it, but for pointed ones.
    const rings = new Map(vaults.map((v) => [Math.round(v.ring), v]));
    for (const { section, ring } of rings.values()) {
      const over = section.topZ(ring);
      if (Math.abs(over - section.crownZ - ring) < ONE_SIZE)
        upright([section.crownZ, over], { prefix: texts.ringSize });
    }
    if (slab) upright([slab.bottomZ, 0], { prefix: texts.slabSize });
    if (footing) upright([footing.bottomZ, 0], { prefix: texts.footingSize });
    upright([ground, Math.max(...domes.map((d) => d.dome.topZ))]);
    const crowns = domes.map(
      ({ dome }): LevelNote => ({
        z: crownOf(dome),
        label: dome.curb ? texts.edgeOfOculus : texts.crownIntrados,
        ...(single ? {} : { about: dome.id }),
      }),
    );
    const besides = aside.flatMap(({ dome: { id, springingZ }, insideZ, outsideZ }): LevelNote[] => [
      { z: springingZ, label: texts.springing, about: id },
      { z: insideZ, label: texts.topOfCutInside, about: id },
      { z: outsideZ, label: texts.topOfCutOutside, about: id },
    ]);
    const levels = [...mainLevels(house, plane.domes), ...crowns, ...besides, ...vaults.flatMap(vaultLevels)];
    placeLevels(layout, levels, cut.ground[0], (z) => (z > ground ? side(z, -1) : cut.ground[0]));
    // Lines of levels run over the lower domes: what stands over these keeps clear of them.
    for (const { x, dome } of domes) {
      if (!dome.curb) continue;
      const { clearRadius, bedOuter } = dome.curb;
      const above = dome.topZ + layout.mm(1);
      const over = (xs: readonly number[], prefix: string) =>
        placeChain(layout, { angleDeg: 0, places: xs, from: () => above, prefix }, rowsFrom(layout, above, 1, 24));
      over([x - clearRadius, x + clearRadius], 'Ø');
      over([x + clearRadius, x + bedOuter[0]], texts.curbSize);
      // Its width at the intrados as well, in the room, where that is free.
      const bed = dome.shell.at(dome.curb.bedS);
      placeChainFree(
        layout,
        { angleDeg: 0, places: [x + clearRadius, x + bed.r], from: () => bed.z, prefix: texts.curbInsideSize },
        Array.from({ length: ROOM_ROWS }, (_, i) => bed.z - layout.mm(8 + i)),
      );
    }

    const used = (Object.keys(PATTERN_OF) as Part[]).filter((p) => cut.loops(p).length > 0).map((p) => PATTERN_OF[p]);
    const names = wordsOf(plane.domes.map((d) => d.id));
    const title = texts.sectionTitle(plane.mark);
    const foot = {
      title,
      notes: [
        texts.throughOfToBearing(single, names, formatAngle(plane.bearingDeg)),
        ...aside.map(({ dome, off }) => texts.itPassesBeside(dome.id, formatLength(off, units))),
        plane.domes.map((d) => profileWords(d, units)).join(' '),
      ],
      general: [wallWords(house.house, units), baseWords(house.house, units)],
      patterns: [...new Set(used)],
    };
    return { layout, foot };
  };
  return {
    id: `section-${plane.mark.toLowerCase()}`,
    units,
    figure: { min: [cut.ground[0], all.min[1]], max: [cut.ground[1], top] },
    draw,
  };
}

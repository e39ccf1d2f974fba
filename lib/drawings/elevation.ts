import * as texts from '../base/texts/drawing-plans.js';
import { ONE_SIZE, SAME_ANGLE_RAD } from '../base/tolerances.js';
import type { View } from '../documents/drawing.js';
import { alongBearing, bearingOf, DEG, dot2, type Vec2, type Vec3 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { onRadius } from './arch-edges.js';
import { fromArchFrame, type Prism } from './arch-places.js';
import { uprightAxis } from './axes.js';
import { legibleChains, namedRowsFrom, placeChain, places, rowsFrom } from './dims.js';
import { type Draft, type DraftedView, footedView } from './draft.js';
import { elevationFigure } from './elevation-figure.js';
import { masonryReach, sideAt } from './extent.js';
import type { ScaleOptions } from './fit.js';
import { aboveGround } from './ground.js';
import { Layout } from './layout.js';
import { type LevelNote, placeLevels } from './levels.js';
import { quickHouse } from './quick-house.js';
import { type LevelSight, levelSight, rightOf } from './sight.js';
import { GROUND_BEYOND } from './upright-cut.js';
import { projectWords, wallWords, writtenUnits } from './words.js';

export type Side = 'north' | 'east' | 'south' | 'west';
export const SIDES: readonly Side[] = ['north', 'east', 'south', 'west'];

/** The way one looks at each side: the north elevation is seen from project north, looking south. */
const LOOK: Readonly<Record<Side, Vec2>> = { north: [0, -1], east: [-1, 0], south: [0, 1], west: [1, 0] };

/** An elevation: silhouettes, openings, joints and what else is seen of a side, with levels and main sizes. */
export const elevationView = (house: HouseSetout, side: Side, options: ScaleOptions = {}): View =>
  footedView(elevationDraft(house, side), projectWords(house.house), options);

export function elevationDraft(house: HouseSetout, side: Side): Draft {
  const look = LOOK[side];
  const right = rightOf(look);
  const figure = elevationFigure(house, look);
  const [left, end] = masonryReach(house, right);
  const top = Math.max(...house.domes.map((d) => d.topZ));
  const isTop = (d: DomeSetout) => top - d.topZ < ONE_SIZE;
  const { ground } = house.house.site;
  const bottom = Math.min(ground, 0, ...house.footings.map((f) => f.bottomZ), ...house.slabs.map((s) => s.bottomZ));
  const sight = levelSight(quickHouse(house), look, { shows: aboveGround(house) });
  // A niche shows nothing of itself outside.
  const open = house.arches.filter((a) => a.clear.kind === 'through');
  const facing = open.filter((a) => dot2(a.along, look) < -FACING && shown(a, sight));

  // Sizes of domes that stand behind others are told where they are seen, and in their sections.
  const seen = house.domes.filter((d) => mostlyShown(d, sight));
  const told = seen.length > 0 ? seen : house.domes;
  // The house's height is told even where what reaches it stands behind others.
  const tops = house.domes.filter(isTop);
  const highest: LevelNote[] = tops.some((d) => told.includes(d))
    ? []
    : [{ z: top, label: TOP, about: tops.map((d) => d.id).join(', ') }];
  const units = writtenUnits(house.house);
  const draw = (scale: number): DraftedView => {
    const layout = new Layout(scale, units);
    layout.add(...figure);
    for (const d of house.domes)
      layout.add(...uprightAxis(dot2(d.at, right), Math.min(0, ground) - layout.mm(3), d.topZ + layout.mm(4)));

    const below = bottom - layout.mm(1);
    const under = rowsFrom(layout, below, -1);
    const level = (values: readonly number[]) =>
      placeChain(layout, { angleDeg: 0, places: places(values), from: () => below }, under);
    const axes = places([left, ...house.domes.map((d) => dot2(d.at, right)), end]);
    for (const chain of legibleChains(layout, axes)) level(chain);
    level([left, end]);

    const columns = namedRowsFrom(layout, end + GROUND_BEYOND - layout.mm(3));
    const from = (z: number) => sideAt(house, right, z, 1);
    const upright = (values: readonly number[], name?: string) => {
      for (const each of legibleChains(layout, places(values))) {
        const chain = { angleDeg: 90, places: each, from } as const;
        placeChain(layout, name === undefined ? chain : { ...chain, name }, columns);
      }
    };
    // Domes of one height are measured once.
    const heights = new Map<string, DomeSetout[]>();
    for (const d of told) {
      const key = `${d.springingZ} ${d.topZ.toFixed(1)}`;
      heights.set(key, [...(heights.get(key) ?? []), d]);
    }
    [...heights.values()].forEach((same, i) => {
      const [d] = same as [DomeSetout];
      const name = heights.size > 1 ? same.map((s) => s.id).join(', ') : undefined;
      upright([...(i === 0 ? [ground] : []), 0, d.springingZ, d.topZ], name);
    });
    // Many level marks would run far out; sills and heads of several domes are measured from the floor instead.
    const many = house.domes.length > 1;
    for (const { section, id } of facing) upright([...(many ? [0] : []), section.sill, section.crownZ], id);
    upright([ground, top]);
    placeLevels(
      layout,
      [...mainLevels(house, told), ...highest, ...(many ? [] : facing.flatMap(vaultLevels))],
      left - GROUND_BEYOND,
      (z) => (z > ground ? sideAt(house, right, z, -1) : left - GROUND_BEYOND),
    );

    const title = texts.ELEVATIONS[side];
    return { layout, foot: { title, notes: [], general: [wallWords(house.house, units)], patterns: [] } };
  };
  return {
    id: `elevation-${side}`,
    units,
    figure: { min: [left - GROUND_BEYOND, bottom], max: [end + GROUND_BEYOND, top] },
    draw,
  };
}

/** Openings within 45 degrees of square to the view are measured in it; each falls in at least one elevation. */
const FACING = Math.SQRT1_2 - SAME_ANGLE_RAD;

/** Whether a view sees something of an opening's head: one on a courtyard's far side may lie behind other domes. */
function shown(arch: ArchSetout, sight: LevelSight): boolean {
  const { section, dome, faceV } = arch;
  return [0.2, 0.5, 0.8].some((share) => {
    const z = section.sill + share * (section.crownZ - section.sill);
    return [1, -1].some((side) => {
      const u = side * (arch.clearHalfAt(z) + arch.ring / 2);
      const v = faceV ?? (onRadius(dome.outerRadiusAt(z), u) || 0);
      const [x, y] = fromArchFrame(arch, u, v);
      return sight.seesFace([x, y, z]);
    });
  });
}

/** Whether a view sees a good part of the side that a dome turns to it. */
function mostlyShown(dome: DomeSetout, sight: LevelSight): boolean {
  const toViewer = bearingOf([-sight.look[0], -sight.look[1]]);
  const places = [0.15, 0.4, 0.65, 0.9].flatMap((share) =>
    [-60, -30, 0, 30, 60].map((deg): Vec3 => {
      const z = share * dome.topZ;
      const along = alongBearing(toViewer + deg * DEG);
      const r = dome.outerRadiusAt(z);
      return [dome.at[0] + r * along[0], dome.at[1] + r * along[1], z];
    }),
  );
  return places.filter((p) => sight.seesFace(p)).length > SHOWN_SHARE * places.length;
}

/** Openings and barrels hide or take away some of every dome. */
const SHOWN_SHARE = 0.3;

const TOP = texts.topOfMasonry;

/** Levels of ground and floor, and of the domes that a view is about. */
export function mainLevels(house: HouseSetout, domes: readonly DomeSetout[]): LevelNote[] {
  const same = (of: (d: DomeSetout) => number) => domes.every((d) => Math.abs(of(d) - of(domes[0] ?? d)) < ONE_SIZE);
  /** One label without names where it holds for all. */
  const each = (label: string, of: (d: DomeSetout) => number): LevelNote[] =>
    same(of)
      ? domes.slice(0, 1).map((d) => ({ z: of(d), label }))
      : domes.map((d) => ({ z: of(d), label, about: d.id }));
  return [
    { z: house.house.site.ground, label: texts.ground },
    { z: 0, label: texts.finishedFloor },
    ...each('springing', (d) => d.springingZ),
    ...each(TOP, (d) => d.topZ),
  ];
}

/** Levels of an opening's sill and head; a passage's floor is the house's. */
export const vaultLevels = (vault: Prism): LevelNote[] => [
  ...('dome' in vault ? [{ z: vault.section.sill, label: texts.sill, about: vault.id }] : []),
  { z: vault.section.crownZ, label: texts.head, about: vault.id },
];

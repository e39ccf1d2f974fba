import { formatLength, formatLevel } from '../base/measures.js';
import * as texts from '../base/texts/drawing-plans.js';
import { ONE_SIZE } from '../base/tolerances.js';
import type { Primitive } from '../documents/drawing.js';
import { circleEdge, type Edge, lineEdge } from '../math/curves.js';
import { atan2, cos, sin } from '../math/elementary.js';
import { add2, length2, scale2, sub2, type Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, type HouseSetout, passagesOf } from '../setout/house.js';
import { baseHalf } from '../setout/material.js';
import { onRadius } from './arch-edges.js';
import { fromArchFrame, inArchFrame } from './arch-places.js';
import { axisPrimitives } from './axes.js';
import { cutOf, cutPrimitives } from './cut.js';
import { legibleChains, placeChain, places, rowsFrom } from './dims.js';
import type { Draft, DraftedView } from './draft.js';
import { baseReach } from './extent.js';
import { footprint } from './footprint.js';
import { addGrid } from './grid.js';
import { Layout, shapesOf } from './layout.js';
import { placeNote } from './leaders.js';
import { inEarlier, partAt } from './parts.js';
import { loopOf, strokesOf } from './paths.js';
import { quickHouse } from './quick-house.js';
import { sliceLevel } from './slice-level.js';
import { baseWords, writtenUnits } from './words.js';

/** Footings and slabs cut level under the floor, the walls above as overhead lines; `null` where the house has neither. */
export function footingPlanDraft(house: HouseSetout): Draft | null {
  const [east, north] = [baseReach(house, [1, 0]), baseReach(house, [0, 1])];
  if (!east || !north) return null;
  const units = writtenUnits(house.house);
  const [footing] = house.footings;
  const [slab] = house.slabs;
  const level = -Math.min(footing ? -footing.bottomZ : Infinity, slab ? -slab.bottomZ : Infinity) / 2;
  const quick = quickHouse(house);
  const cut = cutOf(sliceLevel(house, level), ([x, y]) => partAt(quick, [x, y, level]));
  const figure = { min: [east[0], north[0]] as Vec2, max: [east[1], north[1]] as Vec2 };
  const walls = footprint(house);
  const covered = ([x, y]: Vec2) => partAt(quick, [x, y, level]) === 'footing';

  const draw = (scale: number): DraftedView => {
    const layout = new Layout(scale, units, covered);
    const primitives = cutPrimitives(cut).filter((p) => p.kind !== 'hatch');
    layout.add(
      ...primitives,
      ...walls.map((loop): Primitive => ({ kind: 'path', layer: 'overhead', segments: loopOf(loop), closed: true })),
      ...house.domes.flatMap((d) => strokesOf('overhead', roomCircle(house, d))),
    );
    layout.add(...axisPrimitives(house.domes.flatMap(({ at: [x, y] }) => crossAt(x, y, layout.mm(3)))));
    for (const dome of house.domes) addRadii(house, dome, layout);
    // A slab alone is hatched up to its middle, and leaves its figures free; a footing's hatch has none in it.
    const figures = footing ? [] : layout.primitives.flatMap((p) => shapesOf(p, scale, units).texts);
    const hatched = [...cut.loops(footing ? 'footing' : 'slab').map(loopOf), ...figures.map(frameOf(layout.mm(0.4)))];
    layout.add({ kind: 'hatch', layer: 'hatch', pattern: 'concrete', loops: hatched });
    for (const arch of house.arches) addBarrelFooting(house, arch, layout);
    addGrid(house, [east, north], layout);
    const chains: readonly (readonly [0 | 90, Vec2, Vec2])[] = [
      [0, east, north],
      [90, north, east],
    ];
    for (const [angleDeg, along, across] of chains) {
      const axis = angleDeg === 0 ? 0 : 1;
      const edge = across[0] - layout.mm(1);
      const rows = rowsFrom(layout, edge, -1);
      const axes = house.domes.map((d) => d.at[axis]);
      for (const chain of [...legibleChains(layout, places([along[0], ...axes, along[1]])), [...along]])
        placeChain(layout, { angleDeg, places: chain, from: () => edge }, rows);
    }
    addLevels(house, layout);
    return {
      layout,
      foot: {
        title: texts.footingAndSlabPlan,
        notes: [
          texts.cutBelowFinishedFloor(formatLength(-level, units), footing !== undefined, slab !== undefined),
          baseWords(house.house, units),
          texts.undisturbedGroundDryFree(footing !== undefined),
          texts.underSlabCompactedFree,
        ],
        general: [],
        patterns: ['concrete'],
        northDeg: house.house.site.northDeg,
      },
    };
  };
  return { id: 'footing', units, figure, draw };
}

const crossAt = (x: number, y: number, arm: number) => [
  lineEdge([x - arm, y], [x + arm, y]),
  lineEdge([x, y - arm], [x, y + arm]),
];

/** The frame round a text at a distance, mm. */
const frameOf =
  (off: number) =>
  ({ corners }: { readonly corners: readonly Vec2[] }): Edge[] => {
    const outer = corners.map((c, i): Vec2 => {
      const sides = [corners[(i + 1) % corners.length], corners[(i + corners.length - 1) % corners.length]] as Vec2[];
      return sides.reduce<Vec2>((p, side) => {
        const back = sub2(c, side);
        return add2(p, scale2(back, off / length2(back)));
      }, c);
    });
    return outer.map((p, i) => lineEdge(p, outer[(i + 1) % outer.length] as Vec2));
  };

/** The room's circle at the floor, where no earlier dome stands in it. */
const roomCircle = (house: HouseSetout, dome: DomeSetout) =>
  cutOf(
    [
      circleEdge(dome.at, dome.springingRadius),
      ...house.domes.map((d) => circleEdge(d.at, d.springingRadius + d.thickness)),
    ],
    ([x, y]) =>
      length2(sub2([x, y], dome.at)) < dome.springingRadius && !inEarlier(house, dome, [x, y, 0]) ? 'slab' : null,
  )
    .loops()
    .flat();

/** Inner and outer radius of a footing, or the slab's, where their texts lie free; the table tells them in any case. */
function addRadii(house: HouseSetout, dome: DomeSetout, layout: Layout): void {
  const footing = house.footings.find((f) => f.domeId === dome.id);
  const slab = house.slabs.find((s) => s.domeId === dome.id);
  const radii = footing ? [footing.innerRadius, footing.outerRadius] : slab ? [slab.radius] : [];
  const ways = [...archesOf(house, dome), ...passagesOf(house, dome)];
  radii.forEach((radius, k) => {
    const free = Array.from({ length: 24 }, (_, i) => ((37.5 + 60 * k + i * 15) * Math.PI) / 180).flatMap((turn) => {
      const on: Vec2 = [dome.at[0] + radius * cos(turn), dome.at[1] + radius * sin(turn)];
      if (inEarlier(house, dome, [on[0], on[1], 0])) return [];
      if (ways.some((a) => inArchFrame(a, on)[1] > 0 && Math.abs(inArchFrame(a, on)[0]) < baseHalf(a, 400))) return [];
      return [[{ kind: 'dimension', type: 'radius', centre: dome.at, on } as const]];
    });
    layout.placeFree(free);
  });
}

/** Width of the footing under a barrel, else of the slab's edge, and how far it projects there beyond the round. */
function addBarrelFooting(house: HouseSetout, arch: ArchSetout, layout: Layout): void {
  const footing = house.footings.find((f) => f.domeId === arch.dome.id);
  const radius = footing?.outerRadius ?? house.slabs.find((s) => s.domeId === arch.dome.id)?.radius;
  if (arch.faceV === null || radius === undefined) return;
  const more = footing?.projection ?? 0;
  const half = baseHalf(arch, more);
  const end = arch.faceV + more;
  const at = (u: number, v: number) => fromArchFrame(arch, u, v);
  const offs = [6, 10, 14, 19];
  layout.placeFree(
    offs.map((off) => [
      {
        kind: 'dimension',
        type: 'aligned',
        from: at(-half, end),
        to: at(half, end),
        line: at(0, end + layout.mm(off)),
      } as const,
    ]),
  );
  const start = onRadius(radius, half);
  if (!(end - start > ONE_SIZE)) return;
  layout.placeFree(
    offs.flatMap((off) =>
      [1, -1].flatMap((side) =>
        (['to', 'out-to'] as const).map((spill): Primitive[] => [
          {
            kind: 'dimension',
            type: 'aligned',
            from: at(side * half, start),
            to: at(side * half, end),
            line: at(side * (half + layout.mm(off)), (start + end) / 2),
            spill,
          },
        ]),
      ),
    ),
  );
}

/** Levels of sole and slab, told at leaders out of the house. */
function addLevels(house: HouseSetout, layout: Layout): void {
  const { units } = layout;
  const [first] = house.domes;
  if (!first) return;
  const middle = scale2(
    house.domes.reduce<Vec2>((s, d) => add2(s, d.at), [0, 0]),
    1 / house.domes.length,
  );
  const far = house.domes.reduce((a, b) => (length2(sub2(b.at, middle)) > length2(sub2(a.at, middle)) ? b : a), first);
  const outward = sub2(far.at, middle);
  const turn = length2(outward) < ONE_SIZE ? Math.PI / 4 : atan2(outward[1], outward[0]);
  const footing = house.footings.find((f) => f.domeId === far.id);
  const slab = house.slabs.find((s) => s.domeId === far.id);
  const notes: (readonly [number, string])[] = [
    ...(footing
      ? [
          [
            (footing.innerRadius + footing.outerRadius) / 2,
            texts.footingTopSole(formatLevel(0, units), formatLevel(footing.bottomZ, units)),
          ] as const,
        ]
      : []),
    ...(slab
      ? [[slab.radius * 0.6, texts.slabTopUnderside(formatLevel(0, units), formatLevel(slab.bottomZ, units))] as const]
      : []),
  ];
  notes.forEach(([radius, text], i) => {
    const angle = turn + (i === 0 ? 0.35 : -0.35);
    const at: Vec2 = [far.at[0] + radius * cos(angle), far.at[1] + radius * sin(angle)];
    const inside = ([x, y]: Vec2) =>
      house.domes.some((d) => length2(sub2([x, y], d.at)) < d.springingRadius + d.thickness + 300);
    placeNote({ at, text, first: angle, longest: 74, inside, across: true }, layout);
  });
}

import { formatLength } from '../base/measures.js';
import * as texts from '../base/texts/drawing-plans.js';
import type { Primitive } from '../documents/drawing.js';
import { archJoints, onOutline } from '../masonry/arch-joints.js';
import { type Edge, edgeAt, lineEdge } from '../math/curves.js';
import { sectionOutline } from '../math/section.js';
import type { Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { HouseSetout } from '../setout/house.js';
import { uprightAxis } from './axes.js';
import { legibleChains, placeChain, places, rowsFrom } from './dims.js';
import type { Draft, DraftedView } from './draft.js';
import { Layout } from './layout.js';
import { placeLevels } from './levels.js';
import type { OpeningType } from './opening-types.js';
import { strokesOf } from './paths.js';
import { writtenUnits } from './words.js';

/** How far floor and ground are drawn beside an opening, mm. */
const BESIDE = 250;

/** One type of opening seen square to its face, from outside or a niche from inside: clear outline, ring, frame, voussoirs, levels, sizes. */
export function openingView(house: HouseSetout, type: OpeningType): Draft {
  const units = writtenUnits(house.house);
  const arch = type.arches[0] as ArchSetout;
  const { section, ring, opening, baseZ, topZ, faceV } = arch;
  const { ground } = house.house.site;
  const half = section.width / 2;
  const wide = half + ring;
  const bottom = Math.min(0, ground);
  const figure = { min: [-wide - BESIDE, bottom] as Vec2, max: [wide + BESIDE, topZ] as Vec2 };
  const glazed = opening.use !== 'niche' && opening.frame > 0 && half > opening.frame;
  const open = (edges: readonly Edge[]) => edges.slice(0, -1);
  const primitives: Primitive[] = [
    { kind: 'path', layer: 'cut', segments: sectionOutline(section, 0, section.sill), closed: true },
    { kind: 'path', layer: 'visible', segments: open(sectionOutline(section, ring, baseZ)), closed: false },
    ...(baseZ > 0 ? strokesOf('visible', [lineEdge([-wide, baseZ], [wide, baseZ])]) : []),
    ...(glazed
      ? [
          {
            kind: 'path',
            layer: 'visible',
            segments: sectionOutline(section, -opening.frame, section.sill > 0 ? section.sill + opening.frame : 0),
            closed: true,
          } as const,
        ]
      : []),
    ...strokesOf('joint', voussoirJoints(arch)),
    ...strokesOf('visible', floorBeside(arch)),
    ...strokesOf('ground', [lineEdge([-wide - BESIDE, ground], [wide + BESIDE, ground])]),
  ];

  const draw = (scale: number): DraftedView => {
    const layout = new Layout(scale, units);
    layout.add(...primitives, ...uprightAxis(0, bottom - layout.mm(3), topZ + layout.mm(4)));
    const under = rowsFrom(layout, bottom - layout.mm(1), -1);
    const level = (xs: readonly number[], prefix = '') => {
      for (const chain of legibleChains(layout, places(xs)))
        placeChain(layout, { angleDeg: 0, places: chain, from: () => bottom - layout.mm(1), prefix }, under);
    };
    if (glazed) level([-half + opening.frame, half - opening.frame], texts.insideFrameSize);
    level([-half, half], texts.clearSize);
    level([-wide, -half, half, wide]);
    const columns = rowsFrom(layout, wide + layout.mm(1), 1, 24);
    const upright = (zs: readonly number[], name?: string) => {
      for (const chain of legibleChains(layout, places(zs)))
        placeChain(
          layout,
          { angleDeg: 90, places: chain, from: () => wide + layout.mm(1), ...(name ? { name } : {}) },
          columns,
        );
    };
    upright([0, section.sill, section.springingZ, section.crownZ, topZ]);
    upright([section.sill, section.crownZ], texts.clearHeight);
    if (section.arc) {
      const at = edgeAt(sectionOutline(section, 0, section.sill).find((e) => e.kind === 'arc') as Edge, 0.35);
      layout.placeFree([
        [{ kind: 'dimension', type: 'radius', centre: [-section.arc.past, section.arc.centreZ], on: at }],
      ]);
    }
    placeLevels(
      layout,
      [
        { z: 0, label: texts.finishedFloor },
        { z: ground, label: texts.ground },
        { z: section.sill, label: texts.sill },
        { z: section.crownZ, label: texts.head },
      ],
      -wide - BESIDE,
      (z) => (z === ground ? -wide - BESIDE : -half),
    );
    const ids = type.arches.map((a) => a.id).join(', ');
    const size = (mm: number) => formatLength(mm, units);
    const depth = arch.clear.kind === 'through' ? '' : texts.nicheDeep(size(opening.depth ?? 0));
    const made = opening.arch.madeAs === 'cast' ? texts.ringCastInOne : texts.ringOfVoussoirs(opening.arch.voussoirs);
    const face = faceV === null ? texts.flushWithWall : texts.flatFaceBeyondWall(size(opening.arch.face as number));
    return {
      layout,
      foot: {
        title: `${type.mark} ${opening.use}`,
        notes: [texts.headWide(ids, section.head.shape, made, size(ring), face, depth)],
        general: opening.use === 'niche' ? [texts.nichesAreSeen] : [texts.openingsAreSeen, texts.netClearIs],
        patterns: [],
      },
    };
  };
  return { id: `opening-${type.mark.toLowerCase()}`, units, figure, draw };
}

/** The floor's line on both sides, where the opening doesn't stand on it. */
function floorBeside({ section, ring, baseZ }: ArchSetout): Edge[] {
  const wide = section.width / 2 + (baseZ === 0 ? ring : 0);
  const out = section.width / 2 + ring + BESIDE;
  return baseZ === 0
    ? [lineEdge([-out, 0], [-wide, 0]), lineEdge([wide, 0], [out, 0])]
    : [lineEdge([-out, 0], [out, 0])];
}

/** Joints of a ring of voussoirs, on both sides of the middle. */
function voussoirJoints({ section, ring, opening }: ArchSetout): Edge[] {
  const count = opening.arch.voussoirs;
  if (count === null) return [];
  return archJoints(section, count).flatMap((joint) => {
    const out = onOutline(section, joint, 0, ring);
    return [1, -1].map((side) => lineEdge([side * joint.at[0], joint.at[1]], [side * out[0], out[1]]));
  });
}

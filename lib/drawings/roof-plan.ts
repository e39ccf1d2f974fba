import { formatLevel } from '../base/measures.js';
import * as texts from '../base/texts/drawing-plans.js';
import type { PlainPrimitive, SymbolPrimitive, TextPrimitive } from '../documents/drawing.js';
import { words } from '../documents/shapes.js';
import { circleEdge, lineEdge } from '../math/curves.js';
import { atan2, cos, sin } from '../math/elementary.js';
import { add2, DEG, length2, scale2, sub2, type Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, type HouseSetout, passagesOf } from '../setout/house.js';
import type { PassageSetout } from '../setout/passage.js';
import { fromArchFrame, inArchFrame, type Prism } from './arch-places.js';
import { axisPrimitives } from './axes.js';
import type { Draft, DraftedView } from './draft.js';
import { masonryReach } from './extent.js';
import { seenParts } from './feature.js';
import { TEXT } from './foot-blocks.js';
import { addGrid } from './grid.js';
import { underRoof } from './ground.js';
import { Layout } from './layout.js';
import { leadersOut, placeNote } from './leaders.js';
import { houseEdges } from './level-figure.js';
import { inEarlier } from './parts.js';
import { strokesOf } from './paths.js';
import { quickHouse } from './quick-house.js';
import { downSight } from './sight.js';
import { StrokeBook } from './stroke-book.js';
import { outsideValleys, type Valley } from './valleys.js';
import { bearingWords, writtenUnits } from './words.js';

/** Least fall of a flat top or gutter: common practice, no source; the local code governs. */
const FALL = '1:40';

/** The house seen from above: crowns, curbs, barrels, valleys, and which way water runs off each. */
export function roofPlanDraft(house: HouseSetout): Draft {
  const units = writtenUnits(house.house);
  const quick = quickHouse(house);
  const above = Math.max(...house.domes.map((d) => d.topZ)) + 1000;
  const sight = downSight(quick, above);
  const book = new StrokeBook();
  const base = house.house.site.ground;
  for (const f of houseEdges(quick))
    if (f.kind === 'edge')
      book.write(
        'visible',
        seenParts({ ...f, where: (p) => p[2] > Math.max(base, -1) && (f.where?.(p) ?? true) }, sight),
      );
  const seen = book.primitives();
  const [east, north] = [masonryReach(house, [1, 0]), masonryReach(house, [0, 1])];
  const figure = { min: [east[0], north[0]] as Vec2, max: [east[1], north[1]] as Vec2 };
  const valleys = outsideValleys(house);

  const draw = (scale: number): DraftedView => {
    const layout = new Layout(scale, units);
    layout.add(
      ...seen,
      ...house.domes.flatMap((d) => (d.curb ? strokesOf('visible', [circleEdge(d.at, d.curb.clearRadius)]) : [])),
    );
    layout.add(...axisPrimitives([...house.arches.flatMap(ridge), ...house.passages.flatMap((p) => passageRidge(p))]));
    layout.add(
      ...axisPrimitives(
        house.domes.flatMap(({ at: [x, y] }) => {
          const arm = layout.mm(3);
          return [lineEdge([x - arm, y], [x + arm, y]), lineEdge([x, y - arm], [x, y + arm])];
        }),
      ),
    );
    for (const valley of valleys) addValley(valley, layout);
    for (const dome of house.domes) addDomeFall(house, dome, layout);
    for (const prism of [...house.arches.filter((a) => a.faceV !== null), ...house.passages])
      addPrismFall(prism, layout);
    const inside = ([x, y]: Vec2) => underRoof(house, x, y);
    const middle = scale2(add2(figure.min, figure.max), 0.5);
    // On the roof itself where it is free there: long lines over it are hard to follow.
    const onRoof = (at: Vec2, text: string) =>
      layout.placeFree(
        leadersOut({ at, text, first: Math.PI / 4, longest: NEAR, inside: () => false, across: true }, layout),
      );
    const near = (at: Vec2, text: string) => {
      if (!onRoof(at, text)) note(at, text);
    };
    const note = (at: Vec2, text: string) => {
      const away = sub2(at, middle);
      const first = length2(away) < 1 ? Math.PI / 4 : atan2(away[1], away[0]);
      placeNote({ at, text, first, longest: 74, inside, across: true }, layout);
    };
    for (const d of house.domes) {
      const level = `${d.curb ? 'curb' : 'crown'} ${formatLevel(d.topZ, units)}`;
      if (!layout.placeFree(crownWords(d, level, layout))) note(d.at, `${d.id}: ${level}`);
    }
    const tops = valleys.map((v): Vec2 => [v.top[0], v.top[1]]);
    for (const v of valleys) near([v.top[0], v.top[1]], texts.valleyHighest(formatLevel(v.top[2], units)));
    for (const a of house.arches) {
      if (a.faceV === null) continue;
      const at = fromArchFrame(a, 0, a.faceV);
      const level = `${a.id} ${formatLevel(a.topZ, units)}`;
      const text = `${level}, ${bearingWords(a.opening.bearingDeg)}`;
      const first = atan2(a.along[1], a.along[0]);
      const outside = (words: string, longest: number) =>
        layout.placeFree(leadersOut({ at, text: words, first, longest, inside, across: false }, layout));
      // In a crowded yard the floor plan alone tells the bearing.
      if (outside(text, NEAR) || outside(level, ACROSS_YARD)) continue;
      if (!onRoof(at, text) && !onRoof(at, level)) note(at, text);
    }
    for (const p of house.passages) {
      const stretch = openStretch(p);
      if (stretch) near(ownPlace(p, stretch, tops, layout), `${p.id} ${formatLevel(p.topZ, units)}`);
    }
    // Last, so that no line to a note runs through a bubble.
    addGrid(house, [east, north], layout);
    return {
      layout,
      foot: {
        title: texts.roofPlan,
        notes: [texts.arrowsShowWayWater, texts.valleysBetweenDomes(FALL), texts.waterThatLeavesRoof],
        general: [],
        patterns: [],
        northDeg: house.house.site.northDeg,
      },
    };
  };
  return { id: 'roof', units, figure, draw };
}

/** A place on a passage that its note points at: in its middle, or to a side of it where another note's is. */
function ownPlace(passage: PassageSetout, [start, end]: Vec2, others: readonly Vec2[], layout: Layout): Vec2 {
  const half = passage.section.width / 2 + passage.ring;
  const places = [0, 0.5, -0.5, 0.8, -0.8].flatMap((share) =>
    [0.5, 0.3, 0.7].map((along) => fromArchFrame(passage, share * half, start + along * (end - start))),
  );
  const free = places.find((at) => others.every((p) => length2(sub2(at, p)) > layout.mm(APART)));
  return free ?? (places[0] as Vec2);
}

/** Dots of two notes are told apart from here on, paper mm. */
const APART = 4;

/** A dome's name and the level of its crown beside its axis, in one line or two. */
function crownWords({ at: [x, y], id, curb }: DomeSetout, level: string, layout: Layout): TextPrimitive[][] {
  const off = (curb ? curb.bedOuter[0] : layout.mm(2)) + layout.mm(2);
  const line = (text: string, up: number) => words('text', text, [x, y + up], TEXT, 'centre');
  const rows = [1.5, 3, 5, 8].map((more) => off + layout.mm(more));
  return [
    ...rows.flatMap((up) => [[line(`${id}: ${level}`, up)], [line(`${id}: ${level}`, -up - layout.mm(TEXT))]]),
    ...rows.flatMap((up) => [
      [line(id, up + layout.mm(1.6 * TEXT)), line(level, up)],
      [line(id, -up - layout.mm(TEXT)), line(level, -up - layout.mm(2.6 * TEXT))],
      [line(id, up), line(level, -up - layout.mm(TEXT))],
    ]),
  ];
}

/** Longest line to a note on the roof itself, and to a short one off it, paper mm. */
const NEAR = 29;
const ACROSS_YARD = 53;

/** An arrow of one length on paper, its tail at the origin. */
const arrow = (length: number): PlainPrimitive[] => [
  { kind: 'path', layer: 'dimension', segments: [lineEdge([0, 0], [length, 0])], closed: false },
  {
    kind: 'hatch',
    layer: 'dimension',
    pattern: 'solid',
    loops: [
      [
        lineEdge([length, 0], [length - 2.4, 0.8]),
        lineEdge([length - 2.4, 0.8], [length - 2.4, -0.8]),
        lineEdge([length - 2.4, -0.8], [length, 0]),
      ],
    ],
  },
];

const LENGTHS = [9, 6, 4] as const;

/** The longest arrow that a run has room for, in its middle. */
function fallArrow(from: Vec2, to: Vec2, layout: Layout): SymbolPrimitive[] {
  const run = sub2(to, from);
  const room = length2(run) / layout.scale;
  const length = LENGTHS.find((l) => l <= room) ?? 3;
  const along = scale2(run, 1 / length2(run));
  const tail = add2(scale2(add2(from, to), 0.5), scale2(along, -layout.mm(length / 2)));
  return [
    {
      kind: 'symbol',
      name: `fall-${length}`,
      at: tail,
      rotationDeg: atan2(along[1], along[0]) / DEG,
      parts: arrow(length),
    },
  ];
}

function addDomeFall(house: HouseSetout, dome: DomeSetout, layout: Layout): void {
  const ways = [...archesOf(house, dome), ...passagesOf(house, dome)];
  const r = dome.springingRadius;
  for (let i = 0; i < 8; i++) {
    const turn = (22.5 + 45 * i) * DEG;
    const at = (share: number): Vec2 => [dome.at[0] + share * r * cos(turn), dome.at[1] + share * r * sin(turn)];
    const [from, to] = [at(0.45), at(0.85)];
    if (
      inEarlier(house, dome, [...to, 0]) ||
      house.domes.some((d) => d !== dome && length2(sub2(to, d.at)) < d.springingRadius)
    )
      continue;
    if (ways.some((a) => inArchFrame(a, to)[1] > 0 && Math.abs(inArchFrame(a, to)[0]) < a.section.width / 2 + a.ring))
      continue;
    const symbol = fallArrow(from, to, layout);
    if (layout.faults(symbol) === 0) layout.add(...symbol);
  }
}

/** Both ways off the crown of a round top; outward off a flat one, with its fall. */
function addPrismFall(prism: Prism, layout: Layout): void {
  const stretch = 'dome' in prism ? barrelStretch(prism) : openStretch(prism);
  if (!stretch) return;
  const [a, b] = stretch;
  const half = prism.section.width / 2 + prism.ring;
  if (prism.section.head.shape !== 'flat') {
    for (const side of [1, -1])
      layout.add(
        ...fallArrow(
          fromArchFrame(prism, side * half * 0.1, (a + b) / 2),
          fromArchFrame(prism, side * half * 0.95, (a + b) / 2),
          layout,
        ),
      );
    return;
  }
  layout.add(...fallArrow(fromArchFrame(prism, 0, a), fromArchFrame(prism, 0, b), layout));
  const label = (u: number, dv: number): TextPrimitive[] => {
    const [x, y] = fromArchFrame(prism, u, b + layout.mm(dv));
    return [words('text', FALL, [x, y - layout.mm(TEXT / 2)], TEXT, 'centre')];
  };
  layout.place([4, 6, 8, 10].flatMap((dv) => [0, half * 0.5, -half * 0.5].map((u) => label(u, dv))));
}

function addValley({ low, top }: Valley, layout: Layout): void {
  for (const end of low) {
    const at = (share: number): Vec2 => [top[0] + share * (end[0] - top[0]), top[1] + share * (end[1] - top[1])];
    layout.add(...fallArrow(at(0.2), at(0.9), layout));
  }
}

/** From the wall's outer face to the barrel's. */
const barrelStretch = (arch: ArchSetout): Vec2 | null =>
  arch.faceV === null ? null : [arch.dome.outerRadiusAt(Math.min(arch.topZ, arch.dome.topZ)), arch.faceV];

/** Where a passage's crown lies open between its domes; `null` where they cover it. */
function openStretch(passage: PassageSetout): Vec2 | null {
  const [one, other] = passage.domes;
  const z = passage.topZ;
  const reach = (d: DomeSetout) => (z < d.topZ ? d.outerRadiusAt(z) : 0);
  const stretch: Vec2 = [reach(one), passage.distance - reach(other)];
  return stretch[1] - stretch[0] > 50 ? stretch : null;
}

const ridge = (arch: ArchSetout) => {
  const stretch = barrelStretch(arch);
  return stretch && arch.section.head.shape !== 'flat'
    ? [lineEdge(fromArchFrame(arch, 0, stretch[0]), fromArchFrame(arch, 0, stretch[1]))]
    : [];
};

const passageRidge = (passage: PassageSetout) => {
  const stretch = openStretch(passage);
  return stretch ? [lineEdge(fromArchFrame(passage, 0, stretch[0]), fromArchFrame(passage, 0, stretch[1]))] : [];
};

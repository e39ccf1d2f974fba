import { formatAngle, formatLength } from '../base/measures.js';
import * as texts from '../base/texts/drawing-plans.js';
import { STROKES_MEET } from '../base/tolerances.js';
import type { Primitive } from '../documents/drawing.js';
import { words } from '../documents/shapes.js';
import { textWidth } from '../documents/text-size.js';
import { lineEdge } from '../math/curves.js';
import { rangesWhere } from '../math/curves-ranges.js';
import { DEG, length2, sub2, turnSigned, type Vec2 } from '../math/vec.js';
import { blockPlaces, type Course, isSecond, perpendBearings, placesFrom, turnTo } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { Developed, developedPoint, type Gap } from './developed.js';
import type { Draft, DraftedView } from './draft.js';
import { addGapName } from './gap-names.js';
import { NOTHING_HANDED } from './handed.js';
import { Layout } from './layout.js';
import { into, type Sector } from './sector.js';
import { writtenUnits } from './words.js';

/** Height of marks, paper mm; ISO 3098's least. */
const MARK = 1.8;
/** Room that a mark needs beyond its own size, paper mm. */
const MARK_AIR = 0.6;
const NAME = 2.5;
/** Follows what is of the second mould of a course. */
export const SECOND = '*';

/** A dome's courses unrolled on the middle of the wall, seen from outside: every block with its number, every opening. */
export function coursesView(house: HouseSetout, dome: DomeSetout, sector: Sector): Draft {
  const units = writtenUnits(house.house);
  const developed = new Developed(house, dome);
  const middle = (sector.from + sector.to) / 2;
  // Seen from outside, bearings run from right to left.
  const put = (r: number, y: number, bearing: number): Vec2 => {
    const [x] = developedPoint(r, y, bearing, middle);
    return [-x, y];
  };
  const rows = dome.courses.map((course, i) => {
    const next = dome.courses[i + 1];
    // The joint over a course is the one under the next, but where a skewback parts them.
    const joined = next !== undefined && (next.part === course.part || dome.skewback === null);
    return rowOf(developed, course, sector, !joined);
  });
  const beds = rows.flatMap(({ bedLine, topLine, perpends }) =>
    [...bedLine, ...topLine, ...perpends].map(([a, b]) => lineEdge(put(...a), put(...b))),
  );
  const outlines = developed.gaps.flatMap((gap) => gapLines(developed, gap, sector, put));
  const widest = Math.max(
    ...dome.courses.flatMap((c) => [developed.at(c.part, c.bed).r, developed.at(c.part, c.to).r]),
  );
  const top = Math.max(...dome.courses.map((c) => developed.at(c.part, c.to).y));
  const half = (widest * (sector.to - sector.from)) / 2;

  const draw = (scale: number, { mouldOf, laidIn } = NOTHING_HANDED): DraftedView => {
    const layout = new Layout(scale, units);
    layout.add(
      ...beds.map((e): Primitive => ({ kind: 'path', layer: 'joint', segments: [e], closed: false })),
      ...outlines,
    );
    const unwritten = rows.map(({ course, blocks }) => {
      const laid = laidIn === null ? null : (laidIn[`${dome.id} ${course.index}`] ?? []);
      // What is too small to lay is no block; nor is what nothing says of that it is one.
      const own = blocks.filter(({ number, width }) => (laid ? laid.includes(number) : width > 0));
      return own.filter((block) => !layout.placeFree(numbersOf(block, developed, put, layout)));
    });
    // The course, its mould and its number of blocks at the side where its bearings begin.
    for (const [i, { course, r, y }] of rows.entries()) {
      const mould = mouldOf[`${dome.id} ${course.index}`];
      const without = rangeWords((unwritten[i] ?? []).map((block) => block.number));
      const told = [mould ? texts.ofMould(mould) : '', without ? texts.noRoomFor(without) : ''];
      const text = `${course.index}: ${course.count}${told.join('')}`;
      const [x] = put(r, y, sector.from);
      layout.add(words('text', text, [x + layout.mm(5), y - layout.mm(MARK / 2)], MARK, 'left'));
    }
    const step = 30 * DEG;
    for (let b = Math.ceil(sector.from / step - 1e-9) * step; b <= sector.to + 1e-9; b += step) {
      const base = developed.at(dome.courses[0]?.part ?? 'stem', 0);
      const [x] = put(base.r, 0, b);
      layout.add(
        { kind: 'path', layer: 'axis', segments: [lineEdge([x, -layout.mm(1)], [x, -layout.mm(4)])], closed: false },
        words('text', formatAngle(Math.round(b / DEG) % 360), [x, -layout.mm(7.5)], NAME, 'centre'),
      );
    }
    for (const gap of developed.gaps) addGapName(developed, gap, sector, put, layout);
    const title = texts.bearingsTo(
      dome.id,
      formatAngle(Math.round(sector.from / DEG)),
      formatAngle(Math.round(sector.to / DEG)),
    );
    return {
      layout,
      foot: {
        title,
        notes: [],
        general: [
          texts.coursesUnrolledSeen,
          texts.numberInBlock,
          texts.bedsPerpendsSizes(formatLength(house.house.blocks.joint, units)),
        ],
        patterns: [],
      },
    };
  };
  return {
    id: `courses-${dome.id}-${sector.from === 0 ? 'east' : 'west'}`,
    units,
    figure: { min: [-half, 0], max: [half, top] },
    draw,
  };
}

/** Numbers in words, those that follow one another told by the first and the last. */
function rangeWords(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const n of [...numbers].sort((a, b) => a - b)) {
    const open = runs[runs.length - 1];
    if (open && n === open[1] + 1) open[1] = n;
    else runs.push([n, n]);
  }
  return runs.map(([a, b]) => (a === b ? `${a}` : b === a + 1 ? `${a}, ${b}` : texts.rangeTo(a, b))).join(', ');
}

type Place = readonly [r: number, y: number, bearing: number];
type Line = readonly [Place, Place];

interface BlockPlace {
  readonly number: number;
  /** From the second mould of its course. */
  readonly second: boolean;
  readonly bearing: number;
  /** Places up its middle where its number may stand, the best first. */
  readonly heights: readonly ReturnType<Developed['at']>[];
  /** None where openings take the middle of the course. */
  readonly width: number;
  readonly height: number;
}

/** How far a number may stand from the middle of what is left of its block, in parts of its width and of its course. */
const ASIDE = [0, -0.15, 0.15, -0.3, 0.3] as const;
const UP = [0, 0.2, -0.2] as const;

/** A block's number level, else turned, at the places in it where it may be read; none where the block has no room. */
function* numbersOf(
  { number, second, bearing, heights, width, height }: BlockPlace,
  developed: Developed,
  put: (r: number, y: number, bearing: number) => Vec2,
  layout: Layout,
): Generator<Primitive[]> {
  const text = `${number}${second ? SECOND : ''}`;
  const long = layout.mm(textWidth(text, MARK) + MARK_AIR);
  const tall = layout.mm(MARK + MARK_AIR);
  for (const turned of [false, true]) {
    const [across, up] = turned ? [tall, long] : [long, tall];
    if (across > width || up > height) continue;
    for (const { r, y, z } of heights) {
      for (const u of ASIDE) {
        const turn = bearing + (u * width) / r;
        if (developed.taken(turn, r, z)) continue;
        const [x] = put(r, y, turn);
        const half = layout.mm(MARK / 2);
        const level = words('text', text, turned ? [x + half, y] : [x, y - half], MARK, 'centre');
        yield [turned ? { ...level, rotationDeg: 90 } : level];
      }
    }
  }
}

interface CourseRow {
  readonly course: Course;
  readonly r: number;
  readonly y: number;
  readonly bedLine: readonly Line[];
  readonly topLine: readonly Line[];
  readonly perpends: readonly Line[];
  readonly blocks: readonly BlockPlace[];
}

function rowOf(developed: Developed, course: Course, sector: Sector, closed: boolean): CourseRow {
  const low = developed.at(course.part, (course.from + course.bed) / 2);
  const mid = developed.at(course.part, (course.bed + course.to) / 2);
  const high = developed.at(course.part, course.to);
  const near = (a: number, b: number) => Math.abs(a - b) * mid.r < 0.5;
  const free = ({ r, z }: { r: number; z: number }, a: number, b: number, samples: number) =>
    rangesWhere((bearing) => !developed.taken(bearing, r, z), a, b, samples, near);
  const level = (p: typeof low): Line[] =>
    free(p, sector.from, sector.to, 240).map(([a, b]) => [
      [p.r, p.y, a],
      [p.r, p.y, b],
    ]);
  const bearings = perpendBearings(course);
  const within = (b: number) => b >= sector.from - 1e-9 && b <= sector.to + 1e-9;
  const perpends = bearings
    .map((b) => into(b, sector))
    .filter(within)
    .flatMap((b): Line[] => {
      const at = (t: number) => developed.at(course.part, course.from + t * (course.to - course.from));
      const open = rangesWhere(
        (t) => {
          const { r, z } = at(t);
          return !developed.taken(b, r, z);
        },
        0,
        1,
        8,
        (x, y) => Math.abs(x - y) < 0.005,
      );
      return open.map(([t0, t1]) => {
        const [p, q] = [at(t0), at(t1)];
        return [
          [p.r, p.y, b],
          [q.r, q.y, b],
        ];
      });
    });
  const heights = UP.map((v) => developed.at(course.part, (course.bed + course.to) / 2 + v * (course.to - course.bed)));
  const blocks = blockPlaces(course).flatMap((k): BlockPlace[] => {
    const places = placesFrom(course, k);
    const at = (place: number) => course.startRad + turnTo(course, place);
    const left = free(mid, at(k), at(k + places), 8);
    // Of some blocks a corner is left, above or below the middle of their course.
    const middle = (at(k) + at(k + places)) / 2;
    const [a, b] = left.reduce((x, y) => (y[1] - y[0] > x[1] - x[0] ? y : x), [middle, middle]);
    const bearing = into((a + b) / 2, sector);
    if (bearing < sector.from || bearing >= sector.to) return [];
    const second = places === 1 && isSecond(course, k);
    return [{ number: k + 1, second, bearing, heights, width: (b - a) * mid.r, height: high.y - low.y }];
  });
  return { course, r: mid.r, y: mid.y, bedLine: level(low), topLine: closed ? level(high) : [], perpends, blocks };
}

/** Outlines of what takes blocks, and of its clear opening. */
function gapLines(
  developed: Developed,
  gap: Gap,
  sector: Sector,
  put: (r: number, y: number, bearing: number) => Vec2,
): Primitive[] {
  const { dome } = developed;
  const steps = (['stem', 'shell'] as const).flatMap((part) => {
    const { length } = dome[part];
    if (length <= 0) return [];
    const end = part === 'shell' ? (dome.courses[dome.courses.length - 1]?.to ?? length) : length;
    const n = Math.max(2, Math.ceil(end / STEP));
    return Array.from({ length: n + 1 }, (_, i) => developed.at(part, (end * i) / n));
  });
  const outline = (halfAt: (r: number, z: number) => number, layer: 'visible' | 'cut'): Primitive[] => {
    const held = steps.filter(({ r, z }) => halfAt(r, z) > 0);
    const middle = into(gap.bearingRad, sector);
    return [1, -1].flatMap((side) => {
      const points = held.map(({ r, y, z }): [Vec2, number] => {
        const bearing = middle + side * halfAt(r, z);
        // What passes bearing 0 shows on both halves, each its own part.
        const shown = [bearing, bearing - 2 * Math.PI].find((b) => b >= sector.from && b <= sector.to);
        return [put(r, y, shown ?? 0), shown ?? Number.NaN];
      });
      return runs(points).map(
        (run): Primitive => ({
          kind: 'path',
          layer,
          segments: run.slice(1).map((p, i) => lineEdge(run[i] as Vec2, p)),
          closed: false,
        }),
      );
    });
  };
  const closing = topOf(developed, gap, steps, sector, put);
  return [...outline(gap.halfAt, 'cut'), ...(gap.clearAt ? outline(gap.clearAt, 'visible') : []), ...closing];
}

/** Level lines that close an outline under a sill and over a flat head. */
function topOf(
  _: Developed,
  gap: Gap,
  steps: readonly { readonly r: number; readonly y: number; readonly z: number }[],
  sector: Sector,
  put: (r: number, y: number, bearing: number) => Vec2,
): Primitive[] {
  return ([gap.halfAt, gap.clearAt] as const).flatMap((halfAt, k): Primitive[] => {
    if (!halfAt) return [];
    const held = steps.filter(({ r, z }) => halfAt(r, z) > 0);
    return [held[0], held[held.length - 1]].flatMap((end): Primitive[] => {
      if (!end || end.y === 0) return [];
      const half = halfAt(end.r, end.z);
      const middle = into(gap.bearingRad, sector);
      return [middle, middle - 2 * Math.PI].flatMap((m): Primitive[] => {
        const [a, b] = [Math.max(sector.from, m - half), Math.min(sector.to, m + half)];
        if (!(b > a)) return [];
        const segment = lineEdge(put(end.r, end.y, a), put(end.r, end.y, b));
        return [{ kind: 'path', layer: k === 0 ? 'cut' : 'visible', segments: [segment], closed: false }];
      });
    });
  });
}

/** Neighbouring places of an outline that are drawn: the others have no bearing. */
function runs(points: readonly [Vec2, number][]): Vec2[][] {
  const all: Vec2[][] = [];
  let before = Number.NaN;
  for (const [p, bearing] of points) {
    if (Number.isNaN(bearing)) {
      before = bearing;
      continue;
    }
    const open = all[all.length - 1];
    const last = open?.[open.length - 1];
    // Stem wall and shell share the springing.
    if (last && length2(sub2(last, p)) < STROKES_MEET) continue;
    if (open && !Number.isNaN(before) && Math.abs(turnSigned(bearing - before)) < 1) open.push(p);
    else all.push([p]);
    before = bearing;
  }
  return all.filter((run) => run.length > 1);
}

/** Spacing of the places at which an outline is taken, mm. */
const STEP = 25;

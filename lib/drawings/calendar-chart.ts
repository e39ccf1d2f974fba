import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/drawing-plans.js';
import type { Anchor, Primitive, View } from '../documents/drawing.js';
import { rectangleLoop } from '../documents/shapes.js';
import { textWidth } from '../documents/text-size.js';
import { lineEdge } from '../math/curves.js';
import type { Calendar, CalendarDay } from '../works/calendar.js';

/** A stretch of whole days, both included. */
type Stretch = readonly [from: number, to: number];

interface Bar {
  readonly name: string;
  readonly stretches: readonly Stretch[];
}

/** Paper mm: a row and its bar, texts, the days' whole width, the widest day. */
const ROW = 5;
const BAR = 3.2;
const TEXT = 2.5;
const HEADING = 3.5;
const WIDTH = 230;
const WIDEST_DAY = 6;
const GAP = 3;

/** The calendar as bars over the days: moulds in use, centering standing, courses laid; drawn in paper mm. */
export function calendarChart(calendar: Calendar): View {
  const sections: (readonly [string, readonly Bar[]])[] = [
    ['Casting', calendar.moulds.map(({ mould }) => mouldBar(mould, calendar.days))],
    ['Centering', calendar.laying.arches.map((a) => ({ name: a.id, stretches: [[a.from, a.strikeDay]] }))],
    ['Laying', calendar.laying.stages.map((s) => ({ name: s.id, stretches: [[s.from, s.to]] }))],
    ['Crown', calendar.laying.closes.map((c) => ({ name: c.domeId, stretches: [[c.day, c.day]] }))],
  ];
  const last = Math.max(1, ...calendar.days.map((d) => d.day));
  const day = Math.min(WIDEST_DAY, WIDTH / last);
  const names = sections.flatMap(([, bars]) => bars.map((b) => b.name));
  const headings = sections.map(([heading]) => textWidth(heading, HEADING));
  const left = Math.max(...headings, ...names.map((name) => textWidth(name, TEXT))) + GAP;
  const x = (at: number) => left + at * day;
  const primitives: Primitive[] = [text(texts.calendarInWorkingDays, 0, 0, 5)];
  let y = -2 * ROW;
  const top = y + ROW / 2;
  for (const [heading, bars] of sections.filter(([, list]) => list.length > 0)) {
    primitives.push(text(heading, 0, y, HEADING));
    for (const { name, stretches } of bars) {
      y -= ROW;
      primitives.push(text(name, left - GAP, y, TEXT, 'right'));
      for (const [from, to] of stretches) primitives.push(bar(x(from - 1), x(to), y));
    }
    y -= 1.6 * ROW;
  }
  primitives.push(...days(last, day, x, top, y + ROW));
  for (const note of [texts.castingDays, texts.layingAndCrownDays(last), CAUTION.rings, CAUTION.authority]) {
    y -= ROW;
    primitives.push(text(note, 0, y, TEXT));
  }
  return { id: 'calendar', title: texts.calendarTitle, scale: 1, units: 'metric', primitives };
}

/** Days on which a mould is filled, days in a row as one stretch. */
function mouldBar(mould: string, days: readonly CalendarDay[]): Bar {
  const stretches: [number, number][] = [];
  for (const { day } of days.filter((d) => d.cast.some((c) => c.mould === mould))) {
    const now = stretches[stretches.length - 1];
    if (now && now[1] === day - 1) now[1] = day;
    else stretches.push([day, day]);
  }
  return { name: mould, stretches };
}

const text = (content: string, x: number, y: number, heightMm: number, anchor: Anchor = 'left'): Primitive => ({
  kind: 'text',
  layer: 'text',
  at: [x, y],
  text: content,
  heightMm,
  anchor,
  rotationDeg: 0,
});

/** Its middle at half the height of the row's text. */
const bar = (from: number, to: number, y: number): Primitive => ({
  kind: 'hatch',
  layer: 'visible',
  pattern: 'solid',
  loops: [rectangleLoop(from, y + TEXT / 2 - BAR / 2, to, y + TEXT / 2 + BAR / 2)],
});

/** Upright lines every so many days, so far apart that their numbers are clear of each other. */
function days(last: number, day: number, x: (at: number) => number, top: number, bottom: number): Primitive[] {
  const step = [1, 5, 10, 20, 50, 100].find((n) => n * day >= 10) ?? 200;
  const lines: Primitive[] = [];
  for (let at = 0; at <= last; at += step) {
    lines.push({
      kind: 'path',
      layer: 'joint',
      segments: [lineEdge([x(at), bottom], [x(at), top])],
      closed: false,
    });
    if (at > 0) lines.push(text(String(at), x(at), top + 1, TEXT, 'right'));
  }
  return lines;
}

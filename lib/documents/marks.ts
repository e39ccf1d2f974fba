import { formatLevel, type WrittenUnits } from '../base/measures.js';
import type { Vec2 } from '../math/vec.js';
import { DIMENSION_STYLE } from './dimension-style.js';
import type { LeaderPrimitive, LevelPrimitive, Segment, TagPrimitive } from './drawing.js';
import { type Expansion, expandedOnce, type Stroke, textBox } from './expansion.js';
import { line } from './segments.js';

/** Paper mm; common practice, no source. */
const LEVEL = { triangle: 3, shelfPast: 1, labelHeight: 1.8, labelGap: 0.6 } as const;
const LEADER = { dot: 0.6, shelf: 2, gap: 1 } as const;

/** Between a tag's text and its ring. */
const TAG = { gap: 1.2 } as const;

const thin = (from: Vec2, to: Vec2): Stroke => ({ segment: line(from, to), weightMm: DIMENSION_STYLE.lineWeight });

/**
 * A level mark at `1 : scale`, model mm: an open triangle with its tip on the level (ISO 129-1, from memory), a shelf
 * on one side that bears the level, the label under the shelf.
 */
export const expandLevel = expandedOnce((mark: LevelPrimitive, scale: number, units: WrittenUnits): Expansion => {
  const side = mark.side === 'right' ? 1 : -1;
  const anchor = mark.side === 'right' ? 'left' : 'right';
  const [x, y] = mark.at;
  const rise = LEVEL.triangle * scale;
  const half = rise / 2;
  const textX = x + side * (half + LEVEL.shelfPast * scale);
  const level = textBox(
    formatLevel(mark.level, units),
    [textX, y + rise + DIMENSION_STYLE.textGap * scale],
    anchor,
    DIMENSION_STYLE.textHeight * scale,
  );
  const labelHeight = LEVEL.labelHeight * scale;
  const label = textBox(mark.label, [textX, y + rise - LEVEL.labelGap * scale - labelHeight], anchor, labelHeight);
  const shelfEnd = textX + side * Math.max(level.width, label.width);
  const [left, right]: [Vec2, Vec2] = [
    [x - half, y + rise],
    [x + half, y + rise],
  ];
  return {
    strokes: [thin(left, mark.at), thin(mark.at, right), thin([x - side * half, y + rise], [shelfEnd, y + rise])],
    texts: mark.label === '' ? [level] : [level, label],
    dots: [],
  };
});

/** A leader at `1 : scale`, model mm: dot, line to the bend, a short shelf, the text level with the shelf. */
export const expandLeader = expandedOnce((leader: LeaderPrimitive, scale: number): Expansion => {
  const side = leader.side === 'right' ? 1 : -1;
  const [x, y] = leader.bend;
  const height = leader.heightMm * scale;
  const shelfEnd: Vec2 = [x + side * LEADER.shelf * scale, y];
  const at: Vec2 = [shelfEnd[0] + side * LEADER.gap * scale, y - height / 2];
  return {
    strokes: [thin(leader.at, leader.bend), thin(leader.bend, shelfEnd)],
    texts: [textBox(leader.text, at, side > 0 ? 'left' : 'right', height)],
    dots: [{ centre: leader.at, radius: LEADER.dot * scale }],
  };
});

/** Half the height of a tag's ring, paper mm. */
export const tagRadius = (heightMm: number): number => heightMm / 2 + TAG.gap;

/** A tag at `1 : scale`, model mm: its text level in a ring, which is drawn out where the text is wide. */
export const expandTag = expandedOnce((tag: TagPrimitive, scale: number): Expansion => {
  const [x, y] = tag.at;
  const height = tag.heightMm * scale;
  const text = textBox(tag.text, [x, y - height / 2], 'centre', height);
  const radius = tagRadius(tag.heightMm) * scale;
  const half = Math.max(0, text.width / 2 + TAG.gap * scale - radius);
  const end = (side: 1 | -1): Segment => ({
    kind: 'arc',
    centre: [x + side * half, y],
    radius,
    start: (-side * Math.PI) / 2,
    end: (-side * Math.PI) / 2 + Math.PI,
    ccw: true,
  });
  const sides =
    half > 0 ? [1, -1].map((side) => line([x - half, y + side * radius], [x + half, y + side * radius])) : [];
  const strokes = [end(1), end(-1), ...sides].map((segment) => ({ segment, weightMm: DIMENSION_STYLE.lineWeight }));
  return { strokes, texts: [text], dots: [] };
});

import { PAPER_POINT } from '../base/tolerances.js';
import { cos } from '../math/elementary.js';
import { DEG, length2, scale2, sub2, type Vec2 } from '../math/vec.js';
import type { Stroke } from './expansion.js';
import { direction, line, shifted } from './segments.js';

/**
 * How dimensions look on paper, mm. Narrow lines, oblique strokes at 45° as the one terminator, figures above the line
 * and readable from the bottom or the right: ISO 129-1, from memory; the sizes are common practice, no source.
 */
export const DIMENSION_STYLE = {
  textHeight: 2.5,
  /** From the line up to the text. */
  textGap: 0.8,
  /** From the measured point to the beginning of its extension line. */
  offset: 1.5,
  /** Extension line past the dimension line. */
  beyond: 1.5,
  /** Length of the oblique stroke. */
  tick: 2.5,
  /** Free line on each side of a text between its terminators; also from a terminator to a text set outside. */
  margin: 1.2,
  /** A text on a leader: its shelf's distance from the dimension line, on the side above figures or below, and how far aside. */
  shelfAbove: 2.2,
  shelfBelow: 5.2,
  shelfAside: 1.5,
  lineWeight: 0.18,
  tickWeight: 0.35,
} as const;

/** From a measured point to the dimension line and a little past it; nothing where the point lies on the line. */
export function extension(from: Vec2, to: Vec2, scale: number): Stroke[] {
  const length = length2(sub2(to, from));
  if (length < scale * PAPER_POINT) return [];
  const along = direction(from, to);
  const begin = Math.min(DIMENSION_STYLE.offset * scale, length);
  return [thin(line(shifted(from, along, begin), shifted(to, along, DIMENSION_STYLE.beyond * scale)))];
}

/** Oblique stroke, rising to the right for the reader of the text. */
export function tick(at: Vec2, readingDeg: number, scale: number): Stroke {
  const d = scale2(unit(readingDeg + 45), (DIMENSION_STYLE.tick * scale) / 2);
  return {
    segment: line([at[0] - d[0], at[1] - d[1]], [at[0] + d[0], at[1] + d[1]]),
    weightMm: DIMENSION_STYLE.tickWeight,
  };
}

/** A stroke as narrow as dimension lines are. */
export const thin = (segment: Stroke['segment']): Stroke => ({ segment, weightMm: DIMENSION_STYLE.lineWeight });
/** Unit vector in a direction, exact at right angles. */
export const unit = (deg: number): Vec2 => [cosDeg(deg), cosDeg(deg - 90)];

/** Exactly 0 at right angles, so that an upright dimension measures no trace of the horizontal. */
function cosDeg(deg: number): number {
  const quarter = deg / 90;
  return Number.isInteger(quarter) ? ([1, 0, -1, 0][((quarter % 4) + 4) % 4] as number) : cos(deg * DEG);
}

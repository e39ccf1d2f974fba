import { cos, sin } from '../math/elementary.js';
import { DEG, type Vec2 } from '../math/vec.js';
import type { DimensionPrimitive, PlainPrimitive, Segment, SymbolPrimitive } from './drawing.js';
import type { Expansion } from './expansion.js';

/** Where something goes: turned counter-clockwise, enlarged, then moved. */
export interface Placement {
  readonly turnDeg: number;
  readonly scale: number;
  readonly offset: Vec2;
}

export function placedPoint([x, y]: Vec2, { turnDeg, scale, offset }: Placement): Vec2 {
  if (turnDeg === 0) return [x * scale + offset[0], y * scale + offset[1]];
  const [c, s] = [cos(turnDeg * DEG) * scale, sin(turnDeg * DEG) * scale];
  return [x * c - y * s + offset[0], x * s + y * c + offset[1]];
}

function placedSegment(s: Segment, place: Placement): Segment {
  if (s.kind === 'line') return { kind: 'line', from: placedPoint(s.from, place), to: placedPoint(s.to, place) };
  const turn = place.turnDeg * DEG;
  return {
    ...s,
    centre: placedPoint(s.centre, place),
    radius: s.radius * place.scale,
    start: s.start + turn,
    end: s.end + turn,
  };
}

/** A primitive in another place. Text heights and weights stay as they are, for they are paper mm. */
export function placed<P extends PlainPrimitive | SymbolPrimitive | DimensionPrimitive>(p: P, place: Placement): P {
  return isNowhereElse(place) ? p : (placedKind(p, place) as P);
}

/** Most of what is drawn at full size, and the first view of a sheet, stays where it is. */
const isNowhereElse = ({ turnDeg, scale, offset: [x, y] }: Placement): boolean =>
  turnDeg === 0 && scale === 1 && x === 0 && y === 0;

function placedKind(
  p: PlainPrimitive | SymbolPrimitive | DimensionPrimitive,
  place: Placement,
): PlainPrimitive | SymbolPrimitive | DimensionPrimitive {
  switch (p.kind) {
    case 'path':
      return { ...p, segments: p.segments.map((s) => placedSegment(s, place)) };
    case 'circle':
      return {
        ...p,
        centre: placedPoint(p.centre, place),
        radius: p.radius * place.scale,
      };
    case 'ellipse': {
      const major = placedPoint(p.major, { ...place, offset: [0, 0] });
      return { ...p, centre: placedPoint(p.centre, place), major };
    }
    case 'hatch':
      return { ...p, loops: p.loops.map((l) => l.map((s) => placedSegment(s, place))) };
    case 'text':
      return {
        ...p,
        at: placedPoint(p.at, place),
        rotationDeg: p.rotationDeg + place.turnDeg,
      };
    case 'symbol':
      return {
        ...p,
        at: placedPoint(p.at, place),
        rotationDeg: p.rotationDeg + place.turnDeg,
      };
    case 'dimension':
      return placedDimension(p, place);
  }
}

function placedDimension(d: DimensionPrimitive, place: Placement): DimensionPrimitive {
  const at = (p: Vec2): Vec2 => placedPoint(p, place);
  switch (d.type) {
    case 'linear':
      return { ...d, from: at(d.from), to: at(d.to), line: at(d.line), angleDeg: d.angleDeg + place.turnDeg };
    case 'aligned':
      return { ...d, from: at(d.from), to: at(d.to), line: at(d.line) };
    case 'radius':
    case 'diameter':
      return { ...d, centre: at(d.centre), on: at(d.on) };
    case 'angle':
    case 'arc':
      return { ...d, centre: at(d.centre), from: at(d.from), to: at(d.to), line: at(d.line) };
  }
}

/** An expansion in another place: its texts grow with it. */
export function placedExpansion<E extends Expansion>(e: E, place: Placement): E {
  if (isNowhereElse(place)) return e;
  return {
    ...e,
    strokes: e.strokes.map((s) => ({ ...s, segment: placedSegment(s.segment, place) })),
    texts: e.texts.map((t) => ({
      ...t,
      at: placedPoint(t.at, place),
      rotationDeg: t.rotationDeg + place.turnDeg,
      height: t.height * place.scale,
      width: t.width * place.scale,
    })),
    dots: e.dots.map((d) => ({ centre: placedPoint(d.centre, place), radius: d.radius * place.scale })),
  };
}

/** The parts of a symbol as they stand in a view at `1 : scale`, model mm. */
export const symbolParts = (symbol: SymbolPrimitive, scale: number): PlainPrimitive[] =>
  symbol.parts.map((part) => placed(part, { turnDeg: symbol.rotationDeg, scale, offset: symbol.at }));

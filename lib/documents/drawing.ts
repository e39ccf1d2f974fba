import type { WrittenUnits } from '../base/measures.js';
import type { Vec2 } from '../math/vec.js';

/** What a line stands for; each layer has one weight and one line type (ISO 128-20: narrow to wide 1:2). */
export type LayerName =
  | 'cut' // outline of what the cutting plane goes through, wide
  | 'visible' // visible edges and silhouettes
  | 'joint' // bed joints and perpends
  | 'hidden' // hidden below or beyond
  | 'overhead' // above the cutting plane
  | 'axis' // centre lines
  | 'ground' // ground line
  | 'thrust' // lines of thrust, and what holds them
  | 'hatch'
  | 'dimension'
  | 'text'
  | 'form' // lines and words of title blocks, tables and grid references
  | 'frame'; // limits of a sheet's drawing space

/** `chain` is long dash and dot, `double-chain` long dash and two dots (ISO 128-20 types 04 and 05). */
export type LineType = 'continuous' | 'dashed' | 'chain' | 'double-chain' | 'dotted';

export interface LayerStyle {
  readonly name: LayerName;
  readonly weightMm: number;
  readonly line: LineType;
}

/**
 * A stroke's piece. Angles are radians counter-clockwise from +x; an arc runs from `start` to `end`, ccw if `ccw`,
 * by less than a full turn (a full turn is a circle).
 */
export type Segment =
  | { readonly kind: 'line'; readonly from: Vec2; readonly to: Vec2 }
  | {
      readonly kind: 'arc';
      readonly centre: Vec2;
      readonly radius: number;
      readonly start: number;
      readonly end: number;
      readonly ccw: boolean;
    };

/** A chain: each segment begins where the one before ends; when `closed`, the last ends where the first begins. */
export interface PathPrimitive {
  readonly kind: 'path';
  readonly layer: LayerName;
  readonly segments: readonly Segment[];
  readonly closed: boolean;
}

export interface CirclePrimitive {
  readonly kind: 'circle';
  readonly layer: LayerName;
  readonly centre: Vec2;
  readonly radius: number;
}

/** Elliptical arc, from parameter `start` to `end` counter-clockwise; `major` is the half axis as a vector. */
export interface EllipsePrimitive {
  readonly kind: 'ellipse';
  readonly layer: LayerName;
  readonly centre: Vec2;
  readonly major: Vec2;
  /** Minor over major half axis, in (0, 1]. */
  readonly ratio: number;
  readonly start: number;
  readonly end: number;
}

export type Anchor = 'left' | 'centre' | 'right';

export interface TextPrimitive {
  readonly kind: 'text';
  readonly layer: LayerName;
  readonly at: Vec2;
  readonly text: string;
  /** Capital height on paper (ISO 3098 series: 1.8, 2.5, 3.5, 5, 7 ...). */
  readonly heightMm: number;
  readonly anchor: Anchor;
  readonly rotationDeg: number;
}

/** What a cut or filled area is made of; `solid` fills (north point, arrow of a section mark). */
export type HatchPattern = 'blockwork' | 'cast' | 'concrete' | 'earth' | 'solid';

export interface HatchPrimitive {
  readonly kind: 'hatch';
  readonly layer: LayerName;
  readonly pattern: HatchPattern;
  /** Closed loops; even-odd. A loop is a chain of segments whose ends meet. */
  readonly loops: readonly (readonly Segment[])[];
}

/**
 * Dimensions measure what their points say; the text is made from the measure, never typed.
 * `linear` measures along `angleDeg` (0 horizontal, 90 upright), `aligned` along `from`-`to`;
 * `line` is a point the dimension line (or arc) goes through.
 */
export type DimensionPrimitive =
  | LinearDimension
  | AlignedDimension
  | RadiusDimension
  | DiameterDimension
  | AngleDimension
  | ArcDimension;

/**
 * Where a text goes that has no room between the terminators: beyond one of them, or on a leader that goes out from the
 * middle of the dimension line, away from what is measured, and bends to one of them.
 */
export type Spill = 'from' | 'to' | 'out-from' | 'out-to';

export interface LinearDimension {
  readonly kind: 'dimension';
  readonly type: 'linear';
  readonly from: Vec2;
  readonly to: Vec2;
  readonly angleDeg: number;
  readonly line: Vec2;
  /** Stands directly before the measure, with its own space if it needs one: `Ø`, `clear `. */
  readonly prefix?: string;
  /** Default `to`. */
  readonly spill?: Spill;
}

export interface AlignedDimension {
  readonly kind: 'dimension';
  readonly type: 'aligned';
  readonly from: Vec2;
  readonly to: Vec2;
  readonly line: Vec2;
  readonly prefix?: string;
  readonly spill?: Spill;
  /** Where along the line the text's middle stands, between 0 and 1; a half when missing. */
  readonly share?: number;
}

/** From `centre` to the point `on` the arc; the text is written `R1500`. */
export interface RadiusDimension {
  readonly kind: 'dimension';
  readonly type: 'radius';
  readonly centre: Vec2;
  readonly on: Vec2;
  /** Where along the line the text's middle stands, between 0 and 1; a half when missing. */
  readonly share?: number;
}

/** Through `centre`, from the point opposite `on` to `on`; the text is written `Ø3000`. */
export interface DiameterDimension {
  readonly kind: 'dimension';
  readonly type: 'diameter';
  readonly centre: Vec2;
  readonly on: Vec2;
}

/** The angle at `centre` counter-clockwise from the ray through `from` to the ray through `to`, under 180 degrees. */
export interface AngleDimension {
  readonly kind: 'dimension';
  readonly type: 'angle';
  readonly centre: Vec2;
  readonly from: Vec2;
  readonly to: Vec2;
  readonly line: Vec2;
}

/** Length of the arc about `centre` that runs counter-clockwise from `from` to the ray through `to`, by less than half a turn. */
export interface ArcDimension {
  readonly kind: 'dimension';
  readonly type: 'arc';
  readonly centre: Vec2;
  readonly from: Vec2;
  readonly to: Vec2;
  readonly line: Vec2;
}

/** A note with a line from its text to the thing it tells of: a dot at `at`, a bend, the text beside the bend. */
export interface LeaderPrimitive {
  readonly kind: 'leader';
  readonly at: Vec2;
  readonly bend: Vec2;
  readonly text: string;
  readonly heightMm: number;
  readonly side: 'left' | 'right';
}

/** A short name in a ring of its own, such as the number under which a note tells of a thing; `at` is its middle. */
export interface TagPrimitive {
  readonly kind: 'tag';
  readonly at: Vec2;
  readonly text: string;
  readonly heightMm: number;
}

/**
 * Level mark: a tip at `at` and the level's text, e.g. `+2.700`, on the given side, with `label` (may be empty) below it.
 * `level` is mm above the finished floor.
 */
export interface LevelPrimitive {
  readonly kind: 'level';
  readonly at: Vec2;
  readonly level: number;
  readonly side: 'left' | 'right';
  readonly label: string;
}

export type PlainPrimitive = PathPrimitive | CirclePrimitive | EllipsePrimitive | TextPrimitive | HatchPrimitive;

/**
 * A sign that is drawn alike wherever it stands, such as the needle of a north point: its parts, in paper mm about
 * their origin, turned counter-clockwise and set at `at`. One name has one set of parts.
 */
export interface SymbolPrimitive {
  readonly kind: 'symbol';
  readonly name: string;
  readonly at: Vec2;
  readonly rotationDeg: number;
  readonly parts: readonly PlainPrimitive[];
}

/** What is drawn on paper and not in a model: captions, notes, tables, symbols. */
export type PaperPrimitive = PlainPrimitive | SymbolPrimitive;

/** What a drawing is made of: lines, arcs, hatches, texts, symbols, dimensions, marks and tags. */
export type Primitive =
  | PlainPrimitive
  | SymbolPrimitive
  | DimensionPrimitive
  | LeaderPrimitive
  | TagPrimitive
  | LevelPrimitive;

/** One view in model millimetres, to be printed at `1 : scale`; texts, dashes and weights are paper millimetres. */
export interface View {
  readonly id: string;
  readonly title: string;
  readonly scale: number;
  /** How lengths and levels are written on it. */
  readonly units: WrittenUnits;
  readonly primitives: readonly Primitive[];
}

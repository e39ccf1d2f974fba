import type { Anchor, EllipsePrimitive, LayerName, Segment, TextPrimitive } from '../../documents/drawing.js';
import { ellipseTurn } from '../../documents/drawing-bounds.js';
import type { Dot, Stroke, TextBox } from '../../documents/expansion.js';
import { oneLine } from '../../documents/plain-text.js';
import { arcSweep, segmentEnd, segmentStart, splitArc } from '../../documents/segments.js';
import { drawableText } from '../../documents/text-size.js';
import { circleEdge } from '../../math/curves.js';
import { tan } from '../../math/elementary.js';
import type { Vec2 } from '../../math/vec.js';
import { type Content, DxfObject } from './object.js';
import type { GuardedTags } from './tags.js';

const DEGREES = 180 / Math.PI;

/** Name of the text style that all texts use. */
export const TEXT_STYLE = 'DRAWING';

/** An entity on a layer, in a weight of its own where one is given. */
export const entity = (type: string, layer: LayerName, content: Content, weightMm?: number): DxfObject =>
  new DxfObject(type, (tags) => {
    tags.push(100, 'AcDbEntity');
    tags.push(8, layer);
    if (weightMm !== undefined) tags.push(370, weightCode(weightMm));
    content(tags);
  });

/** A line or arc by itself, in a weight of its own where it differs from the layer's. */
export function segmentEntity(s: Segment, layer: LayerName, weightMm?: number): DxfObject {
  if (s.kind === 'line')
    return entity(
      'LINE',
      layer,
      (tags) => {
        tags.push(100, 'AcDbLine');
        tags.place(10, s.from);
        tags.place(11, s.to);
      },
      weightMm,
    );
  return entity(
    'ARC',
    layer,
    (tags) => {
      const [start, end] = s.ccw ? [s.start, s.end] : [s.end, s.start];
      circleTags(tags, s.centre, s.radius);
      tags.push(100, 'AcDbArc');
      tags.push(50, degrees(start));
      tags.push(51, degrees(end));
    },
    weightMm,
  );
}

export const strokeEntity = (stroke: Stroke, layer: LayerName): DxfObject =>
  segmentEntity(stroke.segment, layer, stroke.weightMm);

export const circleEntity = (centre: Vec2, radius: number, layer: LayerName): DxfObject =>
  entity('CIRCLE', layer, (tags) => circleTags(tags, centre, radius));

function circleTags(tags: GuardedTags, centre: Vec2, radius: number): void {
  tags.push(100, 'AcDbCircle');
  tags.place(10, centre);
  tags.push(40, radius);
}

export const ellipseEntity = (e: EllipsePrimitive): DxfObject =>
  entity('ELLIPSE', e.layer, (tags) => {
    tags.push(100, 'AcDbEllipse');
    tags.place(10, e.centre);
    tags.place(11, e.major);
    tags.push(40, e.ratio);
    tags.push(41, e.start);
    tags.push(42, e.start + ellipseTurn(e));
  });

/** A chain of lines and arcs as one polyline: arcs are kept, as bulges. */
export const polylineEntity = (segments: readonly Segment[], closed: boolean, layer: LayerName): DxfObject =>
  entity('LWPOLYLINE', layer, (tags) => {
    const vertices = bulgedVertices(segments, closed);
    tags.push(100, 'AcDbPolyline');
    tags.push(90, vertices.length);
    tags.push(70, closed ? 1 : 0);
    tags.push(43, 0);
    vertexTags(tags, vertices);
  });

/** A place on a chain, with the bulge (tangent of a quarter of the turn) of the segment that begins there. */
type Vertex = readonly [place: Vec2, bulge: number];

/** Vertices of a chain. */
export function bulgedVertices(segments: readonly Segment[], closed: boolean): Vertex[] {
  // A bulge stays well conditioned up to half a turn.
  const pieces = segments.flatMap((s): Segment[] => (s.kind === 'arc' ? splitArc(s, Math.PI) : [s]));
  const vertices = pieces.map((s): Vertex => [segmentStart(s), s.kind === 'arc' ? tan(arcSweep(s) / 4) : 0]);
  const last = pieces.at(-1);
  if (!closed && last) vertices.push([segmentEnd(last), 0]);
  return vertices;
}

export function vertexTags(tags: GuardedTags, vertices: readonly Vertex[]): void {
  for (const [[x, y], bulge] of vertices) {
    tags.push(10, x);
    tags.push(20, y);
    tags.push(42, bulge);
  }
}

const HORIZONTAL: Readonly<Record<Anchor, number>> = { left: 0, centre: 1, right: 2 };

/** A text of a mark, which is as large as it is. */
export const boxEntity = (box: TextBox, layer: LayerName): DxfObject =>
  entity('TEXT', layer, (tags) => {
    tags.push(100, 'AcDbText');
    tags.place(10, box.at);
    tags.push(40, box.height);
    tags.push(1, safeText(box.text));
    tags.push(50, box.rotationDeg);
    tags.push(7, TEXT_STYLE);
    tags.push(72, HORIZONTAL[box.anchor]);
    if (box.anchor !== 'left') tags.place(11, box.at);
    tags.push(100, 'AcDbText');
    tags.push(73, 0);
  });

/** A text of a view at `1 : scale`. */
export const textEntity = (
  { text, at, anchor, heightMm, rotationDeg, layer }: TextPrimitive,
  scale: number,
): DxfObject =>
  // Readers lay texts out themselves: its width isn't asked for.
  boxEntity({ text: drawableText(text), at, anchor, rotationDeg, height: heightMm * scale, width: 0 }, layer);

/** A block set in its place, as large as it is. */
export const insertEntity = (block: string, at: Vec2, rotationDeg: number, layer: LayerName): DxfObject =>
  entity('INSERT', layer, (tags) => {
    tags.push(100, 'AcDbBlockReference');
    tags.push(2, block);
    tags.place(10, at);
    tags.push(50, rotationDeg);
  });

/** The chain round a dot. */
export const dotLoop = ({ centre, radius }: Dot): Segment[] => splitArc(circleEdge(centre, radius), Math.PI);

/** Line weights stand in hundredths of a millimetre. */
export const weightCode = (mm: number): number => Math.round(mm * 100);

const degrees = (angle: number): number => {
  const a = (angle * DEGREES) % 360;
  return a < 0 ? a + 360 : a;
};

/** One line; a space breaks what DXF readers would take for codes: `%%u` underlines, `\U+00D8` and `^J` are characters. */
export const safeText = (text: string): string =>
  oneLine(text)
    .replace(/%(?=%)/g, '% ')
    .replace(/\\(?=[UM]\+)/g, '\\ ')
    .replace(/\^/g, '^ ');

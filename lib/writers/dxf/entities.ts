import type { Anchor, EllipsePrimitive, LayerName, Segment } from '../../documents/drawing.js';
import { ellipseTurn } from '../../documents/drawing-bounds.js';
import type { Dot, Stroke, TextBox } from '../../documents/expansion.js';
import { oneLine } from '../../documents/plain-text.js';
import { type ArcSegment, arcSweep, segmentEnd, segmentStart, splitArc } from '../../documents/segments.js';
import { tan } from '../../math/elementary.js';
import type { Vec2 } from '../../math/vec.js';
import { DxfObject, type Part } from './object.js';
import { point, type Tag } from './tags.js';

const DEGREES = 180 / Math.PI;

/** Name of the text style that all texts use. */
export const TEXT_STYLE = 'DRAWING';

export const entity = (type: string, layer: LayerName, parts: readonly Part[], own: readonly Tag[] = []): DxfObject =>
  new DxfObject(type, [['AcDbEntity', [[8, layer], ...own]], ...parts]);

/** A line or arc by itself, in a weight of its own where it differs from the layer's. */
export function segmentEntity(s: Segment, layer: LayerName, weightMm?: number): DxfObject {
  const own: Tag[] = weightMm === undefined ? [] : [[370, weightCode(weightMm)]];
  if (s.kind === 'line') return entity('LINE', layer, [['AcDbLine', [...point(10, s.from), ...point(11, s.to)]]], own);
  const [start, end] = s.ccw ? [s.start, s.end] : [s.end, s.start];
  const circle: Part = ['AcDbCircle', [...point(10, s.centre), [40, s.radius]]];
  return entity(
    'ARC',
    layer,
    [
      circle,
      [
        'AcDbArc',
        [
          [50, degrees(start)],
          [51, degrees(end)],
        ],
      ],
    ],
    own,
  );
}

export const strokeEntity = (stroke: Stroke, layer: LayerName): DxfObject =>
  segmentEntity(stroke.segment, layer, stroke.weightMm);

export const circleEntity = (centre: Vec2, radius: number, layer: LayerName): DxfObject =>
  entity('CIRCLE', layer, [['AcDbCircle', [...point(10, centre), [40, radius]]]]);

export function ellipseEntity(e: EllipsePrimitive): DxfObject {
  const axes: Tag[] = [...point(10, e.centre), ...point(11, e.major), [40, e.ratio]];
  return entity('ELLIPSE', e.layer, [['AcDbEllipse', [...axes, [41, e.start], [42, e.start + ellipseTurn(e)]]]]);
}

/** A chain of lines and arcs as one polyline: arcs are kept, as bulges. */
export function polylineEntity(segments: readonly Segment[], closed: boolean, layer: LayerName): DxfObject {
  const vertices = bulgedVertices(segments, closed);
  const tags: Tag[] = [
    [90, vertices.length],
    [70, closed ? 1 : 0],
    [43, 0],
    ...vertices.flatMap(([[x, y], bulge]): Tag[] => [
      [10, x],
      [20, y],
      [42, bulge],
    ]),
  ];
  return entity('LWPOLYLINE', layer, [['AcDbPolyline', tags]]);
}

/** Vertices of a chain, each with the bulge (tangent of a quarter of the turn) of the segment that it begins. */
export function bulgedVertices(segments: readonly Segment[], closed: boolean): [Vec2, number][] {
  // A bulge stays well conditioned up to half a turn.
  const pieces = segments.flatMap((s): Segment[] => (s.kind === 'arc' ? splitArc(s, Math.PI) : [s]));
  const vertices = pieces.map((s): [Vec2, number] => [segmentStart(s), s.kind === 'arc' ? tan(arcSweep(s) / 4) : 0]);
  const last = pieces.at(-1);
  if (!closed && last) vertices.push([segmentEnd(last), 0]);
  return vertices;
}

const HORIZONTAL: Readonly<Record<Anchor, number>> = { left: 0, centre: 1, right: 2 };

export function textEntity(box: TextBox, layer: LayerName): DxfObject {
  const tags: Tag[] = [
    ...point(10, box.at),
    [40, box.height],
    [1, safeText(box.text)],
    [50, box.rotationDeg],
    [7, TEXT_STYLE],
    [72, HORIZONTAL[box.anchor]],
    ...(box.anchor === 'left' ? [] : point(11, box.at)),
  ];
  return entity('TEXT', layer, [
    ['AcDbText', tags],
    ['AcDbText', [[73, 0]]],
  ]);
}

/** A block set in its place, as large as it is. */
export const insertEntity = (block: string, at: Vec2, rotationDeg: number, layer: LayerName): DxfObject =>
  entity('INSERT', layer, [['AcDbBlockReference', [[2, block], ...point(10, at), [50, rotationDeg]]]]);

/** The chain round a dot. */
export function dotLoop(dot: Dot): Segment[] {
  const arc: ArcSegment = {
    kind: 'arc',
    centre: dot.centre,
    radius: dot.radius,
    start: 0,
    end: 2 * Math.PI,
    ccw: true,
  };
  return splitArc(arc, Math.PI);
}

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

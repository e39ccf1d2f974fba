import * as texts from '../../base/texts/writers.js';
import { SAME_WIDTH } from '../../base/tolerances.js';
import { DocumentError } from '../../documents/document-error.js';
import type { EllipsePrimitive, LayerStyle, Segment } from '../../documents/drawing.js';
import { ellipseAt, ellipseTurn } from '../../documents/drawing-bounds.js';
import type { Dot, Stroke, TextBox } from '../../documents/expansion.js';
import type { HatchLine } from '../../documents/hatches.js';
import { dashesOf } from '../../documents/layers.js';
import { type ArcSegment, arcSweep, segmentEnd, segmentStart, splitArc } from '../../documents/segments.js';
import { emOf } from '../../documents/text-size.js';
import { cos, sin, tan } from '../../math/elementary.js';
import type { Vec2 } from '../../math/vec.js';
import type { Pen } from '../pen.js';
import type { PdfDocument, PdfTextOptions } from './source.js';

/** Points of PDF in a millimetre. */
export const POINTS = 72 / 25.4;

/** Each letter is as wide as its own advance, as it was laid out: nothing is kerned or joined. */
const PLAIN = ['kern', 'liga', 'clig', 'calt', 'ccmp', 'locl', 'mark', 'mkmk'];
const TEXT: PdfTextOptions = {
  lineBreak: false,
  baseline: 'alphabetic',
  features: Object.fromEntries(PLAIN.map((name) => [name, false])),
};

/** A cubic stands for at most this much of a turn: it misses the circle by 4e-6 of the radius. */
const LONGEST_CUBIC = Math.PI / 4;

export interface PdfPaper {
  readonly scale: number;
  /** Where the model's origin lies on paper, mm from the lower left. */
  readonly origin: Vec2;
  /** Height of the paper, mm: PDFKit counts downward. */
  readonly height: number;
}

/** Draws on the current page of a document. */
export class PdfPen implements Pen {
  private layer: LayerStyle | undefined;

  constructor(
    private readonly document: PdfDocument,
    private readonly paper: PdfPaper,
  ) {}

  beginLayer(layer: LayerStyle): void {
    this.layer = layer;
    const { document } = this;
    document.save();
    document.lineJoin('round');
    document.lineWidth(layer.weightMm * POINTS);
    const dashes = dashesOf(layer.line, layer.weightMm);
    if (dashes.length > 0) this.dash(dashes, 0);
  }

  endLayer(): void {
    this.document.restore();
  }

  path(segments: readonly Segment[], closed: boolean): void {
    this.trace(segments, closed);
    this.document.stroke();
  }

  circle(centre: Vec2, radius: number): void {
    this.trace(splitArc(wholeTurn(centre, radius), LONGEST_CUBIC), true);
    this.document.stroke();
  }

  ellipse(e: EllipsePrimitive): void {
    const turn = ellipseTurn(e);
    const pieces = Math.ceil(turn / LONGEST_CUBIC - 1e-9);
    const step = turn / pieces;
    const reach = cubicReach(step);
    this.document.moveTo(...this.at(ellipseAt(e, e.start)));
    for (let i = 0; i < pieces; i++) {
      const [t0, t1] = [e.start + i * step, e.start + (i + 1) * step];
      const [p0, p1] = [ellipseAt(e, t0), ellipseAt(e, t1)];
      const [d0, d1] = [ellipseSlope(e, t0), ellipseSlope(e, t1)];
      this.cubic([p0[0] + reach * d0[0], p0[1] + reach * d0[1]], [p1[0] - reach * d1[0], p1[1] - reach * d1[1]], p1);
    }
    this.document.stroke();
  }

  fill(loops: readonly (readonly Segment[])[]): void {
    for (const loop of loops) this.trace(loop, true);
    this.document.fill('even-odd');
  }

  hatch(loops: readonly (readonly Segment[])[], lines: readonly HatchLine[]): void {
    const { document } = this;
    document.save();
    for (const loop of loops) this.trace(loop, true);
    document.clip('even-odd');
    const continuous = lines.filter((l) => l.dashes.length === 0);
    for (const l of continuous) this.run(l);
    if (continuous.length > 0) document.stroke();
    for (const l of lines) {
      if (l.dashes.length === 0) continue;
      this.dash(
        l.dashes.map((d) => d / this.paper.scale),
        l.phase / this.paper.scale,
      );
      this.run(l);
      document.stroke();
    }
    document.restore();
  }

  stroke({ segment, weightMm }: Stroke): void {
    this.document.lineWidth(weightMm * POINTS);
    this.path([segment], false);
    this.document.lineWidth((this.layer?.weightMm ?? weightMm) * POINTS);
  }

  dot({ centre, radius }: Dot): void {
    this.fill([splitArc(wholeTurn(centre, radius), LONGEST_CUBIC)]);
  }

  /** @throws DocumentError when the font isn't the one that the text was laid out in, or lacks a letter of it. */
  text(box: TextBox): void {
    if (box.text.trim() === '') return;
    const { document } = this;
    const size = this.length(emOf(box.height));
    document.fontSize(size);
    const width = document.widthOfString(box.text, TEXT);
    if (Math.abs(width - this.length(box.width)) > SAME_WIDTH * size)
      throw new DocumentError('other-font', box.text, texts.fontThatWasHanded);
    const [x, y] = this.at(box.at);
    const before = box.anchor === 'left' ? 0 : box.anchor === 'right' ? width : width / 2;
    if (box.rotationDeg === 0) {
      document.text(box.text, x - before, y, TEXT);
      return;
    }
    document.save();
    document.rotate(-box.rotationDeg, { origin: [x, y] });
    document.text(box.text, x - before, y, TEXT);
    document.restore();
  }

  private dash(dashes: readonly number[], phaseMm: number): void {
    this.document.dash(
      dashes.map((d) => Math.abs(d) * POINTS),
      { phase: phaseMm * POINTS },
    );
  }

  private run({ from, to }: { readonly from: Vec2; readonly to: Vec2 }): void {
    this.document.moveTo(...this.at(from));
    this.document.lineTo(...this.at(to));
  }

  private trace(segments: readonly Segment[], closed: boolean): void {
    const [first] = segments;
    if (!first) return;
    this.document.moveTo(...this.at(segmentStart(first)));
    for (const s of segments) {
      if (s.kind === 'line') this.document.lineTo(...this.at(s.to));
      else for (const piece of splitArc(s, LONGEST_CUBIC)) this.arc(piece);
    }
    if (closed) this.document.closePath();
  }

  private arc(arc: ArcSegment): void {
    const sweep = arcSweep(arc);
    const reach = cubicReach(sweep) * arc.radius;
    const [p0, p1] = [segmentStart(arc), segmentEnd(arc)];
    const [a0, a1] = [arc.start, arc.start + sweep];
    this.cubic(
      [p0[0] - reach * sin(a0), p0[1] + reach * cos(a0)],
      [p1[0] + reach * sin(a1), p1[1] - reach * cos(a1)],
      p1,
    );
  }

  private cubic(a: Vec2, b: Vec2, end: Vec2): void {
    this.document.bezierCurveTo(...this.at(a), ...this.at(b), ...this.at(end));
  }

  private at([x, y]: Vec2): [number, number] {
    const { scale, origin, height } = this.paper;
    return [(origin[0] + x / scale) * POINTS, (height - origin[1] - y / scale) * POINTS];
  }

  private length(mm: number): number {
    return (mm / this.paper.scale) * POINTS;
  }
}

/** How far the handles of a cubic reach that turns by an angle on the unit circle. */
const cubicReach = (angle: number): number => (4 / 3) * tan(angle / 4);

const wholeTurn = (centre: Vec2, radius: number): ArcSegment => ({
  kind: 'arc',
  centre,
  radius,
  start: 0,
  end: 2 * Math.PI,
  ccw: true,
});

/** Derivative of an ellipse's point by its parameter. */
function ellipseSlope(e: EllipsePrimitive, t: number): Vec2 {
  const [ax, ay] = e.major;
  const [c, s] = [cos(t) * e.ratio, -sin(t)];
  return [ax * s - ay * c, ay * s + ax * c];
}

import * as texts from '../../base/texts/writers.js';
import { SAME_ANGLE_RAD, SAME_WIDTH } from '../../base/tolerances.js';
import { DocumentError } from '../../documents/document-error.js';
import type { EllipsePrimitive, LayerStyle, Segment } from '../../documents/drawing.js';
import { ellipseAt, ellipseTurn } from '../../documents/drawing-bounds.js';
import type { Dot, Stroke, TextBox } from '../../documents/expansion.js';
import type { HatchLine } from '../../documents/hatches.js';
import { dashesOf } from '../../documents/layers.js';
import { type ArcSegment, arcSweep, segmentStart } from '../../documents/segments.js';
import { emOf } from '../../documents/text-size.js';
import { circleEdge } from '../../math/curves.js';
import { cos, sin, tan } from '../../math/elementary.js';
import { DEG, type Vec2 } from '../../math/vec.js';
import type { ByteText } from '../byte-text.js';
import type { Pen } from '../pen.js';
import type { PlainFont } from './font.js';

/** Points of PDF in a millimetre. */
export const POINTS = 72 / 25.4;

/** Places after the point of a number. */
const PLACES = 6;

/** A cubic stands for at most this much of a turn: it misses the circle by 4e-6 of the radius. */
const LONGEST_CUBIC = Math.PI / 4;

export interface PdfPaper {
  readonly scale: number;
  /** Where the model's origin lies on paper, mm from the lower left. */
  readonly origin: Vec2;
  /** Height of the paper, mm: PDFKit's pages count downward. */
  readonly height: number;
}

/** Writes what is drawn as operators of a page (ISO 32000-1, 8 and 9). */
export class PdfPen implements Pen {
  private layer: LayerStyle | undefined;

  constructor(
    private readonly page: ByteText,
    private readonly font: PlainFont,
    private readonly paper: PdfPaper,
  ) {}

  beginLayer(layer: LayerStyle): void {
    this.layer = layer;
    this.page.ascii('q\n1 j\n');
    this.weight(layer.weightMm);
    const dashes = dashesOf(layer.line, layer.weightMm);
    if (dashes.length > 0) this.dash(dashes, 1, 0);
  }

  endLayer(): void {
    this.page.ascii('Q\n');
  }

  path(segments: readonly Segment[], closed: boolean): void {
    this.trace(segments, closed);
    this.page.ascii('S\n');
  }

  circle(centre: Vec2, radius: number): void {
    this.trace([circleEdge(centre, radius)], true);
    this.page.ascii('S\n');
  }

  ellipse(e: EllipsePrimitive): void {
    const turn = ellipseTurn(e);
    const pieces = Math.ceil(turn / LONGEST_CUBIC - 1e-9);
    const step = turn / pieces;
    const reach = cubicReach(step);
    const [x, y] = ellipseAt(e, e.start);
    this.point(x, y, 'm\n');
    for (let i = 0; i < pieces; i++) {
      const [t0, t1] = [e.start + i * step, e.start + (i + 1) * step];
      const [p0, p1] = [ellipseAt(e, t0), ellipseAt(e, t1)];
      const [d0, d1] = [ellipseSlope(e, t0), ellipseSlope(e, t1)];
      this.point(p0[0] + reach * d0[0], p0[1] + reach * d0[1], '');
      this.point(p1[0] - reach * d1[0], p1[1] - reach * d1[1], '');
      this.point(p1[0], p1[1], 'c\n');
    }
    this.page.ascii('S\n');
  }

  fill(loops: readonly (readonly Segment[])[]): void {
    for (const loop of loops) this.trace(loop, true);
    this.page.ascii('f*\n');
  }

  hatch(loops: readonly (readonly Segment[])[], lines: readonly HatchLine[]): void {
    this.page.ascii('q\n');
    for (const loop of loops) this.trace(loop, true);
    this.page.ascii('W* n\n');
    let continuous = false;
    for (const l of lines)
      if (l.dashes.length === 0) {
        this.run(l.from, l.to);
        continuous = true;
      }
    if (continuous) this.page.ascii('S\n');
    for (const l of lines) {
      if (l.dashes.length === 0) continue;
      this.dash(l.dashes, this.paper.scale, l.phase);
      this.run(l.from, l.to);
      this.page.ascii('S\n');
    }
    this.page.ascii('Q\n');
  }

  stroke({ segment, weightMm }: Stroke): void {
    this.weight(weightMm);
    this.path([segment], false);
    this.weight(this.layer?.weightMm ?? weightMm);
  }

  dot({ centre, radius }: Dot): void {
    this.fill([[circleEdge(centre, radius)]]);
  }

  /** @throws DocumentError when the font isn't the one that the text was laid out in, or lacks a letter of it. */
  text(box: TextBox): void {
    if (box.text.trim() === '') return;
    const { page, font, paper } = this;
    const size = this.length(emOf(box.height));
    const set = font.set(box.text);
    const width = set.width * size;
    if (Math.abs(width - this.length(box.width)) > SAME_WIDTH * size)
      throw new DocumentError('other-font', box.text, texts.fontThatWasHanded);
    const [x, y] = [this.x(box.at[0]), this.y(box.at[1])];
    const before = box.anchor === 'left' ? 0 : box.anchor === 'right' ? width : width / 2;
    const turned = box.rotationDeg !== 0;
    if (turned) {
      const angle = -box.rotationDeg * DEG;
      const [c, s] = [cos(angle), sin(angle)];
      page.ascii('q\n');
      for (const value of [c, s, -s, c, x - (x * c - y * s)]) this.number(value);
      this.number(y - (x * s + y * c), 'cm\n');
    }
    // Letters stand upright on a page that counts upward.
    const high = paper.height * POINTS;
    page.ascii('q\n1 0 0 -1 0 ');
    this.number(high, 'cm\nBT\n1 0 0 1 ');
    this.number(x - before);
    this.number(high - y, 'Tm\n/');
    page.ascii(font.onPage());
    page.ascii(' ');
    this.number(size, 'Tf\n[<');
    page.ascii(set.glyphs);
    page.ascii(turned ? '> 0] TJ\nET\nQ\nQ\n' : '> 0] TJ\nET\nQ\n');
  }

  private weight(mm: number): void {
    this.number(mm * POINTS, 'w\n');
  }

  /** Dashes and their phase in lengths of which `scale` are a millimetre on paper. */
  private dash(dashes: readonly number[], scale: number, phase: number): void {
    this.page.ascii('[');
    dashes.forEach((d, i) => {
      if (i > 0) this.page.ascii(' ');
      this.page.rounded((Math.abs(d) / scale) * POINTS, PLACES);
    });
    this.page.ascii('] ');
    this.number((phase / scale) * POINTS, 'd\n');
  }

  private run(from: Vec2, to: Vec2): void {
    this.point(from[0], from[1], 'm\n');
    this.point(to[0], to[1], 'l\n');
  }

  private trace(segments: readonly Segment[], closed: boolean): void {
    const [first] = segments;
    if (!first) return;
    const [x, y] = segmentStart(first);
    this.point(x, y, 'm\n');
    for (const s of segments) {
      if (s.kind === 'line') this.point(s.to[0], s.to[1], 'l\n');
      else this.arc(s);
    }
    if (closed) this.page.ascii('h\n');
  }

  private arc(arc: ArcSegment): void {
    const { centre, radius, start } = arc;
    const sweep = arcSweep(arc);
    const pieces = Math.max(1, Math.ceil(Math.abs(sweep) / LONGEST_CUBIC - SAME_ANGLE_RAD));
    const reach = cubicReach(sweep / pieces);
    let [c, s] = [cos(start), sin(start)];
    for (let i = 1; i <= pieces; i++) {
      this.point(centre[0] + radius * (c - reach * s), centre[1] + radius * (s + reach * c), '');
      const angle = start + (sweep * i) / pieces;
      c = cos(angle);
      s = sin(angle);
      this.point(centre[0] + radius * (c + reach * s), centre[1] + radius * (s - reach * c), '');
      this.point(centre[0] + radius * c, centre[1] + radius * s, 'c\n');
    }
  }

  /** A place of the model, and what is to be done there. */
  private point(x: number, y: number, operator: string): void {
    this.number(this.x(x));
    this.number(this.y(y), operator);
  }

  /** A number of points, and what follows it. */
  private number(value: number, next = ''): void {
    this.page.rounded(value, PLACES);
    this.page.ascii(' ');
    this.page.ascii(next);
  }

  private x(x: number): number {
    return (this.paper.origin[0] + x / this.paper.scale) * POINTS;
  }

  private y(y: number): number {
    return (this.paper.height - this.paper.origin[1] - y / this.paper.scale) * POINTS;
  }

  private length(mm: number): number {
    return (mm / this.paper.scale) * POINTS;
  }
}

/** How far the handles of a cubic reach that turns by an angle on the unit circle. */
const cubicReach = (angle: number): number => (4 / 3) * tan(angle / 4);

/** Derivative of an ellipse's point by its parameter. */
function ellipseSlope(e: EllipsePrimitive, t: number): Vec2 {
  const [ax, ay] = e.major;
  const [c, s] = [cos(t) * e.ratio, -sin(t)];
  return [ax * s - ay * c, ay * s + ax * c];
}

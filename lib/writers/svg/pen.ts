import type { EllipsePrimitive, LayerStyle, Segment } from '../../documents/drawing.js';
import { ellipseAt, ellipseTurn } from '../../documents/drawing-bounds.js';
import type { Dot, Stroke, TextBox } from '../../documents/expansion.js';
import type { HatchLine } from '../../documents/hatches.js';
import { dashesOf } from '../../documents/layers.js';
import { arcSweep, segmentAt, segmentEnd, segmentStart } from '../../documents/segments.js';
import { emOf } from '../../documents/text-size.js';
import { atan2, hypot } from '../../math/elementary.js';
import type { Vec2 } from '../../math/vec.js';
import { escaped } from '../markup.js';
import type { Pen } from '../pen.js';
import { number } from './text.js';

export interface SvgPaper {
  /** Begins the ids of clips, so that they are apart from those of others on the same page. */
  readonly id: string;
  readonly scale: number;
  /** Where the model's origin lies on paper, mm from the lower left. */
  readonly origin: Vec2;
  /** Height of the paper, mm: SVG counts downward. */
  readonly height: number;
}

/** Writes elements of SVG, a unit to the millimetre of paper. */
export class SvgPen implements Pen {
  /** Whole elements, in the order of drawing. */
  readonly lines: string[] = [];
  private clips = 0;

  constructor(private readonly paper: SvgPaper) {}

  beginLayer(layer: LayerStyle): void {
    const dashes = dashesOf(layer.line, layer.weightMm);
    const dashArray =
      dashes.length > 0 ? ` stroke-dasharray="${dashes.map((d) => number(Math.abs(d))).join(' ')}"` : '';
    this.lines.push(`<g data-layer="${layer.name}" stroke-width="${number(layer.weightMm)}"${dashArray}>`);
  }

  endLayer(): void {
    this.lines.push('</g>');
  }

  path(segments: readonly Segment[], closed: boolean): void {
    this.lines.push(`<path d="${this.pathOf(segments, closed)}"/>`);
  }

  circle(centre: Vec2, radius: number): void {
    this.lines.push(this.circleOf(centre, radius, ''));
  }

  ellipse(e: EllipsePrimitive): void {
    const turn = ellipseTurn(e);
    const major = hypot(e.major[0], e.major[1]);
    const tilt = number((-atan2(e.major[1], e.major[0]) * 180) / Math.PI);
    const half = `A${this.length(major)} ${this.length(major * e.ratio)} ${tilt} 0 0`;
    const [from, middle, to] = [0, turn / 2, turn].map((t) => this.at(ellipseAt(e, e.start + t)));
    this.lines.push(`<path d="M${from}${half} ${middle}${half} ${to}"/>`);
  }

  fill(loops: readonly (readonly Segment[])[]): void {
    this.lines.push(`<path d="${this.areaOf(loops)}" fill="#000" fill-rule="evenodd" stroke="none"/>`);
  }

  hatch(loops: readonly (readonly Segment[])[], lines: readonly HatchLine[]): void {
    const id = `${safeId(this.paper.id)}-hatch-${++this.clips}`;
    const continuous = lines.filter((l) => l.dashes.length === 0);
    const broken = lines.filter((l) => l.dashes.length > 0);
    const run = (l: { from: Vec2; to: Vec2 }): string => `M${this.at(l.from)}L${this.at(l.to)}`;
    this.lines.push(
      `<clipPath id="${id}"><path d="${this.areaOf(loops)}" clip-rule="evenodd"/></clipPath>`,
      `<g clip-path="url(#${id})">`,
      ...(continuous.length > 0 ? [`<path d="${continuous.map(run).join('')}"/>`] : []),
      ...broken.map((l) => {
        const dashes = l.dashes.map((d) => this.length(Math.abs(d))).join(' ');
        return `<path d="${run(l)}" stroke-dasharray="${dashes}" stroke-dashoffset="${this.length(l.phase)}"/>`;
      }),
      '</g>',
    );
  }

  stroke({ segment, weightMm }: Stroke): void {
    this.lines.push(`<path d="${this.pathOf([segment], false)}" stroke-width="${number(weightMm)}"/>`);
  }

  dot({ centre, radius }: Dot): void {
    this.lines.push(this.circleOf(centre, radius, ' fill="#000" stroke="none"'));
  }

  text(box: TextBox): void {
    const content = escaped(box.text);
    if (content.trim() === '') return;
    const [x, y] = this.at(box.at).split(' ');
    const anchor = { left: 'start', centre: 'middle', right: 'end' }[box.anchor];
    const turn = box.rotationDeg === 0 ? '' : ` transform="rotate(${number(-box.rotationDeg)} ${x} ${y})"`;
    const size = `font-size="${this.length(emOf(box.height))}" textLength="${this.length(box.width)}"`;
    this.lines.push(
      `<text x="${x}" y="${y}" ${size} lengthAdjust="spacingAndGlyphs" text-anchor="${anchor}" fill="#000" stroke="none"${turn}>${content}</text>`,
    );
  }

  private at([x, y]: Vec2): string {
    const { scale, origin, height } = this.paper;
    return `${number(origin[0] + x / scale)} ${number(height - origin[1] - y / scale)}`;
  }

  private length(mm: number): string {
    return number(mm / this.paper.scale);
  }

  private circleOf(centre: Vec2, radius: number, attributes: string): string {
    const [cx, cy] = this.at(centre).split(' ');
    return `<circle cx="${cx}" cy="${cy}" r="${this.length(radius)}"${attributes}/>`;
  }

  private areaOf(loops: readonly (readonly Segment[])[]): string {
    return loops.map((loop) => this.pathOf(loop, true)).join('');
  }

  private pathOf(segments: readonly Segment[], closed: boolean): string {
    const [first] = segments;
    if (!first) return '';
    const steps = segments.map((s) => {
      if (s.kind === 'line') return `L${this.at(s.to)}`;
      const r = this.length(s.radius);
      // Paper's y runs downward, so a counter-clockwise turn is SVG's negative sweep. Two halves, since the ends of a
      // nearly full turn would not tell its centre.
      const half = `A${r} ${r} 0 0 ${arcSweep(s) > 0 ? 0 : 1}`;
      return `${half} ${this.at(segmentAt(s, 0.5))}${half} ${this.at(segmentEnd(s))}`;
    });
    return `M${this.at(segmentStart(first))}${steps.join('')}${closed ? 'Z' : ''}`;
  }
}

const safeId = (id: string): string => id.replace(/[^A-Za-z0-9_-]/g, '_');

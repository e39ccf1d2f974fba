import { expandDimension } from '../documents/dimensioning.js';
import type {
  EllipsePrimitive,
  HatchPrimitive,
  LayerName,
  LayerStyle,
  Primitive,
  Segment,
  View,
} from '../documents/drawing.js';
import { requireSoundView } from '../documents/drawing-audit.js';
import { type Bounds2, boundsOf, ellipseAt, ellipseTurn, viewBounds } from '../documents/drawing-bounds.js';
import { type Expansion, type TextBox, textBox } from '../documents/expansion.js';
import { hatchLines } from '../documents/hatches.js';
import { dashesOf, LAYERS } from '../documents/layers.js';
import { expandLeader, expandLevel } from '../documents/marks.js';
import { oneLine } from '../documents/plain-text.js';
import { arcSweep, extremePoints, segmentAt, segmentEnd, segmentStart } from '../documents/segments.js';
import { emOf } from '../documents/text-size.js';
import { atan2, hypot } from '../math/elementary.js';
import type { Vec2 } from '../math/vec.js';

/** Paper left free round the view, mm. */
const MARGIN = 5;

export interface SvgOptions {
  /** Says what the picture shows to those who can't see it; the view's title and scale when left out. */
  readonly description?: string;
}

/**
 * A view as an SVG that stands alone: one unit is one millimetre of paper at `1 : scale`, y downward.
 * Arcs stay arcs; texts are texts, held to their laid-out length whatever font the reader has.
 * @throws DocumentError that tells every fault of the view.
 */
export function writeSvg(view: View, options: SvgOptions = {}): Uint8Array {
  requireSoundView(view);
  const sheet = new Sheet(view);
  const [width, height] = sheet.size.map(number);
  const description = options.description ?? `${view.title}, drawn at 1 : ${view.scale}.`;
  const layers = LAYERS.map((layer) =>
    group(
      layer,
      view.primitives.filter((p) => layerOf(p) === layer.name).map((p) => sheet.draw(p)),
    ),
  );
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img">`,
    `<title>${escaped(view.title)}</title>`,
    `<desc>${escaped(description)}</desc>`,
    '<g fill="none" stroke="#000" stroke-linecap="butt" stroke-linejoin="round" font-family="DejaVu Sans, Verdana, sans-serif">',
    ...layers,
    '</g>',
    '</svg>',
    '',
  ];
  return new TextEncoder().encode(svg.filter((line, i) => line !== '' || i === svg.length - 1).join('\n'));
}

const layerOf = (p: Primitive): LayerName => ('layer' in p ? p.layer : 'dimension');

function group(layer: LayerStyle, pieces: readonly string[]): string {
  if (pieces.length === 0) return '';
  const dashes = dashesOf(layer.line, layer.weightMm);
  const dashArray = dashes.length > 0 ? ` stroke-dasharray="${dashes.map((d) => number(Math.abs(d))).join(' ')}"` : '';
  return `<g data-layer="${layer.name}" stroke-width="${number(layer.weightMm)}"${dashArray}>\n${pieces.join('\n')}\n</g>`;
}

/** Model mm to paper mm, and each primitive to its element. */
class Sheet {
  readonly size: readonly [number, number];
  private readonly bounds: Bounds2;
  private clips = 0;

  constructor(private readonly view: View) {
    this.bounds = viewBounds(view);
    const { min, max } = this.bounds;
    this.size = [(max[0] - min[0]) / view.scale + 2 * MARGIN, (max[1] - min[1]) / view.scale + 2 * MARGIN];
  }

  draw(p: Primitive): string {
    const { scale, units } = this.view;
    switch (p.kind) {
      case 'path':
        return `<path d="${this.pathOf(p.segments, p.closed)}"/>`;
      case 'circle':
        return this.circle(p.centre, p.radius, '');
      case 'ellipse':
        return `<path d="${this.ellipsePath(p)}"/>`;
      case 'hatch':
        return this.hatch(p);
      case 'text':
        return this.text(textBox(p.text, p.at, p.anchor, p.heightMm * scale, p.rotationDeg));
      case 'dimension':
        return this.expansion(expandDimension(p, scale, units));
      case 'leader':
        return this.expansion(expandLeader(p, scale));
      case 'level':
        return this.expansion(expandLevel(p, scale, units));
    }
  }

  private at([x, y]: Vec2): string {
    const { min, max } = this.bounds;
    return `${number((x - min[0]) / this.view.scale + MARGIN)} ${number((max[1] - y) / this.view.scale + MARGIN)}`;
  }

  private length(mm: number): string {
    return number(mm / this.view.scale);
  }

  private circle(centre: Vec2, radius: number, attributes: string): string {
    const [cx, cy] = this.at(centre).split(' ');
    return `<circle cx="${cx}" cy="${cy}" r="${this.length(radius)}"${attributes}/>`;
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

  private ellipsePath(e: EllipsePrimitive): string {
    const turn = ellipseTurn(e);
    const major = hypot(e.major[0], e.major[1]);
    const tilt = number((-atan2(e.major[1], e.major[0]) * 180) / Math.PI);
    const half = `A${this.length(major)} ${this.length(major * e.ratio)} ${tilt} 0 0`;
    const [from, middle, to] = [0, turn / 2, turn].map((t) => this.at(ellipseAt(e, e.start + t)));
    return `M${from}${half} ${middle}${half} ${to}`;
  }

  private hatch(p: HatchPrimitive): string {
    const area = p.loops.map((loop) => this.pathOf(loop, true)).join('');
    if (p.pattern === 'solid') return `<path d="${area}" fill="#000" fill-rule="evenodd" stroke="none"/>`;
    const id = `${safeId(this.view.id)}-hatch-${++this.clips}`;
    const box = boundsOf(p.loops.flatMap((loop) => loop.flatMap(extremePoints)));
    const lines = hatchLines(p.pattern, box, this.view.scale);
    const continuous = lines.filter((l) => l.dashes.length === 0);
    const broken = lines.filter((l) => l.dashes.length > 0);
    const run = (l: { from: Vec2; to: Vec2 }): string => `M${this.at(l.from)}L${this.at(l.to)}`;
    return [
      `<clipPath id="${id}"><path d="${area}" clip-rule="evenodd"/></clipPath>`,
      `<g clip-path="url(#${id})">`,
      ...(continuous.length > 0 ? [`<path d="${continuous.map(run).join('')}"/>`] : []),
      ...broken.map((l) => {
        const dashes = l.dashes.map((d) => this.length(Math.abs(d))).join(' ');
        return `<path d="${run(l)}" stroke-dasharray="${dashes}" stroke-dashoffset="${this.length(l.phase)}"/>`;
      }),
      '</g>',
    ].join('\n');
  }

  private expansion(e: Expansion): string {
    return [
      ...e.strokes.map((s) => `<path d="${this.pathOf([s.segment], false)}" stroke-width="${number(s.weightMm)}"/>`),
      ...e.dots.map((d) => this.circle(d.centre, d.radius, ' fill="#000" stroke="none"')),
      ...e.texts.map((t) => this.text(t)),
    ].join('\n');
  }

  private text(box: TextBox): string {
    const content = escaped(box.text);
    if (content.trim() === '') return '';
    const [x, y] = this.at(box.at).split(' ');
    const anchor = { left: 'start', centre: 'middle', right: 'end' }[box.anchor];
    const turn = box.rotationDeg === 0 ? '' : ` transform="rotate(${number(-box.rotationDeg)} ${x} ${y})"`;
    const size = `font-size="${this.length(emOf(box.height))}" textLength="${this.length(box.width)}"`;
    return `<text x="${x}" y="${y}" ${size} lengthAdjust="spacingAndGlyphs" text-anchor="${anchor}" fill="#000" stroke="none"${turn}>${content}</text>`;
  }
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

const escaped = (text: string): string => oneLine(text).replace(/[&<>"']/g, (c) => ENTITIES[c] as string);

const safeId = (id: string): string => id.replace(/[^A-Za-z0-9_-]/g, '_');

/** To a ten-thousandth of a millimetre, without trailing zeros. */
function number(value: number): string {
  const rounded = Math.round(value * 1e4) / 1e4;
  return String(rounded === 0 ? 0 : rounded);
}

import { describe, expect, it } from 'vitest';
import type { Primitive } from '../../lib/documents/drawing.js';
import { StrokeBook } from '../../lib/drawings/stroke-book.js';
import { arcEdge, circleEdge, edgeLength, lineEdge } from '../../lib/math/curves.js';

const length = (primitives: readonly Primitive[], layer: string): number =>
  primitives.reduce((sum, p) => {
    if (p.kind === 'circle' && p.layer === layer) return sum + 2 * Math.PI * p.radius;
    return p.kind === 'path' && p.layer === layer ? sum + p.segments.reduce((s, e) => s + edgeLength(e), 0) : sum;
  }, 0);

describe('stroke book', () => {
  it('draws each place once, on the layer that came first', () => {
    const book = new StrokeBook();
    book.write('visible', [lineEdge([0, 0], [100, 0]), lineEdge([60, 0], [160, 0])]);
    book.write('hidden', [lineEdge([200, 0], [-40, 0]), lineEdge([0, 5], [100, 5])]);
    const drawn = book.primitives();
    expect(length(drawn, 'visible')).toBeCloseTo(160, 9);
    expect(length(drawn, 'hidden')).toBeCloseTo(240 - 160 + 100, 9);
  });

  it('takes arcs of one circle for one another, across the turn of the angle too', () => {
    const book = new StrokeBook();
    book.take([arcEdge([0, 0], 50, 5, 7)]);
    book.write('visible', [circleEdge([0, 0], 50), circleEdge([0, 0], 60)]);
    book.write('hidden', [arcEdge([0, 0], 50, 3, 1)]);
    expect(length(book.primitives(), 'visible')).toBeCloseTo(50 * (2 * Math.PI - 2) + 120 * Math.PI, 6);
    expect(length(book.primitives(), 'hidden')).toBeCloseTo(0, 9);
  });

  it('leaves lines that only cross or touch alone', () => {
    const book = new StrokeBook();
    book.write('visible', [lineEdge([0, 0], [100, 0])]);
    book.write('hidden', [lineEdge([50, -50], [50, 50]), lineEdge([100, 0], [200, 0]), arcEdge([50, 50], 50, 4, 5.5)]);
    expect(length(book.primitives(), 'hidden')).toBeCloseTo(100 + 100 + 75, 9);
  });

  it('makes a whole circle of its pieces, and one stroke of lines that meet', () => {
    const book = new StrokeBook();
    book.write('visible', [arcEdge([0, 0], 50, 0, 3), arcEdge([0, 0], 50, 3, 2 * Math.PI)]);
    book.write('visible', [lineEdge([200, 0], [300, 0]), lineEdge([300, 0], [300, 80])]);
    const drawn = book.primitives();
    expect(drawn.map((p) => p.kind).sort()).toEqual(['circle', 'path']);
  });
});

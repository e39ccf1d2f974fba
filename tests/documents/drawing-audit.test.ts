import { describe, expect, it } from 'vitest';
import type { Primitive, View } from '../../lib/documents/drawing.js';
import { auditView, requireSoundView } from '../../lib/documents/drawing-audit.js';
import { viewBounds } from '../../lib/documents/drawing-bounds.js';
import { demoView } from './demo-view.js';

const view = (...primitives: Primitive[]): View => ({ id: 'v', title: 'V', scale: 50, units: 'metric', primitives });
const codes = (...primitives: Primitive[]): string[] => auditView(view(...primitives)).map((f) => f.code);

describe('auditView', () => {
  it('passes the demonstration view', () => {
    expect(auditView(demoView())).toEqual([]);
    expect(auditView(demoView('feet-inches'))).toEqual([]);
  });

  it('finds each kind of fault', () => {
    const line = { kind: 'line', from: [0, 0], to: [10, 0] } as const;
    const away = { kind: 'line', from: [10, 5], to: [0, 0] } as const;
    expect(codes({ kind: 'path', layer: 'cut', segments: [line, away], closed: false })).toEqual(['broken-chain']);
    expect(codes({ kind: 'path', layer: 'cut', segments: [line], closed: true })).toEqual(['broken-chain']);
    expect(codes({ kind: 'path', layer: 'cut', segments: [], closed: false })).toEqual(['no-length']);
    expect(codes({ kind: 'path', layer: 'cut', segments: [{ ...line, to: [0, 0] }], closed: false })).toEqual([
      'no-length',
    ]);
    const arc = { kind: 'arc', centre: [0, 0], radius: 5, start: 1, end: 1, ccw: true } as const;
    expect(codes({ kind: 'path', layer: 'cut', segments: [arc], closed: false })).toEqual(['no-length']);
    expect(codes({ kind: 'path', layer: 'cut', segments: [{ ...arc, end: 2, radius: 0 }], closed: false })).toEqual([
      'bad-shape',
    ]);
    expect(codes({ kind: 'hatch', layer: 'hatch', pattern: 'cast', loops: [[line, away]] })).toEqual(['broken-chain']);
    expect(codes({ kind: 'circle', layer: 'cut', centre: [0, Number.NaN], radius: 1 })).toEqual(['non-finite']);
    expect(codes({ kind: 'circle', layer: 'cut', centre: [0, 0], radius: -1 })).toEqual(['bad-shape']);
    expect(codes({ kind: 'ellipse', layer: 'cut', centre: [0, 0], major: [1, 0], ratio: 2, start: 0, end: 1 })).toEqual(
      ['bad-shape'],
    );
    expect(
      codes({ kind: 'text', layer: 'text', at: [0, 0], text: 'a', heightMm: 0, anchor: 'left', rotationDeg: 0 }),
    ).toEqual(['bad-shape']);
    expect(codes({ kind: 'dimension', type: 'linear', from: [0, 0], to: [0, 9], angleDeg: 0, line: [0, 0] })).toEqual([
      'no-length',
    ]);
    expect(codes({ kind: 'dimension', type: 'angle', centre: [0, 0], from: [0, 1], to: [1, 0], line: [1, 1] })).toEqual(
      ['bad-shape'],
    );
    expect(codes({ kind: 'level', at: [0, 0], level: Number.POSITIVE_INFINITY, side: 'left', label: '' })).toEqual([
      'non-finite',
    ]);
    const spot = { kind: 'circle', layer: 'attic' as 'cut', centre: [0, 0], radius: 1 } as const;
    expect(codes(spot)).toEqual(['unknown-name']);
    expect(auditView({ ...view(), scale: 0 }).map((f) => f.code)).toEqual(['bad-scale']);
  });

  it('tells all faults at once, by kind and number', () => {
    const bad = view(
      { kind: 'circle', layer: 'cut', centre: [0, 0], radius: 0 },
      { kind: 'circle', layer: 'cut', centre: [0, 0], radius: 1 / 0 },
    );
    expect(() => requireSoundView(bad)).toThrow(
      /^v: The circle 0 has no radius\. The circle 1 has a radius that isn't a finite number\.$/,
    );
  });
});

describe('viewBounds', () => {
  it('reaches to the quadrants of arcs and the ends of the axes of ellipses', () => {
    const arc = { kind: 'arc', centre: [0, 0], radius: 10, start: Math.PI / 4, end: (3 * Math.PI) / 4 } as const;
    const over = viewBounds(view({ kind: 'path', layer: 'cut', closed: false, segments: [{ ...arc, ccw: true }] }));
    expect(over.max[1]).toBeCloseTo(10, 12);
    expect(over.min[1]).toBeCloseTo(10 * Math.SQRT1_2, 12);
    const under = viewBounds(view({ kind: 'path', layer: 'cut', closed: false, segments: [{ ...arc, ccw: false }] }));
    expect(under.min[1]).toBeCloseTo(-10, 12);
    expect([under.min[0], under.max[0]]).toEqual([-10, 10]);
    // Half width of a turned ellipse: √(a² cos² + b² sin²).
    const turned = viewBounds(
      view({ kind: 'ellipse', layer: 'cut', centre: [1, 2], major: [3, 4], ratio: 0.5, start: 0, end: 2 * Math.PI }),
    );
    expect(turned.max[0]).toBeCloseTo(1 + Math.sqrt(9 + 4), 12);
    expect(turned.min[1]).toBeCloseTo(2 - Math.sqrt(16 + 2.25), 12);
  });

  it('holds texts', () => {
    const { min, max } = viewBounds(
      view({ kind: 'text', layer: 'text', at: [0, 0], text: 'hall', heightMm: 5, anchor: 'centre', rotationDeg: 90 }),
    );
    expect(min[1]).toBeCloseTo(-max[1], 9);
    expect(min[0]).toBeCloseTo(-250, 9);
  });

  it('of nothing is a point', () => {
    expect(viewBounds(view())).toEqual({ min: [0, 0], max: [0, 0] });
  });
});

import { describe, expect, it } from 'vitest';
import { CAUTION } from '../../lib/base/texts/cautions.js';
import { auditView } from '../../lib/documents/drawing-audit.js';
import { viewBounds } from '../../lib/documents/drawing-bounds.js';
import { SIDES } from '../../lib/drawings/elevation.js';
import { houseViews } from '../../lib/drawings/house-views.js';
import { randomClusters, samples, variety } from './houses.js';
import { clashesOf } from './reading.js';

const random = randomClusters(6, 31);

describe('all views', () => {
  it.each([...samples(), ...variety(), ...random])('are sound, fit A3, can be read: %s', (_, house) => {
    const views = houseViews(house);
    expect(views.slice(0, 6).map((v) => v.id)).toEqual(['plan', ...SIDES.map((s) => `elevation-${s}`), 'section-a']);
    // Plan and elevations can be laid beside one another.
    expect(new Set(views.slice(0, 5).map((v) => v.scale)).size).toBe(1);
    expect(new Set(views.slice(5).map((v) => v.scale)).size).toBe(1);
    const wrong: string[] = [];
    for (const view of views) {
      expect(auditView(view)).toEqual([]);
      const { min, max } = viewBounds(view);
      // Drawing space of A3, ISO 5457:1999: 390 × 277.
      expect((max[0] - min[0]) / view.scale).toBeLessThanOrEqual(390);
      expect((max[1] - min[1]) / view.scale).toBeLessThanOrEqual(277);
      const words = view.primitives.map((p) => (p.kind === 'text' ? p.text : '')).join(' ');
      for (const told of [view.title, `1:${view.scale}`, CAUTION.authority]) expect(words).toContain(told);
      // No text lies on another, no line crosses one.
      wrong.push(...clashesOf(view));
    }
    expect(wrong).toEqual([]);
  });
});

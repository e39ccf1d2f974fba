import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { auditView } from '../../lib/documents/drawing-audit.js';
import { cutOf } from '../../lib/drawings/cut.js';
import { houseViews } from '../../lib/drawings/house-views.js';
import { partAt } from '../../lib/drawings/parts.js';
import { planView } from '../../lib/drawings/plan.js';
import { planFigure } from '../../lib/drawings/plan-figure.js';
import { sectionFigure } from '../../lib/drawings/section-figure.js';
import { sectionPlane } from '../../lib/drawings/section-plane.js';
import { sliceLevel } from '../../lib/drawings/slice-level.js';
import { uprightCut } from '../../lib/drawings/upright-cut.js';
import { type Edge, edgeBox, loopsArea } from '../../lib/math/curves.js';
import { intervalsLength } from '../../lib/math/intervals.js';
import { integrateSoftEnds } from '../../lib/math/quadrature.js';
import type { Vec2 } from '../../lib/math/vec.js';
import { type HouseSetout, setOutHouse } from '../../lib/setout/house.js';
import { levelMaterial } from '../../lib/setout/material.js';
import { clusters } from '../properties/clusters.js';
import { samples } from './houses.js';

const built = samples().filter(([, house]) => house.domes.length > 1);
const random = fc
  .sample(clusters, { numRuns: 5, seed: 20260 })
  .map((house, i): [string, HouseSetout] => [`random ${i}`, setOutHouse(house)]);

/** Sum over panels between all ends and turning places of the outlines. */
function measured(edges: readonly Edge[], axis: 0 | 1, lengthAt: (t: number) => number): number {
  const stops = [...new Set(edges.map(edgeBox).flatMap((b) => [b.min[axis], b.max[axis]]))].sort((a, b) => a - b);
  return stops.slice(1).reduce((sum, to, i) => {
    const from = stops[i] as number;
    return to - from < 1e-4 ? sum : sum + integrateSoftEnds(lengthAt, from, to, 24);
  }, 0);
}

const close = (value: number, exact: number, name: string) =>
  expect(Math.abs(value / exact - 1), `${name}: ${value} against ${exact}`).toBeLessThan(2e-6);

describe('clusters of domes', () => {
  it('are among the samples', () => {
    expect(built.length).toBeGreaterThanOrEqual(2);
  });

  it.each(built)('cut level, have the area that level rays measure: %s', (_, house) => {
    for (const z of [-300.37, -50.3, 300.29, 1200.41, 1873.3]) {
      const cut = cutOf(sliceLevel(house, z), ([x, y]) => partAt(house, [x, y, z]));
      const edges = cut.borders.map((b) => b.edge);
      if (edges.length === 0) continue;
      const exact = measured(edges, 0, (t) => intervalsLength(levelMaterial(house, z, [t, 0], [0, 1])));
      close(loopsArea(cut.loops()), exact, `level ${z}`);
      const parts = ['blocks', 'arch', 'passage', 'skewback', 'curb', 'plug', 'footing', 'slab'] as const;
      const sum = parts.reduce((a, part) => a + loopsArea(cut.loops(part)), 0);
      close(sum, exact, `parts at level ${z}`);
    }
  });

  it.each(built)('cut upright, have the area that level rays measure: %s', (_, house) => {
    for (const bearingDeg of [sectionPlane(house).bearingDeg, 17, 171.3]) {
      const plane = sectionPlane(house, { bearingDeg });
      const cut = uprightCut(house, plane);
      const edges = cut.borders.map((b) => b.edge);
      const exact = measured(edges, 1, (z) => intervalsLength(levelMaterial(house, z, plane.through, plane.right)));
      close(loopsArea(cut.loops()), exact, `bearing ${bearingDeg}`);
    }
  });

  it.each(random)('of any kind have whole figures: %s', (_, house) => {
    // JSON writes what isn't a finite number as null.
    for (const p of [...planFigure(house, 1200).primitives, ...sectionFigure(house, sectionPlane(house)).primitives])
      expect(JSON.stringify(p)).not.toContain('null');
  });

  it.each(built)('give sound views: %s', (_, house) => {
    for (const view of houseViews(house)) expect([view.id, auditView(view)]).toEqual([view.id, []]);
  });

  it.each(built)('tell every passage’s clear width, by a dimension or in words: %s', (_, house) => {
    const plan = planView(house, { scale: 50 });
    const across = (a: Vec2, b: Vec2) => Math.hypot(a[0] - b[0], a[1] - b[1]);
    const widths = plan.primitives.flatMap((p) =>
      p.kind === 'dimension' && p.type === 'aligned' && !p.prefix ? [Math.round(across(p.from, p.to))] : [],
    );
    const words = plan.primitives.flatMap((p) => (p.kind === 'text' || p.kind === 'leader' ? [p.text] : [])).join(' ');
    for (const { id, passage } of house.passages)
      expect(widths.includes(passage.width) || words.includes(`${id}, clear `), id).toBe(true);
  });
});

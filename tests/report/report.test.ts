import { describe, expect, it } from 'vitest';
import { judged } from '../../lib/deliver/judged.js';
import { study } from '../../lib/deliver/study.js';
import type { House } from '../../lib/description/house.js';
import type { Diagram, DiagramShape } from '../../lib/documents/report.js';
import { houseReport } from '../../lib/report/house-report.js';
import { wallOutline } from '../../lib/report/section-outline.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const made = (part: Partial<House> = {}) => {
  const known = study(houseOf({ openings: [openingOf()], ...part }));
  const verdict = judged(known);
  return { known, verdict, report: houseReport(known.setout, known.statics, verdict) };
};

const points = (shapes: readonly DiagramShape[]) => shapes.flatMap((s) => (s.kind === 'line' ? s.points : [s.at]));

describe('the report of a house', () => {
  it('holds every check once, and the cautions', () => {
    const { report, verdict } = made();
    expect(report.sections.flatMap((s) => s.checks)).toEqual(verdict.checks);
    expect(report.cautions).toEqual(verdict.cautions);
    expect(new Set(verdict.checks.map((c) => c.id)).size).toBe(verdict.checks.length);
    expect(report.facts.find(([name]) => name === 'Loads')?.[1]).toContain('snow not given');
  });

  it.each(['hemisphere', 'segmental', 'pointed', 'catenary', 'elliptical'] as const)(
    'draws forces and thrust of a %s within their pages',
    (shape) => {
      const rise = { hemisphere: 3000, segmental: 2000, pointed: 3600, catenary: 3200, elliptical: 2600 }[shape];
      const { report } = made({ domes: [domeOf({ shape, rise })], site: { ...houseOf().site, snowKpa: 0.8 } });
      const diagrams = report.sections.flatMap((s) => s.diagrams);
      expect(diagrams).toHaveLength(2);
      for (const { shapes, width, height } of diagrams) {
        for (const [x, y] of points(shapes)) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(width);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(height);
        }
      }
    },
  );

  it('draws the thrust where the statics has it, in a wall of the right size', () => {
    const { known, report } = made();
    const [, diagram] = report.sections.flatMap((s) => s.diagrams) as [Diagram, Diagram];
    const [found] = known.statics.domes;
    const thrust = diagram.shapes.find((s) => s.kind === 'line' && s.style === 'thrust');
    const walls = diagram.shapes.filter((s) => s.kind === 'line' && s.style === 'masonry');
    if (thrust?.kind !== 'line' || walls[0]?.kind !== 'line' || !found) throw new Error('nothing drawn');
    // From the footing's width on the page: 500 mm.
    const xs = walls[0].points.map((p) => p[0]);
    const scale = (Math.max(...xs) - Math.min(...xs)) / 500;
    const drawn = found.thrust.line.filter((p) => p.r >= 0);
    const [first, last] = [thrust.points[0], thrust.points[thrust.points.length - 1]];
    if (!first || !last) throw new Error('no line');
    expect((last[1] - first[1]) / scale).toBeCloseTo((drawn[0]?.z ?? 0) - (drawn[drawn.length - 1]?.z ?? 0), 6);
    expect((last[0] - first[0]) / scale).toBeCloseTo((drawn[drawn.length - 1]?.r ?? 0) - (drawn[0]?.r ?? 0), 6);
    expect(diagram.caption).toContain(`geometric factor ${found.thrust.factor.toFixed(2)}`);
  });

  it('writes a hemisphere’s own forces beside them: q R / 2 at the crown, q R and its hoop tension at the foot', () => {
    const house = houseOf();
    const { known, report } = made({
      domes: [domeOf({ stemWall: 0 })],
      wall: { thickness: 250, renderInside: 0, renderOutside: 0 },
      material: { ...house.material, dryDensity: 800, mortarDensity: 800 },
      openings: [],
    });
    const [diagram] = report.sections.flatMap((s) => s.diagrams) as [Diagram];
    const [R, t] = [3.125, 0.25];
    const q = ((800 * 9.80665) / 1000) * t;
    // On the middle surface an element of the thick shell weighs 1 + t² / 12 R² more.
    const all = q * R * (1 + t ** 2 / (12 * R ** 2));
    const [crown, foot] = [all / 2, all].map((value) => value.toFixed(2));
    const told = diagram.shapes.flatMap((s) => (s.kind === 'text' ? [s.text] : []));
    expect(told.slice(0, 4)).toEqual([`−${crown}`, `−${foot}`, `−${crown}`, `+${foot}`]);
    expect(told).toContain(`tension below ${((R * (Math.sqrt(5) - 1)) / 2).toFixed(3)} m`);
    // ∫ (1 / (1 + cos a) − cos a) da from 51.83° to 90°: tan 45° − 1 less tan 25.91° − sin 51.83°.
    const tension = 0.30028311 * all * R;
    expect((known.statics.domes[0]?.shell.hoopTension as number) / tension).toBeCloseTo(1, 6);
  });

  it('closes the wall’s outline round its area', () => {
    const { known } = made();
    const [dome] = known.setout.domes;
    if (!dome) throw new Error('no dome');
    const outline = wallOutline(dome);
    let twice = 0;
    outline.forEach(([x, y], i) => {
      const [u, v] = outline[(i + 1) % outline.length] as readonly [number, number];
      twice += x * v - u * y;
    });
    // Stem wall 600 × 250, quarter ring between 3000 and 3250.
    expect(Math.abs(twice) / 2).toBeCloseTo(600 * 250 + (Math.PI / 4) * (3250 ** 2 - 3000 ** 2), -3);
  });
});

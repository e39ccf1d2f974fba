import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readDescription } from '../../lib/description/read.js';
import { auditView } from '../../lib/documents/drawing-audit.js';
import { calendarChart } from '../../lib/drawings/calendar-chart.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { calendarOf } from '../../lib/works/calendar.js';
import { writeSvg } from '../../lib/writers/svg.js';

describe.each(['garden-studio', 'courtyard-ring'])('calendar chart of %s', (name) => {
  const house = setOutHouse(readDescription(readFileSync(`samples/${name}.yaml`, 'utf8'), `${name}.yaml`));
  const calendar = calendarOf(house, layBlocks(house));
  const view = calendarChart(calendar);

  it('is sound, names every mould, arch and course, and is written as SVG', () => {
    expect(auditView(view)).toEqual([]);
    const svg = new TextDecoder().decode(writeSvg(view));
    const names = [
      ...calendar.moulds.map((m) => m.mould),
      ...calendar.laying.arches.map((a) => a.id),
      ...calendar.laying.stages.map((s) => s.id),
    ];
    for (const id of names) expect(svg).toContain(`>${id}<`);
  });

  it('bars are as long as the days they stand for', () => {
    const bars = view.primitives.flatMap((p) =>
      p.kind === 'hatch' ? [p.loops[0]?.flatMap((s) => (s.kind === 'line' ? [s.from[0]] : [])) ?? []] : [],
    );
    const total = bars.reduce((sum, xs) => sum + Math.max(...xs) - Math.min(...xs), 0);
    const filled = calendar.days.reduce((sum, d) => sum + d.cast.length, 0);
    const stood = calendar.laying.arches.reduce((sum, a) => sum + a.strikeDay - a.day + 1, 0);
    const laid = calendar.laying.stages.reduce((sum, s) => sum + s.to - s.from + 1, 0);
    const last = Math.max(...calendar.days.map((d) => d.day));
    const days = filled + stood + laid + calendar.laying.closes.length;
    expect(total / days).toBeCloseTo(Math.min(6, 230 / last), 6);
  });
});

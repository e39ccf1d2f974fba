import { describe, expect, it } from 'vitest';
import type { Check } from '../../lib/base/figures.js';
import type { Report } from '../../lib/documents/report.js';
import { writeHtml } from '../../lib/writers/html.js';

const NASTY = `<script>alert("1")</script> & 'q' <img src=x onerror=alert(1)>\u0000`;

const check = (part: Partial<Check> = {}): Check => ({
  id: NASTY,
  statement: NASTY,
  state: 'fails',
  demand: {
    id: 'd',
    label: NASTY,
    value: 12345.678,
    unit: NASTY,
    formula: NASTY,
    source: NASTY,
    inputs: { [NASTY]: NASTY },
    limit: NASTY,
  },
  capacity: {
    id: 'c',
    label: 'limit',
    value: 0.00001234,
    unit: '1',
    formula: 'as given',
    source: 'the description',
    inputs: { 'n (mm)': 3 },
  },
  ratio: Number.MAX_VALUE,
  source: NASTY,
  advice: NASTY,
  ...part,
});

const report = (part: Partial<Report> = {}): Report => ({
  title: NASTY,
  facts: [[NASTY, NASTY]],
  units: 'm',
  summary: [NASTY],
  cautions: ['Mind the ring.', NASTY],
  sections: [
    {
      title: NASTY,
      texts: [NASTY],
      checks: [check(), check({ state: 'ok', statement: 'fine', ratio: 0.5, advice: 'unsaid' })],
      diagrams: [
        {
          title: NASTY,
          caption: NASTY,
          width: 100,
          height: 50,
          shapes: [
            {
              kind: 'line',
              style: 'thrust',
              points: [
                [0, -0.01],
                [10.123, 20],
              ],
            },
            {
              kind: 'line',
              style: 'masonry',
              points: [
                [0, 0],
                [10, 0],
                [10, 10],
              ],
              closed: true,
            },
            { kind: 'dot', style: 'tension', at: [5, 5] },
            { kind: 'text', at: [1, 2], text: NASTY, anchor: 'middle' },
          ],
        },
      ],
    },
  ],
  ...part,
});

const html = (part: Partial<Report> = {}) => new TextDecoder().decode(writeHtml(report(part)));

describe('a report as HTML', () => {
  it('stands alone: no script, nothing fetched, every text escaped', () => {
    const page = html();
    expect(page).not.toMatch(/<script|<img|<link|<iframe|javascript:|https?:|url\(|@import/i);
    // Quoted values can hold anything but a quote.
    expect(page.replace(/"[^"]*"/g, '""')).not.toMatch(/<[a-z][^>]*\son\w+=/i);
    expect(page).not.toContain('\u0000');
    expect(page).toContain('&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;q&#39;');
    expect(page).toContain(`content="default-src 'none'; style-src 'unsafe-inline'"`);
  });

  it('closes every element that it opens, in order', () => {
    const open: string[] = [];
    for (const [tag, end, name, empty] of html().matchAll(/<(\/?)([a-z]\w*)[^>]*?(\/?)>/g)) {
      if (tag.startsWith('<meta') || empty || name === 'br') continue;
      if (end) expect(open.pop()).toBe(name);
      else open.push(name as string);
    }
    expect(open).toEqual([]);
  });

  it('tells all of a check, and the cautions at top and end', () => {
    const page = html();
    expect(page.match(/Mind the ring\./g)).toHaveLength(2);
    expect(page.indexOf('Mind the ring.')).toBeLessThan(page.indexOf('All checks'));
    expect(page.lastIndexOf('Mind the ring.')).toBeGreaterThan(page.lastIndexOf('<article'));
    for (const text of [
      'All checks: 1 fails, 0 attention, 1 ok',
      '12346',
      '1.23e-5',
      'over 1000',
      '0.50',
      'n (mm) = 3',
      'limit: ',
      'source: the description',
    ])
      expect(page).toContain(text);
    expect(page).not.toContain('unsaid');
    for (const [, target] of page.matchAll(/href="#([^"]+)"/g)) expect(page).toContain(`id="${target}"`);
  });

  it('draws diagrams in place', () => {
    const page = html();
    expect(page).toContain('<polyline class="thrust" points="0,0 10.1,20"/>');
    expect(page).toContain('<polygon class="masonry" points="0,0 10,0 10,10"/>');
    expect(page).toContain('viewBox="0 0 100 50"');
    expect(html()).toBe(page);
  });
});

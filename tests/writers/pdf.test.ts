import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { formatLength } from '../../lib/base/measures.js';
import { sheetForm } from '../../lib/documents/sheet.js';
import { ISO_SHEETS, US_SHEETS } from '../../lib/documents/sheet-size.js';
import { MISSING_LETTER, textWidth } from '../../lib/documents/text-size.js';
import { type PdfSource, writePdf } from '../../lib/writers/pdf.js';
import { demoSheet } from '../documents/demo-sheet.js';
import { checkByQpdf, infoByPoppler, outlineByMutool, traceByMutool, wordsByPoppler } from '../readers/pdf.js';
import { nodePdf } from '../tools/pdf.js';

const INFO = { title: 'Demonstration house', author: 'drawing office', subject: 'a test', date: '2026-05-04' };
const source = await nodePdf();
const two = [demoSheet(), demoSheet({ sheet: 2, title: 'Again' }, US_SHEETS[2])];
const pdf = await writePdf(two, INFO, source);

describe('writePdf', () => {
  it('is sound to qpdf, with pages of the sheets’ own sizes', () => {
    expect(checkByQpdf(pdf)).toContain('No syntax or stream encoding errors found');
    const pages = wordsByPoppler(pdf);
    expect(pages.map(({ width, height }) => [width, height])).toEqual([
      [expect.closeTo(594, 3), expect.closeTo(420, 3)],
      [expect.closeTo(36 * 25.4, 3), expect.closeTo(24 * 25.4, 3)],
    ]);
  });

  it('prints a bar of 100 mm as 100.000 mm, and a metre of the model as 20 mm at 1:50 and 10 mm at 1:100', () => {
    const paths = traceByMutool(pdf);
    const spans = paths.map(({ points }) => {
      const xs = points.map(([x]) => x);
      return Math.max(...xs) - Math.min(...xs);
    });
    const bar = paths.findIndex(({ points: [first] }) => first && near(first, [40, 420 - 40]));
    expect(spans[bar]).toBeCloseTo(100, 3);
    // The slab of the demonstration view, 6800 mm, in both its scales.
    const spansNear = (mm: number) => spans.filter((s) => Math.abs(s - mm) < 1e-3).length;
    expect(spansNear(6800 / 50)).toBeGreaterThan(0);
    expect(spansNear(6800 / 100)).toBeGreaterThan(0);
    const weights = new Set(paths.filter((p) => p.kind === 'stroke').map((p) => Math.round(p.width * 100)));
    for (const weight of [13, 18, 25, 50, 70]) expect(weights).toContain(weight);
  });

  it('has its texts where they are laid out, as wide as they are laid out', () => {
    const [page] = wordsByPoppler(pdf);
    const words = page?.words ?? [];
    const exactly = words.find((w) => w.text === 'exactly');
    expect(exactly?.left).toBeCloseTo(40, 2);
    expect((exactly?.right ?? 0) - 40).toBeCloseTo(textWidth('exactly', 3.5), 2);
    // The baseline lies within the word's box, 0.759 and 0.241 of whose height are over and under it in this font.
    const baseline = 420 - 48;
    expect(exactly?.top).toBeLessThan(baseline - 3.5);
    expect(exactly?.bottom).toBeGreaterThan(baseline);
    for (const told of ['12345', formatLength(6000, 'metric'), 'A2', 'DH-001', '2026-05-04'])
      expect(
        words.map((w) => w.text),
        told,
      ).toContain(told);
    for (const { left, right, top, bottom, text } of words)
      expect(left > 10 && right < 594 && top > 0 && bottom < 420, text).toBe(true);
  });

  it('says in words whose it is, with the date of its description, or none', async () => {
    const info = infoByPoppler(pdf);
    expect(info).toMatchObject({ Title: INFO.title, Author: INFO.author, Subject: INFO.subject, Pages: '2' });
    expect(info.CreationDate).toContain('May');
    expect(info.CreationDate).toContain('2026');
    const undated = infoByPoppler(await writePdf([demoSheet()], { ...INFO, date: null }, source));
    expect(undated.CreationDate ?? '').toBe('');
    expect(undated.ModDate ?? '').toBe('');
  });

  it('has bookmarks for sheets and their views', () => {
    expect(outlineByMutool(pdf)).toEqual(
      expect.arrayContaining(['1 All kinds of marks', '2 Again', 'Demonstration section']),
    );
  });

  it('gives the same bytes again, and after another one', async () => {
    expect(await writePdf(two, INFO, source)).toEqual(pdf);
    await writePdf([demoSheet()], { ...INFO, date: null }, source);
    expect(await writePdf(two, INFO, source)).toEqual(pdf);
  });

  it('shows a letter of every kind that it may be asked for, and a box for the others', async () => {
    const hard = 'Größe Łódź Ελλάδα Москва Ø½ 漢字 שלום مرحبا 🏠 a\u0301 ﬁ end';
    const sheet = demoSheet({ project: hard });
    const bytes = await writePdf([sheet], { ...INFO, title: hard }, source);
    checkByQpdf(bytes);
    const words = wordsByPoppler(bytes)[0]?.words.map((w) => w.text) ?? [];
    for (const word of ['Größe', 'Łódź', 'Ελλάδα', 'Москва', 'á', 'end']) expect(words).toContain(word);
    expect(words).toContain(MISSING_LETTER.repeat(4));
    expect(infoByPoppler(bytes).Title).toBe(hard);
  });

  it('lets no text end where it stands and go on as something to be run', async () => {
    const hard = ') /OpenAction << /S /JavaScript /JS (app.alert(1)) >> (\\';
    const sheet = demoSheet({ project: hard, title: hard });
    const bytes = await writePdf([sheet], { ...INFO, title: hard, author: hard, subject: hard }, source);
    checkByQpdf(bytes);
    expect(infoByPoppler(bytes)).toMatchObject({ Title: hard, Author: hard, Subject: hard, JavaScript: 'no' });
    expect(outlineByMutool(bytes)[0]).toBe(`1 ${hard}`);
  });

  it('refuses another font, a set without sheets and an unsound sheet', async () => {
    const bold = readFileSync('node_modules/dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf');
    const other: PdfSource = { ...source, font: new Uint8Array(bold) };
    await expect(writePdf([demoSheet()], INFO, other)).rejects.toThrow(/hand in DejaVu Sans/);
    await expect(writePdf([], INFO, source)).rejects.toThrow(/at least one sheet/);
    const lost = { ...demoSheet(), views: demoSheet().views.map((v) => ({ ...v, at: [-500, 0] as const })) };
    await expect(writePdf([lost], INFO, source)).rejects.toThrow(/reaches out of the frame of A2/);
  });
});

describe('the frame', () => {
  it.each(ISO_SHEETS)('of $name has its margins and centring marks', async (size) => {
    const bytes = await writePdf([{ ...demoSheet({}, size), views: [], paper: [] }], INFO, source);
    const frames = traceByMutool(bytes).filter((p) => Math.abs(p.width - 0.7) < 1e-6);
    const corners = frames.map(({ points }) => points.map((p) => p.map((v) => Math.round(v * 1e3) / 1e3).join()));
    // ISO 5457:1999: 20 mm at the filing edge, 10 mm at the others.
    const wanted = [
      '20,10',
      `${size.width - 10},10`,
      `${size.width - 10},${size.height - 10}`,
      `20,${size.height - 10}`,
    ];
    expect(corners.some((c) => wanted.every((w) => c.includes(w)))).toBe(true);
    expect(frames.filter((f) => f.points.length === 2)).toHaveLength(4);
    const words = new Set(
      sheetForm({ ...demoSheet({}, size), paper: [] }).map((p) => (p.kind === 'text' ? p.text : '')),
    );
    // Numbers of fields of 50 mm on the long and the short side: ISO 5457:1999, from memory.
    const [long, short] = { A3: ['8', 'F'], A2: ['12', 'H'], A1: ['16', 'M'], A0: ['24', 'R'] }[size.name] as string[];
    expect(words).toContain(long);
    expect(words).toContain(short);
    expect(words).not.toContain(String(Number(long) + 1));
    expect(words).not.toContain('I');
    expect(words).not.toContain('O');
  });
});

const near = (a: readonly [number, number], b: readonly [number, number]): boolean =>
  Math.hypot(a[0] - b[0], a[1] - b[1]) < 1e-3;

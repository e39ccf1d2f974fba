import { describe, expect, it } from 'vitest';
import { auditSheet, type Sheet, sheetName } from '../../lib/documents/sheet.js';
import { writeDxfSheet } from '../../lib/writers/dxf.js';
import { writePdf } from '../../lib/writers/pdf.js';
import { writeSvgSheet } from '../../lib/writers/svg.js';
import { demoSheet } from '../documents/demo-sheet.js';
import { lintDxf, tagsOf } from '../readers/dxf-lint.js';
import { measureAsRead, readByEzdxf } from '../readers/ezdxf.js';
import { dxfToPdf } from '../readers/librecad.js';
import { checkByQpdf } from '../readers/pdf.js';
import { covered, inkOf, trimmed } from '../readers/raster.js';
import { svgToPdf, titleByXmllint } from '../readers/svg.js';
import { nodePdf } from '../tools/pdf.js';

const source = await nodePdf();
const sheet = demoSheet();
const pdfOf = (s: Sheet) => writePdf([s], { title: 't', author: '', subject: '', date: null }, source);

describe('writeSvgSheet', () => {
  const svg = writeSvgSheet(sheet);

  it('is well formed to xmllint, of the sheet’s size, and says what it is', () => {
    expect(titleByXmllint(svg)).toBe(sheetName(sheet));
    const text = new TextDecoder().decode(svg);
    expect(text).toMatch(/^<svg [^>]*width="594mm" height="420mm" viewBox="0 0 594 420" role="img">/);
    expect(text).toContain('<desc>');
    expect(text.match(/ id="/g)?.length).toBe(new Set(text.match(/ id="[^"]*"/g)).size);
  });

  it('gives the same bytes again', () => expect(writeSvgSheet(sheet)).toEqual(svg));
});

describe('writeDxfSheet, read by ezdxf', () => {
  const dxf = writeDxfSheet(sheet);
  const read = readByEzdxf(dxf);

  it('passes the audit and our lint, in millimetres, and gives the same bytes again', () => {
    expect(read).toMatchObject({ version: 'AC1021', errors: [], fixes: [], units: 4 });
    expect(lintDxf(dxf)).toEqual([]);
    expect(writeDxfSheet(sheet)).toEqual(dxf);
  });

  it('has the first view at 1:1 in its own coordinates, with the paper round it', () => {
    // The sheet's corners, from where the first view's origin lies on it.
    expect(read.extents.flat()).toEqual([-150 * 50, -250 * 50, (594 - 150) * 50, (420 - 250) * 50]);
    expect(read.dimScale).toEqual([50, 50]);
    const [first] = sheet.views;
    const ours = (first as Sheet['views'][number]).view.primitives.flatMap((p) =>
      p.kind === 'dimension' ? [measureAsRead(p)] : [],
    );
    const measured = read.dimensions.filter((d) => d.style === 'OBLIQUE-50-MM').map((d) => d.measurement);
    expect(measured).toEqual(ours.map((m) => expect.closeTo(m, 6)));
  });

  it('enlarges a view at another scale in its place and still tells true measures', () => {
    const [, second] = sheet.views;
    const ours = (second as Sheet['views'][number]).view.primitives.flatMap((p) => (p.kind === 'dimension' ? [p] : []));
    const half = read.dimensions.filter((d) => d.style === 'OBLIQUE-50-MM-X0_5000');
    expect(half).toHaveLength(ours.length);
    half.forEach((d, i) => {
      const dim = ours[i] as (typeof ours)[number];
      const factor = dim.type === 'angle' || dim.type === 'arc' ? 1 : read.lengthFactors[d.style];
      expect(d.measurement * (factor as number)).toBeCloseTo(measureAsRead(dim), 6);
    });
  });

  it('has symbols as blocks, each defined once, turned where they are put', () => {
    expect(read.inserts).toEqual([{ name: 'FLAG', at: [(200 - 150) * 50, (60 - 250) * 50], rotation: 30 }]);
    expect(tagsOf(dxf).filter((t) => t.code === 2 && t.value === 'FLAG')).toHaveLength(3);
    const two: Sheet = { ...sheet, paper: [...sheet.paper, ...sheet.paper.filter((p) => p.kind === 'symbol')] };
    expect(readByEzdxf(writeDxfSheet(two)).inserts).toHaveLength(2);
  });

  it('keeps frame and title block on layers of their own', () => {
    expect(read.layers.frame?.weight).toBe(70);
    expect(read.texts.filter((t) => t.layer === 'form').map((t) => t.text)).toContain('Demonstration house');
  });
});

describe('one sheet in three formats', () => {
  it('looks the same as PDF, SVG and DXF', async () => {
    const dpi = 100;
    const pdf = inkOf(await pdfOf(sheet), dpi);
    const svg = inkOf(svgToPdf(writeSvgSheet(sheet)), dpi);
    expect([svg.width, svg.height]).toEqual([pdf.width, pdf.height]);
    // The reader of SVG kerns some letters all the same.
    expect(covered(pdf, svg, 1)).toBeGreaterThan(0.99);
    expect(covered(svg, pdf, 1)).toBeGreaterThan(0.99);
    // The reader of DXF has letters of its own, hatches a little closer, and redraws dimensions.
    const [paper, model] = [trimmed(pdf, 1500), trimmed(inkOf(dxfToPdf(writeDxfSheet(sheet)), 300), 1500)];
    expect(model.height / paper.height).toBeCloseTo(1, 2);
    expect(covered(model, paper, 2)).toBeGreaterThan(0.98);
    expect(covered(paper, model, 2)).toBeGreaterThan(0.928);
  }, 60_000);

  it('tells pictures apart that differ', async () => {
    const [first, second] = sheet.views as [Sheet['views'][number], Sheet['views'][number]];
    const moved: Sheet = { ...sheet, views: [{ ...first, at: [first.at[0] + 3, first.at[1]] }, second] };
    const [one, other] = [inkOf(await pdfOf(sheet), 100), inkOf(await pdfOf(moved), 100)];
    expect(covered(one, other, 1)).toBeLessThan(0.95);
  });
});

describe('titles that could break a file', () => {
  const HARD: readonly (readonly [string, string])[] = [
    ['lines and controls', 'two\nlines\tand\u0000\u0007 controls\u2028and\u0085ends'],
    ['markup', '</text></svg><script>alert("x")</script>&amp; <b>%%u \\U+0041 ^J {\\H5;x}'],
    ['right to left', 'שלום \u202eevil\u202c مرحبا'],
    ['missing glyphs', '漢字かな 한글 🏠 \u{10ffff} \ud800'],
    ['200 characters', 'A title that goes on and on '.repeat(8).slice(0, 200)],
    ['200 characters without a space', 'W'.repeat(200)],
    ['nothing', ''],
    ['parentheses and backslashes', '(((\\ )\\'],
  ];

  it.each(HARD)('%s', async (_, title) => {
    const bad = demoSheet({ project: title, title, address: title, owner: title, creator: title, number: title });
    expect(auditSheet(bad)).toEqual([]);
    checkByQpdf(await pdfOf(bad));
    const svg = writeSvgSheet(bad);
    expect(titleByXmllint(svg)).toContain('(sheet 1 of 2)');
    expect(new TextDecoder().decode(svg)).not.toContain('<script');
    const dxf = writeDxfSheet(bad);
    expect(lintDxf(dxf)).toEqual([]);
    expect(readByEzdxf(dxf)).toMatchObject({ errors: [], fixes: [] });
  });
});

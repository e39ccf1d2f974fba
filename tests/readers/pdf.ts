import { convertWith, inFolder, readWith, runReader } from './run.js';

const pdfFile = (bytes: Uint8Array) => ({ name: 'set.pdf', bytes });
const POINTS = 72 / 25.4;

/** Has qpdf (Debian) look through the structure of a PDF; its trouble is thrown. */
export function checkByQpdf(pdf: Uint8Array): string {
  return readWith({ command: 'qpdf', args: ['--check'], debianPackage: 'qpdf' }, pdfFile(pdf));
}

export interface TracedPath {
  readonly kind: 'stroke' | 'fill';
  /** Millimetres of paper. */
  readonly width: number;
  /** Ends of its pieces, millimetres from the upper left corner, in the order of drawing. */
  readonly points: readonly (readonly [number, number])[];
  /** The same with the ends of curves. */
  readonly ends: readonly (readonly [number, number])[];
}

/** What mutool (Debian's mupdf-tools) draws of one page: paths, in paper millimetres. */
export function traceByMutool(pdf: Uint8Array, page = 1): TracedPath[] {
  const program = {
    command: 'mutool',
    debianPackage: 'mupdf-tools',
    args: (input: string, output: string) => ['draw', '-q', '-F', 'trace', '-o', output, input, String(page)],
  };
  const trace = new TextDecoder().decode(convertWith(program, pdfFile(pdf), 'trace.xml'));
  return [...trace.matchAll(/<(stroke|fill)_path ([^>]*)>([\s\S]*?)<\/\1_path>/g)].map(([, kind, head, body]) => {
    const numbers = (/transform="([^"]*)"/.exec(head as string)?.[1] ?? '').split(' ').map(Number);
    const [a, b, c, d, e, f] = numbers as [number, number, number, number, number, number];
    const at = (x: number, y: number) => [(a * x + c * y + e) / POINTS, (b * x + d * y + f) / POINTS] as const;
    const width = Number(/linewidth="([^"]*)"/.exec(head as string)?.[1] ?? 0) / POINTS;
    const points = [...(body as string).matchAll(/<(?:moveto|lineto) x="([^"]*)" y="([^"]*)"/g)].map(([, x, y]) =>
      at(Number(x), Number(y)),
    );
    const ends = [
      ...(body as string).matchAll(
        /<(?:moveto|lineto) x="([^"]*)" y="([^"]*)"|<curveto [^>]*x3="([^"]*)" y3="([^"]*)"/g,
      ),
    ].map(([, x, y, x3, y3]) => at(Number(x ?? x3), Number(y ?? y3)));
    return { kind: kind as 'stroke' | 'fill', width, points, ends };
  });
}

export interface FoundWord {
  readonly text: string;
  /** Millimetres from the page's upper left corner. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface FoundPage {
  readonly width: number;
  readonly height: number;
  readonly words: readonly FoundWord[];
}

const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

/** Pages and words with their places, found by pdftotext (Debian's poppler-utils). */
export function wordsByPoppler(pdf: Uint8Array): FoundPage[] {
  const program = {
    command: 'pdftotext',
    debianPackage: 'poppler-utils',
    args: (input: string, output: string) => ['-bbox', input, output],
  };
  const html = new TextDecoder().decode(convertWith(program, pdfFile(pdf), 'words.html'));
  return [...html.matchAll(/<page width="([\d.]+)" height="([\d.]+)">([\s\S]*?)<\/page>/g)].map(([, w, h, body]) => ({
    width: Number(w) / POINTS,
    height: Number(h) / POINTS,
    words: [
      ...(body as string).matchAll(
        /<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)<\/word>/g,
      ),
    ].map(([, left, top, right, bottom, text]) => ({
      text: (text as string).replace(/&(amp|lt|gt|quot|#39);/g, (_, name) => ENTITIES[name] as string),
      left: Number(left) / POINTS,
      right: Number(right) / POINTS,
      top: Number(top) / POINTS,
      bottom: Number(bottom) / POINTS,
    })),
  }));
}

/** What pdfinfo (Debian's poppler-utils) tells of a PDF, by name. */
export function infoByPoppler(pdf: Uint8Array): Readonly<Record<string, string>> {
  const told = readWith({ command: 'pdfinfo', args: ['-enc', 'UTF-8'], debianPackage: 'poppler-utils' }, pdfFile(pdf));
  return Object.fromEntries(
    told
      .split('\n')
      .filter((line) => line.includes(':'))
      .map((line) => [line.slice(0, line.indexOf(':')), line.slice(line.indexOf(':') + 1).trim()]),
  );
}

/** Titles of the bookmarks that mutool (Debian's mupdf-tools) finds in a PDF, in their order. */
export function outlineByMutool(pdf: Uint8Array): string[] {
  const told = inFolder(
    pdfFile(pdf),
    (path) => runReader({ command: 'mutool', debianPackage: 'mupdf-tools' }, ['show', path, 'outline'], path).stdout,
  );
  return told.split('\n').flatMap((line) => /^\W*"(.*)"\t/.exec(line)?.[1]?.replaceAll('\\\\', '\\') ?? []);
}

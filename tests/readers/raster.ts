import { convertWith } from './run.js';

/** Ink on a grid: true where a pixel is darker than half. */
export interface Ink {
  readonly width: number;
  readonly height: number;
  readonly dark: Uint8Array;
}

/** The first page of a PDF as pdftoppm (Debian's poppler-utils) draws it. */
export function inkOf(pdf: Uint8Array, dpi: number): Ink {
  const program = {
    command: 'pdftoppm',
    debianPackage: 'poppler-utils',
    args: (input: string, output: string) => [
      '-gray',
      '-singlefile',
      '-r',
      String(dpi),
      input,
      output.replace(/\.pgm$/, ''),
    ],
  };
  const pgm = convertWith(program, { name: 'in.pdf', bytes: pdf }, 'page.pgm');
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(new TextDecoder('latin1').decode(pgm.subarray(0, 40)));
  if (!head) throw new Error('pdftoppm gave no grey picture.');
  const [width, height] = [Number(head[1]), Number(head[2])];
  const grey = pgm.subarray(head[0].length);
  return { width, height, dark: Uint8Array.from(grey.subarray(0, width * height), (v) => (v < 160 ? 1 : 0)) };
}

/** The part of a picture that holds ink, brought to a width; each pixel is dark where any of its part is. */
export function trimmed(ink: Ink, width: number): Ink {
  let [left, right, top, bottom] = [ink.width, -1, ink.height, -1];
  for (let y = 0; y < ink.height; y++) {
    for (let x = 0; x < ink.width; x++) {
      if (!ink.dark[y * ink.width + x]) continue;
      [left, right] = [Math.min(left, x), Math.max(right, x)];
      [top, bottom] = [Math.min(top, y), Math.max(bottom, y)];
    }
  }
  const by = width / (right - left + 1);
  const height = Math.round((bottom - top + 1) * by);
  const dark = new Uint8Array(width * height);
  for (let y = top; y <= bottom; y++) {
    for (let x = left; x <= right; x++) {
      if (!ink.dark[y * ink.width + x]) continue;
      const [u, v] = [Math.floor((x - left) * by), Math.min(height - 1, Math.floor((y - top) * by))];
      dark[v * width + u] = 1;
    }
  }
  return { width, height, dark };
}

/** Share of the ink of one picture that has ink of the other within `reach` pixels. */
export function covered(one: Ink, other: Ink, reach: number): number {
  let [ink, near] = [0, 0];
  for (let y = 0; y < one.height; y++) {
    for (let x = 0; x < one.width; x++) {
      if (!one.dark[y * one.width + x]) continue;
      ink++;
      if (hasInk(other, x, y, reach)) near++;
    }
  }
  return ink === 0 ? 1 : near / ink;
}

function hasInk(ink: Ink, x: number, y: number, reach: number): boolean {
  for (let v = Math.max(0, y - reach); v <= Math.min(ink.height - 1, y + reach); v++)
    for (let u = Math.max(0, x - reach); u <= Math.min(ink.width - 1, x + reach); u++)
      if (ink.dark[v * ink.width + u]) return true;
  return false;
}

/** A PNG as MuPDF (Debian's mupdf-tools) reads it: its size, and the red, green and blue of each pixel. */
export function pixelsOf(png: Uint8Array): {
  readonly width: number;
  readonly height: number;
  readonly at: (x: number, y: number) => readonly [number, number, number];
} {
  const program = {
    command: 'mutool',
    debianPackage: 'mupdf-tools',
    // A picture's page is as large as its pixels at 96 to the inch.
    args: (input: string, output: string) => ['draw', '-q', '-A', '0', '-c', 'rgb', '-r', '96', '-o', output, input],
  };
  const ppm = convertWith(program, { name: 'in.png', bytes: png }, 'picture.ppm');
  const head = /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(new TextDecoder('latin1').decode(ppm.subarray(0, 40)));
  if (!head) throw new Error('mutool gave no picture.');
  const [width, height] = [Number(head[1]), Number(head[2])];
  const start = head[0].length;
  return {
    width,
    height,
    at: (x, y) => {
      const k = start + 3 * (y * width + x);
      return [ppm[k] as number, ppm[k + 1] as number, ppm[k + 2] as number];
    },
  };
}

import { escaped } from '../markup.js';

/** To a ten-thousandth of a millimetre, without trailing zeros. */
export function number(value: number): string {
  const rounded = Math.round(value * 1e4) / 1e4;
  return String(rounded === 0 ? 0 : rounded);
}

/** A picture that stands alone: paper of this size, a title and a description for those who can't see it. */
export function svgDocument(
  size: readonly [width: number, height: number],
  words: { readonly title: string; readonly description: string },
  content: readonly string[],
): Uint8Array {
  const [width, height] = size.map(number);
  const lines = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img">`,
    `<title>${escaped(words.title)}</title>`,
    `<desc>${escaped(words.description)}</desc>`,
    '<g fill="none" stroke="#000" stroke-linecap="butt" stroke-linejoin="round" font-family="DejaVu Sans, Verdana, sans-serif" style="font-kerning:none" xml:space="preserve">',
    ...content,
    '</g>',
    '</svg>',
    '',
  ];
  return new TextEncoder().encode(lines.join('\n'));
}

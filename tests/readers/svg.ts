import { convertWith, readWith } from './run.js';

const svgFile = (bytes: Uint8Array) => ({ name: 'sheet.svg', bytes });

/** Has xmllint (Debian's libxml2-utils) read an SVG; what isn't well formed is thrown. Returns titles of the root. */
export function titleByXmllint(svg: Uint8Array): string {
  const path = "string(/*[local-name()='svg']/*[local-name()='title'])";
  const program = { command: 'xmllint', debianPackage: 'libxml2-utils', args: ['--nonet', '--xpath', path] };
  return readWith(program, svgFile(svg)).replace(/\n$/, '');
}

/** An SVG drawn by rsvg-convert (Debian's librsvg2-bin), as PDF. */
export const svgToPdf = (svg: Uint8Array): Uint8Array =>
  convertWith(
    {
      command: 'rsvg-convert',
      debianPackage: 'librsvg2-bin',
      args: (input, output) => ['--format', 'pdf', '--output', output, input],
    },
    svgFile(svg),
    'sheet.pdf',
  );

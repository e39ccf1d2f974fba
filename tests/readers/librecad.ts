import { dirname } from 'node:path';
import { convertWith } from './run.js';

/** A DXF drawn by librecad (Debian), fitted to one page of PDF. It is stopped after a while: bad files can hang it. */
export const dxfToPdf = (dxf: Uint8Array): Uint8Array =>
  convertWith(
    {
      command: 'librecad',
      debianPackage: 'librecad',
      env: { QT_QPA_PLATFORM: 'offscreen', LC_ALL: 'C' },
      args: (input, output) => ['dxf2pdf', '-a', '-m', '-t', dirname(output), input],
    },
    { name: 'sheet.dxf', bytes: dxf },
    'sheet.pdf',
  );

import { z } from 'zod';
import type { Leaves } from './leaves.js';

/** Sheets of a permit set, in their order. */
export const SHEET_KINDS = [
  'cover',
  'site',
  'plan',
  'footing',
  'roof',
  'elevations',
  'sections',
  'openings',
  'courses',
  'details',
  'structure',
  'laying',
] as const;

/** Sizes of sheets: ISO 216, then those of US building drawings. */
const SHEET_NAMES = ['A3', 'A2', 'A1', 'A0', 'ANSI B', 'ARCH C', 'ARCH D', 'ARCH E'] as const;

export const drawingsSchema = (q: Leaves) =>
  z
    .strictObject({
      sheet: z
        .enum(SHEET_NAMES)
        .optional()
        .meta({
          description: 'Size of every sheet.',
          leaf: { kind: 'text', defaultText: 'the smallest that holds every view at 1:50, or 1/4" to a foot' },
        }),
      scale: q
        .number('Scale of plans, elevations and sections: 50 stands for 1:50.', {
          least: 10,
          most: 1000,
          defaultText: 'the largest standard one at which every view fits its sheet',
        })
        .optional(),
      sheets: z
        .array(z.enum(SHEET_KINDS).meta({ description: 'A kind of sheet.' }))
        .min(1)
        .max(SHEET_KINDS.length)
        .optional()
        .meta({
          description:
            'Which sheets to draw; all when missing. What a house has nothing for, such as a site without plot, is left out.',
        }),
    })
    .meta({ description: 'Sheets of the drawings.' });

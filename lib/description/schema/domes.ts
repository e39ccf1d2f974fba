import { z } from 'zod';
import type { Leaves } from './leaves.js';
import { placeSchema } from './site.js';

export const PROFILE_SHAPES = ['hemisphere', 'segmental', 'pointed', 'catenary', 'elliptical'] as const;

export const domeSchema = (q: Leaves) =>
  z
    .strictObject({
      id: q.id('Name of the dome, in marks and file names.'),
      at: placeSchema(q).prefault([0, 0]).meta({ description: 'East and north of the dome’s axis from the origin.' }),
      radius: q.length('Inside radius at the springing.', { least: 400, most: 20_000 }),
      profile: z
        .union([
          z.enum(PROFILE_SHAPES),
          z.strictObject({
            shape: z.enum(PROFILE_SHAPES).meta({ description: 'Shape of the meridian.' }),
            rise: q
              .length('Inside, springing to crown.', {
                least: 50,
                most: 80_000,
                defaultText:
                  'hemisphere and catenary: radius; segmental: radius/2; pointed: radius·√3; elliptical: radius·3/4',
              })
              .optional(),
          }),
        ])
        .prefault('hemisphere')
        .meta({ description: 'Shape of the meridian, or shape and rise.' }),
      'stem-wall': q
        .length('Height of the upright wall under the springing; 0 for none.', { least: 0, most: 6000 })
        .prefault(0),
      oculus: z
        .strictObject({
          radius: q.length('Clear inside the curb.', { least: 50, most: 5000 }),
          curb: q
            .length('Width of the curb’s ring at the intrados; its leaning bed makes it wider at the extrados.', {
              least: 30,
              most: 1000,
            })
            .prefault('150 mm'),
          upstand: q
            .length('Height of the curb’s level top above the extrados prolonged to the clear radius.', {
              least: 0,
              most: 2000,
            })
            .prefault('50 mm'),
        })
        .optional()
        .meta({ description: 'Round crown opening with its curb.' }),
    })
    .meta({ description: 'One dome.' });

import { z } from 'zod';
import type { Leaves } from './leaves.js';
import { placeSchema } from './site.js';

export const partitionSchema = (q: Leaves) =>
  z
    .strictObject({
      in: q.id('Id of its dome.'),
      from: placeSchema(q).meta({ description: 'East and north of one end of its centre line.' }),
      to: placeSchema(q).meta({ description: 'East and north of the other end.' }),
      thickness: q.length('Thickness.', { least: 20, most: 500 }).prefault('100 mm'),
      height: q
        .length('Height above the floor; the dome cuts off what would stand out of it.', {
          least: 300,
          most: 20_000,
          defaultText: 'up to the dome',
        })
        .optional(),
      door: z
        .strictObject({
          at: q.length('Distance of its middle from the end `from`.', { least: 0, most: 100_000 }),
          width: q.length('Clear width.', { least: 300, most: 3000 }).prefault('800 mm'),
          height: q.length('Clear height above the floor.', { least: 1000, most: 4000 }).prefault('2000 mm'),
        })
        .optional()
        .meta({ description: 'A door in it.' }),
    })
    .meta({
      description:
        'A straight wall within a room, which carries nothing. Where two run into each other, the one written first goes through.',
    });

import { z } from 'zod';
import type { Leaves } from './leaves.js';
import { placeSchema } from './site.js';

export const HEAD_SHAPES = ['semicircular', 'segmental', 'pointed', 'flat'] as const;
const OPENING_USES = ['door', 'window', 'egress window', 'vent', 'niche'] as const;
const ROOM_USES = ['habitable', 'kitchen', 'bath', 'storage', 'other'] as const;

const headSchema = (q: Leaves) =>
  z
    .union([
      z.enum(HEAD_SHAPES),
      z.strictObject({
        shape: z.enum(HEAD_SHAPES).meta({ description: 'Shape of the head.' }),
        rise: q
          .length('From the head’s springing to its crown, on the intrados.', {
            least: 0,
            most: 10_000,
            defaultText: 'semicircular: width/2; segmental: width/4; pointed: width·√3/2; flat: 0',
          })
          .optional(),
      }),
    ])
    .prefault('semicircular')
    .meta({ description: 'Shape of the head, or shape and rise.' });

const ring = (q: Leaves) =>
  q.length('Thickness of ring and jambs, measured in the face.', { least: 50, most: 1000 }).prefault('200 mm');

const archSchema = (q: Leaves) =>
  z
    .strictObject({
      ring: ring(q),
      face: z
        .union([
          z.literal('flush'),
          q.length('How far the flat face stands beyond the extrados at the springing.', { least: 0, most: 5000 }),
        ])
        .optional()
        .meta({
          description: 'How far the flat face stands beyond the extrados at the springing, or `flush`: no barrel.',
          leaf: { kind: 'length', least: 0, most: 5000, defaultText: 'door: 300 mm; all others: flush' },
        }),
      'made-as': z
        .enum(['cast', 'voussoirs'])
        .prefault('cast')
        .meta({ description: 'Ring cast in one, or laid of voussoirs.' }),
      voussoirs: q
        .count('Number of voussoirs of the ring, odd.', { least: 3, most: 99, defaultText: '9 when made as voussoirs' })
        .optional(),
    })
    .prefault({})
    .meta({ description: 'Ring and barrel of the opening.' });

export const openingSchema = (q: Leaves) =>
  z
    .strictObject({
      id: q.id('Name of the opening.'),
      in: q.id('Id of its dome.'),
      bearing: q.bearing('Bearing of its middle from the dome’s axis, clockwise from project north.'),
      use: z.enum(OPENING_USES).prefault('window').meta({ description: 'What the opening is for.' }),
      width: q.length('Clear width between jambs.', { least: 50, most: 10_000 }),
      height: q.length('From the sill to the crown of the head’s intrados.', { least: 50, most: 10_000 }),
      sill: q
        .length('Height of the sill above the finished floor.', {
          least: 0,
          most: 20_000,
          defaultText: 'door: 0; all others: 900 mm',
        })
        .optional(),
      head: headSchema(q),
      arch: archSchema(q),
      frame: q.length('Width of the frame’s face in the clear opening.', { least: 0, most: 500 }).prefault('50 mm'),
      depth: q.length('Depth of a niche from the intrados outward.', { least: 20, most: 5000 }).optional(),
    })
    .meta({ description: 'One opening in the wall of a dome.' });

export const passageSchema = (q: Leaves) =>
  z
    .strictObject({
      id: q.id('Name of the passage.'),
      between: z
        .tuple([q.id('Id of a dome.'), q.id('Id of the other dome.')])
        .meta({ description: 'Ids of the two domes that it joins.' }),
      width: q.length('Clear width.', { least: 300, most: 10_000 }),
      height: q.length('From the floor to the crown of the intrados.', { least: 300, most: 10_000 }),
      head: headSchema(q),
      ring: ring(q),
    })
    .meta({ description: 'A vault between two domes.' });

export const roomSchema = (q: Leaves) =>
  z
    .strictObject({
      id: q.id('Name of the room.'),
      in: q.id('Id of its dome.'),
      use: z.enum(ROOM_USES).prefault('habitable').meta({ description: 'What the room is used for.' }),
      name: q.text('The room’s name on drawings.', 'its id').optional(),
      at: placeSchema(q).optional().meta({
        description:
          'East and north of a place in it. The room is the part of its dome that partitions close off round that place; without it, the whole dome.',
      }),
    })
    .meta({ description: 'The room in a dome.' });

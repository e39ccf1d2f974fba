import { z } from 'zod';
import type { Leaves } from './leaves.js';

const HEAVY = { least: 300, most: 2600 };

export const materialSchema = (q: Leaves) =>
  z
    .strictObject({
      'dry-density': q
        .quantity('density', 'Dry density of the block.', { least: 300, most: 1800 })
        .prefault('600 kg/m3'),
      'compressive-strength': q
        .quantity('pressure', 'Mean compressive strength found on test cubes.', { least: 50, most: 200_000 })
        .optional(),
      'mortar-density': q.quantity('density', 'Density of the set mortar.', HEAVY).prefault('1900 kg/m3'),
      'mortar-strength': q
        .quantity('pressure', 'Compressive strength of the set mortar.', { least: 200, most: 30_000 })
        .prefault('2.5 MPa'),
      'render-density': q.quantity('density', 'Density of the dry render.', HEAVY).prefault('1900 kg/m3'),
      'concrete-density': q
        .quantity('density', 'Density of the footing’s concrete.', { least: 1000, most: 3000 })
        .prefault('2400 kg/m3'),
      'partial-factor': q
        .number('Characteristic over design strength of the masonry.', { least: 1, most: 10 })
        .prefault(3),
      friction: q.number('Friction that may be counted on in a bed joint.', { least: 0, most: 1 }).prefault(0.4),
      'wet-density': q
        .quantity('density', 'Density that the fresh mix is cast to.', {
          least: 100,
          most: 3000,
          defaultText: 'what dries to dry-density, by absolute volumes',
        })
        .optional(),
      'water-cement': q.number('Water to cement by mass.', { least: 0.2, most: 1.5 }).prefault(0.5),
      'sand-cement': q.number('Sand to cement by mass.', { least: 0, most: 6 }).prefault(0),
      'foam-density': q
        .quantity('density', 'Density of the foam as it leaves its generator.', { least: 20, most: 200 })
        .prefault('50 kg/m3'),
      'foam-concentrate': q
        .quantity('fraction', 'Concentrate in the liquid that is foamed, by volume.', { least: 0.001, most: 1 })
        .prefault('2.5 %'),
      'cement-bag': q.quantity('mass', 'Cement in one bag.', { least: 1, most: 2000 }).prefault('25 kg'),
    })
    .meta({ description: 'What the blocks are cast of.' });

export const castingSchema = (q: Leaves) => {
  const days = { least: 0, most: 365 };
  return z
    .strictObject({
      mixer: q.quantity('flow', 'What the mixer delivers.', { least: 0.1, most: 10_000 }).optional(),
      batch: q.quantity('volume', 'Fresh mix of one batch.', { least: 1, most: 10_000 }).prefault('100 L'),
      bucket: q
        .quantity('volume', 'Vessel in which the fresh mix is weighed, brimful.', { least: 0.5, most: 200 })
        .prefault('10 L'),
      'measured-wet-density': q
        .quantity('density', 'Density of the last batch, from the weighed bucket.', { least: 50, most: 3000 })
        .optional(),
      waste: q
        .quantity('fraction', 'Mix, mortar, concrete, render and sheets lost on site.', { least: 0, most: 0.5 })
        .prefault('5 %'),
      crew: q.count('People who cast.', { least: 1, most: 100 }).prefault(2),
      'hours-per-day': q.number('Hours of a working day.', { least: 0.5, most: 24 }).prefault(8),
      'minutes-per-block': q
        .number('One person’s minutes for a block: fill, strike off, demould, clean, oil, carry.', {
          least: 0.1,
          most: 480,
        })
        .prefault(6),
      demould: q.quantity('duration', 'From casting to taking a block out of its mould.', days).prefault('1 day'),
      'ready-to-lay': q.quantity('duration', 'From casting to laying.', days).prefault('28 days'),
      'bed-boards': z
        .enum(['loose', 'fixed'])
        .prefault('loose')
        .meta({ description: 'Bed boards of a mould: taken off before the block is drawn out, or one with the form.' }),
      'arch-strike': q.quantity('duration', 'From laying an arch to striking its centering.', days).prefault('14 days'),
      'courses-per-day': q.number('Courses laid in a day.', { least: 0.05, most: 50 }).prefault(1),
      'target-days': q.number('Days in which all blocks are to be cast.', { least: 1, most: 3650 }).optional(),
    })
    .meta({ description: 'Times of casting and laying.' });
};

export const settingOutSchema = (q: Leaves) => {
  const bounds = { least: -1e6, most: 1e6 };
  const peg = () =>
    z
      .tuple([q.length('East of the origin.', bounds), q.length('North of the origin.', bounds)])
      .meta({ description: 'East and north of the origin.' });
  return z
    .strictObject({
      pegs: z.tuple([peg(), peg()]).optional().meta({
        description: 'The two datum pegs that every other peg is taped from; outside the house when missing.',
      }),
      board: q.length('Longest board for templates and ribs.', { least: 500, most: 12_000 }).prefault('2.4 m'),
    })
    .meta({ description: 'Pegs and templates of the setting out.' });
};

export const centeringSchema = (q: Leaves) =>
  z
    .strictObject({
      'rib-spacing': q.length('Greatest distance between ribs.', { least: 50, most: 3000 }).prefault('500 mm'),
      lagging: q.length('Thickness of the lagging strips.', { least: 1, most: 100 }).prefault('20 mm'),
      'lagging-width': q.length('Width of a lagging strip.', { least: 10, most: 500 }).prefault('50 mm'),
      tube: q.length('Outside diameter of tube for bent ribs.', { least: 5, most: 200 }).prefault('27 mm'),
    })
    .meta({ description: 'Temporary support of arches and passages.' });

const layerSchema = (q: Leaves) =>
  z
    .strictObject({
      name: q.text('What the layer is.'),
      thickness: q.length('Its thickness.', { least: 0.1, most: 2000 }),
      conductivity: q.number('Its conductivity, W/(m K).', { least: 0.005, most: 500 }),
    })
    .meta({ description: 'One layer.' });

export const warmthSchema = (q: Leaves) => {
  const layers = (about: string) => z.array(layerSchema(q)).max(12).prefault([]).meta({ description: about });
  const conductivity = { least: 0.005, most: 500 };
  const transmittance = { least: 0.05, most: 20 };
  return z
    .strictObject({
      conductivity: q
        .number('Conductivity of the dry block, W/(m K).', {
          ...conductivity,
          defaultText: 'from the dry density',
        })
        .optional(),
      'moisture-factor': q
        .number('Conductivity of the block in use over that of the dry one.', { least: 1, most: 6 })
        .prefault(1.2),
      'render-conductivity': q.number('Conductivity of both renders, W/(m K).', conductivity).prefault(0.87),
      'slab-conductivity': q.number('Conductivity of the slab, W/(m K).', conductivity).prefault(2),
      'ground-conductivity': q.number('Conductivity of the ground, W/(m K).', conductivity).prefault(2),
      'outside-layers': layers('Layers between the extrados and its render, the inner one first.'),
      'inside-layers': layers('Layers between the intrados and its render, the outer one first.'),
      'floor-layers': layers('Layers above or under the slab.'),
      window: q.number('Transmittance of windows and vents, W/(m2 K).', transmittance).prefault(1.4),
      door: q.number('Transmittance of doors, W/(m2 K).', transmittance).prefault(1.8),
      'air-changes': q.number('Changes of the rooms’ air in an hour.', { least: 0, most: 20 }).prefault(0.5),
    })
    .meta({ description: 'What the house loses of its warmth.' });
};

/** Words for where the printed roof comes off. */
const PRINT_ROOFS = ['above openings', 'fixed'] as const;

export const printSchema = (q: Leaves) => {
  const side = { least: 20, most: 5000 };
  return z
    .strictObject({
      scale: q.number('50 stands for 1:50.', { least: 1, most: 1000 }).prefault(50),
      bed: z
        .tuple([
          q.millimetres('Width of the bed.', side),
          q.millimetres('Depth of the bed.', side),
          q.millimetres('Height above the bed.', side),
        ])
        .prefault([220, 220, 250])
        .meta({ description: 'Sizes of the printer; bare numbers are mm in any file.' }),
      thinnest: q
        .millimetres('Thinnest wall that the printer makes; a bare number is mm in any file.', {
          least: 0.05,
          most: 20,
        })
        .prefault('1.2 mm'),
      nozzle: q
        .millimetres('Width of the line that the printer lays; a bare number is mm in any file.', {
          least: 0.05,
          most: 5,
        })
        .prefault('0.4 mm'),
      clearance: q
        .millimetres('Room left round a peg in its socket; a bare number is mm in any file.', { least: 0, most: 2 })
        .prefault('0.15 mm'),
      roof: z
        .union([z.enum(PRINT_ROOFS), q.length('Height above the floor.', { least: 0, most: 80000 })])
        .prefault('above openings')
        .meta({
          description:
            'Where the roof of each dome is taken off: at the first bed `above openings`, at the first bed above that and a height, or `fixed`: not at all.',
        }),
      'loose-blocks': z
        .strictObject({
          in: q.id('Id of the dome.'),
          course: q.count('Course counted from the floor.', { least: 1, most: 1000 }),
        })
        .optional()
        .meta({ description: 'The blocks of one course, printed one by one to be laid by hand.' }),
    })
    .meta({ description: 'The printed scale model.' });
};

export const PRICE_UNITS = [
  'kg',
  'g',
  't',
  'lb',
  'L',
  'gal',
  'm3',
  'ft3',
  'yd3',
  'm2',
  'ft2',
  'm',
  'ft',
  'h',
  'day',
  'each',
] as const;

export const pricesSchema = (q: Leaves) =>
  z
    .record(
      z.string(),
      z
        .union([
          z.string(),
          z.strictObject({
            per: q.text(`Amount and unit that the price is for: ${PRICE_UNITS.join(', ')}.`),
            price: q.number('Price of that amount.', { least: 0, most: 1e9 }),
          }),
        ])
        .meta({ description: 'Under `currency` its three letters, under any other name the price of that item.' }),
    )
    .meta({ description: '`currency` and a price for each item, such as `cement: { per: 25 kg, price: 6.20 }`.' });

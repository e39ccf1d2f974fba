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
      'water-cement': q.number('Water to cement by mass.', { least: 0.2, most: 1.5 }).prefault(0.5),
    })
    .meta({ description: 'What the blocks are cast of.' });

export const castingSchema = (q: Leaves) => {
  const days = { least: 0, most: 365 };
  return z
    .strictObject({
      mixer: q.quantity('flow', 'What the mixer delivers.', { least: 0.1, most: 10_000 }).optional(),
      demould: q.quantity('duration', 'From casting to taking a block out of its mould.', days).prefault('1 day'),
      'ready-to-lay': q.quantity('duration', 'From casting to laying.', days).prefault('28 days'),
      'arch-strike': q.quantity('duration', 'From laying an arch to striking its centering.', days).prefault('14 days'),
      'courses-per-day': q.number('Courses laid in a day.', { least: 0.05, most: 50 }).prefault(1),
      'target-days': q.number('Days in which all blocks are to be cast.', { least: 1, most: 3650 }).optional(),
    })
    .meta({ description: 'Times of casting and laying.' });
};

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

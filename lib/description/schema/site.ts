import { z } from 'zod';
import type { Leaves } from './leaves.js';

export const projectSchema = (q: Leaves) =>
  z
    .strictObject({
      title: q.text('Title on every sheet.').prefault('Dome house'),
      number: q.text('Number of the project.').prefault(''),
      address: q.text('Where the house stands.').prefault(''),
      client: q.text('For whom it is drawn.').prefault(''),
      'drawn-by': q.text('Who drew it.').prefault(''),
      date: q.date('The date printed on the documents.').optional(),
      revision: q.text('Revision letter or number.').prefault(''),
    })
    .meta({ description: 'What the title blocks say.' });

/** Standards by which loads are put together. */
const COMBINATIONS = ['EN 1990', 'ASCE 7'] as const;
const COEFFICIENT = { least: -4, most: 4 };

const corner = (q: Leaves) => {
  const bounds = { least: -1e6, most: 1e6 };
  return z
    .tuple([q.length('East of the origin.', bounds), q.length('North of the origin.', bounds)])
    .meta({ description: 'East and north of the origin.' });
};

export const siteSchema = (q: Leaves) =>
  z
    .strictObject({
      north: q.bearing('Bearing of true north, clockwise from project north.').prefault(0),
      ground: q
        .length('Outside ground level; below 0 when the floor stands above the ground.', { least: -2000, most: 1000 })
        .prefault('-150 mm'),
      snow: q.quantity('pressure', 'Snow load on the ground.', { least: 0, most: 50 }).optional(),
      wind: q
        .quantity('pressure', 'Wind pressure: characteristic by EN 1990, at strength level by ASCE 7.', {
          least: 0,
          most: 20,
        })
        .optional(),
      'seismic-coefficient': q
        .number('Horizontal force of the design earthquake as a part of the weight.', { least: 0, most: 2 })
        .optional(),
      'seismic-vertical': q
        .number(
          'Upright force of the design earthquake that goes with the whole horizontal one, up or down, as a part of the dead load: 0.2 SDS by ASCE 7; by EN 1998-1, 0.3 of the vertical response where that counts.',
          { least: 0, most: 0.8 },
        )
        .optional(),
      'bearing-capacity': q
        .quantity('pressure', 'Bearing pressure that the soil may carry.', { least: 1, most: 10_000 })
        .optional(),
      'soil-friction': q
        .number('Friction of the footing on the soil, as the soil’s engineer gives it.', { least: 0, most: 1 })
        .optional(),
      combinations: z
        .enum(COMBINATIONS)
        .prefault('EN 1990')
        .meta({ description: 'The standard by which loads are put together.' }),
      'wind-coefficients': z
        .tuple([
          q.number('At the springing on the windward side.', COEFFICIENT),
          q.number('On the line across the wind through the crown.', COEFFICIENT),
          q.number('At the springing on the leeward side.', COEFFICIENT),
        ])
        .optional()
        .meta({
          description:
            'Pressure coefficients of a dome for wind, pressure positive: windward springing, crown line, leeward springing. Known without them is a hemisphere on the ground alone.',
        }),
      'frost-depth': q.length('Depth of frost below the ground.', { least: 0, most: 5000 }).optional(),
      plot: z
        .array(corner(q))
        .min(3)
        .max(100)
        .optional()
        .meta({ description: 'Corners of the plot, in order round it.' }),
      setback: q.length('Least distance from the plot’s edge.', { least: 0, most: 100_000 }).optional(),
    })
    .meta({ description: 'The place: directions, levels, loads, soil, plot.' });

/** East and north, for domes as for plots. */
export const placeSchema = corner;

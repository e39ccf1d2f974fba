import { z } from 'zod';
import type { Leaves } from './leaves.js';

export const wallSchema = (q: Leaves) =>
  z
    .strictObject({
      thickness: q.length('Structural wall without render.', { least: 50, most: 1500 }).prefault('250 mm'),
      'render-inside': q.length('Render on the intrados.', { least: 0, most: 200 }).prefault('15 mm'),
      'render-outside': q.length('Render on the extrados.', { least: 0, most: 200 }).prefault('20 mm'),
    })
    .meta({ description: 'The wall of every dome.' });

export const blocksSchema = (q: Leaves) => {
  const joint = { least: 1, most: 50 };
  return z
    .strictObject({
      'course-height': q
        .length('Course height along the meridian at mid-thickness; a course takes the nearest that divides evenly.', {
          least: 20,
          most: 1000,
        })
        .prefault('250 mm'),
      length: q.length('Nominal length at mid-thickness.', { least: 50, most: 2000 }).prefault('400 mm'),
      joint: q.length('Joint as drawn.', joint).prefault('10 mm'),
      'joint-range': z
        .tuple([q.length('Thinnest joint.', joint), q.length('Thickest joint.', joint)])
        .prefault(['5 mm', '20 mm'])
        .meta({ description: 'Thinnest and thickest joint that may be laid.' }),
      tolerance: q.length('How far a cast block may be off its size.', { least: 0, most: 25 }).prefault('3 mm'),
      shrinkage: q.quantity('fraction', 'Drying shrinkage of a block.', { least: 0, most: 0.02 }).prefault('0.25 %'),
      'face-step': q
        .length('Greatest step between the faces of neighbouring blocks.', { least: 0, most: 50 })
        .prefault('3 mm'),
      faces: z
        .enum(['curved', 'flat'])
        .prefault('curved')
        .meta({ description: 'Faces curved as the dome, or flat with the sagitta stated.' }),
      bond: z.enum(['banded', 'free']).prefault('banded').meta({
        description:
          'How many blocks the courses have: `banded`, constant over bands of courses, with laps of half a block; `free`, chosen in each course for the fewest moulds.',
      }),
      'moulds-in-course': q
        .count(
          'Moulds whose blocks may lie in one course: 1, or 2, spread evenly among each other where that saves moulds.',
          { least: 1, most: 2 },
        )
        .prefault(1),
      'shortest-piece': q.length('Shortest closer that is laid.', { least: 20, most: 1000 }).prefault('120 mm'),
      'least-lap': q
        .length('Least distance between perpends of neighbouring courses.', { least: 0, most: 1000 })
        .prefault('80 mm'),
      heaviest: q
        .quantity('mass', 'Heaviest block that is lifted by hand.', { least: 0.5, most: 1000 })
        .prefault('20 kg'),
    })
    .meta({ description: 'How blocks are cut out of the wall and laid.' });
};

export const footingSchema = (q: Leaves) =>
  z
    .union([
      z.literal('none'),
      z.strictObject({
        width: q
          .length('Width of the ring footing under the middle of the wall.', {
            least: 50,
            most: 5000,
            defaultText: 'twice the wall’s thickness',
          })
          .optional(),
        depth: q
          .length('Depth of its underside below the finished floor.', { least: 50, most: 5000 })
          .prefault('400 mm'),
      }),
    ])
    .meta({ description: 'Ring footing, its top level with the finished floor; or `none`.' });

const TIE_LEVELS = ['footing', 'above openings'] as const;

export const tieSchema = (q: Leaves) =>
  z
    .union([
      z.literal('none'),
      z.strictObject({
        level: z
          .union([z.enum(TIE_LEVELS), q.length('Height above the floor.', { least: 0, most: 30_000 })])
          .prefault('footing')
          .meta({
            description:
              'Where it lies in every dome: in the `footing`, in the first bed `above openings`, or at a height above the floor.',
          }),
        bars: q.count('Number of bars side by side.', { least: 1, most: 20 }).prefault(2),
        diameter: q.length('Diameter of a bar.', { least: 4, most: 40 }),
        'yield-strength': q
          .quantity('pressure', 'Yield strength of the steel.', { least: 100_000, most: 1_000_000 })
          .prefault('500 MPa'),
        'bond-strength': q
          .quantity('pressure', 'Design bond strength of the bars in what they are bedded in.', {
            least: 100,
            most: 10_000,
          })
          .optional(),
        lap: q.length('Length over which the ends of a bar lie side by side.', { least: 50, most: 5000 }).optional(),
      }),
    ])
    .meta({ description: 'Closed hoop of steel round every dome; or `none`.' });

export const slabSchema = (q: Leaves) =>
  z
    .union([
      z.literal('none'),
      z.strictObject({
        thickness: q.length('Thickness below the finished floor.', { least: 20, most: 1000 }).prefault('100 mm'),
      }),
    ])
    .meta({ description: 'Floor slab inside the footing; or `none`.' });

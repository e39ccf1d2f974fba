import { z } from 'zod';
import { LENGTH_UNITS, type LengthUnit } from '../base/units.js';
import { domeSchema } from './schema/domes.js';
import { drawingsSchema } from './schema/drawings.js';
import { leavesIn } from './schema/leaves.js';
import { blocksSchema, footingSchema, slabSchema, tieSchema, wallSchema } from './schema/masonry.js';
import { openingSchema, passageSchema, roomSchema } from './schema/openings.js';
import { partitionSchema } from './schema/partitions.js';
import { projectSchema, siteSchema } from './schema/site.js';
import {
  castingSchema,
  centeringSchema,
  materialSchema,
  pricesSchema,
  printSchema,
  settingOutSchema,
  warmthSchema,
} from './schema/works.js';

/** How many of each a house has at least and at most. */
export const LISTS = {
  domes: { least: 1, most: 30 },
  openings: { least: 0, most: 200 },
  passages: { least: 0, most: 60 },
  rooms: { least: 0, most: 60 },
  partitions: { least: 0, most: 100 },
} as const;

const made = new Map<LengthUnit, DescriptionSchema>();

/** The schema of a description whose bare lengths are in `units`; its output is in base units. */
export function descriptionSchema(units: LengthUnit): DescriptionSchema {
  // Made once for each unit: making one costs more than reading a description by it.
  const schema = made.get(units) ?? schemaIn(units);
  made.set(units, schema);
  return schema;
}

function schemaIn(units: LengthUnit) {
  const q = leavesIn(units);
  return z.strictObject({
    format: z.literal(1).meta({ description: 'Format of the description: 1.' }),
    project: projectSchema(q).prefault({}),
    units: z
      .enum(LENGTH_UNITS)
      .prefault('m')
      .meta({ description: 'Unit of every length written without one, and of what is printed.' }),
    site: siteSchema(q).prefault({}),
    wall: wallSchema(q).prefault({}),
    blocks: blocksSchema(q).prefault({}),
    domes: z
      .array(domeSchema(q))
      .min(LISTS.domes.least)
      .max(LISTS.domes.most)
      .meta({ description: 'The domes, the one built first foremost.' }),
    openings: z
      .array(openingSchema(q))
      .max(LISTS.openings.most)
      .prefault([])
      .meta({ description: 'Doors, windows, vents, niches.' }),
    passages: z
      .array(passageSchema(q))
      .max(LISTS.passages.most)
      .prefault([])
      .meta({ description: 'Vaults between domes.' }),
    rooms: z
      .array(roomSchema(q))
      .max(LISTS.rooms.most)
      .prefault([])
      .meta({ description: 'What the domes are used for.' }),
    partitions: z
      .array(partitionSchema(q))
      .max(LISTS.partitions.most)
      .prefault([])
      .meta({ description: 'Straight walls within rooms, which carry nothing.' }),
    footing: footingSchema(q).prefault({}),
    slab: slabSchema(q).prefault({}),
    tie: tieSchema(q).optional(),
    material: materialSchema(q).prefault({}),
    casting: castingSchema(q).prefault({}),
    'setting-out': settingOutSchema(q).prefault({}),
    centering: centeringSchema(q).prefault({}),
    warmth: warmthSchema(q).prefault({}),
    drawings: drawingsSchema(q).prefault({}),
    print: printSchema(q).prefault({}),
    prices: pricesSchema(q).prefault({}),
  });
}

export type DescriptionSchema = ReturnType<typeof schemaIn>;

/**
 * A house as its user describes it: the content of a description file as a plain object. Lengths are numbers
 * in `units` or texts with their own unit; only `format` and `domes` are required.
 */
export type Description = z.input<DescriptionSchema>;

/** The description with defaults and base units, before defaults that follow from other keys. */
export type DescriptionOutput = z.output<DescriptionSchema>;

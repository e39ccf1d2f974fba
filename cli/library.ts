/**
 * Where the command line meets the library, and here alone. What is small comes in at once; the rest by doors that a
 * command opens when it runs, so that help and completion load nothing of it, and a command no more than it uses.
 */

export { feetAndInches } from '../lib/base/measures.js';
export { Memory } from '../lib/base/memory.js';
export { DescriptionError } from '../lib/base/problems.js';
export { parseQuantity } from '../lib/base/quantities.js';
export { figureText } from '../lib/base/reader-units.js';
export { nearest } from '../lib/base/suggest.js';
export { OUTPUT_GROUPS, type OutputGroup } from '../lib/deliver/groups.js';
export type { Tools } from '../lib/deliver/package.js';
export { PICTURE_COLOURS } from '../lib/deliver/picture.js';
export type { StarterAnswers } from '../lib/description/starter.js';
export type {
  Cell,
  Check,
  Column,
  DrawnGroup,
  DrawnSet,
  HandedOver,
  House,
  HousePackage,
  LengthUnit,
  PackageFile,
  PackageOptions,
  Problem,
  Table,
  Variant,
  VariantResult,
  Verdict,
} from '../lib/index.js';

/** Reads descriptions. */
export const reading = () => import('../lib/description/read.js');
/** The schema of descriptions. */
export const describing = () => import('../lib/description/json-schema.js');
/** A description to start from. */
export const starting = () => import('../lib/description/starter.js');
/** Checks, tables by name, whole packages. */
export const packing = () => import('../lib/deliver/package.js');
/** The list of tables. */
export const listing = () => import('../lib/deliver/tables.js');
/** Pictures of a house. */
export const picturing = () => import('../lib/deliver/picture.js');
/** Two houses side by side. */
export const comparing = async () => ({
  ...(await import('../lib/deliver/compare.js')),
  ...(await import('../lib/deliver/compare-tables.js')),
});
/** Rows of variants. */
export const varying = async () => ({
  ...(await import('../lib/deliver/vary.js')),
  ...(await import('../lib/deliver/vary-table.js')),
});
/** Tables as CSV. */
export const csv = () => import('../lib/writers/csv.js');
/** Files in one archive. */
export const archiving = () => import('../lib/writers/zip.js');

/**
 * Where the command line meets the library, and here alone. It comes in by the doors behind the public one, so that
 * a command loads no more than it uses.
 */

export { DescriptionError } from '../lib/base/problems.js';
export { nearest } from '../lib/base/suggest.js';
export {
  buildPackage,
  checkHouse,
  houseTable,
  OUTPUT_GROUPS,
  type OutputGroup,
  type Tools,
} from '../lib/deliver/package.js';
export { TABLES } from '../lib/deliver/tables.js';
export { descriptionJsonSchema } from '../lib/description/json-schema.js';
export { readDescription } from '../lib/description/read.js';
export { starterDescription } from '../lib/description/starter.js';
export type {
  Cell,
  Check,
  Column,
  DrawingSet,
  HandedOver,
  House,
  HousePackage,
  PackageFile,
  Problem,
  Table,
} from '../lib/index.js';
export { writeCsv } from '../lib/writers/csv.js';

/**
 * Where the command line meets the library, and here alone. It comes in by the doors behind the public one, so that
 * a command loads no more than it uses.
 */

export { feetAndInches } from '../lib/base/measures.js';
export { DescriptionError } from '../lib/base/problems.js';
export { parseQuantity } from '../lib/base/quantities.js';
export { figureText } from '../lib/base/reader-units.js';
export { nearest } from '../lib/base/suggest.js';
export { compareHouses } from '../lib/deliver/compare.js';
export { comparisonTables } from '../lib/deliver/compare-tables.js';
export {
  buildPackage,
  checkHouse,
  houseTable,
  OUTPUT_GROUPS,
  type OutputGroup,
  type Tools,
} from '../lib/deliver/package.js';
export { housePicture, PICTURE_COLOURS } from '../lib/deliver/picture.js';
export { TABLES } from '../lib/deliver/tables.js';
export { variantsOf } from '../lib/deliver/vary.js';
export { variantTable } from '../lib/deliver/vary-table.js';
export { descriptionJsonSchema } from '../lib/description/json-schema.js';
export { descriptionUnits, readDescription } from '../lib/description/read.js';
export { STARTER_QUESTIONS, type StarterAnswers, starterDescription } from '../lib/description/starter.js';
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
  Problem,
  Table,
  Variant,
  VariantResult,
  Verdict,
} from '../lib/index.js';
export { writeCsv } from '../lib/writers/csv.js';
export { zipFiles } from '../lib/writers/zip.js';

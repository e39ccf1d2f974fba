/** Where the command line meets the library: by its public door, and here alone. */
export {
  buildPackage,
  type Check,
  type Column,
  checkHouse,
  DescriptionError,
  descriptionJsonSchema,
  type House,
  type HousePackage,
  houseTables,
  type OutputGroup,
  type Problem,
  readDescription,
  starterDescription,
  type Table,
  type Tools,
  tableCsv,
} from '../lib/index.js';

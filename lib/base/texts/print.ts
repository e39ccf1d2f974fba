/** Wording of the printed model: its checks, tables and parts. */

export const derived = 'derived';
export const modelCanBePrinted = (scale: number): string => `The model can be printed at 1:${scale}.`;
export const modelCannotBePrinted = (scale: number, obstacles: readonly string[]): string =>
  `The model can be printed at 1:${scale}, but for this: ${obstacles.join('; ')}.`;
export const noUsualScaleWorks =
  'No usual scale works with this bed, nozzle and thinnest wall: change `print.bed`, `print.nozzle` or `print.thinnest`.';
export const setPrintScaleNearest = (other: number): string =>
  `Set \`print.scale: ${other}\`, the nearest usual scale that works; or change \`print.bed\`, \`print.nozzle\` or \`print.thinnest\`.`;
export const wallIsThickEnough = (scale: number): string => `The wall is thick enough to print at 1:${scale} as it is.`;
export const thinnestPrintedWall = 'thinnest printed wall';
export const wallAtPrintScale = 'wall at print scale';
export const wallThicknessScale = 'wall thickness / scale';
export const description = 'the description';
export const modelsWallIsThickened = (thickness: number): string =>
  `The model’s wall is thickened outward. At 1:${thickness} or larger it would not be.`;
export const hasCourseToPrint = (id: string, course: number): string =>
  `${id} has a course ${course} to print as loose blocks.`;
export const setPrintLooseBlocks = (count: number): string => `Set \`print.loose-blocks.course\` from 1 to ${count}.`;
export const filamentOfPrintedModel = 'filament of the printed model, without supports';
export const forEachPartSkin =
  'for each part: skin + 20 % of (volume − skin), skin = surface · 3 nozzle widths, at most the volume';
export const commonPracticeNoSource = 'common practice, no source';
export const estimateFor3Lines = 'an estimate for 3 lines along faces and 20 % infill; the slicer tells what it uses';
export const wholeOfForm = (form: string): string => `whole, ${form}`;
export const partLargerThanBed = 'a part is larger than the bed wherever it is cut';
export const partHigherThanPrinter = (bed: string): string =>
  `a part is higher than the printer reaches, ${bed}, wherever a joint parts it`;
export const theBase = 'base';
export const roofOf = (dome: string): string => `roof of ${dome}`;
export const underCrown = (dome: string): string => `under the crown of ${dome}`;
export const aboveCourse = (course: number, dome: string): string => `above course ${course} of ${dome}`;
export const partedAtJoint = (part: string, joint: string, height: string, pegs: number): string =>
  `The ${part} is higher than the printer reaches and is parted at the joint ${joint}, ${height} mm above the floor of the model; what stands on it sits on ${pegs} pegs.`;
export const noPegsOn = (part: string, domes: string): string =>
  `No place for pegs on the parted ${part}, where the upper piece lies loose: ${domes}.`;
export const wallThinnerThanNozzle = (printed: string, nozzle: number): string =>
  `the wall is ${printed} mm thick, less than the nozzle's ${nozzle} mm`;
export const pierBetween = (id: string, otherId: string, gap: string, thin: string): string =>
  `the pier between ${id} and ${otherId} is ${gap} wide, less than ${thin}`;
export const wallsAndGround = 'walls and ground';
export const looseBlocks = 'loose blocks';
export const plateOf = (title: string, k: number, plates: number): string => `${title}, plate ${k} of ${plates}`;
export const partsOfModel = (scale: number): string => `Parts of the model at 1:${scale}`;
export const count = 'count';
export const alongBed = 'along the bed';
export const acrossBed = 'across the bed';
export const volumeOfOne = 'volume of one';
export const filamentForOne = 'filament for one';
export const widestOverhang = 'widest overhang';
export const filamentNote = (
  plates: number,
  label: string,
  value: string,
  unit: string,
  formula: string,
  limit: string | undefined,
): string => `${plates} ${plates === 1 ? 'plate' : 'plates'}; ${label}: about ${value} ${unit} (${formula}; ${limit}).`;
export const supportIsWantedWhere =
  'Support is wanted where faces lean out by more than 45 degrees over a stretch too wide to bridge; the widest overhang is four times a face’s area over its rim. Common practice, no source.';
export const whatModelHasThicker = 'What the model has thicker than the house';
export const inHouse = 'in the house';
export const inModelAtFull = 'in the model, at full size';
export const houseAtScale = 'the house at scale';
export const inModel = 'in the model';
export const nothingIsThinner = (thinnest: number): string =>
  `Nothing is thinner than ${thinnest} mm in the model: walls, rings and curbs grow outward, niches become shallower.`;
export const roofStaysOnWhere = (fixed: string): string =>
  `The roof stays on where openings reach too high to look in: ${fixed}.`;
export const noPlaceForPegs = (loose: string): string =>
  `No place for pegs between the openings, the roof lies loose: ${loose}.`;
export const jointsAreTooClose = (fine: string): string =>
  `Joints are too close together for the nozzle, and left out, in these courses: ${fine}.`;
export const curbOf = (id: string): string => `curb of ${id}`;
export const ringOf = (id: string): string => `ring of ${id}`;
export const depthOf = (id: string): string => `depth of ${id}`;
export const faceOf = (id: string): string => `face of ${id}`;

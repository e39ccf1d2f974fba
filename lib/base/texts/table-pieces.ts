/** Titles, columns and notes of the tables of blocks, voussoirs and ring pieces. */

export const intradosLowerEdgeArc = 'intrados lower edge, arc';
export const intradosLowerEdgeChord = 'intrados lower edge, chord';
export const intradosUpperEdgeArc = 'intrados upper edge, arc';
export const intradosUpperEdgeChord = 'intrados upper edge, chord';
export const extradosLowerEdgeArc = 'extrados lower edge, arc';
export const extradosLowerEdgeChord = 'extrados lower edge, chord';
export const extradosUpperEdgeArc = 'extrados upper edge, arc';
export const extradosUpperEdgeChord = 'extrados upper edge, chord';
export const heightAlongIntrados = 'height along intrados';
export const heightAlongExtrados = 'height along extrados';
export const intradosSagittaOfLower = 'intrados sagitta of the lower edge';
export const extradosSagittaOfLower = 'extrados sagitta of the lower edge';
export const intradosSagittaUpMeridian = 'intrados sagitta up the meridian';
export const extradosSagittaUpMeridian = 'extrados sagitta up the meridian';
export const headAngle = 'head angle';
export const lowerBedAngle = 'lower bed angle from level';
export const upperBedAngle = 'upper bed angle from level';
export const blocks = 'Blocks';
export const mark = 'mark';
export const dome = 'dome';
export const course = 'course';
export const number = 'number';
export const bearingOfMiddle = 'bearing of the middle';
export const mould = 'mould';
export const stopBoardAlong = (edge: string): string => `stop board along the ${edge}, as cast`;
export const placesOfStopBoards = (lighter: string, sawn: string): string =>
  `${lighter} Its places are told from the head kept, in the mould, to half a millimetre; ${sawn} at least are left to saw off.`;
export const wholeOrCut = 'whole or cut';
export const cutBy = 'cut by';
export const longestRunAtMid = 'longest run at mid-thickness';
export const volume = 'volume';
export const dryMass = 'dry mass';
export const wetMass = 'wet mass';
export const noneFits = 'none fits';
export const stateOfBlock = (isLonger: boolean, isCut: boolean): string =>
  isLonger ? (isCut ? 'longer, cut' : 'longer, whole') : isCut ? 'cut' : 'whole';
export const edgesHeightsAngles =
  'Edges, heights, angles and sagittas are of the block before any cut; run, volume and masses are of what is left.';
export const facesAreFlatEight =
  'Faces are flat: the eight corners lie on the curved surfaces; the sagittas say how far the faces miss them.';
export const sizesAreThose =
  'Sizes are those of the dry block that its mould makes; inner sizes are in the tables of moulds and of longer moulds.';
export const intradosLowerEdge = 'intrados lower edge';
export const intradosUpperEdge = 'intrados upper edge';
export const extradosLowerEdge = 'extrados lower edge';
export const extradosUpperEdge = 'extrados upper edge';
export const firstHead = 'first head';
export const secondHead = 'second head';
export const noHead = 'no head';
export const bothHeads = 'both heads';
export const cuts = 'Cuts';
export const cut = 'cut';
export const mirrored = 'mirrored';
export const keeps = 'keeps';
export const leftOfEdges = (edges: string): string => `${edges}, left`;
export const planAngleOfCut = 'plan angle of the cut to the head kept';
export const outOfLeftover = 'out of the leftover of';
export const lengthsAlongEdges =
  'Lengths along the edges from the head kept; the first head is the one first met clockwise. A cut through the head of an arch curves between its marks.';
export const cutsOfOneName =
  'Cuts of one name are marked out alike; a mirrored one is its mirror image, which the same mould gives.';
export const remnantsLeftToMortar = 'Remnants left to mortar';
export const whatIsLaid = 'what is laid of its block';
export const restOfBlock = 'the rest';
export const noBlockIsCut = (run: string, percent: number): string =>
  `No block is cut for a remnant without a run of ${run} at mid-thickness, or of less than ${percent} % of its block: mortar fills its place.`;
export const noBlockForSuchMark = 'Of a mark of which nothing is laid there is no block in the table of blocks.';
export const ringCastInOne = 'ring cast in one';
export const voussoirsAndArchRings = 'Voussoirs and arch rings';
export const opening = 'opening';
export const kind = 'kind';
export const form = 'form';
export const soffitArc = 'soffit, arc';
export const soffitChord = 'soffit, chord';
export const backArc = 'back, arc';
export const backChord = 'back, chord';
export const fromSoffitToBack = 'from soffit to back';
export const angleBetweenItsJoints = 'angle between its joints';
export const depthOnSoffitLower = 'depth on the soffit, lower end';
export const depthOnSoffitUpper = 'depth on the soffit, upper end';
export const depthOnBackLower = 'depth on the back, lower end';
export const depthOnBackUpper = 'depth on the back, upper end';
export const numberedFromLeft = (joint: string, unit: string): string =>
  `Numbered from left to right seen from outside; the joints between them are ${joint} ${unit} thick, and the springers stand as much above their beds.`;
export const depthsRunAlongBearing =
  'Depths run along the bearing, from the room to the flat face or to the extrados; the lower end is the one nearer to the springing. Upper ends of keystones are at the crown.';
export const stonesOfOneForm =
  'Stones of one form are mirror images of one another. Skewbacks are cast with the jambs or laid on them; those of a flat arch rise at 60° (common practice, no source).';
export const sizesAreThoseOfDry = (shrinkage: number): string =>
  `Sizes are those of the dry stone: make its form larger by the drying shrinkage of ${shrinkage} %.`;
export const segmentOfSkewbackRing = 'segment of the skewback ring';
export const segmentOfCurb = 'segment of the curb';
export const crownPlug = 'crown plug';
export const segmentsOfRings = 'Segments of rings, and crown plugs';
export const bearingOfItsStart = 'bearing of its start';
export const bearingOfItsEnd = 'bearing of its end';
export const innerRadius = 'inner radius';
export const outerRadius = 'outer radius';
export const innerChord = 'inner chord';
export const outerChord = 'outer chord';
export const ringsAreParted = (heaviestKg: string, unit: string): string =>
  `Rings are parted so that no segment is heavier than ${heaviestKg} ${unit} freshly demoulded; joints between segments are as thick as all others. A segment beside an opening is cut there; its chords are those before the cut.`;
export const sizesAreThoseOfDryPiece = (shrinkage: number): string =>
  `Sizes are those of the dry piece: make its form larger by the drying shrinkage of ${shrinkage} %.`;
export const sectionsOfRings =
  'Sections of the rings are drawn on the sheets; bearings run clockwise from project north.';
export const volumesOfMasonry = 'Volumes of the masonry';
export const part = 'part';
export const shareOfEnvelope = 'share of the envelope';
export const dryMassAtBlock = 'dry mass at block density';
export const masonryEnvelopeShellsLess = 'masonry envelope: shells less voids, plus barrels, passages and curbs';
export const eachPartIsComputed = (error: string): string =>
  `Each part is computed by itself; their sum misses the envelope by ${error} %.`;
export const volumesAreNet = 'Volumes are net: no waste is added.';
export const nothingOfBlock = 'nothing';
export const springer = 'springer';
export const voussoir = 'voussoir';
export const keystone = 'keystone';
export const skewback = 'skewback';

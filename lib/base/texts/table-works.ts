/** Titles, columns and notes of the tables of mix, casting, costs and warmth. */

export const bagsOf = (cementBagKg: number, unit: string): string => `bags of ${cementBagKg} ${unit}`;
export const mix = 'Mix';
export const ingredient = 'ingredient';
export const unit = 'unit';
export const forCubicMetre = 'for a cubic metre of fresh mix';
export const forBatch = (house: string): string => `for a batch of ${house}`;
export const forWholeHouseWaste = 'for the whole house, as poured, waste included';
export const freshMix = 'fresh mix';
export const sandDry = 'sand, dry';
export const waterIntoMixer = 'water into the mixer';
export const concentrateIntoFoamGenerator = 'concentrate into the foam generator';
export const waterIntoFoamGenerator = 'water into the foam generator';
export const mixerRunning = 'mixer running';
export const freshMixWeighs = (
  wetDensity: string,
  airPercent: string,
  slurryDensity: string,
  dryDensity: string,
): string =>
  `Fresh mix weighs ${wetDensity}, of it ${airPercent} % air by volume; the slurry before the foam ${slurryDensity}; it dries to ${dryDensity}.`;
export const brimfulBucketMustHold = (bucketKg: string, unit: string, wetWindow: number, wetWindow2: string): string =>
  `The brimful bucket must hold ${bucketKg} ${unit} net. Weigh one of every batch; outside ${wetWindow} kg/m3 or ${wetWindow2} lb/ft3 either way correct the foam by its table.`;
export const mixerMinutesNeedCasting = 'Mixer minutes need `casting.mixer`.';
export const absoluteVolumes =
  'Absolute volumes, as in ACI 523.3R (from memory); dry density as ASTM C869: cement × 1.2, and sand. Moist sand brings water: take it off the water into the mixer.';
export const foamCorrectionFromWeighed = 'Foam correction from the weighed bucket';
export const bucketNet = (bucketLitres: number, unit: string): string => `bucket, net, ${bucketLitres} ${unit}`;
export const wetDensity = 'wet density';
export const foamThatLasted = 'foam that lasted';
export const thisBatch = 'this batch';
export const foamToAdd = 'foam to add to it';
export const foamForNextBatch = 'foam for the next batch';
export const forBatchesAlikeInMix = (house: string): string =>
  `For batches of ${house} whose cement, sand and water are as in the mix table. Take the bucket’s own mass off; between two rows take the middle.`;
export const mixTooLightIsNotCast =
  'A mix that is too light is not cast: it stays weak. Batches that differ again and again tell of the foam generator or of moist sand.';
export const piecesOfOne = (mould: string, pieces: number): string => `${mould}: ${pieces}`;
export const piecesOfTwo = (first: string, last: string, pieces: number): string =>
  `${first} and ${last}: ${pieces} each`;
export const piecesOfMany = (first: string, last: string, pieces: number): string =>
  `${first} to ${last}: ${pieces} each`;
export const castingAndLayingCalendar = 'Casting and laying calendar';
export const day = 'day';
export const castPiecesByMould = 'cast, pieces by mould';
export const pours = 'pours';
export const freshMixWasteIncluded = 'fresh mix to pour, waste included';
export const mixer = 'mixer';
export const archesCastOrLaid = 'arches cast or laid on centering';
export const centeringStruck = 'centering struck';
export const coursesLaid = 'courses laid';
export const crownClosed = 'crown closed';
export const workingDaysFrom1 = (poursPerDay: number, limitedBy: string): string =>
  `Working days from 1; days without work are left out. At most ${poursPerDay} pours a day, as the ${limitedBy} allows.`;
export const fromCastingToDemoulding = (demouldDays: string, readyToLayDays: string, archStrikeDays: string): string =>
  `From casting to demoulding ${demouldDays}, to laying ${readyToLayDays} and then only when the cubes have their strength; centering stands ${archStrikeDays}.`;
export const mouldsInOrderOfCopies =
  'Moulds are told in the order of the table of their copies. A ring, jambs and what else is cast of an opening take the fresh mix of its days; one that takes more than the mixer’s day is cast on several, jambs first.';
export const eachArchIsCast =
  'Each arch is cast after the blocks and struck before a course goes past its crown. In the cold everything takes longer: cubes decide, not this calendar.';
export const askedDays = (targetDays: number): string => `; asked: ${targetDays}`;
export const copiesOfMoulds = 'Copies of moulds';
export const mould = 'mould';
export const piecesToCast = 'pieces to cast';
export const copiesToMake = 'copies to make';
export const volumeOfOnePiece = 'fresh mix for one piece, as far as its mould is filled';
export const wholeHouseAsPoured =
  'The whole house is counted by what its moulds hold, larger than the dry pieces by their drying shrinkage.';
export const freshMixFillsMoulds = (shrinkage: number): string =>
  `Fresh mix is what fills the moulds: larger than the dry pieces by the drying shrinkage of ${shrinkage} % in every length.`;
export const copiesCastEverything = (copies: number, castingDays: number, asked: string, leastDays: number): string =>
  `${copies} copies cast everything in ${castingDays} days${asked}; the least possible with any number of moulds is ${leastDays}.`;
export const noSmallerNumber = 'No smaller number of copies does it in these days: proven by search.';
export const smallerNumberOfCopies = 'A smaller number of copies may do: the search was cut short.';
export const formOfRingSegments =
  'The form of a ring’s segments is made for the longest; a loose end makes the shorter ones.';
export const oilMouldsWithRelease = 'Oil moulds with release agent, not with waste oil.';
export const quantities = 'Quantities';
export const part = 'part';
export const ofWord = 'of';
export const net = 'net';
export const waste = 'waste';
export const toOrder = 'to order';
export const wasteIsOfEverything = (percent: string): string =>
  `Waste is ${percent} % of everything but ribs and moulds; for what is cast in moulds also the drying shrinkage, since the mould is larger than the dry piece; for blocks also what is cut off, since a cut block is cast whole.`;
export const volumesAreOfBalance =
  'Volumes are those of the balance of the masonry, areas those of the curved surfaces. An empty quantity has not been computed; it is not zero.';
export const castPiecesAreCounted =
  'Cast pieces are counted of the blocks’ mix. Lagging and ribs are those of as many forms as the calendar keeps.';
export const noCurrency = 'no currency';
export const billOfMaterials = 'Bill of materials';
export const item = 'item';
export const amountWasteIncluded = 'amount, waste included';
export const priceOfOne = 'price of one';
export const cost = 'cost';
export const shareOfKnownCosts = 'share of the known costs';
export const unknownBecause = 'unknown because';
export const linesUnknown = (unknown: number, count: number): string => `${unknown} of ${count} lines unknown`;
export const noPricesAreGiven = 'no prices are given';
export const knownLinesComeTo = (known: string, currency: string): string =>
  `the known lines come to ${known} ${currency}`;
export const totalIsUnknown = (why: string): string => `The total is unknown, not zero: ${why}.`;
export const materialsAloneLabourTools =
  'Materials alone: labour, tools, transport, doors and windows, fees and taxes are not in it. Prices are those of the description.';
export const moistBlocksInsulateBadly =
  'Moist blocks insulate badly: saturated ones conduct up to six times as well as dry ones (Jerman and others 2013). Keep rain off until the render is on, let the shell dry before it is rendered, and use no vapour-tight paint outside.';
export const computedWithRenders = (
  renderConductivity: string,
  slabConductivity: string,
  groundConductivity: string,
  window: string,
  door: string,
  airChanges: number,
): string =>
  `Computed with renders of ${renderConductivity}, a slab of ${slabConductivity}, ground of ${groundConductivity}, windows of ${window}, doors of ${door}, ${airChanges} changes of air an hour. Where the description gives none: slab as dense concrete in ISO 10456, ground as unknown ground in ISO 13370 (both from memory); renders, windows, doors and air are common practice, no source.`;
export const warmth = 'Warmth';
export const what = 'what';
export const value = 'value';
export const formula = 'formula';
export const source = 'source';
export const validFor = 'valid for';
export const heatNeededOnCold =
  'Heat needed on a cold day, W = heat loss coefficient × (inside less outside temperature); Btu/h and °F where the table has them. An estimate to compare houses by, not a heating design.';
export const layersOfShell = 'Layers of the shell';
export const layerFromInsideOut = 'layer, from the inside out';
export const thickness = 'thickness';
export const conductivity = 'conductivity';
export const resistance = 'resistance';
export const blocksConductivityFromDensity = (moistureFactor: number): string =>
  `Blocks: 0.072 e^(0.00125 × dry density) (ACI 122R-02 equation 2-1, from memory) × ${moistureFactor} for moisture in use.`;
export const blocksConductivityAsGiven = (moistureFactor: number): string =>
  `Blocks: conductivity as given × ${moistureFactor} for moisture in use.`;

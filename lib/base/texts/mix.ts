/** Wording about the mix. */

export const castIt = 'cast it';
export const addFoamWeighAgain = 'add foam, weigh again';
export const tooLightToCast = 'too light: do not cast';
export const absoluteVolumes = 'absolute volumes, as in ACI 523.3R chapter 4 (from memory); bound water ASTM C869';
export const mixHoldsAsMuch = 'The mix holds as much air as foamed concrete usually does, 30 to 80 % by volume.';
export const airInFreshMix = 'air in the fresh mix';
export const airByVolumeFormula = 'foam volume × (1 − foam density / 1000)';
export const airSource = 'concrete.org.uk, fingertips nugget 355';
export const takeAnotherDensityOrTrial =
  'Take another density, or cast a trial batch and test its cubes before anything else.';
export const mixOfAskedWet =
  'The mix of the asked wet density dries to the dry density that masses and warmth are computed with.';
export const dryDensityOfMix = 'dry density of the mix';
export const dryDensityFormula = '1.2 cement + sand';
export const astmC869CalculatedOven = 'ASTM C869, calculated oven-dry density';
export const dryDensityGiven = 'dry density given';
export const astmC869 = 'ASTM C869';
export const writeMaterialDryDensity = (dryDensity: number): string =>
  `Write \`material.dry-density: ${dryDensity} kg/m3\`, or leave out \`material.wet-density\`.`;
export const litresIntoNextBatch = (nextFoamLitres: string): string =>
  `${nextFoamLitres} L of foam into the next batch`;
export const lastBucketWeighed = (verdict: string): string => `The last bucket weighed as the mix should: ${verdict}.`;
export const wetDensityMeasured = 'wet density measured';
export const wetDensityToCast = 'wet density to cast to';
export const cementSandWaterFoam = 'cement + sand + water + foam by mass, of one cubic metre';
export const windowOf50Kg = 'window of 50 kg/m3 either way: common practice, no source';
export const thisBatchNeeds = (addNowLitres: string): string => `; this one needs ${addNowLitres} L more`;
export const putFoam = (foam: string, addNowLitres: string): string => `Put ${foam}${addNowLitres}.`;
export const hardlyAnyFoamLasted = 'Hardly any foam lasted: look at foam, water and mixing time before the next batch.';

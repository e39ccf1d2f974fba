/** Wording about rows of variants. */

export const tooManyVariants = (mostVariants: number): string => `That makes more than ${mostVariants} houses.`;
export const takeLargerStepOrOneThing = 'Take a larger step, or vary one thing at a time.';
export const setNamesNoValue = (set: string): string => `\`--set ${set}\` names no value to put in.`;
export const writeItLikeRange = 'Write it like `domes.hall.radius=2.5..4/0.25`.';
export const valueBetweenBarsMissing = 'A value between two bars is missing.';
export const writeItLikeChoices = 'Write it like `domes.hall.profile=catenary|pointed`.';
export const rangeHasNoStep = (part: string): string => `The range "${part}" has no step.`;
export const writeFromToStep = 'Write from, to and step like `2.5..4/0.25`.';
export const stepOfRangeMust = 'The step of a range must be more than 0.';
export const writeItLikeStep = 'Write it like `2.5..4/0.25`.';
export const takeLargerStep = 'Take a larger step.';
export const setOption = (set: string): string => `--set ${set}`;
export const variants = 'Variants';
export const floor = 'floor';
export const blocks = 'blocks';
export const moulds = 'moulds';
export const masonry = 'masonry';
export const materials = 'materials';
export const noCurrency = 'no currency';
export const safetyFactor = 'safety factor';
export const fails = 'fails';
export const attention = 'attention';
export const worstCheck = 'worst check';
export const safetyFactorIsLeast =
  'The safety factor is the least geometric factor of domes, arches and piers; 2 is asked for. Costs are of materials alone; an empty one is unknown.';
export const preliminaryFigures = 'Preliminary figures, to be confirmed by a licensed engineer and the local code.';

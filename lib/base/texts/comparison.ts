/** Wording of the comparison of two houses. */

export const figures = 'Figures';
export const figure = 'figure';
export const unit = 'unit';
export const before = 'before';
export const after = 'after';
export const change = 'change';
export const mouldsColumn = 'moulds';
export const costOfMaterials = 'cost of materials';
export const leastGeometricFactor = 'least geometric factor of safety';
export const checksThatFail = 'checks that fail';
export const checksThatNeedAttention = 'checks that need attention';
export const noCurrency = 'no currency';
export const costsAreInBefore = (before: string, after: string): string =>
  `Costs are in ${before} before and ${after} after.`;
export const blocksByMark = 'Blocks by mark';
export const dome = 'dome';
export const asBefore = 'as before';
export const otherShapeOrPlace = 'other shape or place';
export const goneState = 'gone';
export const newWord = 'new';
export const moulds = 'Moulds';
export const howMany = 'how many';
export const names = 'names';
export const mouldsAreAlikeWhen =
  'Moulds are alike when their inner sizes are the same to half a millimetre, whatever they are called.';
export const costs = 'Costs';
export const item = 'item';
export const noCostsAreKnown = 'No costs are known: give `prices`.';
export const emptyCostIsUnknown = 'An empty cost is unknown, not zero.';
export const checksThatChanged = 'Checks that changed';
export const check = 'check';
export const whatItSays = 'what it says';
export const noCheckChanged = 'No check changed its state.';

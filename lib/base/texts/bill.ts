/** Wording of the bill of quantities and costs. */

export const quantityNotComputed = 'quantity not computed';
export const noPriceGiven = 'no price given';
export const pricedPerCounted = (unit: string, measure: string): string => `priced per ${unit}, counted in ${measure}`;
export const everyLineOfBill = 'Every line of the bill has its price.';
export const totalCostIsUnknown = (missing: number, lines: number): string =>
  `The total cost is unknown: ${missing} of ${lines} lines of the bill lack a price or a quantity.`;
export const knownCosts = 'known costs';
export const sumOfAmountPrice = 'sum of amount × price over the lines that have both';
export const derivedPricesFromDescription = 'derived; prices from the description';
export const priceListOfDescription = 'the price list of the description';
export const missingGivePricesLike = (listed: string): string =>
  `Missing: ${listed}. Give prices like \`prices: { currency: EUR, cement: { per: 25 kg, price: 6.20 } }\`.`;
export const priceForNothing = (item: string): string => `The price of "${item}" is for nothing in the bill.`;
export const itemsNamed = (names: string): string => `Items: ${names}.`;
export const didYouMean = (near: string): string => `Did you mean "${near}"?`;
export const renderInsideWithReveals = 'render inside, with reveals';
export const renderOutsideWithBarrels = 'render outside, with barrels';
export const partitionsDoorsLeftOut = 'partitions, doors left out';
export const meshInOutsideRender = 'mesh in the outside render';
export const waterproofingOutside = 'waterproofing outside';
export const ringTies = 'ring ties';
export const laggingStripsOfCentering = 'lagging strips of the centering';
export const ribsOfCentering = 'ribs of the centering';

/** Wording that the report's page has of its own. */

export const cautions = 'Cautions';
export const allChecks = (tally: string): string => `All checks: ${tally}`;
export const state = 'state';
export const whatIsChecked = 'what is checked';
export const demandOverCapacity = 'demand / capacity';
export const demand = 'demand';
export const capacity = 'capacity';
export const ratioAndSource = (ratio: string, source: string): string =>
  `${ratio === '' ? '' : `demand / capacity ${ratio}. `}Source: ${source}.`;
export const withInputs = (inputs: string): string => `with ${inputs}`;
export const sourceOf = (source: string): string => `source: ${source}`;
export const limitOf = (limit: string): string => `limit: ${limit}`;
export const overThousand = 'over 1000';

/** Wording of the script of the model's page. */

export const noMarkIsLike = 'No mark is like that.';
export const oneFound = 'One found.';
export const foundCount = (count: number): string => `${count} found.`;
export const stepOf = (step: number, count: number, label: string): string => `${step} of ${count}: ${label}`;
export const clickTapOrPress = 'Click, tap or press Enter on a block to read it.';

/** Wording of loads and results of statics. */

export const asceCombination = 'the greater of 1.4 dead and 1.2 dead + 1.6 snow';
export const enCombinationSource = 'EN 1990, 6.4.3.2, eq. 6.10 (from memory)';
export const asceCombinationSource = 'ASCE 7-16, 2.3.1 (from memory)';

/** Wording of loads and results of statics. */

export const asceCombination = 'the greater of 1.4 dead and 1.2 dead + 1.6 snow';
export const enCombinationSource = 'EN 1990, 6.4.3.2, eq. 6.10 (from memory)';
export const enStrengthSource = 'EN 1990, 6.4.3.2, eq. 6.10, Table A1.2(B), STR (from memory)';
export const enBalanceSource = 'EN 1990, 6.4.3.2, eq. 6.10, Table A1.2(A), EQU (from memory)';
export const enSeismicSource = 'EN 1990, 6.4.3.4, eq. 6.12b (from memory)';
export const asceSeismicSource = 'ASCE 7-16, 2.3.6 (from memory)';
/** A combination with an earthquake's upright part, which presses or lifts. */
export const withUpright = (formula: string, presses: boolean): string => `${formula} ${presses ? '+' : '−'} Ev`;
export const enUprightSource = 'EN 1998-1:2004, 4.3.3.5.2 (4) (from memory)';
export const asceUprightSource = 'ASCE 7-16, 12.4.2.2 (from memory)';
export const asceCombinationSource = 'ASCE 7-16, 2.3.1 (from memory)';
export const enCombination = '1.35 dead + 1.5 snow';

/** Wording of the script of the model's page. */

export const noMarkIsLike = 'No mark is like that.';
export const oneFound = 'One found.';
export const foundCount = (count: number): string => `${count} found.`;
export const stepOf = (step: number, count: number, label: string): string => `${step} of ${count}: ${label}`;
export const clickTapOrPress = 'Click, tap or press Enter on a block to read it.';
export const noWebGl = 'This browser can’t draw in three dimensions: it has no WebGL 2, or it is switched off.';
export const noShader = 'The graphics card gave no shader.';
export const shaderRefused = (log: string | null): string => `The graphics card refused a shader: ${log}`;

/** One number for a cell of a plane grid, as a key; cells far apart may share one, and are told apart by what they hold. */
export const cellKey = (x: number, y: number): number => x * 1000003 + y;

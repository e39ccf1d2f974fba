/** A stretch of bearings that one view unrolls. */
export interface Sector {
  readonly from: number;
  readonly to: number;
}

/** Halves of a ring, east then west: together all round. */
export const HALVES: readonly Sector[] = [
  { from: 0, to: Math.PI },
  { from: Math.PI, to: 2 * Math.PI },
];

/** A bearing taken into the turn that begins where a sector does. */
export const into = (bearing: number, { from }: Sector): number => {
  const turn = 2 * Math.PI;
  return bearing - turn * Math.floor((bearing - from) / turn);
};

import type { Pair, PairSection } from '../../lib/statics/pair-programme.js';

/**
 * A pair of lunes of a hemisphere of radius 1 and unit weight 1, by closed forms (derived): weight, moment and height of
 * the cap above an angle from the crown, each radian; part c of the weight pushes towards the second half.
 */
export const hemisphere = (t: number, c: number, count = 180): Pair => {
  const [inner, outer] = [1 - t / 2, 1 + t / 2];
  const cube = (outer ** 3 - inner ** 3) / 3;
  const fourth = (outer ** 4 - inner ** 4) / 4;
  const half = (sign: 1 | -1): PairSection[] =>
    Array.from({ length: count + 1 }, (_, i) => {
      const a = (Math.PI / 2) * (i / count);
      const weight = cube * (1 - Math.cos(a));
      return {
        middle: [Math.sin(a), Math.cos(a)],
        half: [(t / 2) * Math.sin(a), (t / 2) * Math.cos(a)],
        weight,
        moment: (fourth * (a - Math.sin(a) * Math.cos(a))) / 2,
        push: sign * c * weight,
        pushMoment: (sign * c * fourth * Math.sin(a) ** 2) / 2,
        tied: i === count,
      };
    });
  return { halves: [half(-1), half(1)], tie: null };
};
/** What one lune of it weighs. */
export const luneWeight = (t: number) => ((1 + t / 2) ** 3 - (1 - t / 2) ** 3) / 3;

/** Where a function with one valley between two ends is least, by golden section. */
export const goldenLeast = (of: (x: number) => number, from: number, to: number, steps: number): number => {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  for (let i = 0; i < steps; i++) {
    const [a, b] = [high - golden * (high - low), low + golden * (high - low)];
    if (of(a) <= of(b)) high = b;
    else low = a;
  }
  return (low + high) / 2;
};

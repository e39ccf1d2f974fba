import { NOISE, ROOT } from '../base/tolerances.js';

/**
 * Root of a monotone function between `low` and `high` by bisection with secant steps (Illinois rule).
 * The function's values at the ends must differ in sign or be zero; otherwise the end nearer to zero is returned.
 */
export function monotoneRoot(f: (x: number) => number, low: number, high: number, tolerance = ROOT): number {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (fa > 0 === fb > 0) return Math.abs(fa) < Math.abs(fb) ? a : b;
  for (let i = 0; i < 200 && Math.abs(b - a) > tolerance; i++) {
    let x = i % 3 === 2 ? (a + b) / 2 : (a * fb - b * fa) / (fb - fa);
    if (!(x > Math.min(a, b) && x < Math.max(a, b))) x = (a + b) / 2;
    const fx = f(x);
    if (fx === 0) return x;
    if (fx > 0 === fb > 0) {
      b = x;
      fb = fx;
      fa /= 2;
    } else {
      a = x;
      fa = fx;
      fb /= 2;
    }
  }
  return (a + b) / 2;
}

/**
 * Root between `low` and `high` of a function that rises with a known slope: Newton's steps from `start`, kept
 * within the bracket by halving. Stops when a step no longer changes the place by more than float64's noise.
 */
export function steepRoot(
  f: (x: number) => number,
  slope: (x: number) => number,
  low: number,
  high: number,
  start: number,
): number {
  let a = low;
  let b = high;
  let x = Math.min(high, Math.max(low, start));
  for (let i = 0; i < 100; i++) {
    const fx = f(x);
    if (fx === 0) return x;
    if (fx > 0) b = x;
    else a = x;
    const next = x - fx / slope(x);
    const inside = next >= a && next <= b;
    const to = inside ? next : (a + b) / 2;
    if (Math.abs(to - x) <= NOISE * Math.max(Math.abs(a), Math.abs(b))) return to;
    x = to;
  }
  return x;
}

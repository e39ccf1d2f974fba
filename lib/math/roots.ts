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
 * Where a continuous function changes its sign between two places at which its values are known, by the Illinois rule:
 * until a step moves the place by less than `step`. Where the function has no value (NaN) the search ends.
 */
export function signChange(
  f: (x: number) => number,
  [from, atFrom]: readonly [number, number],
  [to, atTo]: readonly [number, number],
  step: number,
): number {
  let [a, fa, b, fb] = [from, atFrom, to, atTo];
  let x = b;
  for (let i = 0; i < 60; i++) {
    const next = fa === fb ? (a + b) / 2 : (a * fb - b * fa) / (fb - fa);
    const moved = Math.abs(next - x);
    x = next;
    if (moved < step) break;
    const fx = f(x);
    if (fx === 0 || Number.isNaN(fx)) break;
    if (fx > 0 === fb > 0) fa /= 2;
    else {
      a = b;
      fa = fb;
    }
    b = x;
    fb = fx;
  }
  return x;
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

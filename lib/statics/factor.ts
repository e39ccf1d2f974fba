import { FACTOR_STEP } from '../base/tolerances.js';

/** Factors beyond this are told as this. */
const GREATEST_FACTOR = 100;
/** Masonry isn't made thicker than this many times to look for a thrust. */
const MOST_SHARE = 32;
/** Bisection would take twenty steps. */
const MOST_GUESSES = 12;
/** A second look this much nearer shows the way from the first. */
const NEARER = 0.9;
/** From so many steps off, a guess is tried as the answer. */
const NEAR_STEPS = 20;

/** A share and by how much a thrust fits there. */
type Tried = readonly [share: number, margin: number];

/** The least share that fits and the step before it, which doesn't. */
interface Turn {
  readonly fits: number;
  readonly fails: number;
}

/**
 * The greatest 1 / share for which a thrust fits, to the step of a bisection; 0 where masonry is never thick enough.
 * `margin` gives by how much it fits, negative where it doesn't. A guess is looked at first: where it is right, two
 * looks show that.
 */
export function factorBy(margin: (share: number) => number): number {
  const guessed = guessTurn(margin);
  if (guessed) return 1 / guessed.fits;
  const found = turnOf((share) => margin(share) >= 0);
  return found ? Math.min(GREATEST_FACTOR, 1 / found.fits) : 0;
}

/** Where a straight line through two tries reaches 0. */
const through = ([a, atA]: Tried, [b, atB]: Tried): number => b - (atB * (b - a)) / (atB - atA);

/**
 * The step at which a margin turns; `null` where that doesn't settle. Where a thrust fits, its margin runs nearly
 * straight, so that two such tries show the way; where none does, it tells little from afar.
 */
function guessTurn(margin: (share: number) => number): Turn | null {
  const look = (share: number): Tried => [share, margin(share)];
  let fits = look(1);
  let fails: Tried = [1 / GREATEST_FACTOR, Number.NEGATIVE_INFINITY];
  while (!(fits[1] >= 0)) {
    if (fits[0] >= MOST_SHARE) return null;
    fails = fits;
    fits = look(2 * fits[0]);
  }
  let before: Tried | null = null;
  let failed = 0;
  const learn = (tried: Tried): boolean => {
    const stands = tried[1] >= 0;
    if (stands) [before, fits, failed] = [fits, tried, 0];
    else [before, fails, failed] = [null, tried, failed + 1];
    return stands;
  };
  let next = NEARER * fits[0];
  for (let i = 0; i < MOST_GUESSES; i++) {
    learn(look(next));
    const way = through(before ?? fails, fits);
    const last = next;
    const inside = failed < 2 && way > fails[0] && way < fits[0];
    next = inside ? way : (fails[0] + fits[0]) / 2;
    if (!inside || Math.abs(next - last) > NEAR_STEPS * FACTOR_STEP * next) continue;
    const turn = turnOf((share) => share >= way);
    if (turn && learn(look(turn.fits)) && !learn(look(turn.fails))) return turn;
  }
  return null;
}

/** The least share that fits and the step before it, which doesn't; `null` when masonry is never thick enough. */
function turnOf(fits: (share: number) => boolean): Turn | null {
  let high = 1;
  while (!fits(high)) {
    high *= 2;
    if (high > MOST_SHARE) return null;
  }
  let low = high / 2;
  if (high === 1) {
    while (fits(low)) {
      high = low;
      low /= 2;
      if (high <= 1 / GREATEST_FACTOR) return { fits: 1 / GREATEST_FACTOR, fails: 0 };
    }
  }
  while (high - low > FACTOR_STEP * high) {
    const middle = (low + high) / 2;
    if (fits(middle)) high = middle;
    else low = middle;
  }
  return { fits: high, fails: low };
}

/**
 * Revised lifting equation: heaviest load for one person lifting with two hands, kg. Distances cm, twist degrees.
 * Source: NIOSH Publication 94-110, Applications Manual for the Revised NIOSH Lifting Equation, 1994, rev. 2021
 * (twist, frequency and coupling multipliers from memory).
 */
export interface Lift {
  /** Of the hands from the middle of the ankles. */
  readonly horizontal: number;
  /** Of the hands above the ground. */
  readonly vertical: number;
  readonly travel: number;
  readonly twistDeg: number;
  /** Multipliers read from the manual's tables. */
  readonly frequency: number;
  readonly coupling: number;
}

export const recommendedLiftKg = ({ horizontal, vertical, travel, twistDeg, frequency, coupling }: Lift): number =>
  23 *
  Math.min(1, 25 / horizontal) *
  (1 - 0.003 * Math.abs(vertical - 75)) *
  Math.min(1, 0.82 + 4.5 / travel) *
  (1 - 0.0032 * twistDeg) *
  frequency *
  coupling;

/** Laying a block at chest height: two lifts a minute for two hours, fair grip. An example, not a rule. */
export const LAYING_LIFT: Lift = {
  horizontal: 40,
  vertical: 120,
  travel: 60,
  twistDeg: 30,
  frequency: 0.84,
  coupling: 0.95,
};
/** Above this, one person's repeated lifting is high risk: HSE Construction Information Sheet 37. */
export const HIGH_RISK_KG = 20;

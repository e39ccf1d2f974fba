/** The only tolerances of the library, millimetres unless the name says otherwise. */

/** Two points nearer than this are one point. Far under any dimension cut or cast, far over float64 noise at 100 m. */
export const SAME_POINT = 1e-6;
/** Default greatest distance between a facet of a solid and the surface that it stands for. */
export const DEFAULT_SURFACE = 2;
/** Root finding on analytic curves stops at this step. */
export const ROOT = 1e-10;
/** Angles nearer than this are one angle (radians; 1e-9 rad is 10 µm at 10 km). */
export const SAME_ANGLE_RAD = 1e-9;
/** Coefficients and prices of a linear programme under this are 0; its limits are scaled to be near 1. */
export const PROGRAMME = 1e-11;
/** A thrust that misses a section by less than this part of load times size still passes it. */
export const THRUST_MISS = 1e-9;
/** Relative step at which the search for a geometric factor ends: a tenth of what finer sections may move it by. */
export const FACTOR_STEP = 5e-6;
/** Step at which the search for the friction that is needed ends; it is told to two digits. */
export const FRICTION_STEP = 0.01;
/** Part of a shell's size from the axis within which the crown's own formulas hold. */
export const AT_CROWN = 1e-9;

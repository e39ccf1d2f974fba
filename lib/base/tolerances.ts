/** The only tolerances of the library, millimetres unless the name says otherwise. */

/** Two points nearer than this are one point. Far under any dimension cut or cast, far over float64 noise at 100 m. */
export const SAME_POINT = 1e-6;
/** Default greatest distance between a facet of a solid and the surface that it stands for. */
export const DEFAULT_SURFACE = 2;
/** Root finding on analytic curves stops at this step. */
export const ROOT = 1e-10;
/** Angles nearer than this are one angle (radians; 1e-9 rad is 10 µm at 10 km). */
export const SAME_ANGLE_RAD = 1e-9;
/** A step smaller than this share of a number is float64's own rounding. */
export const NOISE = 4e-16;

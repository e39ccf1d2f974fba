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
/** A count this near to a whole number is that whole number, whatever rounding added. */
export const WHOLE = 1e-6;
/** Two shares along one curve or edge nearer than this are one. */
export const SAME_SHARE = 1e-9;
/** Directions whose sine is smaller than this are parallel. */
export const PARALLEL = 1e-12;
/** Two unit normals face the same way where their product misses 1 by less. */
export const SAME_FACING = 1e-6;
/** How far beside an edge of a region it is asked what lies there. */
export const BESIDE_EDGE = 1e-3;
/** How far inside the ends of a stretch its outermost samples lie, in their spacing: an end is often a corner too. */
export const END_INSET = 1e-3;
/** A bearing that is offered as a mend is sought to this step, radians. */
export const TURN_SEARCH_RAD = 1e-4;
/** Edge of the cube that stands for a point inside the geometry kernel. */
export const SPECK = 1e-3;
/** Weight of a turned normal against a distance, where a facet lies at the common end of two edges. */
export const TURNED_NORMAL = 1e-3;
/** A cut that takes less than this share of a block's volume is no cut. */
export const NO_CUT = 1e-6;
/** Relative error of the masonry balance that still counts as nothing lost, with cuts. */
export const BALANCE_LIMIT = 1e-4;
/** A text's width in the font of a file differs from the laid-out one by less, in ems: rounding of metrics alone. */
export const SAME_WIDTH = 1e-3;

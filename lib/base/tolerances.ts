/** The only tolerances of the library, millimetres unless the name says otherwise. */

/** Two points nearer than this are one point. Far under any dimension cut or cast, far over float64 noise at 100 m. */
export const SAME_POINT = 1e-6;
/** Default greatest distance between a facet of a solid and the surface that it stands for. */
export const DEFAULT_SURFACE = 2;
/** Root finding on analytic curves stops at this step. */
export const ROOT = 1e-10;
/** Angles nearer than this are one angle (radians; 1e-9 rad is 10 µm at 10 km). */
export const SAME_ANGLE_RAD = 1e-9;
/** An angle smaller than this (radians) is rounding: 1e-8 mm on a dome of 20 m. */
export const NEGLIGIBLE_RAD = 1e-13;
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
/** Coefficients and prices of a linear programme under this are 0; its limits are scaled to be near 1. */
export const PROGRAMME = 1e-11;
/** Limits whose part across those taken before them is smaller start no search: they are nearly the same limit. */
export const PROGRAMME_START = 1e-7;
/** So near above and below a ring tie sections are cut, mm: its pull is a step in the thrust. */
export const BESIDE_TIE = 0.01;
/** A thrust that misses a section by less than this part of load times size still passes it. */
export const THRUST_MISS = 1e-9;
/** Relative step at which the search for a geometric factor ends: a tenth of what finer sections may move it by. */
export const FACTOR_STEP = 5e-6;
/** Step at which the search for the friction that is needed ends; it is told to two digits. */
export const FRICTION_STEP = 0.01;
/** Part of a shell's size from the axis within which the crown's own formulas hold. */
export const AT_CROWN = 1e-9;
/** A thrust nearer to a face than this share of the depth counts as so near: its stress stays a number. */
export const LEAST_DEPTH = 1e-3;
/** Where the sine of the slope is smaller, the crown's own formulas hold. */
export const FLAT_CROWN = 1e-3;
/** Relative error of a dome's weight that still counts as nothing lost. */
export const WEIGHT_BALANCE = 1e-9;
/** Outlines on the ground that come nearer than this meet. */
export const GROUND_MEETING = 1e-4;
/** How far beside an outline on the ground it is asked what lies there. */
export const GROUND_BESIDE = 0.05;
/** Days nearer than this are one day: finer than any rate of courses a day. */
export const SAME_DAY = 1e-9;
/** A text's width in the font of a file differs from the laid-out one by less, in ems: rounding of metrics alone. */
export const SAME_WIDTH = 1e-3;

/** Sizes and levels nearer than this are written as the same whole millimetre, and so told once. */
export const ONE_SIZE = 0.5;

/* Drawings: model mm, unless paper is named. */

/** Greatest distance of a drawn curve from the true one: 0.005 mm on paper at 1:20. */
export const DRAWN_CURVE = 0.1;
/** The same for meridians; a plane nearer than this to an axis passes it. */
export const MERIDIAN_CURVE = 1e-3;
/** The same for what an upright plane cuts, and for radii that are read off a chain of arcs: far under `CUT_POINT`, so that what meets stays met. */
export const CUT_CURVE = 2e-5;
/** Spacing of the places at which an edge is asked whether it is seen, and of those on joints. */
export const SIGHT_STEP = 80;
export const SIGHT_STEP_JOINT = 250;
/** A place where an edge goes out of sight is found to this. */
export const SIGHT_CHANGE = 0.005;
/** An edge is looked at from this far on both sides of it, for rays along a face hit or miss it by rounding. */
export const SIGHT_ASIDE = 0.004;
/** The direction of a line's picture is taken between places this far apart; nearer than `END_ON`, it is seen end on. */
export const PICTURE_STEP = 0.05;
export const END_ON = 1e-9;
/** What is thinner than this hides nothing, and lies on the same surface. */
export const THIN_MASONRY = 0.25;
/** Faces turned from square to the view by less than this (radians) show nothing of themselves. */
export const EDGE_ON_RAD = 1e-6;
/** Faces that turn by less than this (radians, 3 degrees) run on into one another to the eye: no line between them. */
export const CREASE_RAD = 0.05;
/** Two edges of an outline that turn by more than this (radians) have a corner between them. */
export const CORNER_RAD = 1e-3;
/** Ends of strokes nearer than this meet. */
export const STROKES_MEET = 1e-3;
/** Ends of a chain in a finished view that are nearer than this meet: far under a line's width at any scale. */
export const CHAIN_MEET = 0.01;
/** Lines nearer than this to one another fall on one line on paper; a circle seen flatter than this is a line. */
export const ONE_LINE = 0.02;
/** Points of a cut's outline nearer than this are one; what lies beside an outline is asked at `CUT_BESIDE`. */
export const CUT_POINT = 2e-4;
export const CUT_BESIDE = 2e-3;
/** A level cut keeps this far from crowns, sills and springings: a thousandth of a line's width on paper at 1:50. */
export const CLEAR_LEVEL = 0.01;
/** How far inside its depth an outline under the floor is taken, as a share of the depth. */
export const UNDER_FLOOR_SHARE = 1e-3;
/** Points nearer than this on paper (mm) are one point of a mark. */
export const PAPER_POINT = 0.01;

/** How fine drawings are computed, model mm. */

/** Greatest distance of a traced curve from the true one: 0.005 mm on paper at 1:20. */
export const TRACE = 0.1;
/** The same for meridians that areas are taken from. */
export const TRACE_FINE = 1e-3;
/** Spacing of the places at which an edge is asked whether it is seen, and of those on joints. */
export const SAMPLE = 80;
export const SAMPLE_JOINT = 250;
/** A place where an edge goes out of sight is found to this. */
export const CHANGE = 0.005;
/** An edge is looked at from this far on both sides of it, for rays along a face hit or miss it by rounding. */
export const ASIDE = 0.004;
/** What is thinner than this hides nothing, and lies on the same surface. */
export const THIN = 0.25;
/** Ends nearer than this meet. */
export const MEET = 1e-3;
/** Points of a cut's outline nearer than this are one; what lies beside an outline is asked at `BESIDE`. */
export const OUTLINE = 2e-4;
export const BESIDE = 2e-3;
/** The same where an upright plane grazes domes beside their axes, which makes more of a traced meridian's error. */
export const BESIDE_GRAZED = 0.02;

/** A level cut keeps this far from crowns, sills and springings, mm: a thousandth of a line's width on paper at 1:50. */
export const CLEAR_LEVEL = 0.01;

import * as texts from '../base/texts/rooms.js';
import { SQUARE_FOOT_M2 } from '../base/units.js';

/**
 * Sizes of the International Residential Code, 2021 edition, as information; where the house stands another code, or
 * another edition of this one, may govern. Lengths mm, areas m2; converted exactly from feet and inches.
 * R303.1, R305.1, R310.2 and R311.2 as read in secondary copies, the rest from memory.
 */

const INCH = 25.4;

export const EDITION = 'IRC 2021';
export const clause = (name: string, how = texts.readInSecondaryCopy): string => `${EDITION}, ${name} (${how})`;

/** R304.1, R304.2: habitable rooms but kitchens. */
export const LEAST_ROOM = { area: 70 * SQUARE_FOOT_M2, width: 84 * INCH };
/** R304.3, R305.1: under this no floor counts. */
export const LEAST_HEADROOM = 60 * INCH;
/** R305.1: over half of the floor that is asked for. */
export const FULL_HEADROOM = 84 * INCH;
/** R305.1: bathrooms, toilets, laundries. */
export const BATH_HEADROOM = 80 * INCH;
/** R303.1: of the room's floor. */
export const LIGHT_SHARE = 0.08;
export const AIR_SHARE = 0.04;
/** R303.3: glazing of a bathroom without a fan, half of it to open. */
export const BATH_GLAZING = 3 * SQUARE_FOOT_M2;
/** R310.2.1 to R310.2.3: emergency escape and rescue openings; `grade` with the sill near the ground. */
export const ESCAPE = {
  area: 5.7 * SQUARE_FOOT_M2,
  gradeArea: 5 * SQUARE_FOOT_M2,
  height: 24 * INCH,
  width: 20 * INCH,
  sill: 44 * INCH,
};
/** R311.2: the one egress door of a dwelling. */
export const EGRESS_DOOR = { width: 32 * INCH, height: 78 * INCH };
/** R311.3.1: landing below the threshold of the egress door; the second where it doesn't swing over the landing. */
export const LANDING = { most: 1.5 * INCH, notSwung: 7.75 * INCH };

/** Wording of the checks of casting and laying works. */

export const derivedFromMixerCrew = 'derived from mixer, crew and hours of the description';
export const noBlockCan = 'No block can be cast in a day: there is no calendar.';
export const raiseCastingCrew =
  'Raise `casting.crew` or `casting.hours-per-day`, or lower `casting.minutes-per-block`.';
export const useLargerMixer = 'Use a larger mixer, or make the blocks smaller.';
export const mixerDeliversEnough = 'The mixer delivers enough for the pours of a day.';
export const missingInputCastingMixer = 'Missing input: `casting.mixer`; the calendar counts with the crew alone.';
export const mixerDeliversEachArch = 'The mixer delivers each arch ring and vault in one day, without a cold joint.';
export const concernedUseLargerMixer = (overDay: string): string =>
  `Concerned: ${overDay}. Use a larger mixer or a second one, lay the ring of voussoirs, or have the engineer place a joint square to the ring.`;
export const allBlocksAreCast = 'All blocks are cast in the days asked for.';
export const blocksCannotBeCast = (least: number): string =>
  `All blocks can't be cast in the days asked for; the least possible is ${least} ${least === 1 ? 'day' : 'days'}.`;
export const daysOfCasting = 'days of casting';
export const piecesPoursDayRounded = 'pieces / pours a day, rounded up, where moulds are no limit';
export const daysAsked = 'days asked for';
export const giveAtLeastCasting = (least: number): string =>
  `Give at least \`casting.target-days: ${least}\`, a larger crew, longer days, or a larger mixer.`;

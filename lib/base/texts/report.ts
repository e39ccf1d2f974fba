/** Wording of the report: headings of its parts and of its diagrams. */

export const drawnBy = 'Drawn by';
export const wallAndDryDensity = (thickness: string, dryDensity: string): string =>
  `${thickness}, dry density ${dryDensity}`;
export const checksTitle = (title: string): string => `${title}: checks`;
export const forcesAndThrust = (id: string): string => `Forces and thrust of dome ${id}`;
export const notGiven = 'not given';
export const seismicCoefficient = 'seismic coefficient';
export const seismicVertical = 'its upright part';
export const combinedBy = (combinations: string): string => `combined by ${combinations}`;
export const alongMeridian = (unit: string): string => `along the meridian, ${unit}`;
export const roundHoops = (unit: string): string => `round the hoops, ${unit}`;
export const tensionBelow = (hoopTurnZ: string): string => `tension below ${hoopTurnZ}`;
export const membraneForcesOfDome = (id: string): string => `Membrane forces of dome ${id}`;
export const forcesInUncrackedShell = (snow: number, hasHoopTurnZ: boolean): string =>
  `Forces in the uncracked shell, without load factors. Compression outward (grey), tension inward (red), filled under dead load${snow ? ', dashed under dead load and snow' : ''}. ${hasHoopTurnZ ? 'No hoop is in tension under dead load.' : 'Masonry bears no tension: where hoops pull, they crack and the lunes push outward.'}`;
export const ringsClosedAbove = (cutZ: string): string => `rings closed above ${cutZ}`;
export const lineOfThrust = (id: string): string => `Line of thrust of dome ${id}`;
export const noThrustFits = (id: string, loads: string): string =>
  `No thrust fits into dome ${id} at any thickness under ${loads}.`;
export const geometricFactor = (factor: string): string => `geometric factor ${factor}`;
export const noThrustFitsIntoWall = 'no thrust fits into the wall itself: the line drawn leaves it';
export const leastThrustAtFoot = (least: string): string => `least thrust at the foot ${least} per radian`;
export const thrustCaption = (loads: string, factor: string, least: string): string =>
  `The line of thrust that keeps farthest from the faces (red), under ${loads}: ${factor}, ${least}. Light: the wall; darker: its middle half, in which the line stays from a factor of 2 on.`;
export const number = 'Number';
export const revision = 'Revision';
export const date = 'Date';
export const address = 'Address';
export const client = 'Client';
export const loads = 'Loads';
export const wall = 'Wall';
export const undated = 'undated';
export const snow = 'snow';
export const wind = 'wind';

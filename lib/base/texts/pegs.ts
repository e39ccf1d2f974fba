/** Wording about setting out: datum pegs and the radius pole. */

export const axis = (id: string): string => `${id} axis`;
export const onLine = 'on the line';
export const faceOuterCorner = (id: string, side: string): string => `${id} face, outer corner ${side}`;
export const faceOuterCornerLeft = (id: string): string => `${id} face, outer corner left`;
export const passageMiddleAt = (id: string, domeId: string): string => `${id}, middle at ${domeId}`;
export const pegMark = (id: string): string => `${id} mark`;
export const jambOnLeft = 'jamb on the left';
export const jambOnRight = 'jamb on the right';
export const footingInnerEdge = 'footing, inner edge of the trench';
export const wallInside = 'wall, inside';
export const wallOutside = 'wall, outside';
export const footingOuterEdge = 'footing, outer edge of the trench';
export const slabEdge = 'slab, edge';

/** What is said of a solid that cannot be made. */

export const revolvingItsOutline = 'revolving its outline';
export const pushingItsOutlineAlong = 'pushing its outline along';
export const bendingItsOutline = 'bending its outline';
export const pushingItsOutlineUp = 'pushing its outline up';
export const closingItsTriangles = 'closing its triangles';
export const operationOf = (operation: string, names: string): string => `the ${operation} of ${names}`;

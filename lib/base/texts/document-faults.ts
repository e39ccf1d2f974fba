/** What audits say of documents that are not well made. */

export const scaleIsNotPositive = (scale: number): string => `The scale 1 : ${scale} isn't positive and finite.`;
export const dimensionOfType = (type: string): string => `${type} dimension`;
export const hasNumberNotFinite = (primitive: string, field: string): string =>
  `The ${primitive} has a ${field} that isn't a finite number.`;
export const primitiveFault = (primitive: string, fault: string): string => `The ${primitive} ${fault}`;
export const liesOnLayer = (layer: string): string => `lies on a layer "${layer}" that does not exist.`;
export const hasPatternThatDoes = (pattern: string): string => `has a pattern "${pattern}" that does not exist.`;
export const hasNoRadius = 'has no radius.';
export const mustHaveMajorHalf = 'must have a major half axis and a ratio in (0, 1].';
export const hasNoHeight = 'has no height.';
export const measuresNothingItsPoints = 'measures nothing: its points coincide along its direction.';
export const mustMeasureLess = 'must measure less than 180 degrees; exchange its two rays.';
export const hasItsArc = 'has its arc in its own centre.';
export const hasNoName = 'has no name.';
export const hasNoSegments = 'has no segments.';
export const hasArcSegmentWithout = (i: number): string => `has an arc (segment ${i}) without a radius.`;
export const hasSegmentWithoutLength = (i: number): string => `has a segment (${i}) without length.`;
export const hasGapOfMm = (gap: string, i: number): string => `has a gap of ${gap} mm after segment ${i}.`;
export const triangleNamesVertex = 'a triangle names a vertex that the mesh does not have.';
export const mendSolidOrWeld = (faults: string, tolerance: number): string =>
  `${faults} Mend the solid, or weld with a wider tolerance than ${tolerance} mm.`;
export const hasNoTriangles = 'has no triangles.';
export const namesVertices = 'names vertices that it does not have.';
export const hasCorners = 'has corners that are not finite numbers.';
export const hasTrianglesWithTwo = 'has triangles with two corners in one place.';
export const leaksAtOpenEdges = 'leaks at open edges.';
export const hasEdgesShared = 'has edges shared by more than two triangles.';
export const hasNeighbouringTrianglesWound = 'has neighbouring triangles wound in opposite ways.';
export const enclosesNoPositiveVolume = 'encloses no positive volume: its triangles face inward.';
export const firstNear = (at: string, faces: string): string => ` First near (${at}) mm, face ${faces}.`;
export const countOfThem = (count: number): string => ` ${count} of them.`;
export const solidFault = (what: string, count: string, place: string): string => `the solid ${what}${count}${place}`;
export const thereIsNothing = 'there is nothing to show.';
export const materialColourIsThree = (material: string): string =>
  `material ${material}: a colour is three whole numbers from 0 to 255.`;
export const placeIsNoMotion = (node: string): string => `${node}: its place is no rigid motion.`;
export const groupIsEmpty = (node: string): string => `${node}: the group is empty.`;
export const thereIsNoMesh = (node: string, mesh: number): string => `${node}: there is no mesh ${mesh}.`;
export const thereIsNoMaterial = (node: string, material: number): string =>
  `${node}: there is no material ${material}.`;
export const rowAndColumn = (r: number, label: string, fault: string): string =>
  `Row ${r}, column "${label}": ${fault}`;
export const cellIsMissingEmpty = 'the cell is missing; an empty one is null.';
export const standsInColumnOfTexts = (cell: number): string => `${cell} stands in a column of texts.`;
export const standsInColumn = (cell: string): string => `"${cell}" stands in a column of numbers.`;
export const isNotFiniteNumber = (cell: number): string => `${cell} is not a finite number.`;
export const isNotWholeNumber = (cell: number): string => `${cell} is not a whole number.`;

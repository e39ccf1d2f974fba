/** What writers say of a document: of one that they cannot write, and of its size. */

export const thereIsNoSolid = 'there is no solid to write.';
export const bytesDontHoldTriangles = (bytes: number, triangles: number): string =>
  `${bytes} bytes don't hold the ${triangles} triangles that its head tells of.`;
export const edgesAreShared = (crowdedEdges: number, where: string | undefined): string =>
  `${crowdedEdges} edges are shared by solids that touch, first at (${where}) mm of the model. Unite the parts or write them to files of their own.`;
export const solidLeaksAsWritten = (
  openEdges: number,
  crowdedEdges: number,
  opposedEdges: number,
  degenerate: number,
  nonFinite: number,
  where: string | undefined,
): string =>
  `the solid leaks as written: ${openEdges} open, ${crowdedEdges} crowded, ${opposedEdges} opposed edges, ${degenerate} degenerate and ${nonFinite} non-finite triangles, first at (${where}) mm of the model. Choose a larger scale.`;
export const unknownPart = 'unknown part';
export const stlHeader = (title: string): string => `STL mm: ${title}`;
export const drawnAtScale = (title: string, scale: number): string => `${title}, drawn at 1 : ${scale}.`;
export const sheetOfByMm = (sheet: number, sheets: number, width: string, height: string, shown: string): string =>
  `Sheet ${sheet} of ${sheets}, ${width} by ${height} mm: ${shown}.`;
export const pdfNeedsAtLeast = 'A PDF needs at least one sheet.';
export const fontThatWasHanded =
  'The font that was handed in gives this text another width than DejaVu Sans; hand in DejaVu Sans.';
export const finiteNumber = 'a finite number';
export const wholeNumber = 'a whole number';
export const textOnOneLine = 'a text on one line';
export const handle = 'a handle';

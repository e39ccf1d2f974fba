/** Wording of title blocks and pages of templates, and what is said of sheets that are not well made. */

export const project = 'Project';
export const address = 'Address';
export const title = 'Title';
export const documentType = 'Document type';
export const legalOwner = 'Legal owner';
export const createdBy = 'Created by';
export const approvedBy = 'Approved by';
export const number = 'Number';
export const dateOfIssue = 'Date of issue';
export const rev = 'Rev.';
export const scale = 'Scale';
export const size = 'Size';
export const sheet = 'Sheet';
export const sheetOfSheets = (sheet: number, sheets: number): string => `${sheet} of ${sheets}`;
export const fullSizeThisBar = (barLength: string, units: string): string =>
  `Full size: this bar must measure ${barLength}${units === 'feet-inches' ? '' : ' mm'}.`;
export const pageAt = (title: string, place: string): string => `${title}, page ${place}`;
export const sheetOf = (project: string, title: string, sheet: number, sheets: number): string =>
  `${project}: ${title} (sheet ${sheet} of ${sheets})`;
export const theView = (title: string): string => `The view "${title}"`;
export const theNotes = 'The notes';
export const reachesOutOfFrame = (part: string, sheet: string): string =>
  `${part} reaches out of the frame of ${sheet}.`;
export const liesOnTitleBlock = (part: string): string => `${part} lies on the title block.`;
export const overlaps = (part: string, other: string): string => `${part} overlaps ${other}.`;
export const onePage = 'One page.';
export const pageOfColumns = (place: string, columns: number, rows: number): string =>
  `Page ${place} of ${columns} columns and ${rows} rows: lay crosses on crosses, join along the chain lines.`;
export const titlePartOf = (title: string, i: number, count: number): string => `${title} (${i} of ${count})`;
export const arcLength = 'arc ';

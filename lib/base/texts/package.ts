/** Wording about the package: its summary, stages and titles of files. */

export const layingCourses = 'laying courses';
export const makingSolids = 'making solids';
export const drawingMoulds = 'drawing moulds';
export const drawingTemplates = 'drawing templates';
export const writingTables = 'writing tables';
export const writingReport = 'writing the report';
export const mouldsTitle = (title: string): string => `${title}: moulds`;
export const oneMouldFiles = 'one sheet, its block and its lining';
export const manyMouldFiles = (count: number): string => `${count} sheets, each with its block and its lining`;
export const printedModelAt = (scale: number, count: number, plates: number, model: string): string =>
  `printed model at 1:${scale}: ${count} parts on ${plates} plates, about ${model} cm3 of filament`;
export const supportWantedBy = (line: string, supported: string): string => `${line}; support wanted by ${supported}`;
export const mouldsGroup = 'Moulds';
export const templatesTitle = (title: string, id: string, name: string): string =>
  `${title}: templates, ${id}, ${name}`;
export const fullSize = 'full size, to be printed at 100 %';
export const pagesToPrint = (pages: number): string => `, ${pages} pages to print`;
export const templateSummary = (drawings: number, pdf: string): string => `${drawings} drawings at full size${pdf}`;
export const drawing = 'drawing';

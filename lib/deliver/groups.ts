/** Groups of outputs, each a folder of the package; `report` is the file `report.html`. */
export const OUTPUT_GROUPS = ['drawings', 'model', 'moulds', 'templates', 'tables', 'report'] as const;
/** One group of outputs. */
export type OutputGroup = (typeof OUTPUT_GROUPS)[number];

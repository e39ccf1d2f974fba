import { tools } from '../../cli/tools.js';
import type { PdfSource } from '../../lib/writers/pdf.js';

/** What makes PDF, as the command line hands it over. */
export const nodePdf = (): Promise<PdfSource> => tools.pdf();

import { type HouseVerdict, houseReport } from '../report/house-report.js';
import { writeHtml } from '../writers/html.js';
import type { PackageFile } from './file.js';
import type { Study } from './study.js';

/** The report, one page that stands alone. */
export const reportFiles = (known: Study, verdict: HouseVerdict): PackageFile[] => [
  { path: 'report.html', bytes: writeHtml(houseReport(known.setout, known.statics, verdict)) },
];

import { houseReport } from '../report/house-report.js';
import { writeHtml } from '../writers/html.js';
import type { PackageFile } from './file.js';
import { judged } from './judged.js';
import type { Study } from './study.js';

/** The report, one page that stands alone. */
export const reportFiles = (known: Study): PackageFile[] => [
  { path: 'report.html', bytes: writeHtml(houseReport(known.setout, known.statics, judged(known))) },
];

import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/package.js';
import type { PageWords } from '../documents/page-strip.js';
import { type SheetSize, TEMPLATE_PAGES } from '../documents/sheet-size.js';
import { type Template, type TemplatePiece, templateView } from '../documents/template.js';
import { numbered, packPieces } from '../documents/tiling.js';
import { cutTemplates } from '../drawings/moulds/cut-templates.js';
import { mouldShapes, mouldTemplates, sharedPieces, workshopUnits } from '../drawings/moulds/mould-templates.js';
import { centeringTemplates } from '../drawings/templates/centering.js';
import { meridianTemplates } from '../drawings/templates/meridian.js';
import { projectWords } from '../drawings/words.js';
import type { LaidHouse } from '../masonry/block.js';
import type { MasonryPlan } from '../masonry/plan.js';
import { writeDxf } from '../writers/dxf.js';
import { type PdfSource, writePdf } from '../writers/pdf.js';
import type { DrawnSet, PackageFile } from './file.js';

/** Templates of one kind: their drawings, what is printed in parts, and on which pages. */
interface Kind {
  readonly id: string;
  readonly title: string;
  readonly templates: readonly Template[];
  readonly pieces: readonly TemplatePiece[];
  readonly pages: readonly SheetSize[];
  readonly caution: string;
}

/** Everything to be cut at full size: drawings at 1:1, and pages to be joined where a maker of PDF is given. */
export async function templateFiles(
  plan: Pick<MasonryPlan, 'setout' | 'moulds'>,
  laid: LaidHouse,
  pdf?: PdfSource,
): Promise<DrawnSet> {
  const { house } = plan.setout;
  const units = workshopUnits(plan);
  const [small, large] = units === 'feet-inches' ? TEMPLATE_PAGES.us : TEMPLATE_PAGES.iso;
  const named = (templates: readonly Template[]) =>
    templates.flatMap(({ title, pieces }) => pieces.map((piece) => ({ ...piece, name: `${title}, ${piece.name}` })));
  const shapes = mouldShapes(plan, laid);
  const moulds = mouldTemplates(shapes).map((t) => ({ ...t, id: `mould-${t.id}` }));
  const cuts = cutTemplates(plan, laid);
  const centering = centeringTemplates(plan.setout);
  const meridian = meridianTemplates(plan.setout);
  const rings = `${CAUTION.rings} ${CAUTION.authority}`;
  const kinds: readonly Kind[] = [
    {
      id: 'moulds',
      title: texts.mouldsGroup,
      templates: moulds,
      pieces: sharedPieces(shapes),
      pages: [large],
      caution: CAUTION.authority,
    },
    // Each is a marked side of a block: too many to print and join for what the table of cuts tells with four lengths.
    { id: 'cuts', title: '', templates: cuts, pieces: [], pages: [], caution: CAUTION.silica },
    {
      id: 'centering',
      title: '',
      templates: centering,
      pieces: named(centering),
      pages: [small, large],
      caution: rings,
    },
    { id: 'meridian', title: '', templates: meridian, pieces: named(meridian), pages: [small, large], caution: rings },
  ];
  const files: PackageFile[] = kinds.flatMap(({ templates, caution }) =>
    templates.map((t) => ({
      path: `templates/${t.id}.dxf`,
      bytes: writeDxf(templateView(t, units, [projectWords(house), caution])),
    })),
  );
  let pages = 0;
  for (const kind of kinds.filter((k) => pdf && k.pieces.length > 0)) {
    const words: PageWords = { title: kind.title, project: projectWords(house), caution: kind.caution };
    for (const page of kind.pages) {
      const sheets = numbered(packPieces(kind.pieces, page, words, units));
      const info = {
        title: texts.templatesTitle(house.project.title, kind.id, page.name),
        author: house.project.drawnBy,
        subject: texts.fullSize,
        date: house.project.date,
      };
      const name = page.name.toLowerCase().replace(' ', '-');
      files.push({ path: `templates/${kind.id}-${name}.pdf`, bytes: await writePdf(sheets, info, pdf as PdfSource) });
      pages += sheets.length;
    }
  }
  const drawings = kinds.reduce((sum, k) => sum + k.templates.length, 0);
  return { files, summary: texts.templateSummary(drawings, pdf ? texts.pagesToPrint(pages) : '') };
}

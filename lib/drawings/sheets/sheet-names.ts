import * as viewTexts from '../../base/texts/drawing-plans.js';
import * as texts from '../../base/texts/drawing-sheets.js';
import { SIDES } from '../elevation.js';
import type { Chapter } from './chapter.js';
import type { Page } from './page.js';

/** Title and file name of a sheet after its views; elevations are told together, and so are sections. */
export function namesOf(chapter: Chapter, { views }: Page): { title: string; id: string } {
  const ids = views.map(({ view }) => view.id);
  if (chapter.kind === 'elevations') {
    const sides = SIDES.filter((side) => ids.includes(`elevation-${side}`));
    const [only] = sides;
    if (!only || sides.length === SIDES.length) return { title: texts.elevations, id: 'elevations' };
    if (sides.length === 1) return { title: viewTexts.ELEVATIONS[only], id: `elevation-${only}` };
    return { title: texts.someElevations(sides), id: `elevations-${sides.join('-')}` };
  }
  if (chapter.kind === 'sections') {
    const letters = ids.flatMap((id) => id.match(/^section-(.*?)(-part-.*|-key)?$/)?.[1] ?? []);
    const [first, last] = [letters[0] ?? '', letters[letters.length - 1] ?? ''];
    const [from, to] = [first.toUpperCase(), last.toUpperCase()];
    if (letters.length > 1) return { title: texts.sectionsFromTo(from, to), id: `sections-${first}-${last}` };
    const isKey = ids.some((id) => id.endsWith('-key'));
    const title = viewTexts.sectionTitle(from);
    return { title: isKey ? texts.keyTitle(title) : title, id: `section-${first}${isKey ? '-key' : ''}` };
  }
  return { title: chapter.title, id: chapter.kind };
}

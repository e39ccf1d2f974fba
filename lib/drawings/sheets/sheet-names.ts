import * as texts from '../../base/texts/drawing-sheets.js';
import { SIDES } from '../elevation.js';
import type { Chapter } from './chapter.js';
import type { Page } from './page.js';

/** Title and file name of a sheet after its views; elevations are told together, and so are sections. */
export function namesOf(chapter: Chapter, { views }: Page): { title: string; id: string } {
  const ids = views.map(({ view }) => view.id);
  if (chapter.kind === 'elevations') {
    const sides = SIDES.filter((side) => ids.includes(`elevation-${side}`));
    if (sides.length === 0 || sides.length === SIDES.length) return { title: texts.elevations, id: 'elevations' };
    const noun = sides.length === 1 ? 'elevation' : 'elevations';
    return { title: capital(`${sides.join(texts.andBetween)} ${noun}`), id: `${noun}-${sides.join('-')}` };
  }
  if (chapter.kind === 'sections') {
    const sections = views.filter(({ view }) => view.id.startsWith('section-'));
    const marks = sections.map(({ view }) => view.title.replace(/^Section /, '').replace(/, part .*/, ''));
    const letters = sections.map(({ view }) => view.id.replace(/^section-/, '').replace(/-part-.*/, ''));
    const noun = sections.length === 1 ? 'section' : 'sections';
    return { title: capital(`${noun} ${range(marks, texts.toBetween)}`), id: `${noun}-${range(letters, '-')}` };
  }
  return { title: chapter.title, id: chapter.kind };
}

const capital = (text: string): string => `${text[0]?.toUpperCase()}${text.slice(1)}`;

/** The first and the last of some that follow one another. */
const range = (names: readonly string[], between: string): string =>
  names.length === 1 ? (names[0] as string) : `${names[0]}${between}${names[names.length - 1]}`;

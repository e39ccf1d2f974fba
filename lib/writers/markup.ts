import { oneLine } from '../documents/plain-text.js';

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** A text as it may stand in HTML and SVG, between tags and in attributes. */
export const escaped = (text: string): string => oneLine(text).replace(/[&<>"']/g, (sign) => ENTITIES[sign] as string);

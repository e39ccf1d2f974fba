import type { Block } from '../../documents/block.js';
import { words } from '../../documents/shapes.js';
import { wrapText } from '../../documents/text-fit.js';
import { TEXT } from '../foot-blocks.js';

/** A heading and its paragraphs, as a sheet of words has them. */
export interface TextPart {
  readonly heading: string;
  readonly paragraphs: readonly string[];
}

/** Paper mm. */
const HEADING = 3.5;
const LINE = 4.2;
const BETWEEN = 1.4;

/** A text part in a column; without a heading its lines stand as low as with one. */
export function textBlock({ heading, paragraphs }: TextPart, width: number): Block {
  let y = -HEADING;
  const primitives = heading === '' ? [] : [words('text', heading, [0, y], HEADING)];
  y -= 2.6;
  for (const paragraph of paragraphs) {
    for (const line of wrapText(paragraph, width, TEXT)) {
      y -= LINE;
      primitives.push(words('text', line, [0, y + LINE - TEXT], TEXT));
    }
    y -= BETWEEN;
  }
  return { width, height: -y, primitives };
}

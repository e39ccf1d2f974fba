import * as texts from '../../base/texts/drawing-moulds.js';
import { line } from '../../documents/segments.js';
import { stroke } from '../../documents/shapes.js';
import type { Template, TemplatePiece } from '../../documents/template.js';
import { cos, hypot, sin } from '../../math/elementary.js';
import { dot2, sub2, type Vec2 } from '../../math/vec.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { spanPoint } from '../../setout/span.js';
import { type TemplateBoard, templateBoards } from '../../works/meridian-template.js';
import { rigOf } from '../../works/radius-pole.js';
import { curveSegments } from './curves.js';
import { LABEL, label, measure, outlinePath } from './parts.js';

/** The boards of every template that turns on a mast, at full size, with the beds that its edge sets. */
export const meridianTemplates = (house: HouseSetout): Template[] =>
  house.domes
    .filter((dome) => rigOf(dome).kind === 'template')
    .map((dome) => {
      const boards = templateBoards(dome, house.house.settingOut.board);
      return {
        id: `meridian-${dome.id}`,
        title: texts.meridianTemplate(dome.id),
        pieces: boards.map((board) => boardPiece(dome, board, boards.length)),
      };
    });

/** Arcs that stand for the edge of a board: it is at most as long as a board, and misses less than a line's width. */
const ARCS = 8;
/** Length of a mark from the edge, mm. */
const MARK = 25;

function boardPiece(dome: DomeSetout, board: TemplateBoard, count: number): TemplatePiece {
  const { from, to, chord, width, number } = board;
  const low = spanPoint(dome.shell, from, 0);
  const along = sub2(spanPoint(dome.shell, to, 0), low);
  const unit: Vec2 = [along[0] / hypot(...along), along[1] / hypot(...along)];
  const flat = (v: Vec2): Vec2 => [dot2(v, unit), v[0] * unit[1] - v[1] * unit[0]];
  const edge = (s: number): Vec2 => flat(sub2(spanPoint(dome.shell, s, 0), low));
  const inward = (s: number): Vec2 => {
    const { normalRad } = dome.shell.at(s);
    return flat([-cos(normalRad), -sin(normalRad)]);
  };
  const share = (t: number): Vec2 => edge(from + t * (to - from));
  const back = Math.max(...[0.25, 0.375, 0.5, 0.625, 0.75].map((t) => share(t)[1])) - width;
  /** Where an end cut meets the straight back. */
  const foot = (s: number): Vec2 => {
    const [p, d] = [edge(s), inward(s)];
    const reach = (back - p[1]) / d[1];
    return [p[0] + reach * d[0], back];
  };
  const beds = dome.courses.filter((c) => c.part === 'shell' && c.bed > from && c.bed < to);
  return {
    name: texts.boardOf(number, count, dome.id),
    primitives: [
      outlinePath([
        ...curveSegments(share, ARCS),
        line(edge(to), foot(to)),
        line(foot(to), foot(from)),
        line(foot(from), edge(from)),
      ]),
      ...beds.flatMap((course) => {
        const [p, d] = [edge(course.bed), inward(course.bed)];
        const end: Vec2 = [p[0] + MARK * d[0], p[1] + MARK * d[1]];
        return [stroke('visible', p, end), ...label([String(course.index)], [end[0] + 2, end[1]])];
      }),
      measure(0, [0, 0], [chord, 0], [0, back + 12]),
      ...board.offsets.map((rise, i) => {
        const x = (chord * (i + 1)) / 4;
        return measure(90, [x, 0], [x, rise], [x + 4, 0]);
      }),
      ...label([texts.boardOfLowerEnd(dome.id, number, count)], [40, back + 16 + LABEL]),
    ],
  };
}

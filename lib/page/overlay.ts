import { onScreen } from '../documents/camera.js';
import type { PagePayload } from '../documents/page-payload.js';
import { cos, sin } from '../math/elementary.js';
import type { Vec3 } from '../math/vec.js';
import type { Shown } from './graphics.js';
import { belowTop, isCutAway, isShown, LabelPlaces, nameInside, placesAlong } from './labels.js';
import { middleOf, type Solids } from './solids.js';
import type { View } from './view.js';

const SVG = 'http://www.w3.org/2000/svg';
/** Half length of the strokes that end a dimension line, in pixels. */
const TICK = 5;
/** Half length of the north arrow, in pixels. */
const COMPASS = 26;

type Point = readonly [number, number];

/** Draws names, dimensions and north over the model, in lines and letters that print sharp; of what is shown alone. */
export function drawOverlay(
  svg: SVGSVGElement,
  view: View,
  { sight, cut }: Pick<Shown, 'sight' | 'cut'>,
  size: Point,
  payload: PagePayload,
  solids: Solids,
): void {
  svg.setAttribute('viewBox', `0 0 ${size[0]} ${size[1]}`);
  const drawn: SVGElement[] = [];
  const at = (p: Vec3) => onScreen(sight, p, size);
  const line = (kind: string, a: Point, b: Point) =>
    drawn.push(element('line', { class: kind, x1: a[0], y1: a[1], x2: b[0], y2: b[1] }));
  const text = (kind: string, [x, y]: Point, words: string) => {
    const made = element('text', { class: kind, x, y });
    made.textContent = words;
    drawn.push(made);
  };

  const places = new LabelPlaces();

  drawNorth();
  const opening = view.opening === null ? undefined : payload.openings[view.opening];
  const around = payload.opening.indexOf(view.opening);
  const isThere = (piece: number) => isShown(piece, liftOf(piece), view, cut, payload, solids);
  if (opening && isThere(around)) {
    const move = liftOf(around);
    const placed = (p: Vec3): Vec3 => [p[0] + move[0], p[1] + move[1], p[2] + move[2]];
    for (const { from, to, text: words } of opening.dimensions) {
      const ends = [placed(from), placed(to)] as const;
      if (!ends.every((end) => isCutAway(end, cut))) drawDimension(at(ends[0]), at(ends[1]), words);
    }
  }
  // An opening's sizes stand where its name would.
  if (view.chosen !== null && !opening && isThere(view.chosen)) {
    const middle = middleOf(solids, view.chosen);
    const move = liftOf(view.chosen);
    const name = payload.names[view.chosen] as string;
    const p = at([middle[0] + move[0], middle[1] + move[1], middle[2] + move[2]]);
    if (p) {
      const label: Point = [p[0] + 26, p[1] - 30];
      line('leader', p, label);
      const [x, y] = places.take(name, placesAlong(label, label, name));
      text('mark', [x, y - 6], name);
    }
  }
  if (view.names) {
    // Over the roof while that hides the rooms.
    const closed = !cut && view.apart === 0 && view.step === payload.steps.length - 1;
    for (const room of payload.rooms) {
      const stands = closed ? room.over : nameInside(room, cut);
      const p = stands && at(stands);
      if (p) text('room', places.take(room.text, [belowTop(p)]), room.text);
    }
  }
  svg.replaceChildren(...drawn);

  function liftOf(piece: number): Vec3 {
    const lift = payload.lifts[payload.lift[piece] ?? -1] ?? [0, 0, 0];
    return [view.apart * (lift[0] ?? 0), view.apart * (lift[1] ?? 0), view.apart * (lift[2] ?? 0)];
  }

  function drawDimension(a: Point | null, b: Point | null, words: string): void {
    if (!a || !b) return;
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const length = Math.sqrt(dx * dx + dy * dy);
    if (length < 2) return;
    line('halo', a, b);
    line('dimension', a, b);
    // Oblique strokes, as on the sheets.
    for (const p of [a, b]) line('dimension', [p[0] - TICK, p[1] + TICK], [p[0] + TICK, p[1] - TICK]);
    text('size', places.take(words, placesAlong(a, b, words)), words);
  }

  /** An arrow to true north in the lower left corner, turned as the model is. */
  function drawNorth(): void {
    const { bearingRad, elevationRad } = view.camera;
    const turn = payload.northRad - bearingRad - Math.PI;
    // Lying on the ground, but never so flat that it can't be read.
    const [x, y] = [sin(turn), -cos(turn) * Math.max(0.5, Math.abs(sin(elevationRad)))];
    const middle: Point = [COMPASS + 22, size[1] - COMPASS - 22];
    const along = (by: number, aside = 0): Point => [
      middle[0] + COMPASS * (x * by - y * aside),
      middle[1] + COMPASS * (y * by + x * aside),
    ];
    line('north', along(-1), along(1));
    line('north', along(1), along(0.6, 0.2));
    line('north', along(1), along(0.6, -0.2));
    const [tx, ty] = along(1.45);
    text('compass', [tx, ty + 5], 'N');
  }
}

function element(name: string, attributes: Readonly<Record<string, string | number>>): SVGElement {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes))
    made.setAttribute(key, typeof value === 'number' ? value.toFixed(1) : value);
  return made;
}

import { cameraOn, cornersOf, shifted, sightOf, turned, zoomed } from '../documents/camera.js';
import { atan2, hypot } from '../math/elementary.js';
import type { Vec3 } from '../math/vec.js';
import { part, startBoard } from './board.js';
import { unpackPage } from './data.js';
import { type Graphics, type Look, type Rgb, type Shown, startGraphics } from './graphics.js';
import { watchHands } from './hands.js';
import { drawOverlay } from './overlay.js';
import { middleOf, placeSolids } from './solids.js';
import { boxOf, cutPlane, firstView, type View, wholeCamera } from './view.js';

/** A turn by so many radians for each pixel that the hand moves. */
const TURN = 0.006;
/** An opening is looked up with so much round its middle, mm. */
const LOOK_UP = 1300;

const canvas = part<HTMLCanvasElement>('view');

function start(): void {
  const data = unpackPage(part<HTMLElement>('data').textContent ?? '');
  const { payload } = data;
  const solids = placeSolids(data);
  const whole = boxOf(solids, payload, 0);
  const middle = middleOf({ boxes: [whole] }, 0);
  const reach = distanceTo(middle, whole[1]);
  let drawn: readonly [number, number] = ON_PAPER;
  /** Size of the picture on the page; as it was last while paper hides it. */
  const screen = () => (canvas.clientWidth > 0 ? ([canvas.clientWidth, canvas.clientHeight || 1] as const) : drawn);
  let view = firstView(solids, payload, screen());
  let graphics = startGraphics(canvas, payload, solids);
  let waiting = false;
  let painted = '';

  const bringInLine = startBoard(payload, {
    view: () => view,
    change,
    spread,
    choose: (piece) => choose(piece, true),
    chooseOpening,
    lookFrom: (bearingRad, elevationRad) =>
      change({ camera: wholeCamera(solids, payload, screen(), { apart: view.apart, bearingRad, elevationRad }) }),
    reset: () => change({ ...firstView(solids, payload, screen()), colouring: view.colouring }),
  });

  function change(what: Partial<View>): void {
    view = { ...view, ...what };
    bringInLine(view);
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => {
      waiting = false;
      draw();
    });
  }

  /** Draws apart, and goes back as far as the model has grown. */
  function spread(apart: number): void {
    const { bearingRad, elevationRad } = view.camera;
    const all = (at: number) => wholeCamera(solids, payload, screen(), { apart: at, bearingRad, elevationRad });
    const [before, after] = [all(view.apart), all(apart)];
    const { camera } = view;
    const target = [0, 1, 2].map(
      (i) => (camera.target[i] as number) + (after.target[i] as number) - (before.target[i] as number),
    );
    const distance = (camera.distance * after.distance) / before.distance;
    change({ apart, camera: { ...camera, target: target as unknown as Vec3, distance } });
  }

  /** Pixels of the canvas for one of the page: sharp screens aren't drawn finer than twice. */
  const density = () => Math.min(2, devicePixelRatio || 1);

  function shownNow(): Shown {
    const size = [canvas.width, canvas.height] as const;
    const [low, high] = boxOf(solids, payload, view.apart);
    const { target } = view.camera;
    return {
      sight: sightOf(view.camera, size, Math.max(distanceTo(target, low), distanceTo(target, high)) + reach),
      size,
      density: size[0] / screen()[0],
      apart: view.apart,
      step: view.step,
      cut: cutPlane(view, solids, payload),
      chosen: view.chosen,
      paper: colourOf('--paper'),
      ink: colourOf('--edge'),
      accent: colourOf('--accent'),
    };
  }

  function draw(width = canvas.clientWidth * density()): void {
    const [wide, high] = screen();
    const size = [Math.max(1, Math.round(width)), Math.max(1, Math.round((width * high) / wide))] as const;
    if (canvas.width !== size[0] || canvas.height !== size[1]) [canvas.width, canvas.height] = size;
    paint(graphics);
    const shown = shownNow();
    graphics.draw(shown);
    drawOverlay(part<SVGSVGElement>('marks'), view, shown, [wide, high], payload, solids);
    drawn = [wide, high];
    document.documentElement.dataset.ready = 'yes';
  }

  /** The same view in the colours of paper, fine enough for a page's width, where printing finds it. */
  function print(): void {
    document.documentElement.classList.add('on-paper');
    draw(PRINTED);
    const copy = part<HTMLCanvasElement>('print');
    [copy.width, copy.height] = [canvas.width, canvas.height];
    copy.getContext('2d')?.drawImage(canvas, 0, 0);
  }

  /** Colours as the colouring has them, the chosen piece's own, and pale ones beside the one that is shown alone. */
  function paint(to: Graphics): void {
    const key = [view.colouring, view.only, view.chosen, view.opening].join();
    if (key === painted) return;
    painted = key;
    const { entries, of } = payload.colourings[view.colouring] as (typeof payload.colourings)[number];
    to.paint(
      of.map((entry, piece): Look => {
        if (piece === view.chosen) return { colour: CHOSEN };
        return view.only === null || view.only === entry ? (entries[entry] as Look) : { colour: PALE };
      }),
    );
  }

  function choose(piece: number | null, turn: boolean): void {
    const opening = piece === null ? null : (payload.opening[piece] ?? null);
    const step = piece === null ? view.step : Math.max(view.step, payload.step[piece] as number);
    change({ chosen: piece, opening, step });
    if (piece !== null && turn) turnTo(middleOf(solids, piece), payload.lifts[payload.lift[piece] as number]);
  }

  /** Turns the viewer to the side on which a place lies, as seen from the middle of the house. */
  function turnTo(at: Vec3, lift: readonly number[] = [0, 0, 0]): void {
    const [x, y] = [at[0] + view.apart * (lift[0] ?? 0) - middle[0], at[1] + view.apart * (lift[1] ?? 0) - middle[1]];
    if (hypot(x, y) > 1) change({ camera: { ...view.camera, bearingRad: atan2(x, y) } });
  }

  function chooseOpening(index: number): void {
    const opening = payload.openings[index];
    if (!opening) return;
    const piece = payload.opening.indexOf(index);
    const lift = payload.lifts[payload.lift[piece] ?? -1] ?? [0, 0, 0];
    const corner = (by: number) =>
      [0, 1, 2].map((i) => (opening.middle[i] as number) + view.apart * (lift[i] ?? 0) + by) as unknown as Vec3;
    const camera = cameraOn(cornersOf([corner(-LOOK_UP), corner(LOOK_UP)]), opening.fromRad + 0.35, 0.15, screen());
    change({
      chosen: piece < 0 ? null : piece,
      opening: index,
      camera,
      step: Math.max(view.step, payload.step[piece] ?? 0),
    });
  }

  const limits = [reach / 50, reach * 40] as const;
  const pixelsOf = ([x, y]: readonly [number, number]) => [x * density(), y * density()] as const;
  const pickAt = (at: readonly [number, number]) => graphics.pick(shownNow(), ...pixelsOf(at));
  let pointing: readonly [number, number] | null = null;
  const hint = part<HTMLElement>('hint');
  watchHands(canvas, {
    turn: (dx, dy) => change({ camera: turned(view.camera, dx * TURN, dy * TURN) }),
    shift: (dx, dy) => change({ camera: shifted(view.camera, shownNow().sight, dx * density(), dy * density()) }),
    zoom: (by) => change({ camera: zoomed(view.camera, by, limits) }),
    point(at) {
      const asked = pointing !== null;
      pointing = at;
      if (at === null) hint.hidden = true;
      if (asked || at === null) return;
      requestAnimationFrame(() => {
        const here = pointing;
        pointing = null;
        if (here) showHint(pickAt(here), here);
      });
    },
    choose: (at) => choose(pickAt(at), false),
    key,
  });

  /** The mark under the pointer, beside it. */
  function showHint(piece: number | null, [x, y]: readonly [number, number]): void {
    hint.hidden = piece === null;
    if (piece === null) return;
    hint.textContent = payload.names[piece] as string;
    hint.style.left = `${x + 14}px`;
    hint.style.top = `${y + 14}px`;
  }

  function key(name: string): boolean {
    const last = payload.names.length - 1;
    switch (name) {
      case 'Enter':
        choose(pickAt([canvas.clientWidth / 2, canvas.clientHeight / 2]), false);
        return true;
      case 'Escape':
        change({ chosen: null, opening: null });
        return true;
      case 'Home':
        change({ camera: wholeCamera(solids, payload, screen(), { apart: view.apart }) });
        return true;
      case '.':
        choose(view.chosen === null ? 0 : Math.min(last, view.chosen + 1), true);
        return true;
      case ',':
        choose(view.chosen === null ? last : Math.max(0, view.chosen - 1), true);
        return true;
      case 'PageUp':
        change({ step: Math.min(payload.steps.length - 1, view.step + 1) });
        return true;
      case 'PageDown':
        change({ step: Math.max(0, view.step - 1) });
        return true;
      default:
        return false;
    }
  }

  canvas.addEventListener('webglcontextlost', (event) => event.preventDefault());
  canvas.addEventListener('webglcontextrestored', () => {
    graphics = startGraphics(canvas, payload, solids);
    painted = '';
    draw();
  });
  new ResizeObserver(() => {
    const [wide, high] = screen();
    if (wide !== drawn[0] || high !== drawn[1]) change({});
  }).observe(canvas);
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => change({}));
  const backOnScreen = () => {
    document.documentElement.classList.remove('on-paper');
    draw();
  };
  addEventListener('beforeprint', print);
  addEventListener('afterprint', backOnScreen);
  // Where a page is only shown as if printed, no event goes before.
  const paper = matchMedia('print');
  paper.addEventListener('change', () => (paper.matches ? print() : backOnScreen()));
  bringInLine(view);
  if (paper.matches) print();
  else draw();
}

const distanceTo = (a: Vec3, b: Vec3): number => hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** A colour of the style sheet, each part from 0 to 1. */
function colourOf(name: string): Rgb {
  const text = getComputedStyle(document.documentElement).getPropertyValue(name).trim();
  const part = (at: number) => Number.parseInt(text.slice(at, at + 2), 16) / 255;
  return [part(1), part(3), part(5)];
}

/** Size of a picture that was never on a screen, in its pixels. */
const ON_PAPER = [900, 600] as const;
/** Pixels across a printed page, some 250 to the inch. */
const PRINTED = 1900;
const CHOSEN: Rgb = [255, 214, 10];
const PALE: Rgb = [232, 230, 226];

try {
  start();
} catch (error) {
  const trouble = part<HTMLElement>('trouble');
  trouble.textContent = error instanceof Error ? error.message : String(error);
  trouble.hidden = false;
}

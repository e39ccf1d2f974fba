import { atan2, hypot } from '../math/elementary.js';
import type { Vec3 } from '../math/vec.js';
import { part, startBoard } from './board.js';
import { cameraOn, shifted, sightOf, turned, zoomed } from './camera.js';
import { unpackPage } from './data.js';
import { type Graphics, type Rgb, type Shown, startGraphics } from './graphics.js';
import { watchHands } from './hands.js';
import { drawOverlay } from './overlay.js';
import { placeSolids } from './solids.js';
import { cutPlane, firstCamera, firstView, middleOf, reachOf, type View } from './view.js';

/** A turn by so many radians for each pixel that the hand moves. */
const TURN = 0.006;
/** Opening and viewer are so far apart when one is looked up, as a share of the house's reach. */
const LOOK_UP = 0.45;

const canvas = part<HTMLCanvasElement>('view');

try {
  start();
} catch (error) {
  const trouble = part<HTMLElement>('trouble');
  trouble.textContent = error instanceof Error ? error.message : String(error);
  trouble.hidden = false;
}

function start(): void {
  const data = unpackPage(part<HTMLElement>('data').textContent ?? '');
  const { payload } = data;
  const solids = placeSolids(data);
  const reach = reachOf(solids, payload);
  const middle = middleOf(solids);
  let view = firstView(solids, payload);
  let graphics = startGraphics(canvas, payload, solids);
  let waiting = false;
  let painted = '';

  const bringInLine = startBoard(payload, {
    view: () => view,
    change,
    choose: (piece) => choose(piece, true),
    chooseOpening,
    lookFrom: (bearingRad, elevationRad) =>
      change({ camera: { ...firstCamera(solids, payload), bearingRad, elevationRad } }),
    reset: () => change({ ...firstView(solids, payload), colouring: view.colouring }),
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

  /** Pixels of the canvas for one of the page: sharp screens aren't drawn finer than twice. */
  const density = () => Math.min(2, devicePixelRatio || 1);

  function shownNow(): Shown {
    const size = [canvas.width, canvas.height] as const;
    const far = hypot(
      view.camera.target[0] - middle[0],
      view.camera.target[1] - middle[1],
      view.camera.target[2] - middle[2],
    );
    const spread = reach.near + view.apart * (reach.far - reach.near);
    return {
      sight: sightOf(view.camera, size, spread + far),
      size,
      density: density(),
      apart: view.apart,
      step: view.step,
      cut: cutPlane(view, solids, payload),
      chosen: view.chosen,
      paper: colourOf('--paper'),
      ink: colourOf('--edge'),
      accent: colourOf('--accent'),
    };
  }

  function draw(): void {
    const box = canvas.getBoundingClientRect();
    const size = [
      Math.max(1, Math.round(box.width * density())),
      Math.max(1, Math.round(box.height * density())),
    ] as const;
    if (canvas.width !== size[0] || canvas.height !== size[1]) [canvas.width, canvas.height] = size;
    paint(graphics);
    const shown = shownNow();
    graphics.draw(shown);
    const page = [size[0] / density(), size[1] / density()] as const;
    drawOverlay(part<SVGSVGElement>('marks'), view, shown.sight, page, payload, solids);
    document.documentElement.dataset.ready = 'yes';
  }

  /** Colours as the colouring has them, the chosen piece's own, and pale ones beside the one that is shown alone. */
  function paint(to: Graphics): void {
    const key = [view.colouring, view.only, view.chosen, view.opening].join();
    if (key === painted) return;
    painted = key;
    const { entries, of } = payload.colourings[view.colouring] as (typeof payload.colourings)[number];
    to.paint(
      of.map((entry, piece): Rgb => {
        if (piece === view.chosen) return CHOSEN;
        const { colour } = entries[entry] as (typeof entries)[number];
        return view.only === null || view.only === entry ? colour : PALE;
      }),
    );
  }

  function choose(piece: number | null, turn: boolean): void {
    const opening = piece === null ? null : (payload.opening[piece] ?? null);
    const step = piece === null ? view.step : Math.max(view.step, payload.step[piece] as number);
    change({ chosen: piece, opening, step });
    if (piece !== null && turn) turnTo(solids.middles[piece] as Vec3, payload.lifts[payload.lift[piece] as number]);
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
    const target = [0, 1, 2].map((i) => (opening.middle[i] as number) + view.apart * (lift[i] ?? 0)) as unknown as Vec3;
    const camera = cameraOn(target, reach.near * LOOK_UP, opening.fromRad + 0.35, 0.15);
    change({
      chosen: piece < 0 ? null : piece,
      opening: index,
      camera,
      step: Math.max(view.step, payload.step[piece] ?? 0),
    });
  }

  const limits = [reach.near / 50, reach.far * 12] as const;
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
        change({ camera: firstCamera(solids, payload) });
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
  new ResizeObserver(() => change({})).observe(canvas);
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => change({}));
  // Paper is white whatever the screen shows: the same view once more in its colours.
  for (const [event, on] of [
    ['beforeprint', true],
    ['afterprint', false],
  ] as const)
    addEventListener(event, () => {
      document.documentElement.classList.toggle('on-paper', on);
      draw();
    });
  bringInLine(view);
  draw();
}

/** A colour of the style sheet, each part from 0 to 1. */
function colourOf(name: string): Rgb {
  const text = getComputedStyle(document.documentElement).getPropertyValue(name).trim();
  const part = (at: number) => Number.parseInt(text.slice(at, at + 2), 16) / 255;
  return [part(1), part(3), part(5)];
}

const CHOSEN: Rgb = [255, 214, 10];
const PALE: Rgb = [232, 230, 226];

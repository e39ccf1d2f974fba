/** What a hand does on the canvas: by mouse, touch, pen or keys. Lengths in pixels of the page. */
export interface Hands {
  turn(dx: number, dy: number): void;
  shift(dx: number, dy: number): void;
  /** Farther by more than 1, nearer by less. */
  zoom(by: number): void;
  /** Points at a place without pressing; `null` when the pointer leaves. */
  point(at: readonly [number, number] | null): void;
  choose(at: readonly [number, number]): void;
  /** A key that the canvas knows; whether it meant anything. */
  key(key: string): boolean;
}

/** A press that moves less than this is a click or tap. */
const STILL = 6;
/** Pixels that a press of an arrow key turns or shifts by. */
const KEY = 24;

interface Touch {
  x: number;
  y: number;
}

export function watchHands(canvas: HTMLCanvasElement, hands: Hands): void {
  const down = new Map<number, Touch>();
  let moved = 0;
  let shifting = false;
  const place = (event: PointerEvent | WheelEvent): Touch => {
    const box = canvas.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };

  canvas.addEventListener('pointerdown', (event) => {
    canvas.setPointerCapture(event.pointerId);
    if (down.size === 0) moved = 0;
    shifting = event.shiftKey || event.button > 0;
    down.set(event.pointerId, place(event));
  });
  canvas.addEventListener('pointermove', (event) => {
    const to = place(event);
    const from = down.get(event.pointerId);
    if (!from) {
      if (event.pointerType !== 'touch') hands.point([to.x, to.y]);
      return;
    }
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const other = [...down].find(([id]) => id !== event.pointerId)?.[1];
    moved += Math.abs(dx) + Math.abs(dy);
    if (other) {
      const before = apart(from, other);
      const after = apart(to, other);
      if (before > 0 && after > 0) hands.zoom(before / after);
      // Each of two fingers carries half of the move.
      hands.shift(dx / 2, dy / 2);
    } else if (moved > STILL) {
      if (shifting) hands.shift(dx, dy);
      else hands.turn(dx, dy);
    }
    down.set(event.pointerId, to);
  });
  const up = (event: PointerEvent) => {
    const at = down.get(event.pointerId);
    if (at && event.type === 'pointerup' && down.size === 1 && moved <= STILL) hands.choose([at.x, at.y]);
    down.delete(event.pointerId);
  };
  canvas.addEventListener('pointerup', up);
  canvas.addEventListener('pointercancel', up);
  canvas.addEventListener('pointerleave', () => hands.point(null));
  canvas.addEventListener('contextmenu', (event) => event.preventDefault());
  canvas.addEventListener(
    'wheel',
    (event) => {
      event.preventDefault();
      // Lines are some 16 pixels; a notch of a wheel is about 100.
      const pixels = event.deltaMode === 1 ? 16 * event.deltaY : event.deltaY;
      hands.zoom(1 + Math.max(-0.5, Math.min(0.5, pixels / 600)));
    },
    { passive: false },
  );
  canvas.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const arrow = ARROWS[event.key];
    if (arrow) {
      const [dx, dy] = [arrow[0] * KEY, arrow[1] * KEY];
      if (event.shiftKey) hands.shift(-dx, -dy);
      else hands.turn(dx, dy);
    } else if (event.key === '+' || event.key === '=') hands.zoom(0.85);
    else if (event.key === '-') hands.zoom(1 / 0.85);
    else if (!hands.key(event.key)) return;
    event.preventDefault();
  });
}

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [1, 0],
  ArrowRight: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

const apart = (a: Touch, b: Touch): number => Math.sqrt((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y));

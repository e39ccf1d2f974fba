/**
 * A second sign of a colour: lines across it. Six kinds, then the same six wider apart; 0 is plain. The shader draws
 * them on the model by the same numbers, a key's swatch with style alone.
 */
const TURNS_DEG = [[135], [45], [0], [90], [0, 90], [45, 135]] as const;
/** Pixels of the page from line to line, and what is added each time that all kinds are used up. */
const PITCH = 5;
const WIDER = 4;
const LINE = 1.5;

type Rgb = readonly [number, number, number];

/** GLSL: the colour of a face at `at`, in pixels, of which the page's own have `pixels`. */
export const HATCHED = `
float lineAt(float across, float pitch, float pixels) { return mod(across, pitch) < ${LINE.toFixed(1)} * pixels ? 1.0 : 0.0; }
vec3 hatched(vec3 base, int hatch, vec2 at, float pixels) {
  if (hatch == 0) return base;
  int kind = (hatch - 1) % ${TURNS_DEG.length};
  float pitch = float(${PITCH} + ${WIDER} * ((hatch - 1) / ${TURNS_DEG.length})) * pixels;
  float rising = lineAt((at.x - at.y) * 0.70711, pitch, pixels);
  float falling = lineAt((at.x + at.y) * 0.70711, pitch, pixels);
  float level = lineAt(at.y, pitch, pixels);
  float upright = lineAt(at.x, pitch, pixels);
  float on = kind == 0 ? rising : kind == 1 ? falling : kind == 2 ? level : kind == 3 ? upright
    : kind == 4 ? max(level, upright) : max(rising, falling);
  vec3 ink = dot(base, vec3(0.3, 0.59, 0.11)) > 0.45 ? base * 0.25 : mix(base, vec3(1.0), 0.8);
  return mix(base, ink, on);
}`;

/** The background of a swatch in a colour and hatch. */
export function swatchOf([r, g, b]: Rgb, hatch: number): string {
  const colour = `rgb(${r},${g},${b})`;
  if (hatch === 0) return colour;
  const isLight = 0.3 * r + 0.59 * g + 0.11 * b > 0.45 * 255;
  const one = (v: number) => Math.round(isLight ? v * 0.25 : v + (255 - v) * 0.8);
  const ink = `rgb(${one(r)},${one(g)},${one(b)})`;
  const pitch = PITCH + WIDER * Math.floor((hatch - 1) / TURNS_DEG.length);
  const turns = TURNS_DEG[(hatch - 1) % TURNS_DEG.length] as readonly number[];
  // A gradient runs square to its lines: upward, at 0 degrees, it gives level ones.
  const lines = turns.map(
    (turn) => `repeating-linear-gradient(${turn}deg, ${ink} 0 ${LINE}px, transparent ${LINE}px ${pitch}px)`,
  );
  return [...lines, colour].join(', ');
}

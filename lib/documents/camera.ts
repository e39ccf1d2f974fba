import { cos, sin, tan } from '../math/elementary.js';
import { dot3, type Vec3 } from '../math/vec.js';

/** Where the viewer stands: on a bearing from the point looked at, raised by an angle, at a distance (mm). */
export interface Camera {
  readonly target: Vec3;
  readonly bearingRad: number;
  readonly elevationRad: number;
  readonly distance: number;
}

/** Angle of sight from bottom to top, radians. */
const FIELD = 0.55;
const STEEPEST = Math.PI / 2 - 0.001;

export interface Sight {
  readonly eye: Vec3;
  /** From space to the screen's cube, column by column. */
  readonly matrix: readonly number[];
  readonly right: Vec3;
  readonly up: Vec3;
  /** Length that a pixel covers at the point looked at, mm. */
  readonly pixel: number;
}

/** What a camera sees on a screen of so many pixels; `reach` is how far from the target anything lies. */
export function sightOf(
  { target, bearingRad, elevationRad, distance }: Camera,
  size: readonly [number, number],
  reach: number,
): Sight {
  const { right, up, toViewer } = axesOf(bearingRad, elevationRad);
  const eye: Vec3 = [
    target[0] + toViewer[0] * distance,
    target[1] + toViewer[1] * distance,
    target[2] + toViewer[2] * distance,
  ];
  const near = Math.max(distance - reach, distance / 100);
  const far = distance + reach;
  const { tall, wide } = spreadOf(size);
  const [fx, fy] = [1 / wide, 1 / tall];
  const fz = (far + near) / (near - far);
  const gz = (2 * far * near) / (near - far);
  const [x, y, z] = [-dot3(right, eye), -dot3(up, eye), -dot3(toViewer, eye)];
  const column = (i: 0 | 1 | 2) => [fx * right[i], fy * up[i], fz * toViewer[i], -toViewer[i]];
  const matrix = [...column(0), ...column(1), ...column(2), fx * x, fy * y, fz * z + gz, -z];
  return { eye, matrix, right, up, pixel: (2 * tall * distance) / size[1] };
}

/** Where a point stands on a screen of so many pixels, from the upper left; `null` behind the viewer. */
export function onScreen(
  { matrix: m }: Sight,
  [x, y, z]: Vec3,
  [width, height]: readonly [number, number],
): readonly [number, number] | null {
  const row = (i: number) =>
    (m[i] as number) * x + (m[4 + i] as number) * y + (m[8 + i] as number) * z + (m[12 + i] as number);
  const w = row(3);
  return w > 0 ? [((row(0) / w + 1) / 2) * width, ((1 - row(1) / w) / 2) * height] : null;
}

export const turned = (camera: Camera, byBearing: number, byElevation: number): Camera => ({
  ...camera,
  bearingRad: camera.bearingRad + byBearing,
  elevationRad: Math.min(STEEPEST, Math.max(-STEEPEST, camera.elevationRad + byElevation)),
});

/** Moves what is looked at by so many pixels on the screen. */
export function shifted(camera: Camera, { right, up, pixel }: Sight, dx: number, dy: number): Camera {
  const move = (i: 0 | 1 | 2) => camera.target[i] - right[i] * dx * pixel + up[i] * dy * pixel;
  return { ...camera, target: [move(0), move(1), move(2)] };
}

export const zoomed = (camera: Camera, by: number, limits: readonly [number, number]): Camera => ({
  ...camera,
  distance: Math.min(limits[1], Math.max(limits[0], camera.distance * by)),
});

/** Between what is looked at and the edge of the screen, as a share of the screen. */
const MARGIN = 0.03;

/** Calls for each point that is to be seen. */
export type EachPoint = (tell: (x: number, y: number, z: number) => void) => void;

/** The nearest camera in some direction that sees all of the points on a screen of that shape. */
export function cameraOn(
  points: EachPoint,
  bearingRad: number,
  elevationRad: number,
  size: readonly [number, number],
): Camera {
  const { right, up, toViewer } = axesOf(bearingRad, elevationRad);
  const spread = spreadOf(size);
  const [wide, tall] = [spread.wide * (1 - MARGIN), spread.tall * (1 - MARGIN)];
  // Each side of the screen is a plane through the eye: the farthest point before each tells where the eye may stand.
  const most = { right: -Infinity, left: -Infinity, up: -Infinity, down: -Infinity };
  let [low, high] = [Infinity, -Infinity];
  points((x, y, z) => {
    const across = right[0] * x + right[1] * y + right[2] * z;
    const above = up[0] * x + up[1] * y + up[2] * z;
    const near = toViewer[0] * x + toViewer[1] * y + toViewer[2] * z;
    most.right = Math.max(most.right, near + across / wide);
    most.left = Math.max(most.left, near - across / wide);
    most.up = Math.max(most.up, near + above / tall);
    most.down = Math.max(most.down, near - above / tall);
    low = Math.min(low, near);
    high = Math.max(high, near);
  });
  const eye = Math.max(most.right + most.left, most.up + most.down) / 2;
  const middle = (low + high) / 2;
  let [across, above] = [((most.right - most.left) / 2) * wide, ((most.up - most.down) / 2) * tall];
  // Where there is room to spare, the picture stands in the middle.
  for (let i = 0; i < CENTRING; i++) {
    const seen = { right: -Infinity, left: Infinity, up: -Infinity, down: Infinity };
    points((x, y, z) => {
      const away = eye - (toViewer[0] * x + toViewer[1] * y + toViewer[2] * z);
      const at = (right[0] * x + right[1] * y + right[2] * z - across) / away;
      const over = (up[0] * x + up[1] * y + up[2] * z - above) / away;
      seen.right = Math.max(seen.right, at);
      seen.left = Math.min(seen.left, at);
      seen.up = Math.max(seen.up, over);
      seen.down = Math.min(seen.down, over);
    });
    across += ((seen.right + seen.left) / 2) * (eye - middle);
    above += ((seen.up + seen.down) / 2) * (eye - middle);
  }
  const at = (i: 0 | 1 | 2) => right[i] * across + up[i] * above + toViewer[i] * middle;
  return { target: [at(0), at(1), at(2)], bearingRad, elevationRad, distance: eye - middle };
}

/** Times that a picture is brought nearer to the middle. */
const CENTRING = 2;

/** The eight corners of a box. */
export const cornersOf =
  ([low, high]: readonly [Vec3, Vec3]): EachPoint =>
  (tell) => {
    for (const x of [low[0], high[0]])
      for (const y of [low[1], high[1]]) for (const z of [low[2], high[2]]) tell(x, y, z);
  };

function axesOf(bearingRad: number, elevationRad: number): Readonly<Record<'right' | 'up' | 'toViewer', Vec3>> {
  const [sb, cb, se, ce] = [sin(bearingRad), cos(bearingRad), sin(elevationRad), cos(elevationRad)];
  return { right: [-cb, sb, 0], up: [-sb * se, -cb * se, ce], toViewer: [sb * ce, cb * ce, se] };
}

/** Half of what is seen at a distance of 1; a narrow screen sees as far to the sides as a square one. */
function spreadOf([width, height]: readonly [number, number]): { readonly tall: number; readonly wide: number } {
  const tall = tan(FIELD / 2) * Math.max(1, height / width);
  return { tall, wide: (tall * width) / height };
}

import { cos, sin, tan } from '../math/elementary.js';
import type { Vec3 } from '../math/vec.js';

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
  readonly matrix: Float32Array;
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
  const dot = (a: Vec3) => a[0] * eye[0] + a[1] * eye[1] + a[2] * eye[2];
  const [x, y, z] = [-dot(right), -dot(up), -dot(toViewer)];
  const column = (i: 0 | 1 | 2) => [fx * right[i], fy * up[i], fz * toViewer[i], -toViewer[i]];
  const matrix = new Float32Array([...column(0), ...column(1), ...column(2), fx * x, fy * y, fz * z + gz, -z]);
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

/** A camera in some direction that sees a box whole on a screen of that shape. */
export function cameraOn(
  [low, high]: readonly [Vec3, Vec3],
  bearingRad: number,
  elevationRad: number,
  size: readonly [number, number],
): Camera {
  const target: Vec3 = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2];
  const { right, up, toViewer } = axesOf(bearingRad, elevationRad);
  const { tall, wide } = spreadOf(size);
  let distance = 0;
  for (let k = 0; k < 8; k++) {
    const corner: Vec3 = [k & 1 ? high[0] : low[0], k & 2 ? high[1] : low[1], k & 4 ? high[2] : low[2]];
    const along = (v: Vec3) =>
      v[0] * (corner[0] - target[0]) + v[1] * (corner[1] - target[1]) + v[2] * (corner[2] - target[2]);
    const across = Math.max(Math.abs(along(right)) / wide, Math.abs(along(up)) / tall);
    distance = Math.max(distance, across / (1 - MARGIN) + along(toViewer));
  }
  return { target, bearingRad, elevationRad, distance };
}

function axesOf(bearingRad: number, elevationRad: number): Readonly<Record<'right' | 'up' | 'toViewer', Vec3>> {
  const [sb, cb, se, ce] = [sin(bearingRad), cos(bearingRad), sin(elevationRad), cos(elevationRad)];
  return { right: [-cb, sb, 0], up: [-sb * se, -cb * se, ce], toViewer: [sb * ce, cb * ce, se] };
}

/** Half of what is seen at a distance of 1; a narrow screen sees as far to the sides as a square one. */
function spreadOf([width, height]: readonly [number, number]): { readonly tall: number; readonly wide: number } {
  const tall = tan(FIELD / 2) * Math.max(1, height / width);
  return { tall, wide: (tall * width) / height };
}

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
  const [width, height] = size;
  const [sb, cb, se, ce] = [sin(bearingRad), cos(bearingRad), sin(elevationRad), cos(elevationRad)];
  const toViewer: Vec3 = [sb * ce, cb * ce, se];
  const right: Vec3 = [-cb, sb, 0];
  const up: Vec3 = [-sb * se, -cb * se, ce];
  const eye: Vec3 = [
    target[0] + toViewer[0] * distance,
    target[1] + toViewer[1] * distance,
    target[2] + toViewer[2] * distance,
  ];
  const near = Math.max(distance - reach, distance / 100);
  const far = distance + reach;
  // A narrow screen sees as far to the sides as a square one.
  const tall = tan(FIELD / 2) * Math.max(1, height / width);
  const [fy, fx] = [1 / tall, height / (tall * width)];
  const fz = (far + near) / (near - far);
  const gz = (2 * far * near) / (near - far);
  const dot = (a: Vec3) => a[0] * eye[0] + a[1] * eye[1] + a[2] * eye[2];
  const [x, y, z] = [-dot(right), -dot(up), -dot(toViewer)];
  const column = (i: 0 | 1 | 2) => [fx * right[i], fy * up[i], fz * toViewer[i], -toViewer[i]];
  const matrix = new Float32Array([...column(0), ...column(1), ...column(2), fx * x, fy * y, fz * z + gz, -z]);
  return { eye, matrix, right, up, pixel: (2 * tall * distance) / height };
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

/** A camera at some direction that sees a ball of radius `reach` whole. */
export const cameraOn = (target: Vec3, reach: number, bearingRad: number, elevationRad: number): Camera => ({
  target,
  bearingRad,
  elevationRad,
  distance: (reach / sin(FIELD / 2)) * 0.84,
});

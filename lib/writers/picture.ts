import { encode } from 'fast-png';
import { type Camera, cameraOn, type EachPoint, type Sight, sightOf } from '../documents/camera.js';
import { instancesOf, placed, type Scene } from '../documents/scene.js';
import { hypot } from '../math/elementary.js';
import type { Vec3 } from '../math/vec.js';
import { type Corner, fillTriangle, type Raster, rasterOf, reduced } from './picture/raster.js';

/** Size and view of a picture. */
export interface PictureOptions {
  /** Pixels. */
  readonly width?: number;
  readonly height?: number;
  /** Bearing from which the scene is seen, clockwise from y, and how far above level, radians. */
  readonly bearingRad?: number;
  readonly elevationRad?: number;
  /** Nothing is drawn past this distance along this unit normal. */
  readonly cut?: { readonly normal: Vec3; readonly distance: number } | null;
  /** Colour of each of `instancesOf(scene)`, in that order; its material's when missing. */
  readonly colours?: readonly Vec3[];
}

const PICTURE_DEFAULTS = { width: 1400, height: 1000, bearingRad: 3.75, elevationRad: 0.49 } as const;

/** Every pixel is the mean of so many by so many. */
const OVER = 2;
const PAPER: Vec3 = [250, 250, 250];

/**
 * A scene as a PNG picture, in perspective, shaded and outlined; drawn here, without a graphics card. Where the cut
 * opens a solid, its section is hatched. The same scene gives the same bytes.
 * @throws RangeError when a side of the picture isn't a whole number of pixels from 1 on, or the scene is empty.
 */
export function writePicture(scene: Scene, options: PictureOptions = {}): Uint8Array {
  const { width, height, bearingRad, elevationRad, cut = null, colours } = { ...PICTURE_DEFAULTS, ...options };
  for (const side of [width, height])
    if (!Number.isInteger(side) || side < 1) throw new RangeError(`A picture can't be ${width} by ${height} pixels.`);
  const instances = instancesOf(scene);
  const solids = instances.map(({ instance, place }, k) => {
    const mesh = scene.meshes[instance.mesh] as Scene['meshes'][number];
    const points = new Float64Array(mesh.positions.length);
    for (let i = 0; i < points.length; i += 3)
      points.set(placed(place, [...mesh.positions.subarray(i, i + 3)] as unknown as Vec3), i);
    const material = scene.materials[instance.material] as Scene['materials'][number];
    return { mesh, points, colour: tinted(colours?.[k] ?? material.colour, k) };
  });
  const size = [width * OVER, height * OVER] as const;
  const seen = seenPoints(solids, cut);
  const camera = cameraOn(seen, bearingRad, elevationRad, size);
  if (!Number.isFinite(camera.distance)) throw new RangeError('There is nothing in this scene to make a picture of.');
  const view = { sight: sightOf(camera, size, reachOf(seen, camera)), cut };
  const raster = rasterOf(size[0], size[1], PAPER);
  let surface = 1;
  for (const solid of solids) {
    drawSolid(raster, view, solid, surface);
    surface += 2 * solid.mesh.faceNames.length;
  }
  return encode({ width, height, data: reduced(raster, OVER), channels: 3, depth: 8 });
}

/** Neighbours of one colour differ a little in lightness, so that blocks are told apart. */
function tinted([red, green, blue]: Vec3, k: number): Vec3 {
  const light = 1 + 0.05 * (((k * 7919) % 13) / 6 - 1);
  return [red * light, green * light, blue * light];
}

/** What the cut leaves. */
const seenPoints =
  (solids: readonly Solid[], cut: PictureOptions['cut']): EachPoint =>
  (tell) => {
    for (const { points } of solids) {
      for (let i = 0; i < points.length; i += 3) {
        const [x, y, z] = [points[i] as number, points[i + 1] as number, points[i + 2] as number];
        if (!cut || pastCut(cut, x, y, z) <= 0) tell(x, y, z);
      }
    }
  };

const pastCut = ({ normal, distance }: NonNullable<PictureOptions['cut']>, x: number, y: number, z: number): number =>
  normal[0] * x + normal[1] * y + normal[2] * z - distance;

/** How far from the point looked at anything lies. */
function reachOf(points: EachPoint, { target }: Camera): number {
  let reach = 0;
  points((x, y, z) => {
    reach = Math.max(reach, hypot(x - target[0], y - target[1], z - target[2]));
  });
  return reach;
}

interface Solid {
  readonly mesh: Scene['meshes'][number];
  readonly points: Float64Array;
  readonly colour: Vec3;
}

interface View {
  readonly sight: Sight;
  readonly cut: PictureOptions['cut'];
}

function drawSolid(raster: Raster, { sight, cut }: View, { mesh, points, colour }: Solid, firstSurface: number): void {
  const corners: Corner[] = [];
  for (let i = 0; i < points.length; i += 3) corners.push(cornerOf(raster, sight, cut, points, i));
  const lamp = lampOf(sight);
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const at = [0, 1, 2].map((k) => mesh.triangles[t + k] as number) as [number, number, number];
    const triangle = at.map((i) => corners[i]) as [Corner, Corner, Corner];
    const [p, q, r] = triangle;
    // Seen from outside, corners run counter-clockwise, and y runs down the screen.
    const outside = (q.x - p.x) * (r.y - p.y) - (r.x - p.x) * (q.y - p.y) < 0;
    // Far faces are seen through the cut alone: what they cover is the section.
    if (!outside && !cut) continue;
    if (p.past > 0 && q.past > 0 && r.past > 0) continue;
    const face = mesh.faceOf[t / 3] as number;
    const surface = firstSurface + 2 * face + (outside ? 0 : 1);
    if (outside) {
      const light = lightOf(points, at, lamp);
      const shaded: Vec3 = [colour[0] * light, colour[1] * light, colour[2] * light];
      fillTriangle(raster, triangle, surface, () => shaded);
    } else {
      // A section is one surface, whatever far faces it covers.
      fillTriangle(raster, triangle, firstSurface + 1, (x, y) => hatched(colour, x, y));
    }
  }
}

function cornerOf(
  { width, height }: Raster,
  { matrix: m }: Sight,
  cut: PictureOptions['cut'],
  points: Float64Array,
  i: number,
): Corner {
  const [a, b, c] = [points[i] as number, points[i + 1] as number, points[i + 2] as number];
  const row = (k: number) =>
    (m[k] as number) * a + (m[4 + k] as number) * b + (m[8 + k] as number) * c + (m[12 + k] as number);
  const w = row(3);
  return {
    x: ((row(0) / w + 1) / 2) * width,
    y: ((1 - row(1) / w) / 2) * height,
    depth: (row(2) / w + 1) / 2,
    near: 1 / w,
    past: cut ? pastCut(cut, a, b, c) : -1,
  };
}

/** From over the viewer's right shoulder. */
function lampOf({ right, up }: Sight): Vec3 {
  const toViewer: Vec3 = [
    right[1] * up[2] - right[2] * up[1],
    right[2] * up[0] - right[0] * up[2],
    right[0] * up[1] - right[1] * up[0],
  ];
  const lamp = [0, 1, 2].map((i) => 0.35 * (right[i] as number) + 0.5 * (toViewer[i] as number) + (i === 2 ? 0.8 : 0));
  const length = hypot(lamp[0] as number, lamp[1] as number, lamp[2] as number);
  return lamp.map((x) => x / length) as unknown as Vec3;
}

/** Share of its colour that a triangle shows. */
function lightOf(points: Float64Array, [a, b, c]: readonly [number, number, number], lamp: Vec3): number {
  const side = (k: number, axis: number) => (points[3 * k + axis] as number) - (points[3 * a + axis] as number);
  const u = [side(b, 0), side(b, 1), side(b, 2)] as const;
  const v = [side(c, 0), side(c, 1), side(c, 2)] as const;
  const n: Vec3 = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
  const length = hypot(...n) || 1;
  return 0.42 + 0.55 * Math.max(0, (n[0] * lamp[0] + n[1] * lamp[1] + n[2] * lamp[2]) / length);
}

/** Distance between the strokes of a section's hatching and their width, in pixels before reduction. */
const STROKES = 14;
const STROKE = 3;

function hatched([red, green, blue]: Vec3, x: number, y: number): Vec3 {
  if ((x + y) % STROKES < STROKE) return [red * 0.35, green * 0.35, blue * 0.35];
  return [(red + 255) / 2, (green + 255) / 2, (blue + 255) / 2];
}

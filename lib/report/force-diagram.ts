import { inReaderUnits } from '../base/reader-units.js';
import * as texts from '../base/texts/report.js';
import { formatLength, type LengthUnit } from '../base/units.js';
import type { Diagram, DiagramShape } from '../documents/report.js';
import { hypot } from '../math/elementary.js';
import type { Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import type { DomeStatics, MembranePoint } from '../statics/results.js';
import { label, line, moved, type Page, pageFor } from './page.js';
import { middleAt } from './section-outline.js';

const WIDTH = 680;
/** Greatest force, drawn as this part of the radius. */
const REACH = 0.35;

type Force = (p: MembranePoint) => number;

/**
 * Membrane forces drawn off the middle surface: along the meridian on the left, round the hoops on the right;
 * compression outward, tension inward. Filled: dead load; dashed: dead load and snow.
 */
export function forceDiagram(dome: DomeSetout, { shell, weights }: DomeStatics, units: LengthUnit): Diagram {
  const force = inReaderUnits(1, 'kN/m', units);
  const signed = (value: number): string => {
    const size = Math.abs(value * force.value);
    return `${value > 0 ? '+' : value < 0 ? '−' : ''}${size.toFixed(force.value > 10 ? 0 : 2)}`;
  };
  const { points } = shell;
  const snow = weights.snow > 0 ? 1 : 0;
  const meridian =
    (s: number): Force =>
    (p) =>
      p.dead.meridian + s * p.snow.meridian;
  const hoop =
    (s: number): Force =>
    (p) =>
      p.dead.hoop + s * p.snow.hoop;
  const most = Math.max(
    1e-9,
    ...points.flatMap((p) => [Math.abs(meridian(snow)(p)), Math.abs(hoop(snow)(p)), Math.abs(hoop(0)(p))]),
  );
  const radius = dome.springingRadius + dome.thickness / 2;
  const scale = (REACH * radius) / most;
  const wide = radius * (1 + REACH) * 1.02;
  const low = Math.min(dome.springingZ, ...points.map((p) => p.z)) - 0.1 * radius;
  const page = pageFor(WIDTH, [-wide, wide], [low, dome.topZ + REACH * radius], 24);
  const shapes: DiagramShape[] = [
    line(page, 'axis', [
      [0, low],
      [0, dome.topZ + REACH * radius],
    ]),
    ...side(page, dome, points, -1, meridian, snow, scale, signed),
    ...side(page, dome, points, 1, hoop, snow, scale, signed),
    label([WIDTH / 4, 20], texts.alongMeridian(force.unit), 'middle'),
    label([(3 * WIDTH) / 4, 20], texts.roundHoops(force.unit), 'middle'),
  ];
  if (shell.hoopTurnZ !== null) {
    const turn = nearest(points, shell.hoopTurnZ);
    const at = page.place(middleAt(dome, turn.r));
    shapes.push({ kind: 'dot', style: 'tension', at });
    shapes.push(label(moved(at, -10, 4), texts.tensionBelow(formatLength(shell.hoopTurnZ, units)), 'end'));
  }
  return {
    title: texts.membraneForcesOfDome(dome.id),
    caption: texts.forcesInUncrackedShell(snow, shell.hoopTurnZ === null),
    width: page.width,
    height: page.height,
    shapes,
  };
}

function side(
  page: Page,
  dome: DomeSetout,
  points: readonly MembranePoint[],
  hand: 1 | -1,
  force: (snow: number) => Force,
  snow: number,
  scale: number,
  signed: (value: number) => string,
): DiagramShape[] {
  const base = points.map((p) => middleAt(dome, p.r));
  const normals = base.map((_, i): Vec2 => {
    const [a, b] = [base[Math.max(0, i - 1)] as Vec2, base[Math.min(base.length - 1, i + 1)] as Vec2];
    const size = hypot(b[0] - a[0], b[1] - a[1]);
    return size > 0 ? [(a[1] - b[1]) / size, (b[0] - a[0]) / size] : [0, 1];
  });
  const off = (of: Force, keep: (value: number) => number): Vec2[] =>
    base.map((b, i): Vec2 => {
      const d = -keep(of(points[i] as MembranePoint)) * scale;
      const n = normals[i] as Vec2;
      return [hand * (b[0] + d * n[0]), b[1] + d * n[1]];
    });
  const middle = base.map((b): Vec2 => [hand * b[0], b[1]]);
  const dead = force(0);
  const area = (style: 'compression' | 'tension', keep: (value: number) => number) =>
    line(page, style, [...off(dead, keep), ...[...middle].reverse()], true);
  const ends = [0, points.length - 1].map((i) => {
    const value = dead(points[i] as MembranePoint);
    const at = page.place((off(force(i === 0 ? snow : 0), (v) => v)[i] ?? [0, 0]) as Vec2);
    const top = i === 0;
    return label(
      moved(at, top ? hand * 12 : 0, top ? -8 : 16),
      signed(value),
      top ? (hand > 0 ? 'start' : 'end') : 'middle',
    );
  });
  return [
    area('compression', (v) => Math.min(0, v)),
    area('tension', (v) => Math.max(0, v)),
    line(page, 'outline', middle),
    ...(snow
      ? [
          line(
            page,
            'dashed',
            off(force(1), (v) => v),
          ),
        ]
      : []),
    ...ends,
  ];
}

const nearest = (points: readonly MembranePoint[], z: number): MembranePoint =>
  points.reduce((best, p) => (Math.abs(p.z - z) < Math.abs(best.z - z) ? p : best));

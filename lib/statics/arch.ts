import { acos, asin, cos, sin } from '../math/elementary.js';
import { gauss } from '../math/quadrature.js';
import type { Section } from '../math/section.js';
import { geometricFactor, type ThrustBody, type ThrustSection, thrustRange } from './thrust.js';
import { type ThrustPoint, thrustLine } from './thrust-line.js';

/** Loads of a head: its own masonry, and what comes down on it. */
export interface ArchLoads {
  /** Thickness of ring or jambs in the face, mm. */
  readonly ring: number;
  /** How deep the part of it is that carries the wall, along the bearing, mm. */
  readonly depth: number;
  /** kN/mm3. */
  readonly masonry: number;
  /** On top of the ring's highest point, per length of the span, kN/mm; the wall under that level comes on top. */
  readonly onTop: number;
  /** Level to which jambs as thick as the ring carry it down by themselves; `null` where the wall takes the thrust. */
  readonly jambsTo: number | null;
}

/** A head as half an arch. Forces kN for the whole depth, lengths mm; `r` of its line is the distance from the middle. */
export interface ArchThrust {
  readonly factor: number;
  readonly least: number | null;
  readonly greatest: number | null;
  /** Load of the half arch. */
  readonly weight: number;
  readonly line: readonly ThrustPoint[];
}

const SECTIONS = 160;

/** The thrust programme on an arched head; a flat one has none. */
export function archThrust(section: Section, loads: ArchLoads): ArchThrust | null {
  const body = archBody(section, loads);
  if (!body) return null;
  const factor = geometricFactor(body);
  const range = thrustRange(body);
  return {
    factor,
    least: range?.least ?? null,
    greatest: range?.greatest ?? null,
    weight: body.sections[body.sections.length - 1]?.weight ?? 0,
    line: factor > 0 ? thrustLine(body, 1.0001 / factor) : [],
  };
}

/** Half a head cut by joints normal to its intrados, and by level ones down the jambs where it has its own. */
function archBody(section: Section, loads: ArchLoads): ThrustBody | null {
  const { arc } = section;
  if (!arc) return null;
  const { ring, depth, masonry } = loads;
  const { past, centreZ, radius } = arc;
  const outer = radius + ring;
  const top = section.topZ(ring);
  const start = asin(past / outer);
  const end = acos(Math.max(0, (section.springingZ - centreZ) / radius));
  const outside = (a: number) => outer * sin(a) - past;
  let [weight, moment] = [0, 0];
  const add = (w: number, r: number) => {
    weight += w;
    moment += w * r;
  };
  const { nodes, weights } = gauss(4);
  const sections: ThrustSection[] = [];
  for (let i = 0; i <= SECTIONS; i++) {
    const a = start + ((end - start) * i) / SECTIONS;
    const before = start + ((end - start) * (i - 1)) / SECTIONS;
    for (let k = 0; i > 0 && k < 4; k++) {
      const at = before + (a - before) * (nodes[k] as number);
      const share = (a - before) * (weights[k] as number);
      // Ring: a sector's slice, none of it beyond the middle.
      const low = past > 0 ? Math.max(radius, past / sin(at)) : radius;
      const area = (outer * outer - low * low) / 2;
      const first = ((outer * outer * outer - low * low * low) / 3) * sin(at) - past * area;
      add(masonry * depth * share * area, area > 0 ? first / area : 0);
      // Wall over the ring, and what stands on it.
      const u = outside(at);
      const wall = masonry * depth * (top - (centreZ + outer * cos(at)));
      add((loads.onTop + wall) * outer * cos(at) * share, u);
    }
    const reach = radius + ring / 2;
    sections.push({
      middle: [reach * sin(a) - past, centreZ + reach * cos(a)],
      half: [(ring / 2) * sin(a), (ring / 2) * cos(a)],
      weight,
      moment,
      hoops: null,
    });
  }
  if (loads.jambsTo !== null) sections.push(...jambSections(section, loads, { weight, moment }));
  const crown = (share: number) => {
    const [low, high] = [radius + (ring / 2) * (1 - share), radius + (ring / 2) * (1 + share)];
    const over = (rho: number) => centreZ + Math.sqrt(rho * rho - past * past);
    return [over(low), over(high)] as const;
  };
  return { sections, crown };
}

function jambSections(
  section: Section,
  { ring, depth, masonry, jambsTo }: ArchLoads,
  above: { readonly weight: number; readonly moment: number },
): ThrustSection[] {
  const middle = section.width / 2 + ring / 2;
  const from = section.springingZ;
  const steps = 10;
  return Array.from({ length: steps + 1 }, (_, i) => {
    const z = from - ((from - (jambsTo ?? from)) * i) / steps;
    const own = masonry * depth * ring * (from - z);
    return {
      middle: [middle, z],
      half: [ring / 2, 0],
      weight: above.weight + own,
      moment: above.moment + own * middle,
      hoops: null,
    };
  });
}

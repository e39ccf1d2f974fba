import { acos, asin, cos, hypot, sin } from '../math/elementary.js';
import type { Section } from '../math/section.js';
import type { Vec2 } from '../math/vec.js';

/**
 * A joint of an arch in its upright section, to the right of the middle: through a point of the soffit, out along a
 * unit direction. What lies towards the crown is on its upper side.
 */
export interface ArchJoint {
  readonly at: Vec2;
  readonly out: Vec2;
}

/** Skewbacks of a flat arch rise at this slope: its joints point to the third corner of an equal-sided triangle; common practice, no source. */
const FLAT_SKEWBACK = Math.sqrt(3);

/**
 * Joints to the right of the middle, from the springing or skewback to the keystone, of an arch of so many voussoirs
 * (odd): normal to the soffit and in equal steps along it; under a flat head they point to one place and part the
 * soffit equally.
 */
export function archJoints(section: Section, voussoirs: number): ArchJoint[] {
  const lines = (voussoirs + 1) / 2;
  const { arc, crownZ, springingZ, width } = section;
  if (!arc) {
    const half = width / 2;
    const apex: Vec2 = [0, crownZ - half * FLAT_SKEWBACK];
    return Array.from({ length: lines }, (_, k): ArchJoint => {
      const at: Vec2 = [half - (k * width) / voussoirs, crownZ];
      const length = hypot(at[0], at[1] - apex[1]);
      return { at, out: [at[0] / length, (at[1] - apex[1]) / length] };
    });
  }
  const { centreZ, radius, past } = arc;
  const from = asin(Math.max(0, (springingZ - centreZ) / radius));
  const crown = acos(past / radius);
  return Array.from({ length: lines }, (_, k): ArchJoint => {
    const angle = from + ((crown - from) * 2 * k) / voussoirs;
    const out: Vec2 = [cos(angle), sin(angle)];
    return { at: [radius * out[0] - past, centreZ + radius * out[1]], out };
  });
}

/** Where a line beside a joint, so far on its upper side, meets the section's outline grown by `grow`. */
export function onOutline(section: Section, { at, out }: ArchJoint, beside: number, grow: number): Vec2 {
  const start: Vec2 = [at[0] - beside * out[1], at[1] + beside * out[0]];
  const { arc, crownZ } = section;
  let t: number;
  if (arc) {
    const [x, y] = [start[0] + arc.past, start[1] - arc.centreZ];
    const along = x * out[0] + y * out[1];
    const radius = arc.radius + grow;
    t = Math.sqrt(along * along + radius * radius - x * x - y * y) - along;
  } else {
    t = (crownZ + grow - start[1]) / out[1];
  }
  return [start[0] + t * out[0], start[1] + t * out[1]];
}

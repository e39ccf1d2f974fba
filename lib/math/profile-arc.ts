import { acos, asin, cos, sin, square } from './elementary.js';
import type { Profile, ProfileShape } from './profile.js';

/**
 * One circular arc. Hemisphere: centre on the axis at the springing. Segmental: centre on the axis below
 * the springing, R = (r² + f²) / 2f. Pointed: centre at springing level past the axis by e = (f² − r²) / 2r.
 */
export function arcProfile(shape: ProfileShape, radius: number, rise: number): Profile {
  const pointed = rise > radius;
  const past = pointed ? (rise * rise - radius * radius) / (2 * radius) : 0;
  const arcRadius = pointed ? radius + past : (radius * radius + rise * rise) / (2 * rise);
  const centreR = -past;
  const centreH = pointed ? 0 : rise - arcRadius;
  const start = asin(Math.min(1, -centreH / arcRadius));
  const end = acos(Math.min(1, past / arcRadius));
  return {
    shape,
    radius,
    rise,
    length: arcRadius * (end - start),
    arc: { centre: [centreR, centreH], radius: arcRadius },
    at(s) {
      const normalRad = start + s / arcRadius;
      const normal = [cos(normalRad), sin(normalRad)] as const;
      return {
        r: centreR + arcRadius * normal[0],
        h: centreH + arcRadius * normal[1],
        normalRad,
        normal,
        curvature: 1 / arcRadius,
      };
    },
    radiusAt(h, offset = 0) {
      const R = arcRadius + offset;
      const r = centreR + Math.sqrt(R * R - square(h - centreH));
      return r >= 0 ? r : Number.NaN;
    },
    heightAt(r, offset = 0) {
      return centreH + Math.sqrt(square(arcRadius + offset) - square(r - centreR));
    },
  };
}

import { describe, expect, it } from 'vitest';
import { shellOfRevolution } from '../../lib/masonry/envelope.js';
import { profileOf } from '../../lib/math/profile.js';
import { catenaryParameter } from '../../lib/math/profile-catenary.js';
import { integrate } from '../../lib/math/quadrature.js';
import { setOutDome } from '../../lib/setout/dome.js';
import { domeOf, houseOf } from '../tools/house.js';

// Closed forms of solid geometry, evaluated by an independent script; metres in the comments, mm in the code.
const surfaceOf = (shape: Parameters<typeof profileOf>[0]['shape'], radius: number, rise: number): number => {
  const profile = profileOf({ shape, radius, rise });
  return integrate((s) => 2 * Math.PI * profile.at(s).r, 0, profile.length, 32) / 1e6;
};
const volumeOf = (shape: Parameters<typeof profileOf>[0]['shape'], radius: number, rise: number): number => {
  const profile = profileOf({ shape, radius, rise });
  // dV = π r² dh along the meridian, with dh = cos(normal) ds.
  const slice = (s: number) => {
    const p = profile.at(s);
    return Math.PI * p.r * p.r * Math.cos(p.normalRad);
  };
  return integrate(slice, 0, profile.length, 32) / 1e9;
};

describe('surfaces and volumes of revolution', () => {
  it('hemisphere R 2.5: S = 2πR², V = 2πR³/3', () => {
    expect(surfaceOf('hemisphere', 2500, 2500)).toBeCloseTo(39.269908, 6);
    expect(volumeOf('hemisphere', 2500, 2500)).toBeCloseTo(32.724923, 6);
  });

  it('spherical cap R 2.5, h 1: S 15.707963, V 6.806784, base 2', () => {
    // S = 2πRh; V = πh²(3R − h)/3; base √(2Rh − h²) = 2.
    expect(surfaceOf('segmental', 2000, 1000)).toBeCloseTo(15.707963, 6);
    expect(volumeOf('segmental', 2000, 1000)).toBeCloseTo(6.806784, 6);
    expect(profileOf({ shape: 'segmental', radius: 2000, rise: 1000 }).arc?.radius).toBeCloseTo(2500, 9);
  });

  it('spherical zone R 2.5 between 0.5 and 0.9: S = 2πRh 6.283185, V 7.221474', () => {
    const profile = profileOf({ shape: 'hemisphere', radius: 2500, rise: 2500 });
    const at = (h: number) => 2500 * Math.asin(h / 2500);
    const surface = integrate((s) => 2 * Math.PI * profile.at(s).r, at(500), at(900)) / 1e6;
    expect(surface).toBeCloseTo(6.283185, 6);
    expect(profile.radiusAt(500)).toBeCloseTo(2449.49, 2);
    const volume = integrate((h) => Math.PI * profile.radiusAt(h) ** 2, 500, 900) / 1e9;
    expect(volume).toBeCloseTo(7.221474, 6);
  });

  it('pointed, arc R 2.5 with its centre 0.5 past the axis: base 2.0, rise 2.449490, S 27.720951, V 19.260591', () => {
    const rise = Math.sqrt(2500 ** 2 - 500 ** 2);
    const profile = profileOf({ shape: 'pointed', radius: 2000, rise });
    expect(profile.arc?.radius).toBeCloseTo(2500, 9);
    expect(profile.arc?.centre[0]).toBeCloseTo(-500, 9);
    expect(surfaceOf('pointed', 2000, rise)).toBeCloseTo(27.720951, 6);
    expect(volumeOf('pointed', 2000, rise)).toBeCloseTo(19.260591, 6);
  });

  it.each([
    [2500, 1.546898, 7.479168, 67.527317, 34.442634, 26.181414],
    [3000, 1.366588, 8.294463, 71.76201, 39.38498, 31.914712],
    [1250, 2.6858, 5.753956, 46.968323, 24.097234, 12.5589],
  ])('catenary, half span 2.5, rise %d mm', (rise, a, length, springingDeg, surface, volume) => {
    expect(catenaryParameter(2500, rise) / 1000).toBeCloseTo(a, 6);
    const profile = profileOf({ shape: 'catenary', radius: 2500, rise });
    expect((2 * profile.length) / 1000).toBeCloseTo(length, 6);
    expect(90 - (profile.at(0).normalRad * 180) / Math.PI).toBeCloseTo(springingDeg, 5);
    expect(surfaceOf('catenary', 2500, rise)).toBeCloseTo(surface, 5);
    expect(volumeOf('catenary', 2500, rise)).toBeCloseTo(volume, 5);
  });

  it('half ellipsoid, half axes 5 and 3: S 117.367980, V = 2πa²b/3', () => {
    expect(surfaceOf('elliptical', 5000, 3000)).toBeCloseTo(117.36798, 4);
    expect(volumeOf('elliptical', 5000, 3000)).toBeCloseTo((2 * Math.PI * 25 * 3) / 3, 6);
  });

  it('napkin ring: sphere R 2.5 bored at a 1.5 keeps πh³/6 = 33.510322; a half dome keeps half of it', () => {
    const profile = profileOf({ shape: 'hemisphere', radius: 2500, rise: 2500 });
    const half = integrate((h) => Math.PI * (profile.radiusAt(h) ** 2 - 1500 ** 2), 0, profile.heightAt(1500), 8);
    expect((2 * half) / 1e9).toBeCloseTo(33.510322, 6);
  });

  it('shell of a hemisphere 2.5 to 2.8: V = 2π(Re³ − Ri³)/3', () => {
    const { wall, blocks } = houseOf({ wall: { thickness: 300, renderInside: 0, renderOutside: 0 } });
    const dome = setOutDome(domeOf({ radius: 2500, stemWall: 0 }), wall, blocks);
    expect(shellOfRevolution(dome) / 1e9).toBeCloseTo((2 * Math.PI * (2.8 ** 3 - 2.5 ** 3)) / 3, 9);
  });
});

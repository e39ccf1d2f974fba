import { hypot } from '../math/elementary.js';
import type { Vec2 } from '../math/vec.js';
import type { ArchSetout } from './arch.js';
import type { DomeSetout } from './dome.js';
import type { PassageSetout } from './passage.js';

/** A stretch of a line. */
export type Span = readonly [number, number];

/**
 * Where a straight line runs through the house's elementary bodies. It adds that to a list, since hidden lines ask this
 * some hundred thousand times.
 */
export interface Line {
  /** Whether it runs above the floor, and under it. */
  readonly above: boolean;
  readonly under: boolean;
  /** The stretch of it that is asked about. */
  readonly asked: Span;
  /** Whether it may pass an upright cylinder. */
  mayPass(centre: Vec2, radius: number): boolean;
  /** Full body of a dome, from the floor to its top, room included. */
  body(dome: DomeSetout, into: Span[]): void;
  /** Room of a dome, with the bore of its oculus. */
  room(dome: DomeSetout, into: Span[]): void;
  /** Inside the surface `offset` outside a dome's intrados. */
  within(dome: DomeSetout, offset: number, into: Span[]): void;
  /** Between two planes across a section, v from `from` to `to`, inside its outer or clear outline. */
  prism(source: ArchSetout | PassageSetout, outline: 'outer' | 'clear', from: number, to: number, into: Span[]): void;
  /** Upright disc under the floor down to `bottomZ`. */
  disc(centre: Vec2, radius: number, bottomZ: number, into: Span[]): void;
  /** Upright box under the floor, |u| ≤ half, v from 0 to `to`. */
  box(source: ArchSetout | PassageSetout, half: number, to: number, bottomZ: number, into: Span[]): void;
}

export const outerOf = (dome: DomeSetout): number => dome.springingRadius + dome.thickness;

const originOf = (source: ArchSetout | PassageSetout): Vec2 => ('dome' in source ? source.dome.at : source.domes[0].at);

/** A level line: distances from its origin. */
export class LevelLine implements Line {
  readonly above: boolean;
  readonly under: boolean;

  constructor(
    private readonly z: number,
    private readonly origin: Vec2,
    private readonly direction: Vec2,
    readonly asked: Span,
  ) {
    this.above = z >= 0;
    this.under = z < 0;
  }

  mayPass(centre: Vec2, radius: number): boolean {
    const { origin, direction } = this;
    return Math.abs(direction[0] * (centre[1] - origin[1]) - direction[1] * (centre[0] - origin[0])) <= radius;
  }

  body(dome: DomeSetout, into: Span[]): void {
    this.circle(dome.at, dome.outerRadiusAt(this.z), into);
  }

  room(dome: DomeSetout, into: Span[]): void {
    this.circle(dome.at, dome.radiusAt(this.z), into);
    if (dome.curb && this.z > dome.springingZ) this.circle(dome.at, dome.curb.clearRadius, into);
  }

  within(dome: DomeSetout, offset: number, into: Span[]): void {
    this.circle(dome.at, dome.radiusAt(this.z, offset), into);
  }

  prism(source: ArchSetout | PassageSetout, outline: 'outer' | 'clear', from: number, to: number, into: Span[]): void {
    const half = outline === 'outer' ? source.outerHalfAt(this.z) : source.clearHalfAt(this.z);
    this.rectangle(source, half, from, to, into);
  }

  disc(centre: Vec2, radius: number, bottomZ: number, into: Span[]): void {
    if (this.z > bottomZ) this.circle(centre, radius, into);
  }

  box(source: ArchSetout | PassageSetout, half: number, to: number, bottomZ: number, into: Span[]): void {
    if (this.z > bottomZ) this.rectangle(source, half, 0, to, into);
  }

  private circle(centre: Vec2, radius: number, into: Span[]): void {
    if (!(radius > 0)) return;
    const [dx, dy] = this.direction;
    const tx = centre[0] - this.origin[0];
    const ty = centre[1] - this.origin[1];
    const aside = dx * ty - dy * tx;
    const rest = radius * radius - aside * aside;
    if (!(rest > 0)) return;
    const middle = tx * dx + ty * dy;
    const half = Math.sqrt(rest);
    into.push([middle - half, middle + half]);
  }

  private rectangle(source: ArchSetout | PassageSetout, half: number, from: number, to: number, into: Span[]): void {
    if (!(half > 0)) return;
    const { across, along } = source;
    const at = originOf(source);
    const [dx, dy] = this.direction;
    const sx = this.origin[0] - at[0];
    const sy = this.origin[1] - at[1];
    let low = Number.NEGATIVE_INFINITY;
    let high = Number.POSITIVE_INFINITY;
    // Narrowed to where −half ≤ u + t · du ≤ half, and then from ≤ v + t · dv ≤ to.
    const u = sx * across[0] + sy * across[1];
    const du = dx * across[0] + dy * across[1];
    if (du !== 0) {
      const a = (-half - u) / du;
      const b = (half - u) / du;
      low = Math.min(a, b);
      high = Math.max(a, b);
    } else if (!(u > -half && u < half)) return;
    const v = sx * along[0] + sy * along[1];
    const dv = dx * along[0] + dy * along[1];
    if (dv !== 0) {
      const a = (from - v) / dv;
      const b = (to - v) / dv;
      low = Math.max(low, Math.min(a, b));
      high = Math.min(high, Math.max(a, b));
    } else if (!(v > from && v < to)) return;
    if (high > low) into.push([low, high]);
  }
}

/** An upright line: levels. */
export class UprightLine implements Line {
  readonly above: boolean;
  readonly under: boolean;

  constructor(
    private readonly at: Vec2,
    readonly asked: Span,
  ) {
    this.above = asked[1] >= 0;
    this.under = asked[0] <= 0;
  }

  mayPass(centre: Vec2, radius: number): boolean {
    return this.distance(centre) <= radius;
  }

  body(dome: DomeSetout, into: Span[]): void {
    const r = this.distance(dome.at);
    if (r >= outerOf(dome)) return;
    const curbed = dome.curb !== null && r <= dome.curb.bedOuter[0];
    into.push([0, curbed ? dome.topZ : dome.heightAt(r, dome.thickness)]);
  }

  room(dome: DomeSetout, into: Span[]): void {
    const r = this.distance(dome.at);
    if (dome.curb && r < dome.curb.clearRadius) into.push([0, dome.topZ]);
    else if (r < dome.springingRadius) into.push([0, dome.heightAt(r)]);
  }

  within(dome: DomeSetout, offset: number, into: Span[]): void {
    const r = this.distance(dome.at);
    if (r < dome.springingRadius + offset) into.push([0, dome.heightAt(r, offset)]);
  }

  prism(source: ArchSetout | PassageSetout, outline: 'outer' | 'clear', from: number, to: number, into: Span[]): void {
    const v = this.along(source);
    if (v <= from || v >= to) return;
    const { section, ring } = source;
    const top = section.topAt(this.across(source), outline === 'outer' ? ring : 0);
    const bottom = outline === 'clear' ? section.sill : 'dome' in source ? source.baseZ : 0;
    if (top > bottom) into.push([bottom, top]);
  }

  disc(centre: Vec2, radius: number, bottomZ: number, into: Span[]): void {
    if (this.distance(centre) < radius) into.push([bottomZ, 0]);
  }

  box(source: ArchSetout | PassageSetout, half: number, to: number, bottomZ: number, into: Span[]): void {
    const v = this.along(source);
    if (v > 0 && v < to && Math.abs(this.across(source)) < half) into.push([bottomZ, 0]);
  }

  private distance(centre: Vec2): number {
    return hypot(this.at[0] - centre[0], this.at[1] - centre[1]);
  }

  private across(source: ArchSetout | PassageSetout): number {
    const from = originOf(source);
    return (this.at[0] - from[0]) * source.across[0] + (this.at[1] - from[1]) * source.across[1];
  }

  private along(source: ArchSetout | PassageSetout): number {
    const from = originOf(source);
    return (this.at[0] - from[0]) * source.along[0] + (this.at[1] - from[1]) * source.along[1];
  }
}

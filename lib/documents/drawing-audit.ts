import * as texts from '../base/texts/document-faults.js';
import { CHAIN_MEET, SAME_POINT } from '../base/tolerances.js';
import { length2, sub2, type Vec2 } from '../math/vec.js';
import { turnOf } from './dimension-arcs.js';
import { measureOf } from './dimensioning.js';
import { DocumentError } from './document-error.js';
import type { Primitive, Segment, View } from './drawing.js';
import { HATCHES } from './hatches.js';
import { LAYERS } from './layers.js';
import { arcSweep, segmentEnd, segmentStart } from './segments.js';

/** One fault of a view: which primitive (its index), and what is wrong with it. */
export interface DrawingFault {
  readonly code: 'non-finite' | 'bad-scale' | 'broken-chain' | 'no-length' | 'bad-shape' | 'unknown-name';
  readonly primitive: number;
  readonly message: string;
}

/** Everything that would make a view unreadable or untrue for a writer; an empty list means sound. */
export function auditView(view: View): DrawingFault[] {
  const faults: DrawingFault[] = [];
  const bad = (code: DrawingFault['code'], primitive: number, message: string): void => {
    faults.push({ code, primitive, message });
  };
  if (!(view.scale > 0 && Number.isFinite(view.scale))) bad('bad-scale', -1, texts.scaleIsNotPositive(view.scale));
  view.primitives.forEach((p, i) => {
    const name = `${p.kind === 'dimension' ? texts.dimensionOfType(p.type) : p.kind} ${i}`;
    const wild = wildNumber(p);
    if (wild !== undefined) bad('non-finite', i, texts.hasNumberNotFinite(name, wild));
    else
      for (const [code, what] of [...nameFaults(p), ...shapeFaults(p)]) bad(code, i, texts.primitiveFault(name, what));
  });
  return faults;
}

/** @throws DocumentError that tells every fault of the view at once. */
export function requireSoundView(view: View): void {
  const faults = auditView(view);
  const [first] = faults;
  if (first) throw new DocumentError(first.code, view.id, faults.map((f) => f.message).join(' '));
}

type ShapeFault = readonly [DrawingFault['code'], string];

/** Callers without types may name what isn't there; it must not be left out in silence. */
function nameFaults(p: Primitive): ShapeFault[] {
  const faults: ShapeFault[] = [];
  if ('layer' in p && !LAYERS.some((l) => l.name === p.layer))
    faults.push(['unknown-name', texts.liesOnLayer(p.layer)]);
  if (p.kind === 'hatch' && p.pattern !== 'solid' && !Object.hasOwn(HATCHES, p.pattern))
    faults.push(['unknown-name', texts.hasPatternThatDoes(p.pattern)]);
  return faults;
}

function shapeFaults(p: Primitive): ShapeFault[] {
  switch (p.kind) {
    case 'path':
      return chainFaults(p.segments, p.closed);
    case 'hatch':
      return p.loops.flatMap((loop) => chainFaults(loop, true));
    case 'circle':
      return p.radius > 0 ? [] : [['bad-shape', texts.hasNoRadius]];
    case 'ellipse':
      return p.ratio > 0 && p.ratio <= 1 && length2(p.major) > 0 ? [] : [['bad-shape', texts.mustHaveMajorHalf]];
    case 'text':
    case 'leader':
    case 'tag':
      return p.heightMm > 0 ? [] : [['bad-shape', texts.hasNoHeight]];
    case 'dimension': {
      const measure = measureOf(p);
      if (!(measure > SAME_POINT)) return [['no-length', texts.measuresNothingItsPoints]];
      if (p.type !== 'angle' && p.type !== 'arc') return [];
      if (turnOf(p) >= Math.PI) return [['bad-shape', texts.mustMeasureLess]];
      return distance(p.centre, p.line) > 0 ? [] : [['no-length', texts.hasItsArc]];
    }
    case 'level':
      return [];
    case 'symbol':
      if (p.name === '') return [['unknown-name', texts.hasNoName]];
      return p.parts.flatMap((part) => [...nameFaults(part), ...shapeFaults(part)]);
  }
}

function chainFaults(segments: readonly Segment[], closed: boolean): ShapeFault[] {
  if (segments.length === 0) return [['no-length', texts.hasNoSegments]];
  const faults: ShapeFault[] = [];
  segments.forEach((s, i) => {
    if (s.kind === 'arc' && !(s.radius > 0)) faults.push(['bad-shape', texts.hasArcSegmentWithout(i)]);
    else if (s.kind === 'arc' ? arcSweep(s) === 0 : distance(s.from, s.to) === 0)
      faults.push(['no-length', texts.hasSegmentWithoutLength(i)]);
    const next = segments[i + 1] ?? (closed ? segments[0] : undefined);
    const gap = next ? distance(segmentEnd(s), segmentStart(next)) : 0;
    if (gap > CHAIN_MEET) faults.push(['broken-chain', texts.hasGapOfMm(gap.toFixed(3), i)]);
  });
  return faults;
}

const distance = (a: Vec2, b: Vec2): number => length2(sub2(a, b));

/** Name of the first field, at any depth, that holds a number but not a finite one. */
function wildNumber(value: unknown, name = 'value'): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : name;
  if (typeof value !== 'object' || value === null) return undefined;
  if (Array.isArray(value)) return firstWild(value, name);
  for (const key in value) {
    const found = wildNumber((value as Record<string, unknown>)[key], key);
    if (found !== undefined) return found;
  }
  return undefined;
}

function firstWild(values: readonly unknown[], name: string): string | undefined {
  for (const inner of values) {
    const found = wildNumber(inner, name);
    if (found !== undefined) return found;
  }
  return undefined;
}

import { describe, expect, it } from 'vitest';
import { arcEdge, circleEdge, type Edge, lineEdge } from '../../lib/math/curves.js';
import { meetings } from '../../lib/math/planar-cross.js';
import type { Vec2 } from '../../lib/math/vec.js';

const TOLERANCE = 1e-3;
const shares = (a: Edge, b: Edge): number[] => [...meetings(a, b, TOLERANCE)].sort((p, q) => p - q);
const close = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 9) as number);
const level = (y: number, from = 0, to = 10) => lineEdge([from, y], [to, y]);
const upright = (x: number, from: number, to: number) => lineEdge([x, from], [x, to]);

// All by plane geometry.
describe('where two lines meet', () => {
  it.each<readonly [string, Edge, Edge, readonly number[]]>([
    ['they cross', level(0), upright(4, -3, 5), [0.4]],
    ['one starts on the other', level(0), upright(4, 0, 5), [0.4, 0.4]],
    ['one ends short of the other', level(0), upright(4, 1, 5), []],
    ['one passes the end of the other', level(0), upright(11, -3, 5), []],
    ['one crosses the very start', level(0), upright(0, -3, 5), [0]],
    ['one crosses the very end', level(0), upright(10, -3, 5), [1]],
    ['one crosses just before the start, within the tolerance', level(0), upright(-5e-4, -3, 5), [0]],
    ['they lie side by side', level(0), level(1), []],
    ['one begins on the other and goes on', level(0), level(0, 4, 14), [0.4]],
    ['one lies in the other', level(0), level(0, 4, 7), [0.4, 0.7]],
  ])('%s', (_, a, b, wanted) => expect(shares(a, b)).toEqual(close(wanted)));
});

describe('where a line meets a circle of 5 about (5, 0)', () => {
  const centre: Vec2 = [5, 0];
  const circle = circleEdge(centre, 5);
  const line = (y: number) => level(y, -10, 20);

  it.each<readonly [string, Edge, Edge, readonly number[]]>([
    ['3 beside the centre: 4 to either side of its foot', line(3), circle, [11 / 30, 19 / 30]],
    ['of which there is the right half', line(3), arcEdge(centre, 5, -1, 1), [19 / 30]],
    ['of which there is none there', line(3), arcEdge(centre, 5, 4, 5), []],
    ['and the line ends inside', level(3, -10, 5), circle, [11 / 15]],
    ['touches it', line(5), circle, [0.5]],
    ['passes it within the tolerance', line(5 + 5e-4), circle, [0.5]],
    ['cuts less of it off than the tolerance', line(5 - 5e-4), circle, [0.5]],
    ['passes it clear', line(5.01), circle, []],
  ])('%s', (_, a, b, wanted) => expect(shares(a, b)).toEqual(close(wanted)));
});

describe('where circles meet', () => {
  const circle = circleEdge([0, 0], 5);
  const turn = Math.atan2(3, 4) / (2 * Math.PI);

  it.each<readonly [string, Edge, readonly number[]]>([
    ['a smaller one about (4, 0), 3 above and below its centre', circleEdge([4, 0], 3), [turn, 1 - turn]],
    ['a larger one about (−4, 0): the same', circleEdge([-4, 0], Math.sqrt(73)), [turn, 1 - turn]],
    ['its upper half alone', arcEdge([4, 0], 3, 0.1, 3), [turn]],
    ['one that touches from outside', circleEdge([0, 8], 3), [0.25]],
    ['one that touches from inside', circleEdge([0, 2], 3), [0.25]],
    ['one that stays clear', circleEdge([0, 8.01], 3), []],
    ['one that stays clear inside', circleEdge([0, 1.9], 3), []],
    ['one about the same centre', circleEdge([0, 0], 3), []],
  ])('%s', (_, other, wanted) => expect(shares(circle, other)).toEqual(close(wanted)));
});

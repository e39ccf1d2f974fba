import { expect, test } from 'vitest';
import { nearest } from '../../lib/base/suggest.js';

const KEYS = ['radius', 'rise', 'profile', 'stem-wall', 'course-height', 'joint', 'joint-range', 'at', 'id', 'in'];

test.each([
  ['raduis', 'radius'],
  ['profil', 'profile'],
  ['stemWall', 'stem-wall'],
  ['stem_wall', 'stem-wall'],
  ['courseHeight', 'course-height'],
  ['coarse-hieght', 'course-height'],
  ['Joint', 'joint'],
  ['joints', 'joint'],
])('%s is near %s', (word, key) => {
  expect(nearest(word, KEYS)).toBe(key);
});

test.each(['colour', 'x', '', 'it', 'on', 'a'.repeat(10_000)])('nothing is near %s', (word) => {
  expect(nearest(word, KEYS)).toBeNull();
});

test('of equally near ones the first wins, an equal one always', () => {
  expect(nearest('bay', ['day', 'way'])).toBe('day');
  expect(nearest('way', ['day', 'way'])).toBe('way');
});

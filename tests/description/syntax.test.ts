import { expect, test } from 'vitest';
import { problemsOf } from './helpers.js';

/** What people get wrong in YAML and JSON, and what they are told. */
test.each([
  ['{"format": 1 "domes": []}', '1:12', 'A comma is missing'],
  ['{"format" 1}', '1:11', 'A comma or a colon is missing'],
  ['{"format": 1,', '1:14', 'A bracket is opened and not closed'],
  ['{"format": 1}}', '1:14', 'does not belong'],
  ['format: 1\n  units: m', '1:9', 'A second key stands in the same line'],
  ['format: 1\ndomes:\n- id: a\n radius: 3', '4:1', 'the indent does not fit'],
  ['format: 1\ndomes\n', '2:1', 'A colon, or the space after it, is missing'],
  ['title: @x', '1:8', 'a sign that has a meaning of its own'],
  ['a: "\\q"', '1:5', 'A backslash in double quotes'],
  [`width: '6'10"'`, '1:11', 'does not belong'],
  ['a: "x"#c', '1:7', 'no space before it'],
  ['a:\n\tb: 1', '2:1', 'A tab is used to indent'],
  ['a: [1, 2\nb: 3', '2:1', 'A bracket is opened and not closed'],
])('%j', (text, place, message) => {
  const [first] = problemsOf(text);
  expect(first?.code).toBe('file-syntax');
  expect(`${first?.where?.line}:${first?.where?.column}`).toBe(place);
  expect(first?.message).toContain(message);
});

test('the mend speaks of JSON or YAML as the file is', () => {
  expect(problemsOf('{"format" 1}')[0]?.mend).not.toContain('indents');
  expect(problemsOf('"format" 1', 'house.json')[0]?.mend).not.toContain('indents');
  expect(problemsOf(`width: '6'10"'`)[0]?.mend).toContain("a ' is written twice");
});

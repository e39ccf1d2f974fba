import { describe, expect, test } from 'vitest';
import { DescriptionError, type Problem } from '../../lib/base/problems.js';
import type { House } from '../../lib/description/house.js';
import { readDescription } from '../../lib/description/read.js';
import { withHall } from './helpers.js';

const FILE = withHall(
  'openings: [{ id: bay, in: hall, bearing: 90, width: 1, height: 1 }]',
  'radius: 3.0, stem-wall: 0.6, profile: pointed',
);

const read = (...set: readonly string[]): House => readDescription(FILE, 'house.yaml', { set });

function problems(...set: readonly string[]): readonly Problem[] {
  try {
    read(...set);
    return [];
  } catch (error) {
    if (error instanceof DescriptionError) return error.problems;
    throw error;
  }
}

describe('values set from outside the file', () => {
  test('read like the file with that value in it', () => {
    const edited = readDescription(FILE.replace('radius: 3.0', 'radius: 2.5'), 'house.yaml');
    expect(read('domes.hall.radius=2.5')).toEqual(edited);
    expect(read('domes[0].radius=2500 mm')).toEqual(edited);
    expect(read(`domes.hall.radius = 8' 2 7/16"`).domes[0]?.radius).toBeCloseTo((98 + 7 / 16) * 25.4, 6);
  });

  test('may name sections, keys and words that the file leaves out', () => {
    expect(read('site.snow=0.8 kPa').site.snowKpa).toBe(0.8);
    expect(read('footing=none').footing).toBeNull();
    expect(read('domes.hall.at=[1, 2]').domes[0]?.at).toEqual([1000, 2000]);
    expect(read('domes.hall.at=[1, 2]', 'domes.hall.at[1]=5').domes[0]?.at).toEqual([1000, 5000]);
    expect(read('domes.hall.profile.rise=6').domes[0]?.profile).toEqual({ shape: 'pointed', rise: 6000 });
    expect(read('openings.bay.head={ shape: segmental, rise: 0.2 }').openings[0]?.head.rise).toBe(200);
    expect(read('project.title=a = b').project.title).toBe('a = b');
  });

  test('are told of where they come from, with everything else that is wrong', () => {
    const [first] = problems('domes.hall.radius=wide');
    expect(first).toMatchObject({
      code: 'quantity-unreadable',
      path: 'domes[0].radius',
      where: { file: '--set domes.hall.radius', line: 1, column: 1 },
    });
    expect(
      problems('domes.hall.radus=3', 'wall.thickness=2 mm')
        .map((p) => p.code)
        .sort(),
    ).toEqual(['key-unknown', 'value-range']);
    expect(problems('openings.bay.head.shape=[').map((p) => p.code)).toEqual(['file-syntax']);
    expect(problems(`wall=${'['.repeat(40)}`).map((p) => p.code)).toEqual(['nesting-too-deep']);
  });

  test.each([
    ['no equals sign', 'domes.hall.radius', 'set-unreadable'],
    ['no path', '=3', 'set-unreadable'],
    ['a path that ends in a dot', 'domes.=3', 'set-unreadable'],
    ['an unknown id', 'domes.hal.radius=3', 'set-nowhere'],
    ['a place past the end', 'domes[1].radius=3', 'set-nowhere'],
    ['an entry of a missing list', 'rooms.living.use=bath', 'set-nowhere'],
    ['a key under a number', 'domes.hall.radius.x=3', 'set-nowhere'],
    ['a key of the language', 'wall.__proto__.x=3', 'set-nowhere'],
    ['no value', 'wall.thickness=', 'set-unreadable'],
  ])('%s is a problem', (_, set, code) => {
    expect(problems(set).map((p) => p.code)).toEqual([code]);
  });

  test('a near miss of an id gets a suggestion', () => {
    expect(problems('domes.hal.radius=3')[0]?.mend).toBe('Did you mean "hall"?');
  });
});

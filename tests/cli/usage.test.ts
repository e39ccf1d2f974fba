import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { temporaryFolder } from './folder/helpers.js';
import { ringcourse } from './program.js';

const temporary = temporaryFolder();

describe('a call that can not be followed', () => {
  it.each([
    [['biuld', 'house.yaml'], 'There is no command biuld.', 'Did you mean build?'],
    [
      ['frobnicate'],
      'There is no command frobnicate.',
      'There are: new, check, build, watch, vary, compare, tables, table, schema, completion.',
    ],
    [['--bogus'], 'There is no option --bogus here.', '"ringcourse --help" tells how it is called.'],
    [['build', 'a.yaml'], 'Option --output is missing.', '"ringcourse build --help" tells'],
    [['build', '-o', 'out'], 'The name of a file is missing.', '"ringcourse build --help" tells'],
    [['build', 'a.yaml', '-o'], 'Option -o needs a value.', '"ringcourse build --help" tells'],
    [['build', 'a.yaml', '-o', 'out', '--onyl', 'model'], 'There is no option --onyl here.', 'Did you mean --only?'],
    [['build', 'a.yaml', '--otput', 'out'], 'There is no option --otput here.', 'Did you mean --output?'],
    [['build', 'a.yaml', 'b.yaml', '-o', 'out'], '"b.yaml" is one name too many.', '"ringcourse build --help" tells'],
    [
      ['build', 'a.yaml', '-o', 'out', '--only', 'drawing'],
      '--only doesn\'t know "drawing".',
      'Did you mean drawings?',
    ],
    [['build', 'a.yaml', '-o', 'out', '--only', ','], '--only doesn\'t know "".', 'It knows: drawings,'],
    [['build', 'a.yaml', '-o', ''], 'The name of the output folder is missing.', 'Name one after -o.'],
    [['table', 'a.yaml'], 'A name is missing: ringcourse table <file> <name>.', '"ringcourse table --help" tells'],
    [['check'], 'The name of a file is missing.', '"ringcourse check --help" tells'],
    [
      ['check', 'a.yaml', '--__proto__', 'x'],
      'There is no option --__proto__ here.',
      '"ringcourse check --help" tells',
    ],
    [['new', 'house.json'], 'is YAML, and "house.json" is not named so.', 'ends in .yaml'],
  ])('%j: exit 2, told on stderr with how to mend it', (args, wrong, mend) => {
    const { code, out, err } = ringcourse(temporary.path, ...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(wrong);
    expect(err).toContain(mend);
    expect(err.split('\n')).toHaveLength(3);
  });

  it('with no command at all is answered with the help, on stderr', () => {
    const { code, out, err } = ringcourse(temporary.path);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    for (const command of [
      'build',
      'check',
      'new',
      'schema',
      'table',
      'tables',
      'watch',
      'vary',
      'compare',
      'completion',
    ])
      expect(err).toContain(`ringcourse ${command}`);
  });
});

describe('help and version', () => {
  it('are results: on stdout, exit 0', () => {
    const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
    expect(ringcourse(temporary.path, '--version')).toEqual({ code: 0, out: `${version}\n`, err: '' });
    const help = ringcourse(temporary.path, 'build', '--help');
    expect(help).toMatchObject({ code: 0, err: '' });
    for (const word of ['<file>', '--output', '-o', '--only', 'drawings, model, tables'])
      expect(help.out).toContain(word);
  });

  it('speak English whatever the language of the system', () => {
    const before = process.env.LC_ALL;
    process.env.LC_ALL = 'de_DE.UTF-8';
    try {
      expect(ringcourse(temporary.path, '--help').out).toContain('Commands:');
    } finally {
      if (before === undefined) delete process.env.LC_ALL;
      else process.env.LC_ALL = before;
    }
  });
});

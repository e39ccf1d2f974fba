import { describe, expect, it } from 'vitest';
import { readByAdmesh } from './admesh.js';
import { readByEzdxf } from './ezdxf.js';
import { readWith } from './run.js';

const file = { name: 'x', bytes: new TextEncoder().encode('no model and no drawing') };

describe('outside readers', () => {
  it('fail by name of the Debian package when they are missing, never in silence', () => {
    expect(() => readWith({ command: 'no-such-reader', args: [], debianPackage: 'reader-package' }, file)).toThrow(
      /no-such-reader is missing: apt-get install reader-package/,
    );
    const module = {
      command: '/usr/bin/python3',
      args: ['-c', 'import no_such_module'],
      debianPackage: 'python3-no-such',
    };
    expect(() => readWith(module, file)).toThrow(/apt-get install python3-no-such/);
  });

  it('refuse what is no file of theirs', () => {
    expect(() => readByEzdxf(file.bytes)).toThrow(/refused drawing\.dxf/);
    expect(() => readByAdmesh(file.bytes)).toThrow();
  });
});

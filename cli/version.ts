import { createRequire } from 'node:module';

/** The version in package.json, found by the package's own name: from the sources and from the build alike. */
export const version: string = createRequire(import.meta.url)('ringcourse/package.json').version;

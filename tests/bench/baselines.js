/**
 * What the solids of a house take beside two others who do the same booleans on the same bodies: the kernel by itself,
 * with no names, checks, outlines or meshes round it, and the booleans of @jscad/modeling.
 */
import { performance } from 'node:perf_hooks';
import modeling from '@jscad/modeling';
import { houseSolids } from '../../dist/lib/solids/house-solids.js';
import { SolidScope } from '../../dist/lib/solids/kernel.js';

const { booleans, geometries } = modeling;
const OPERATIONS = { union: 'union', subtract: 'difference', intersect: 'intersection' };

/** Calls `tell` with the kernel's own operation and bodies before each boolean while `work` runs. */
function watched(work, tell) {
  const originals = Object.keys(OPERATIONS).map((name) => [name, SolidScope.prototype[name]]);
  for (const [name, method] of originals) {
    SolidScope.prototype[name] = function (part, ...solids) {
      const bodies = solids.flat().map(({ body }) => body);
      if (bodies.length > 1) tell(name, bodies, this.bindings.Manifold);
      return method.call(this, part, ...solids);
    };
  }
  try {
    work();
  } finally {
    for (const [name, method] of originals) SolidScope.prototype[name] = method;
  }
}

const milliseconds = (work) => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

/** The booleans by the kernel alone; asking for the status makes it work them out. */
function bareKernel(solids) {
  let sum = 0;
  watched(solids, (name, bodies, Manifold) => {
    let made;
    sum += milliseconds(() => {
      made = Manifold[OPERATIONS[name]](bodies);
      made.status();
    });
    made.delete();
  });
  return sum;
}

function geom3Of(body) {
  const { vertProperties: at, triVerts, numProp } = body.getMesh();
  const corner = (v) => [at[v * numProp], at[v * numProp + 1], at[v * numProp + 2]];
  const polygons = [];
  for (let t = 0; t < triVerts.length; t += 3)
    polygons.push(geometries.poly3.create([triVerts[t], triVerts[t + 1], triVerts[t + 2]].map(corner)));
  return geometries.geom3.create(polygons);
}

function jscadBooleans(solids) {
  let sum = 0;
  let count = 0;
  watched(solids, (name, bodies) => {
    const taken = bodies.map(geom3Of);
    count++;
    sum += milliseconds(() => booleans[name](...taken));
  });
  return { sum, count };
}

/** Milliseconds of the solids of a set-out house, of their booleans by the bare kernel, and by @jscad/modeling. */
export function timeBaselines(kernel, setout, surface) {
  const solids = () => houseSolids(kernel, setout, { surface });
  const least = (time) => Math.min(...[1, 2, 3].map(time));
  const ours = least(() => milliseconds(solids));
  const bare = least(() => bareKernel(solids));
  const { sum: jscad, count } = jscadBooleans(solids);
  return { surface, count, ours, bare, jscad };
}

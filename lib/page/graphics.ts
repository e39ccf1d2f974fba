import type { Sight } from '../documents/camera.js';
import type { PagePayload } from '../documents/page-payload.js';
import { CORNER, FACE, LINE } from './shaders.js';
import type { Solids } from './solids.js';
import * as texts from './texts.js';
import type { CutPlane } from './view.js';

/** What of the model is shown, and how. */
export interface Shown {
  readonly sight: Sight;
  /** Pixels of the canvas. */
  readonly size: readonly [number, number];
  /** Pixels of the canvas for one of the page. */
  readonly density: number;
  /** 0 together, 1 fully apart. */
  readonly apart: number;
  /** Last step shown. */
  readonly step: number;
  /** `null` when nothing is cut. */
  readonly cut: CutPlane | null;
  readonly chosen: number | null;
  readonly paper: Rgb;
  readonly ink: Rgb;
  readonly accent: Rgb;
}

export type Rgb = readonly [number, number, number];

/** Pieces a row of the tables of places and looks; the shader counts on it. */
const ROW = 256;
/** Lines come before the faces that they bound by so much, mm, and by this part of a pixel where that is more. */
const PULL = 2;
const PULL_PIXELS = 0.6;
/** Edges are faint where a course is only so many pixels high, and full at four times that. */
const FAINT = 7;

/** Red, green, blue from 0 to 255, and the number of the lines across; plain when missing. */
export interface Look {
  readonly colour: Rgb;
  readonly hatch?: number;
}

export interface Graphics {
  /** Looks of the pieces. */
  paint(pieces: readonly Look[]): void;
  draw(shown: Shown): void;
  /** The piece at a pixel of the canvas, from the upper left. */
  pick(shown: Shown, x: number, y: number): number | null;
}

/** @throws Error in words for the reader, where the browser has no WebGL 2. */
export function startGraphics(canvas: HTMLCanvasElement, payload: PagePayload, solids: Solids): Graphics {
  const gl = canvas.getContext('webgl2', {
    antialias: !drawnBySoftware(),
    stencil: true,
    preserveDrawingBuffer: true,
    alpha: false,
  });
  if (!gl) throw new Error(texts.noWebGl);
  const faces = programOf(gl, FACE);
  const lines = programOf(gl, LINE);
  const rows = Math.max(1, Math.ceil(payload.names.length / ROW));
  const looks = new Uint8Array(4 * ROW * rows).fill(255);
  textureOf(gl, 0, [gl.RGBA32F, gl.FLOAT], rows, placesOf(payload, rows));
  const look = textureOf(gl, 1, [gl.RGBA8, gl.UNSIGNED_BYTE], rows, looks);
  const array = gl.createVertexArray();
  gl.bindVertexArray(array);
  gl.bindBuffer(gl.ARRAY_BUFFER, gl.createBuffer());
  gl.bufferData(gl.ARRAY_BUFFER, solids.corners, gl.STATIC_DRAW);
  gl.enableVertexAttribArray(0);
  gl.vertexAttribPointer(0, 3, gl.FLOAT, false, 16, 0);
  gl.enableVertexAttribArray(1);
  gl.vertexAttribPointer(1, 1, gl.FLOAT, false, 16, 12);
  const triangles = indexBuffer(gl, solids.triangles);
  const edges = indexBuffer(gl, solids.edges);
  const spot = onePixel(gl);

  function use(program: Program, shown: Shown): void {
    const { sight, apart, step, cut } = shown;
    gl?.useProgram(program.program);
    program.set('uSee', sight.matrix);
    program.set('uEye', sight.eye);
    program.set('uApart', apart);
    program.set('uStep', step);
    program.set('uCut', cut ? [...cut.normal, cut.distance] : [0, 0, 0, 1]);
    program.set('uWhere', 0, true);
    program.set('uLook', 1, true);
    program.set('uPull', 0);
    program.set('uShift', [0, 0]);
  }

  function drawFaces(shown: Shown, pick: boolean): void {
    if (!gl) return;
    use(faces, shown);
    faces.set('uRight', shown.sight.right);
    faces.set('uPixels', shown.density);
    faces.set('uPick', pick ? 1 : 0, true);
    // Panes have two sides.
    if (shown.cut || pick) gl.disable(gl.CULL_FACE);
    else gl.enable(gl.CULL_FACE);
    gl.bindBuffer(gl.ELEMENT_ARRAY_BUFFER, triangles);
    gl.drawElements(gl.TRIANGLES, pick ? solids.triangles.length : solids.solid, gl.UNSIGNED_INT, 0);
  }

  function drawLines(shown: Shown): void {
    if (!gl) return;
    const { sight, ink, accent, chosen, size, density } = shown;
    use(lines, shown);
    gl.bindBuffer(gl.ELEMENT_ARRAY_BUFFER, edges);
    gl.enable(gl.BLEND);
    gl.blendFuncSeparate(gl.SRC_ALPHA, gl.ONE_MINUS_SRC_ALPHA, gl.ONE, gl.ONE);
    const high = COURSE / sight.pixel / FAINT;
    lines.set('uInk', [...ink, Math.min(0.85, Math.max(0.12, high / 4))]);
    lines.set('uPull', Math.max(PULL, PULL_PIXELS * sight.pixel));
    // Behind a section lie the far edges of what is cut: only where an outside is seen are there edges.
    gl.enable(gl.STENCIL_TEST);
    gl.stencilFunc(gl.EQUAL, 1, 1);
    gl.stencilOp(gl.KEEP, gl.KEEP, gl.KEEP);
    gl.drawElements(gl.LINES, solids.edges.length, gl.UNSIGNED_INT, 0);
    gl.disable(gl.STENCIL_TEST);
    const own = chosen === null ? undefined : solids.edgeOf[chosen];
    if (own) {
      // Lines are one pixel wide: several beside one another make a thick one, seen through everything.
      gl.disable(gl.DEPTH_TEST);
      lines.set('uInk', [...accent, 1]);
      for (const [dx, dy] of THICK) {
        lines.set('uShift', [(2 * dx * density) / size[0], (2 * dy * density) / size[1]]);
        gl.drawElements(gl.LINES, own[1] - own[0], gl.UNSIGNED_INT, 4 * own[0]);
      }
      gl.enable(gl.DEPTH_TEST);
    }
    gl.disable(gl.BLEND);
  }

  return {
    paint(pieces) {
      for (const [i, { colour, hatch = 0 }] of pieces.entries()) looks.set([...colour, hatch], 4 * i);
      gl.activeTexture(gl.TEXTURE1);
      gl.bindTexture(gl.TEXTURE_2D, look);
      gl.texSubImage2D(gl.TEXTURE_2D, 0, 0, 0, ROW, rows, gl.RGBA, gl.UNSIGNED_BYTE, looks);
    },
    draw(shown) {
      const [width, height] = shown.size;
      gl.bindFramebuffer(gl.FRAMEBUFFER, null);
      gl.viewport(0, 0, width, height);
      gl.clearColor(...shown.paper, 1);
      gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT | gl.STENCIL_BUFFER_BIT);
      gl.enable(gl.DEPTH_TEST);
      gl.enable(gl.STENCIL_TEST);
      gl.stencilFunc(gl.ALWAYS, 1, 1);
      gl.stencilOpSeparate(gl.FRONT, gl.KEEP, gl.KEEP, gl.REPLACE);
      gl.stencilOpSeparate(gl.BACK, gl.KEEP, gl.KEEP, gl.ZERO);
      drawFaces(shown, false);
      gl.disable(gl.STENCIL_TEST);
      drawLines(shown);
    },
    pick(shown, x, y) {
      const [width, height] = shown.size;
      gl.bindFramebuffer(gl.FRAMEBUFFER, spot);
      // The whole view, moved so that the pixel asked for is the only one that there is.
      gl.viewport(-Math.floor(x), Math.floor(y) + 1 - height, width, height);
      gl.clearColor(0, 0, 0, 0);
      gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
      gl.enable(gl.DEPTH_TEST);
      drawFaces(shown, true);
      const at = new Uint8Array(4);
      gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, at);
      gl.bindFramebuffer(gl.FRAMEBUFFER, null);
      const piece = (at[0] as number) + 256 * (at[1] as number) + 65536 * (at[2] as number) - 1;
      return piece >= 0 && piece < payload.names.length ? piece : null;
    },
  };
}

/** Names by which renderers without a graphics card go. */
const SOFTWARE = /swiftshader|llvmpipe|softpipe|software|basic render/i;

/** Smooth edges cost a graphics card nothing, and a processor that stands in for one half of its time. */
function drawnBySoftware(): boolean {
  const gl = document.createElement('canvas').getContext('webgl2');
  if (!gl) return true;
  const told = gl.getExtension('WEBGL_debug_renderer_info');
  const name = String(gl.getParameter(told ? told.UNMASKED_RENDERER_WEBGL : gl.RENDERER));
  gl.getExtension('WEBGL_lose_context')?.loseContext();
  return SOFTWARE.test(name);
}

/** A course of blocks is about so high, mm: what decides how faint edges are. */
const COURSE = 250;

const THICK = [
  [0, 0],
  [0.7, 0],
  [-0.7, 0],
  [0, 0.7],
  [0, -0.7],
] as const;

interface Program {
  readonly program: WebGLProgram;
  /** Sets a uniform that the program uses; whole numbers where `whole` says so. */
  set(name: string, value: number | readonly number[], whole?: boolean): void;
}

function programOf(gl: WebGL2RenderingContext, fragment: string): Program {
  const program = gl.createProgram();
  for (const [kind, source] of [
    [gl.VERTEX_SHADER, CORNER],
    [gl.FRAGMENT_SHADER, fragment],
  ] as const) {
    const shader = gl.createShader(kind);
    if (!shader) throw new Error(texts.noShader);
    gl.shaderSource(shader, source);
    gl.compileShader(shader);
    gl.attachShader(program, shader);
  }
  gl.bindAttribLocation(program, 0, 'aAt');
  gl.bindAttribLocation(program, 1, 'aPiece');
  gl.linkProgram(program);
  if (!gl.getProgramParameter(program, gl.LINK_STATUS))
    throw new Error(texts.shaderRefused(gl.getProgramInfoLog(program)));
  const places = new Map<string, WebGLUniformLocation | null>();
  return {
    program,
    set(name, value, whole = false) {
      if (!places.has(name)) places.set(name, gl.getUniformLocation(program, name));
      const at = places.get(name) ?? null;
      if (typeof value === 'number') whole ? gl.uniform1i(at, value) : gl.uniform1f(at, value);
      else if (value.length === 16) gl.uniformMatrix4fv(at, false, [...value]);
      else if (value.length === 4) gl.uniform4fv(at, value);
      else if (value.length === 3) gl.uniform3fv(at, value);
      else gl.uniform2fv(at, value);
    },
  };
}

/** How far each piece moves apart, and its step. */
function placesOf({ names, lift, lifts, step }: PagePayload, rows: number): Float32Array {
  const places = new Float32Array(4 * ROW * rows);
  for (let i = 0; i < names.length; i++)
    places.set([...(lifts[lift[i] as number] as readonly number[]), step[i] as number], 4 * i);
  return places;
}

function textureOf(
  gl: WebGL2RenderingContext,
  unit: 0 | 1,
  [format, type]: readonly [number, number],
  rows: number,
  values: ArrayBufferView,
): WebGLTexture {
  const texture = gl.createTexture();
  gl.activeTexture(gl.TEXTURE0 + unit);
  gl.bindTexture(gl.TEXTURE_2D, texture);
  for (const side of [gl.TEXTURE_MIN_FILTER, gl.TEXTURE_MAG_FILTER]) gl.texParameteri(gl.TEXTURE_2D, side, gl.NEAREST);
  gl.texImage2D(gl.TEXTURE_2D, 0, format, ROW, rows, 0, gl.RGBA, type, values);
  return texture;
}

function indexBuffer(gl: WebGL2RenderingContext, indices: Uint32Array): WebGLBuffer {
  const buffer = gl.createBuffer();
  gl.bindBuffer(gl.ELEMENT_ARRAY_BUFFER, buffer);
  gl.bufferData(gl.ELEMENT_ARRAY_BUFFER, indices, gl.STATIC_DRAW);
  return buffer;
}

/** A picture of one pixel with a depth, to ask what lies there. */
function onePixel(gl: WebGL2RenderingContext): WebGLFramebuffer {
  const frame = gl.createFramebuffer();
  gl.bindFramebuffer(gl.FRAMEBUFFER, frame);
  for (const [place, format] of [
    [gl.COLOR_ATTACHMENT0, gl.RGBA8],
    [gl.DEPTH_ATTACHMENT, gl.DEPTH_COMPONENT16],
  ] as const) {
    const buffer = gl.createRenderbuffer();
    gl.bindRenderbuffer(gl.RENDERBUFFER, buffer);
    gl.renderbufferStorage(gl.RENDERBUFFER, format, 1, 1);
    gl.framebufferRenderbuffer(gl.FRAMEBUFFER, place, gl.RENDERBUFFER, buffer);
  }
  gl.bindFramebuffer(gl.FRAMEBUFFER, null);
  return frame;
}

import { HATCHED } from './hatches.js';

/** Pieces move apart, lines come a little nearer, and those of later steps collapse to nothing. */
export const CORNER = `#version 300 es
in vec3 aAt;
in float aPiece;
uniform mat4 uSee;
uniform float uApart;
uniform float uStep;
uniform vec3 uEye;
uniform float uPull;
uniform vec2 uShift;
uniform sampler2D uWhere;
uniform sampler2D uLook;
out vec3 vAt;
centroid out vec3 vCut;
flat out vec4 vLook;
flat out float vPiece;
void main() {
  ivec2 cell = ivec2(int(aPiece) & 255, int(aPiece) >> 8);
  vec4 where = texelFetch(uWhere, cell, 0);
  vLook = texelFetch(uLook, cell, 0);
  vPiece = aPiece;
  vAt = aAt + uApart * where.xyz;
  vCut = vAt;
  gl_Position = uSee * vec4(vAt + normalize(uEye - vAt) * uPull, 1.0);
  gl_Position.xy += uShift * gl_Position.w;
  if (where.w > uStep) gl_Position = vec4(0.0, 0.0, 2.0, 1.0);
}`;

/** Faces in the light; where the cut opens a solid, the inside of its far faces stands for the section, hatched. */
export const FACE = `#version 300 es
precision highp float;
in vec3 vAt;
centroid in vec3 vCut;
flat in vec4 vLook;
flat in float vPiece;
uniform vec4 uCut;
uniform vec3 uEye;
uniform vec3 uRight;
uniform float uPixels;
uniform bool uPick;
out vec4 colour;${HATCHED}
void main() {
  if (dot(uCut.xyz, vCut) > uCut.w) discard;
  if (uPick) {
    float id = vPiece + 1.0;
    colour = vec4(mod(id, 256.0), mod(floor(id / 256.0), 256.0), floor(id / 65536.0), 255.0) / 255.0;
    return;
  }
  vec3 base = hatched(vLook.rgb, int(vLook.a * 255.0 + 0.5), gl_FragCoord.xy, uPixels);
  if (!gl_FrontFacing) {
    float stripe = mod(gl_FragCoord.x + gl_FragCoord.y, 7.0 * uPixels) / uPixels;
    colour = vec4(mix(mix(base, vec3(1.0), 0.45), base * 0.35, stripe < 1.1 ? 1.0 : 0.0), 1.0);
    return;
  }
  vec3 toEye = normalize(uEye - vAt);
  vec3 normal = normalize(cross(dFdx(vAt), dFdy(vAt)));
  if (dot(normal, toEye) < 0.0) normal = -normal;
  vec3 lamp = normalize(toEye * 0.55 + uRight * 0.4 + vec3(0.0, 0.0, 0.75));
  float light = 0.5 + 0.5 * max(0.0, dot(normal, lamp)) + 0.06 * normal.z;
  colour = vec4(base * light, 1.0);
}`;

export const LINE = `#version 300 es
precision highp float;
centroid in vec3 vCut;
uniform vec4 uCut;
uniform vec4 uInk;
out vec4 colour;
void main() {
  if (dot(uCut.xyz, vCut) > uCut.w) discard;
  colour = uInk;
}`;

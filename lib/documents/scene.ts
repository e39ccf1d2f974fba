import type { Vec3 } from '../math/vec.js';
import type { Mesh } from './mesh.js';

/**
 * Solids in their places: meshes that instances share, in a tree of groups. Millimetres, right-handed, z up;
 * what is modelled at a scale is already scaled.
 */
export interface Scene {
  readonly title: string;
  /** What is known of the whole, told in this order. */
  readonly facts: Facts;
  readonly materials: readonly Material[];
  /** Each closed; their names tell them apart. */
  readonly meshes: readonly Mesh[];
  readonly nodes: readonly SceneNode[];
}

/** What stands in a scene. */
export type SceneNode = Group | Instance;

/** Several nodes under one name, placed together. */
export interface Group {
  readonly kind: 'group';
  readonly name: string;
  readonly place: Placement;
  readonly nodes: readonly SceneNode[];
  readonly facts?: Facts;
}

/** One mesh in one place. */
export interface Instance {
  readonly kind: 'instance';
  readonly name: string;
  readonly place: Placement;
  /** Index of `meshes`. */
  readonly mesh: number;
  /** Index of `materials`. */
  readonly material: number;
  readonly facts?: Facts;
}

/** Names and values for whoever points at a thing; numbers in the unit that the name says. */
export type Facts = Readonly<Record<string, string | number>>;

/** What an instance looks to be made of. */
export interface Material {
  readonly name: string;
  /** Red, green, blue as a screen shows them (sRGB), 0 to 255. */
  readonly colour: readonly [number, number, number];
}

/** A motion: where the three axes point afterwards, and where the origin comes to lie (mm). */
export interface Placement {
  readonly x: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
  readonly move: Vec3;
}

/** Stays where it is. */
export const IN_PLACE: Placement = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1], move: [0, 0, 0] };

export const moved = (move: Vec3): Placement => ({ ...IN_PLACE, move });

/** A point after the motion. */
export function placed({ x, y, z, move }: Placement, [a, b, c]: Vec3): Vec3 {
  return [
    a * x[0] + b * y[0] + c * z[0] + move[0],
    a * x[1] + b * y[1] + c * z[1] + move[1],
    a * x[2] + b * y[2] + c * z[2] + move[2],
  ];
}

/** The motion `first` and then the motion `then`. */
export function inTurn(first: Placement, then: Placement): Placement {
  const turned = (v: Vec3): Vec3 => placed({ ...then, move: [0, 0, 0] }, v);
  return { x: turned(first.x), y: turned(first.y), z: turned(first.z), move: placed(then, first.move) };
}

/** Every instance with its place in the scene, depth first. */
export function instancesOf(scene: Scene): { readonly instance: Instance; readonly place: Placement }[] {
  const found: { instance: Instance; place: Placement }[] = [];
  const walk = (nodes: readonly SceneNode[], outer: Placement): void => {
    for (const node of nodes) {
      const place = inTurn(node.place, outer);
      if (node.kind === 'group') walk(node.nodes, place);
      else found.push({ instance: node, place });
    }
  };
  walk(scene.nodes, IN_PLACE);
  return found;
}

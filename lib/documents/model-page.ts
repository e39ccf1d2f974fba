import type { Vec3 } from '../math/vec.js';
import type { Scene } from './scene.js';

/**
 * A model that a reader turns on a screen: a scene, and what the page tells and does with each of its instances.
 * Millimetres, z up; all texts are worded for the reader.
 */
export interface ModelPage {
  readonly title: string;
  /** Names and values for the page's head. */
  readonly facts: readonly (readonly [name: string, value: string])[];
  readonly cautions: readonly string[];
  /** An instance's facts are what is told of it, in their order. */
  readonly scene: Scene;
  /** One for each of `instancesOf(scene)`, in that order. */
  readonly pieces: readonly PagePiece[];
  /** What is added at each step of building; the first stands on the ground. */
  readonly steps: readonly string[];
  /** Ways to colour the pieces, the plainest first. */
  readonly colourings: readonly Colouring[];
  readonly rooms: readonly PlaceName[];
  readonly openings: readonly PageOpening[];
  /** Bearing of true north, clockwise from y, radians. */
  readonly northRad: number;
}

/** How an instance behaves. */
export interface PagePiece {
  /** Index of the step that adds it. */
  readonly step: number;
  /** How far it moves when the model is drawn apart, mm. */
  readonly lift: Vec3;
  /** Index of the opening that it surrounds. */
  readonly opening: number | null;
}

export interface Colouring {
  readonly name: string;
  readonly entries: readonly ColourEntry[];
  /** Index of the entry of each piece. */
  readonly of: readonly number[];
}

export interface ColourEntry {
  readonly label: string;
  /** Red, green, blue as a screen shows them (sRGB), 0 to 255. */
  readonly colour: readonly [number, number, number];
  /** Number of the lines across it, where a colour stands for several entries; plain when missing. */
  readonly hatch?: number;
}

export interface PlaceName {
  readonly text: string;
  /** Where it stands in the room, and where over the roof. */
  readonly inside: Vec3;
  readonly over: Vec3;
  /** From the name to the room's wall, mm. */
  readonly reach: number;
}

export interface PageOpening {
  readonly name: string;
  readonly facts: readonly (readonly [name: string, value: string])[];
  readonly dimensions: readonly PageDimension[];
  /** Corners of its clear space, convex and flat; empty where one can't point at it. */
  readonly pane: readonly Vec3[];
  /** Where its middle is, and the bearing (radians) from which it is seen. */
  readonly middle: Vec3;
  readonly fromRad: number;
}

/** A distance between two points, with its text. */
export interface PageDimension {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly text: string;
}

import * as texts from '../../base/texts/print.js';
import type { Group, Instance, Material, Scene } from '../../documents/scene.js';
import { IN_PLACE } from '../../documents/scene.js';
import { type PartKind, type PrintModel, placeOnPlate } from './print-model.js';

/** Colours that the parts show in a slicer; what they are printed in is for the printer to say. */
const MATERIALS: Readonly<Record<PartKind, Material>> = {
  base: { name: texts.wallsAndGround, colour: [222, 206, 178] },
  roof: { name: 'roofs', colour: [178, 112, 82] },
  peg: { name: 'pegs', colour: [110, 124, 142] },
  block: { name: texts.looseBlocks, colour: [150, 148, 144] },
};
const KINDS = Object.keys(MATERIALS) as PartKind[];

/** What lies on each plate, mm of the model, the bed's corner in the origin. */
export function plateScenes(model: PrintModel): Scene[] {
  const { parts, places, plates, plan } = model;
  const { title } = plan.setout.house.project;
  return Array.from({ length: plates }, (_, k): Scene => {
    const here = places.filter((place) => place.plate === k + 1);
    const used = parts.map((_, part) => part).filter((part) => here.some((place) => place.part === part));
    const nodes = here.map((place, i): Instance => {
      const part = parts[place.part] as (typeof parts)[number];
      const copies = here.slice(0, i).filter((other) => other.part === place.part).length;
      return {
        kind: 'instance',
        name: part.count > 1 ? `${part.name} ${copies + 1}` : part.name,
        place: placeOnPlate(place, part),
        mesh: used.indexOf(place.part),
        material: KINDS.indexOf(part.kind),
      };
    });
    return {
      title: texts.plateOf(title, k + 1, plates),
      facts: factsOf(model),
      materials: KINDS.map((kind) => MATERIALS[kind]),
      meshes: used.map((part) => (parts[part] as (typeof parts)[number]).mesh),
      nodes,
    };
  });
}

/** The house as blocks and cast parts in one group, for a file that is told at the model's scale. */
export function groupedScene(scene: Scene, scale: number): Scene {
  const group: Group = { kind: 'group', name: scene.title, place: IN_PLACE, nodes: scene.nodes };
  return { ...scene, facts: { ...scene.facts, scale: `1:${scale}` }, nodes: [group] };
}

const factsOf = ({ plan }: PrintModel) => {
  const { print } = plan.setout.house;
  return {
    scale: `1:${print.scale}`,
    bed: `${print.bed.join(' × ')} mm`,
    'thinnest wall': `${print.thinnest} mm`,
    nozzle: `${print.nozzle} mm`,
  };
};

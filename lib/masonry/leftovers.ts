import { type BlockCut, CUT_EDGES } from './cuts.js';

/** Width that a saw takes, mm; common practice, no source. */
const KERF = 5;
/** Cuts alike to this much are one, mm. */
const ALIKE = 0.5;

/** Cuts of one mould that are marked out alike share a name; a mirrored one is turned over end to end. */
export interface NamedCut {
  readonly cut: BlockCut;
  readonly mould: string;
  /** `C1` and on; the same for alike and mirrored cuts. */
  readonly name: string;
  readonly mirrored: boolean;
  /** Mark of the block out of whose leftover this piece can be sawn; `null` when it needs a block of its own. */
  readonly from: string | null;
}

/**
 * Names cuts and shares leftovers out: of one mould, what one cut leaves with its head is enough for a piece that keeps
 * that head, or for its mirror image. The longest piece comes first and takes the shortest leftover that does.
 * @param stopped whether a block is cast no farther than its cut, and leaves nothing
 */
export function nameCuts(
  cuts: readonly BlockCut[],
  mouldOf: (cut: BlockCut) => string,
  stopped: (cut: BlockCut) => boolean = () => false,
): NamedCut[] {
  const names = new Map<string, { name: string; keeps: BlockCut['keeps'] }>();
  const sources = shareLeftovers(
    cuts.filter((cut) => !stopped(cut)),
    mouldOf,
  );
  return cuts.map((cut) => {
    const mould = mouldOf(cut);
    const sides = cut.keeps === 'start' || cut.keeps === 'end' ? 'head' : cut.keeps;
    const round = (mm: number) => Math.round(mm / ALIKE);
    // A notch or a piece of two cuts is told by more than its edges: those stay by themselves.
    const own = sides === 'head' ? '' : cut.block.mark;
    const key = [mould, sides, own, ...CUT_EDGES.map((e) => `${round(cut.left[e])}/${round(cut.whole[e])}`)].join(' ');
    const known = names.get(key) ?? { name: `C${names.size + 1}`, keeps: cut.keeps };
    names.set(key, known);
    return {
      cut,
      mould,
      name: known.name,
      mirrored: known.keeps !== cut.keeps,
      from: sources.get(cut.block.mark) ?? null,
    };
  });
}

const isHead = ({ keeps }: BlockCut): boolean => keeps === 'start' || keeps === 'end';

function shareLeftovers(cuts: readonly BlockCut[], mouldOf: (cut: BlockCut) => string): Map<string, string> {
  const needs = cuts
    .filter(isHead)
    .map((cut) => ({ cut, mould: mouldOf(cut), length: Math.max(...CUT_EDGES.map((e) => cut.left[e])) }))
    .sort((a, b) => b.length - a.length || (a.cut.block.mark < b.cut.block.mark ? -1 : 1));
  const sources = new Map<string, string>();
  // A block whose piece comes out of a leftover is not cast, and leaves none.
  const cast: { mark: string; mould: string; rest: number }[] = [];
  for (const { cut, mould, length } of needs) {
    let best: (typeof cast)[number] | undefined;
    for (const left of cast) {
      if (left.mould === mould && left.rest >= length && (!best || left.rest < best.rest)) best = left;
    }
    if (best) {
      sources.set(cut.block.mark, best.mark);
      cast.splice(cast.indexOf(best), 1);
      continue;
    }
    const rest = Math.min(...CUT_EDGES.map((e) => cut.whole[e] - cut.left[e])) - KERF;
    cast.push({ mark: cut.block.mark, mould, rest });
  }
  return sources;
}

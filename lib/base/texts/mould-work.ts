/** Wording about how moulds are used and come apart. */

export const derivedLeastDraft = 'derived; least draft of sides that stay: common practice, no source';
export const formOfExtrados = 'form of the extrados';
export const boardOfUpperBed = 'board of the upper bed';
export const boardOfLowerBed = 'board of the lower bed';
export const blocksAreHeld = 'Blocks are held by an undercut in their moulds.';
export const blocksSlideOutBetween = 'Blocks slide out between fixed bed boards with hardly any draft.';
export const everyBlockComesOut = 'Every block comes out of its mould: nothing holds it on its way.';
export const draftThatIsNeeded = 'draft that is needed';
export const nothingMayHoldBlock = 'nothing may hold the block; fixed bed boards open a little';
export const leastDraft = 'least draft';
export const leastAngleBetweenSide = 'least angle between a side and the way on which the block or the board leaves it';
export const derived = 'derived';
export const nothingToChange = 'Nothing to change.';
export const setCastingBedBoards = (told: string): string =>
  `Set \`casting.bed-boards: loose\`, or make blocks shorter or courses higher. Concerned: ${told}.`;

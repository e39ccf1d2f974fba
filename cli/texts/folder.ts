/** What is said of the folder of a package. */

export const madeFromAnotherDescription = 'made from another description';
export const madeByAnotherVersion = 'made by another version of ringcourse';
export const missingOrChangedSince = 'missing or changed since it was written';
export const folderCannotBeMade = (dir: string): string => `The folder ${dir} can't be made`;
export const cannotBeRead = (path: string): string => `${path} can't be read`;
export const onHost = (host: string): string => ` on ${host}`;
export const processHolds = (pid: number, host: string): string => `process ${pid}${host} holds it`;
export const outputFolderIsLocked = (who: string): string => `The output folder is locked: ${who}.`;
export const waitForThatRun = (path: string): string => `Wait for that run to end; if none is running, delete ${path}.`;
export const cannotBeWritten = (path: string): string => `${path} can't be written`;
export const isFileNotFolder = (asked: string): string => `${asked} is a file, not a folder.`;
export const nameFolder = 'Name a folder of its own for the package.';
export const outputFolderCannotBeUsed = (asked: string): string => `The output folder ${asked} can't be used`;
export const isFolderThisCommand = (asked: string): string =>
  `${asked} is the folder this command runs in, or one above it.`;
export const nameFolderOfItsOwn = 'Name a folder of its own for the package, such as out.';
export const movedAside = (dir: string, n: number): string =>
  `Moved ${dir}, which holds files of others, to ${dir}.kept-${n}.`;
export const andMore = (count: number): string => ` and ${count} more`;
export const folderHoldsOthers = (dir: string, named: string, more: string): string =>
  `The folder ${dir} holds what no package of ours lists: ${named}${more}.`;
export const moveItElsewhereName =
  'Move it elsewhere, name another folder, or give --force, which moves it aside whole.';
export const removedLeftByRun = (fresh: string): string => `Removed ${fresh}, left by a run that was cut short.`;
export const restoredMovedAside = (dir: string): string => `Restored ${dir}, moved aside by a run that was cut short.`;
export const packageCannotBeWritten = (fresh: string): string => `The package can't be written into ${fresh}`;
export const folderCannotBeUsed = (dir: string): string => `The folder ${dir} can't be used`;
export const packageCannotTakePlace = (dir: string): string => `The new package can't take the place of ${dir}`;
export const oldWasLeft = (old: string, strangers: string): string =>
  `${old} was left: ${strangers} came into it meanwhile.`;
export const readsBackOtherwise = (path: string): string => `${path} reads back otherwise than it was written.`;
export const diskMayBeFailing = 'The disk may be failing: choose another place, and look after this one.';
export const cannotBeRemoved = (old: string): string => `${old} can't be removed`;

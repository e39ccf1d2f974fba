/** Wording of the commands that write a package, and of its folder. */

export const computeHouseAndWrite =
  'Compute a house and write its drawings, model, moulds, templates, tables and report into a folder.';
export const everythingIntoFolderHouse = 'everything, into the folder house';
export const someGroupsAloneOthers = 'some groups alone; the others stay';
export const withAnotherSize = 'with another size';
export const whatWouldChangeThere = 'what would change there, and nothing written';
export const standardInputToOne = 'standard input to one ZIP';
export const orZipOnStandardOutput = (describe: string): string => `${describe}; - for a ZIP on standard output`;
export const computeEverythingWriteNothing = 'Compute everything, write nothing, tell what would change';
export const nameOfOutputFolder = 'The name of the output folder is missing.';
export const nameOneAfterO = 'Name one after -o.';
export const writing = (output: string): string => `writing ${output}`;
export const nextWrites = (all: string): string => `Next: ${all}, which writes it.`;
export const nextOpenReport = (output: string): string =>
  `Next: open ${output}/report.html, which tells how each check came out.`;
export const nextMakesEverything = (all: string): string => `Next: ${all}, which makes everything.`;
export const outputIsZip = '-o - puts a ZIP on standard output, where nothing else can stand.';
export const nameFolderAfterO = 'Name a folder after -o.';
export const buildAndBuildAgain = 'Build, and build again whenever the description changes, until stopped with Ctrl-C.';
export const keepFolderUp = 'keep the folder up to date while you edit';
export const someGroupsAlone = 'some groups alone, which is faster';
export const descriptionYamlOrJson = 'The description, YAML or JSON';
export const watchNeedsFile = 'watch needs a file to look at and a folder to write.';
export const nameBoth = 'Name both.';
export const waitingForToChange = (file: string): string => `Waiting for ${file} to change; Ctrl-C ends.`;
export const folderCannotBeWatched = (file: string): string => `The folder of ${file} can't be watched`;
export const folderOfPackage = 'Folder of the package; it is replaced as a whole';
export const makeSomeGroupsAlone = (outputGroups: string): string => `Make some groups alone: ${outputGroups}`;
export const moveFolderThatHolds = 'Move a folder that holds files of others aside';
export const onlyKnowsNot = (group: string): string => `--only doesn't know ${group}.`;
export const itKnows = (outputGroups: string): string => `It knows: ${outputGroups}.`;
export const megabytes = (bytes: string): string => `${bytes} MB`;
export const filesCount = (files: number): string => (files === 1 ? '1 file' : `${files} files`);
export const writtenTo = (output: string): string => `Written to ${output}`;
export const asBefore = ', as before';
export const leftOut = (because: string, dropped: string): string => `  Left out, ${because}: ${dropped}.`;
export const runBuildWithoutOnly = '  Run build without --only to make them anew.';
export const newChangedAsBefore = (
  count: number,
  changedCount: number,
  sameCount: number,
  removedCount: number,
): string => `${count} new, ${changedCount} changed, ${sameCount} as before, ${removedCount} removed`;
export const nothingWasWritten = (output: string): string => `Nothing was written to ${output}`;
export const itWould = (counts: string): string => `; it would be: ${counts}`;

/** What is said when a call, a file or the program fails. */

export const permissionIsDenied = 'permission is denied';
export const changeItsPermissions = 'Change its permissions, or choose another place.';
export const systemDoesNotPermit = 'the system does not permit it';
export const fileSystemIsRead = 'the file system is read-only';
export const choosePlaceThatCan = 'Choose a place that can be written.';
export const itDoesNotExist = 'it does not exist';
export const checkSpellingOfPath = 'Check the spelling of the path.';
export const partOfItsPath = 'a part of its path is a file, not a folder';
export const itIsFolder = 'it is a folder';
export const nameFile = 'Name a file.';
export const itExistsAlready = 'it exists already';
export const chooseAnotherName = 'Choose another name.';
export const diskIsFull = 'the disk is full';
export const freeSomeSpace = 'Free some space, or choose another disk.';
export const diskQuotaIsUsed = 'the disk quota is used up';
export const itIsInUse = 'it is in use or a mount point';
export const nameFolderInside = 'Name a folder inside it.';
export const itLiesOnAnother = 'it lies on another disk than its neighbours';
export const nameIsTooLong = 'the name is too long';
export const chooseShorterName = 'Choose a shorter name.';
export const itsLinksRun = 'its links run in a circle';
export const namePlaceLinkShould = 'Name the place the link should lead to.';
export const tooManyFiles = 'too many files are open';
export const closeOtherPrograms = 'Close other programs and try again.';
export const systemSays = (code: string): string => `the system says ${code}`;
export const tryAgainOrChoose = 'Try again, or choose another place.';
export const nameOfDescriptionFile = 'The name of the description file is missing.';
export const standardInput = 'standard input';
export const descriptionCantBeRead = (file: string): string => `The description ${file} can't be read`;
export const inputIsFolder = (what: string): string => `${what}: it is a folder.`;
export const nameFileInIt = 'Name a file in it.';
export const itIsLarger = (what: string, mostBytes: number): string => `${what}: it is larger than ${mostBytes} MB.`;
export const descriptionTakesFewKilobytes = 'A description takes a few kilobytes; check that this is the right file.';
export const fileIsUtf16 = 'The file is UTF-16 text, not UTF-8.';
export const fileIsNotUtf = 'The file is not UTF-8 text: it is binary, or text in another encoding.';
export const saveItAsPlain = 'Save it as plain text in UTF-8, or check that this is the right file.';
export const writeDescriptionToStart = 'write a description to start from';
export const readItAndRun = 'read it, and run every check';
export const drawingsModelTables = 'drawings, model, tables and report into a folder';
export const compareRowOfSizes = 'compare a row of sizes';
export const firstHelp = (firstCalls: string): string =>
  `${firstCalls}\n\nCast-block dome houses: one description in; solids, drawings, tables and checks out.\n"ringcourse <command> --help" begins with examples of that command.`;
export const exitCodes =
  'Exit codes: 0 fine, 1 our fault, 2 usage, 3 description wrong, 4 a check fails, 5 file trouble; 130 stopped by Ctrl-C.';
export const unexpectedError = (message: string): string => `: unexpected error: ${message}`;
export const faultOfOurs =
  '    This is a fault of ringcourse and not of your description. Please report it with this line and';
export const faultWithDebug =
  '    the description; RINGCOURSE_DEBUG=1 in the environment adds where in the program it happened.';
export const problemsCount = (n: number): string => (n === 1 ? '1 problem' : `${n} problems`);
export const nothingWasWritten = (count: string): string => `${count}; nothing was written.`;

import * as texts from './texts/trouble.js';

/** Exit codes of every command. */
export const EXIT = {
  fine: 0,
  /** Our own fault. */
  fault: 1,
  usage: 2,
  description: 3,
  /** A check fails; whatever the command writes is written all the same. */
  check: 4,
  file: 5,
} as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** The command was called in a way it can't follow. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
  constructor(
    message: string,
    readonly mend: string,
  ) {
    super(message);
  }
}

/** A file or folder can't be read or written as asked. */
export class FileError extends Error {
  override readonly name = 'FileError';
  constructor(
    message: string,
    readonly mend: string,
  ) {
    super(message);
  }
}

const TROUBLES: Readonly<Record<string, readonly [what: string, mend: string]>> = {
  EACCES: [texts.permissionIsDenied, texts.changeItsPermissions],
  EPERM: [texts.systemDoesNotPermit, texts.changeItsPermissions],
  EROFS: [texts.fileSystemIsRead, texts.choosePlaceThatCan],
  ENOENT: [texts.itDoesNotExist, texts.checkSpellingOfPath],
  ENOTDIR: [texts.partOfItsPath, texts.checkSpellingOfPath],
  EISDIR: [texts.itIsFolder, texts.nameFile],
  EEXIST: [texts.itExistsAlready, texts.chooseAnotherName],
  ENOSPC: [texts.diskIsFull, texts.freeSomeSpace],
  EDQUOT: [texts.diskQuotaIsUsed, texts.freeSomeSpace],
  EBUSY: [texts.itIsInUse, texts.nameFolderInside],
  EXDEV: [texts.itLiesOnAnother, texts.nameFolderInside],
  ENAMETOOLONG: [texts.nameIsTooLong, texts.chooseShorterName],
  ELOOP: [texts.itsLinksRun, texts.namePlaceLinkShould],
  EMFILE: [texts.tooManyFiles, texts.closeOtherPrograms],
};

const isSystemError = (error: unknown): error is NodeJS.ErrnoException =>
  error instanceof Error && typeof (error as NodeJS.ErrnoException).code === 'string' && 'syscall' in error;

/** Turns an error of the file system into a `FileError` that begins with `what`; hands any other error back. */
export function fileTrouble(what: string, error: unknown): unknown {
  if (!isSystemError(error)) return error;
  const code = error.code ?? '';
  const [why, mend] = TROUBLES[code] ?? [texts.systemSays(code), texts.tryAgainOrChoose];
  return new FileError(`${what}: ${why}.`, mend);
}

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
  EACCES: ['permission is denied', 'Change its permissions, or choose another place.'],
  EPERM: ['the system does not permit it', 'Change its permissions, or choose another place.'],
  EROFS: ['the file system is read-only', 'Choose a place that can be written.'],
  ENOENT: ['it does not exist', 'Check the spelling of the path.'],
  ENOTDIR: ['a part of its path is a file, not a folder', 'Check the spelling of the path.'],
  EISDIR: ['it is a folder', 'Name a file.'],
  EEXIST: ['it exists already', 'Choose another name.'],
  ENOSPC: ['the disk is full', 'Free some space, or choose another disk.'],
  EDQUOT: ['the disk quota is used up', 'Free some space, or choose another disk.'],
  EBUSY: ['it is in use or a mount point', 'Name a folder inside it.'],
  EXDEV: ['it lies on another disk than its neighbours', 'Name a folder inside it.'],
  ENAMETOOLONG: ['the name is too long', 'Choose a shorter name.'],
  ELOOP: ['its links run in a circle', 'Name the place the link should lead to.'],
  EMFILE: ['too many files are open', 'Close other programs and try again.'],
};

const isSystemError = (error: unknown): error is NodeJS.ErrnoException =>
  error instanceof Error && typeof (error as NodeJS.ErrnoException).code === 'string' && 'syscall' in error;

/** Turns an error of the file system into a `FileError` that begins with `what`; hands any other error back. */
export function fileTrouble(what: string, error: unknown): unknown {
  if (!isSystemError(error)) return error;
  const code = error.code ?? '';
  const [why, mend] = TROUBLES[code] ?? [`the system says ${code}`, 'Try again, or choose another place.'];
  return new FileError(`${what}: ${why}.`, mend);
}

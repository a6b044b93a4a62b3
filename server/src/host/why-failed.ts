/**
 * Why the operating system refused something, in words by its error codes; a folder where a file is wanted is always
 * said, and what has no words keeps the system's own.
 */
export function whyFailed(error: unknown, words: ReadonlyMap<unknown, string>): string {
  if (!(error instanceof Error)) return String(error);
  const code = 'code' in error ? error.code : undefined;
  return code === 'EISDIR' ? 'it is a folder' : (words.get(code) ?? error.message);
}

/** Why a file or the output could not be written. */
export function whyNotWritten(error: unknown): string {
  return whyFailed(error, unwritten);
}

const unwritten: ReadonlyMap<unknown, string> = new Map([
  ['ENOENT', 'there is no such folder'],
  ['ENOTDIR', 'there is no such folder'],
  ['ELOOP', 'its links lead in a circle'],
  ['ENAMETOOLONG', 'its name is too long'],
  ['EACCES', 'nothing may be written there'],
  ['EPERM', 'nothing may be written there'],
  ['EROFS', 'nothing may be written there'],
  ['ENOSPC', 'the disk is full'],
  ['EDQUOT', 'the disk is full'],
  ['EFBIG', 'it is larger than a file may be there'],
  ['EPIPE', 'its reader has left'],
]);

/**
 * Why the operating system refused something, in words by its error codes; a folder where a file is wanted is always
 * said, and what has no words keeps the system's own.
 */
export function whyFailed(error: unknown, words: ReadonlyMap<unknown, string>): string {
  if (!(error instanceof Error)) return String(error);
  const code = 'code' in error ? error.code : undefined;
  return code === 'EISDIR' ? 'it is a folder' : (words.get(code) ?? error.message);
}

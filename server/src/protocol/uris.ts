/**
 * One spelling for all spellings of a URI: the same characters are always encoded, a drive letter is small, and no `.`,
 * `..` or empty folder name is left. What is no URI with a path from the root comes back as it is.
 */
export function oneSpelling(uri: string): string {
  const url = parsed(uri);
  if (url?.pathname.startsWith('/') !== true) return uri;
  const path = url.pathname
    .replace(/\/{2,}/g, '/')
    .split('/')
    .map(encodedOnce)
    .join('/');
  return `${url.protocol}//${url.host}${withSmallDrive(path)}${url.search}${url.hash}`;
}

function parsed(uri: string): URL | null {
  try {
    return new URL(uri);
  } catch {
    return null;
  }
}

/** What is encoded wrongly stays as it is. */
function encodedOnce(segment: string): string {
  try {
    return encodeURIComponent(decodeURIComponent(segment));
  } catch {
    return segment;
  }
}

function withSmallDrive(path: string): string {
  return path.replace(/^\/[A-Z]%3A(?=\/|$)/, (drive) =>
    drive.replace(/[A-Z]/, (letter) => letter.toLowerCase()),
  );
}

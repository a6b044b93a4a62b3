/** Watches over the frames of messages: a header with `Content-Length`, an empty line, and so many bytes. */
export interface Frames {
  /** Takes the next bytes. Says as a sentence why no frame can be found any more; null where all is well. */
  readonly take: (bytes: Uint8Array) => string | null;
  /** Whether a frame has begun and not ended. */
  readonly isInside: () => boolean;
}

/** No line of a header is longer, in bytes. */
const longestLine = 1000;

/** No message is longer, in bytes: a procedure has at most a hundredth of that. */
const longestMessage = 100_000_000;

/** A message that begins so is the header of the next one. */
const headerStart = 'Content-';

export function frames(): Frames {
  let line = '';
  let length: number | null = null;
  /** Of the message, in bytes; null within a header. */
  let missing: number | null = null;
  let start = '';

  const endOfLine = (): string | null => {
    if (!line.endsWith('\r')) return 'A line of a header does not end with CR LF.';
    const header = /^(?<name>[\w-]+):(?<value>.*)\r$/.exec(line)?.groups;
    const isLast = line === '\r';
    line = '';
    if (isLast) {
      if (length === null) return 'A header has no Content-Length.';
      missing = length === 0 ? null : length;
      length = null;
      start = '';
      return null;
    }
    if (header === undefined) return 'A line of a header is not `name: value`.';
    if (header.name?.toLowerCase() !== 'content-length') return null;
    const value = header.value?.trim() ?? '';
    length = Number(value);
    return /^\d+$/.test(value) && length <= longestMessage ? null : `Content-Length cannot be ${value}.`;
  };

  const takeInHeader = (byte: number): string | null => {
    if (byte === 0x0a) return endOfLine();
    line += String.fromCharCode(byte);
    if (line.length > longestLine) return 'A line of a header does not end.';
    return /^[\w\r-]/.test(line) ? null : 'A header does not begin with a name.';
  };

  /** How many of the bytes from an index on belong to the message. */
  const takeInMessage = (bytes: Uint8Array, from: number, rest: number): number => {
    const taken = Math.min(rest, bytes.length - from);
    const wanted = headerStart.length - start.length;
    for (const byte of bytes.subarray(from, from + Math.min(taken, Math.max(0, wanted))))
      start += String.fromCharCode(byte);
    missing = taken === rest ? null : rest - taken;
    return taken;
  };

  return {
    take: (bytes) => {
      for (let at = 0; at < bytes.length;) {
        if (missing === null) {
          const problem = takeInHeader(bytes[at] ?? 0);
          if (problem !== null) return problem;
          at += 1;
        } else {
          at += takeInMessage(bytes, at, missing);
          if (start === headerStart) return 'A message is missing behind its header.';
        }
      }
      return null;
    },
    isInside: () => missing !== null || length !== null || line !== '',
  };
}

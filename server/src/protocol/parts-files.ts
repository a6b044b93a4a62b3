import { oneSpelling } from './uris.ts';

/** Files that documents use, as they stand on disk. */
export interface PartsFiles {
  /** The text of a file, read once until it is read again; null where there is none. */
  readonly read: (uri: string) => string | null;
  /** Reads again what is still wanted, and says what is another text now. */
  readonly readAgain: (wanted: ReadonlySet<string>) => ReadonlySet<string>;
}

export function partsFiles(readFile: (uri: string) => string | null): PartsFiles {
  const texts = new Map<string, string | null>();
  const readNow = (uri: string): string | null => {
    try {
      return readFile(uri);
    } catch {
      // Not every URI names a file of this machine.
      return null;
    }
  };
  return {
    read: (uri) => {
      const name = oneSpelling(uri);
      const known = texts.get(name);
      if (known !== undefined) return known;
      const text = readNow(name);
      texts.set(name, text);
      return text;
    },
    readAgain: (wanted) => {
      const changed = new Set<string>();
      for (const [name, before] of [...texts]) {
        if (!wanted.has(name)) {
          texts.delete(name);
          continue;
        }
        const text = readNow(name);
        if (text === before) continue;
        texts.set(name, text);
        changed.add(name);
      }
      return changed;
    },
  };
}

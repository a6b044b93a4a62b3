import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll } from 'vitest';

export interface TemporaryFolder {
  readonly path: string;
  /** The path of something in it. */
  readonly at: (name: string) => string;
  /** Writes a file, and the folders above it. */
  readonly write: (name: string, text: string) => string;
}

/** A new folder, removed after the tests of the file. */
export function temporaryFolder(): TemporaryFolder {
  const path = realpathSync(mkdtempSync(join(tmpdir(), 'ohmwright-')));
  const at = (name: string): string => join(path, name);
  afterAll(() => {
    rmSync(path, { recursive: true, force: true });
  });
  return {
    path,
    at,
    write: (name, text) => {
      mkdirSync(dirname(at(name)), { recursive: true });
      writeFileSync(at(name), text);
      return at(name);
    },
  };
}

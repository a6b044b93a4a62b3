import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { describe, test } from 'vitest';

/** Where this variable is 1, what is missing is a failure and not a skip. */
const required = process.env.OHMWRIGHT_REQUIRE_ALL === '1';

/** Where a program lies that the path of this machine leads to. */
export function onPath(program: string): string | undefined {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return folders.map((folder) => join(folder, program)).find((path) => existsSync(path));
}

/** Says that a program is missing; null where it is there. */
export function lacksProgram(program: string): string | null {
  return onPath(program) === undefined ? `${program} is not installed` : null;
}

/**
 * The tests that need more than Node, and the only way to skip any: without what they need, `lacking` says so in words
 * and `body` is not even looked at. They are then run a second time where everything is installed.
 */
export function describeWith(lacking: string | null, name: string, body: () => void): void {
  if (lacking === null) describe(name, body);
  else if (required)
    test(name, () => {
      throw new Error(`${lacking}, and OHMWRIGHT_REQUIRE_ALL=1 asks for every test.`);
    });
  else {
    console.warn(`Skipped, ${lacking}: ${name}`);
    test.skip(`${name} (skipped: ${lacking})`);
  }
}

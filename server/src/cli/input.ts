import { readTextFile, walk, workFolders } from '../host/files.ts';
import { snapshotOf } from '../project/snapshot.ts';
import type { Snapshot, SourceFile } from '../project/snapshot.ts';
import type { Terminal } from './terminal.ts';

export interface Input {
  readonly snapshot: Snapshot;
  /** Ids of the files asked for, in order. */
  readonly files: readonly string[];
  /** One line for each that could not be read. */
  readonly problems: readonly string[];
}

function textOrNull(path: string): string | null {
  const read = readTextFile(path);
  return 'text' in read ? read.text : null;
}

/** Reads the files and folders named; `-` is standard input, under the name given for it. */
export function readInput(terminal: Terminal, paths: readonly string[], name: string | undefined): Input {
  const sources: SourceFile[] = [];
  const problems: string[] = [];
  for (const path of paths) {
    if (path === '-') {
      if (name === undefined) problems.push('standard input needs a name: add `--name FILE`');
      else sources.push({ id: name, text: terminal.readInput() });
      continue;
    }
    const walked = walk(path);
    for (const { path: failed, problem } of walked.problems)
      problems.push(`cannot read ${failed}: ${problem}`);
    if (walked.files.length === 0 && walked.problems.length === 0)
      problems.push(`no *.procedure.yaml or *.parts.yaml below ${path}`);
    for (const file of walked.files) {
      const read = readTextFile(file);
      if ('problem' in read) problems.push(`cannot read ${file}: ${read.problem}`);
      else sources.push({ id: file, text: read.text });
    }
  }
  const files = [...new Set(sources.map(({ id }) => id))];
  const snapshot = snapshotOf(sources, { folders: workFolders(), read: textOrNull });
  return { snapshot, files, problems };
}

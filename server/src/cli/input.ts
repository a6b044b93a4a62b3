import { isPipe, noSuchFile } from '../host/files.ts';
import { filesBelow } from '../host/file-systems.ts';
import { walk } from '../host/walk.ts';
import type { PassedOver } from '../host/walk.ts';
import { fileId, homeOf } from '../project/file-names.ts';
import { snapshotOf } from '../project/snapshot.ts';
import type { FileRead, Snapshot } from '../project/snapshot.ts';
import type { FileId } from '../model/where.ts';
import { passedOverInWords } from './passed-over.ts';
import type { Terminal } from './terminal.ts';

export interface Input {
  readonly snapshot: Snapshot;
  /** Ids of the files asked for, in order, each once however often and however it is named. */
  readonly files: readonly FileId[];
  /** One line for each that could not be read. */
  readonly problems: readonly string[];
  /** What was found in folders and not read, by its id. */
  readonly passedOver: readonly PassedOver[];
}

/** Ids below the folder that the program runs in begin with nothing. */
const folders: readonly FileId[] = [''];

/** Reads the files and folders named; `-` is standard input, under the name given for it. */
export function readInput(terminal: Terminal, paths: readonly string[], name: string | undefined): Input {
  const disk = filesBelow(terminal.folder);
  const texts = new Map<FileId, string>();
  const problems: string[] = [];
  const passedOver = new Map<FileId, PassedOver>();
  const passOver = (one: PassedOver): void => {
    const path = disk.idOf(one.path);
    passedOver.set(path, { ...one, path });
    if (one.why === 'unreadable') problems.push(`cannot read ${one.path}: ${one.problem ?? noSuchFile}`);
  };
  const take = (id: FileId, path: string, read: FileRead): void => {
    if ('text' in read) texts.set(id, read.text);
    else passOver({ path, why: 'unreadable', problem: read.problem + insteadOfPipe(path) });
  };
  const takeInput = (id: FileId, read: FileRead): void => {
    if ('text' in read) texts.set(id, read.text);
    else problems.push(`cannot read standard input: ${read.problem}`);
  };
  for (const path of paths) {
    if (path === '-') {
      if (name === undefined) problems.push('standard input needs a name: add `--name FILE`');
      else takeInput(disk.idOf(name), terminal.readInput());
      continue;
    }
    const walked = walk(path);
    for (const one of walked.passedOver) passOver(one);
    if (walked.files.length === 0 && !walked.passedOver.some(({ why }) => why === 'unreadable'))
      problems.push(`no procedure or parts file below ${path}${butPassedOver(walked.passedOver)}`);
    for (const file of walked.files) {
      const named = disk.idOf(file);
      const located = disk.locate(named, homeOf(named, folders));
      // What is named itself is read wherever its links lead.
      const id = 'id' in located ? located.id : named;
      if (!texts.has(id)) take(id, file, disk.read(id) ?? { problem: noSuchFile });
    }
  }
  const sources = [...texts].map(([id, text]) => ({ id, text }));
  const snapshot = snapshotOf(sources, { folders, locate: disk.locate, read: disk.read });
  return { snapshot, files: [...texts.keys()].map(fileId), problems, passedOver: [...passedOver.values()] };
}

/** A pipe gives its text once, and nobody knows when it ends. */
function insteadOfPipe(path: string): string {
  return isPipe(path) ? '; give its text to standard input: a path of - and `--name FILE`' : '';
}

function butPassedOver(passedOver: readonly PassedOver[]): string {
  return passedOver.length === 0 ? '' : `; passed over: ${passedOverInWords(passedOver)}`;
}

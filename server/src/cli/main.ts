import {
  besideProgram,
  OutputFailed,
  readStandardInput,
  today,
  wantsColours,
  writeAll,
} from '../host/terminal.ts';
import { writeTextFile } from '../host/write-file.ts';
import { run } from './run.ts';
import { cannotRun } from './terminal.ts';
import type { Exit, Terminal } from './terminal.ts';

const terminal: Terminal = {
  out: (text) => {
    writeAll(1, text);
  },
  err: (text) => {
    writeAll(2, text);
  },
  readInput: readStandardInput,
  writeFile: writeTextFile,
  today,
  colours: wantsColours(),
  folder: process.cwd(),
  server: besideProgram('server.cjs'),
};

function runOrSay(): Exit | 'serving' {
  try {
    return run(terminal, process.argv.slice(2));
  } catch (error) {
    if (!(error instanceof OutputFailed)) throw error;
    return notDelivered(error.message);
  }
}

/** What was found has not reached anybody, whatever it was. */
function notDelivered(why: string): Exit {
  try {
    return cannotRun(terminal, `cannot write the output: ${why}`);
  } catch {
    // Nor can standard error be written: the status alone says it.
    return 2;
  }
}

const end = runOrSay();
if (end !== 'serving') process.exitCode = end;

import {
  besideProgram,
  OutputFailed,
  readStandardInput,
  today,
  wantsColours,
  writeAll,
  writeTextFile,
} from '../host/terminal.ts';
import { run } from './run.ts';
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
    terminal.err(`ohmwright: cannot write the output: ${error.message}\n`);
    return 2;
  }
}

const end = runOrSay();
if (end !== 'serving') process.exitCode = end;

import { besideProgram, readStandardInput, today, wantsColours, writeAll } from '../host/terminal.ts';
import { writeTextFile } from '../host/write-file.ts';
import { runOrSay } from './run.ts';
import type { Terminal } from './terminal.ts';

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

const end = runOrSay(terminal, process.argv.slice(2));
if (end !== 'serving') process.exitCode = end;

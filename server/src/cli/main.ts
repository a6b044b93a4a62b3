import { readStandardInput, today, wantsColours, writeAll, writeTextFile } from '../host/terminal.ts';
import { run } from './run.ts';

process.exitCode = run(
  {
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
  },
  process.argv.slice(2),
);

import { fileSchema } from '../text/schema.ts';
import { printJson } from './json.ts';
import type { Exit, Terminal } from './terminal.ts';

/** The JSON Schema of procedure files, for editors and tools that know schemas. */
export function schema(terminal: Terminal): Exit {
  terminal.out(printJson(fileSchema));
  return 0;
}

import { cannotRun } from './terminal.ts';
import type { Exit, Terminal } from './terminal.ts';

/**
 * Serves the language server protocol until the client ends it. The server is a bundle of its own that lies beside this
 * program, so that a check does not pay for loading it; it reads `--stdio` from the arguments itself.
 */
export function serve(terminal: Terminal, stdio: boolean, bundle: string | null): Exit | 'serving' {
  if (!stdio) return cannotRun(terminal, 'serve needs --stdio');
  if (bundle === null)
    return cannotRun(terminal, 'the language server, server.cjs, does not lie beside this program');
  void import(bundle);
  return 'serving';
}

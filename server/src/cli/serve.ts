import { cannotRun } from './terminal.ts';
import type { Exit, Terminal } from './terminal.ts';
import { version } from './version.ts';

/** Serves the language server protocol until the client ends it. Its library is loaded only here. */
export function serve(terminal: Terminal, stdio: boolean): Exit | 'serving' {
  if (!stdio) return cannotRun(terminal, 'serve needs --stdio');
  void import('../host/language-server.ts').then(({ serveStdio }) => {
    serveStdio(version);
  });
  return 'serving';
}

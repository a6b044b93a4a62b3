import { startServer } from '../protocol/server.ts';
import type { ServerHost } from '../protocol/server.ts';
import { handbook } from '../rules/handbook.ts';
import { overEditorChannel } from './editor-channel.ts';
import { filesByUri } from './file-systems.ts';
import { overStandardStreams } from './standard-streams.ts';
import { besideProgram } from './terminal.ts';
import { watchdog } from './watchdog.ts';
import type { Watchdog } from './watchdog.ts';

/** Serves over what the arguments of the process name: standard input and output, or the editor's own channel. */
export function serveAsStarted(version: string): void {
  const isShutDown = (): boolean => session.isShutDown();
  const connection = process.argv.includes('--stdio') ? overStandardStreams(isShutDown) : overEditorChannel();
  process.on('disconnect', () => process.exit(isShutDown() ? 0 : 1));
  const session = startServer(connection, hostOf(version, watchdog()));
}

function hostOf(version: string, { watch }: Watchdog): ServerHost {
  return {
    onClient: watch,
    version,
    descriptionOf: descriptions(),
    files: filesByUri,
    time: {
      now: () => performance.now(),
      later: (task) => void setImmediate(task),
      after: (milliseconds, task) => {
        const timer = setTimeout(task, milliseconds);
        return () => {
          clearTimeout(timer);
        };
      },
    },
  };
}

/** The page of rules lies beside the program; a rule is at its line there. */
function descriptions(): (rule: string) => string | null {
  const page = besideProgram('rules.md');
  if (page === null) return () => null;
  const { lineOf } = handbook();
  return (rule) => {
    const line = lineOf.get(rule);
    return line === undefined ? null : `${page}#L${line + 1}`;
  };
}

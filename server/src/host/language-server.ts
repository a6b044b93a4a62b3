import { existsSync, realpathSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { startServer } from '../protocol/server.ts';
import type { ServerHost } from '../protocol/server.ts';
import { handbook } from '../rules/handbook.ts';

/** Serves over standard input and output, for any client of the language server protocol. */
export function serveStdio(version: string): void {
  startServer(createConnection(ProposedFeatures.all, process.stdin, process.stdout), hostOf(version));
}

/** Serves over what the arguments of the process name: the editor starts it with its own channel. */
export function serveAsStarted(version: string): void {
  startServer(createConnection(ProposedFeatures.all), hostOf(version));
}

function hostOf(version: string): ServerHost {
  return {
    version,
    descriptionOf: descriptions(),
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
  const page = join(dirname(realpathSync(process.argv[1] ?? '.')), 'rules.md');
  if (!existsSync(page)) return () => null;
  const address = pathToFileURL(page).href;
  const { lineOf } = handbook();
  return (rule) => {
    const line = lineOf.get(rule);
    return line === undefined ? null : `${address}#L${line + 1}`;
  };
}

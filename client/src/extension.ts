import type { ExtensionContext } from 'vscode';
import { registerCommands } from './commands/register.ts';
import { cardPreviews } from './preview/previews.ts';
import type { Server } from './server.ts';
import { startServer } from './server.ts';
import { figuresStatus } from './status/figures-status.ts';

let server: Server | undefined;

/** The editor calls it when a procedure is opened, or one of the commands is asked for. */
export function activate(context: ExtensionContext): void {
  const status = figuresStatus();
  server = startServer(context.asAbsolutePath('dist/server.cjs'), {
    ...status,
    stale: (stale) => {
      status.stale(stale);
      previews.renew(stale.uris);
    },
  });
  const previews = cardPreviews(server);
  context.subscriptions.push(status, previews, ...registerCommands(server, previews));
}

/** The editor calls it, and waits, before it closes. */
export async function deactivate(): Promise<void> {
  await server?.stop();
  server = undefined;
}

import type { RemoteConsole } from 'vscode-languageserver';
import type { Session } from './session.ts';

/** Tells or asks the client something that need not succeed. Where it refuses, its log says what it goes without. */
export type Asking = (what: string, ask: () => Promise<unknown>) => void;

export function asking(console: RemoteConsole, session: Session): Asking {
  return (what, ask) => {
    if (session.isShutDown()) return;
    const asked = async (): Promise<void> => {
      await ask();
    };
    asked().catch((error: unknown) => {
      console.warn(`${what}: the client refuses. ${error instanceof Error ? error.message : String(error)}`);
    });
  };
}

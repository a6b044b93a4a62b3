import { ResponseError } from 'vscode-languageserver';
import type { CancellationToken, RemoteConsole } from 'vscode-languageserver';
import { cancelled } from './slices.ts';

/**
 * Runs a handler. A cancelled request is answered as such; an error is logged with the feature's name and answered with
 * a neutral value, so that the editor neither hangs nor shows a riddle.
 */
export async function safely<T>(
  console: RemoteConsole,
  feature: string,
  fallback: T,
  token: CancellationToken,
  handle: () => Promise<T> | T,
): Promise<T> {
  if (token.isCancellationRequested) throw cancelled();
  try {
    return await handle();
  } catch (error) {
    if (error instanceof ResponseError) throw error;
    console.error(
      `${feature} failed: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`,
    );
    return fallback;
  }
}

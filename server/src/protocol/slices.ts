import { LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import type { CancellationToken } from 'vscode-languageserver';
import type { Work } from '../bench/work.ts';

/** What the host provides of time. */
export interface Time {
  /** Milliseconds of a clock that only goes forward. */
  readonly now: () => number;
  /** Runs a task after everything that waits already. */
  readonly later: (task: () => void) => void;
  /** Runs a task after some milliseconds, unless the function that comes back is called before. */
  readonly after: (milliseconds: number, task: () => void) => () => void;
}

/** The server answers others between slices of this many milliseconds. */
const slice = 10;

/** Drives a computation in slices; a request that was cancelled meanwhile ends with the answer of the protocol for it. */
export function inSlices<T>(work: Work<T>, token: CancellationToken, time: Time): Promise<T> {
  return new Promise((resolve, reject) => {
    const go = (): void => {
      try {
        const end = time.now() + slice;
        do {
          if (token.isCancellationRequested) {
            reject(cancelled());
            return;
          }
          const result = work.next();
          if (result.done === true) {
            resolve(result.value);
            return;
          }
        } while (time.now() < end);
        time.later(go);
      } catch (error) {
        reject(error instanceof Error ? error : new Error(String(error)));
      }
    };
    go();
  });
}

export function cancelled(): ResponseError<undefined> {
  return new ResponseError(LSPErrorCodes.RequestCancelled, 'The request was cancelled.');
}

import type { Work } from '../model/work.ts';

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

/** Drives a computation in slices, until it is done or `reasonToStop` gives an error, with which it then ends. */
export function inSlices<T>(work: Work<T>, reasonToStop: () => Error | null, time: Time): Promise<T> {
  return new Promise((resolve, reject) => {
    const go = (): void => {
      try {
        const end = time.now() + slice;
        do {
          const reason = reasonToStop();
          if (reason !== null) {
            reject(reason);
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

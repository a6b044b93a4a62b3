/**
 * A computation that can be stopped between any two yields: at least one in 2,000 configurations. Whoever drives it
 * decides about time; abandoning it leaves no trace.
 */
export type Work<T> = Generator<Progress, T, void>;

export interface Progress {
  readonly stage: 'windows' | 'order';
  readonly done: number;
}

/** Drives a computation to its end. */
export function finish<T>(work: Work<T>): T {
  for (;;) {
    const result = work.next();
    if (result.done === true) return result.value;
  }
}

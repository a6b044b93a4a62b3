import { parentPort, workerData } from 'node:worker_threads';
import { paceOf } from './pace.ts';
import { kindNamed } from './kinds.ts';
import { catchStray } from './kind.ts';
import type { Kind } from './kind.ts';

/* Tries the inputs of one kind, and says of each that it begins and how it went. */

export interface Task {
  readonly kind: string;
  /** Seeds, from the first to before the last. */
  readonly from: number;
  readonly to: number;
  /** The input of the first seed is only shown. */
  readonly show: boolean;
  /** The seed that is being tried: it is seen from outside also while this thread is busy. */
  readonly now: Int32Array;
}

export type Said =
  /** Milliseconds of the processor that a character of good text takes to be parsed. */
  | { readonly says: 'pace'; readonly pace: number }
  | { readonly says: 'begins'; readonly seed: number; readonly size: number }
  | { readonly says: 'ends'; readonly seed: number; readonly size: number; readonly spent: number }
  | {
      readonly says: 'fails';
      readonly seed: number;
      readonly wrong: readonly string[];
      readonly input: string;
    }
  | { readonly says: 'shows'; readonly input: string }
  | { readonly says: 'done' };

/** Stands for the seed while a failure is made smaller: that may take its time. */
export const shrinking = -2;

export async function work(): Promise<void> {
  const { kind: name, from, to, show, now } = workerData as Task;
  const kind = kindNamed(name);
  if (kind === undefined) throw new Error(`There is no kind ${name}.`);
  const say = (said: Said): void => parentPort?.postMessage(said);
  if (show) say({ says: 'shows', input: kind.printed(from) });
  else {
    say({ says: 'pace', pace: paceOf() });
    await attemptAll(kind, from, to, now, say);
  }
  say({ says: 'done' });
}

async function attemptAll(
  kind: Kind,
  from: number,
  to: number,
  now: Int32Array,
  say: (said: Said) => void,
): Promise<void> {
  catchStray();
  for (let seed = from; seed < to; seed += 1) {
    say({ says: 'begins', seed, size: kind.sizeOf(seed) });
    Atomics.store(now, 0, seed);
    const before = process.cpuUsage();
    const { wrong, size } = await kind.attempt(seed);
    const { user, system } = process.cpuUsage(before);
    Atomics.store(now, 0, shrinking);
    if (wrong.length > 0) say({ says: 'fails', seed, wrong, input: await kind.smallest(seed) });
    say({ says: 'ends', seed, size, spent: (user + system) / 1000 });
  }
}

import type { Hop } from '../model/finding.ts';
import type { Id, Procedure } from '../model/procedure.ts';
import { stepNumber } from '../model/where.ts';
import { isOff, powerAfter, powerAtStart } from './power.ts';

/** The last wait of a path that power made count for nothing. */
export interface UndoneWait {
  /** The position of the hop that switched the power on. */
  readonly by: number;
  /** To be put right behind the words of that hop. */
  readonly words: string;
}

/** null: no wait for these sources was undone. */
export function undoneWait(
  { steps }: Procedure,
  hops: readonly Hop[],
  sources: readonly Id[],
): UndoneWait | null {
  let power = powerAtStart;
  let waited: Hop | null = null;
  let undone: UndoneWait | null = null;
  for (const [position, hop] of hops.entries()) {
    const step = steps[hop.index];
    if (step === undefined) continue;
    power = powerAfter(power, step, sources);
    const isAllOff = sources.every((source) => isOff(power, source));
    if (isAllOff && step.verb === 'wait') waited = hop;
    if (isAllOff || waited === null) continue;
    undone = { by: position, words: `: the wait of step ${stepNumber(waited.step)} counts no longer` };
    waited = null;
  }
  return undone;
}

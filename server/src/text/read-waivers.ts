import { didYouMean } from './nearest.ts';
import { stepNames } from './names.ts';
import { valueAt } from './problem.ts';
import type { Waiver } from './procedure.ts';
import type { Reader } from './reader.ts';
import type { Path } from './where.ts';

interface RawWaiver {
  readonly rule: string;
  readonly step?: string | undefined;
  readonly routine?: string | undefined;
  readonly reason: string;
}

/** Waivers whose step is known; the others are reported and waive nothing. */
export function readWaivers(raw: readonly RawWaiver[], { root, names, report }: Reader): readonly Waiver[] {
  return raw.flatMap(({ rule, step, routine, reason }, index): Waiver[] => {
    const path = ['waivers', index];
    const list: Path = routine === undefined ? ['steps'] : ['routines', routine, 'steps'];
    if (routine !== undefined && !names.routines.has(routine)) {
      const message = `No routine is named \`${routine}\`.${didYouMean(routine, [...names.routines])}`;
      report({ rule: 'unknown-id', at: valueAt([...path, 'routine']), message, subject: routine });
      return [];
    }
    if (step === undefined) return [{ rule, step: null, reason, path }];
    const steps = routine === undefined ? names.steps : stepNames(root, list, () => undefined);
    const item = steps.get(step);
    if (item !== undefined) return [{ rule, step: [...list, item], reason, path }];
    const message = `No step has the id \`${step}\`.${didYouMean(step, [...steps.keys()])}`;
    report({ rule: 'unknown-id', at: valueAt([...path, 'step']), message, subject: step });
    return [];
  });
}

import { openedLoopWatcher, repairWatcher, replacedIn } from '../bench/verification.ts';
import type { Unverified } from '../bench/verification.ts';
import { connectorsOf } from '../bench/circuits.ts';
import type { Ending, Report } from '../bench/explore.ts';
import { running } from '../bench/run.ts';
import { provesBy } from '../readings/proves.ts';
import type { Loop, Step } from '../text/procedure.ts';
import type { Finder } from './rule.ts';

/* Repairs and opened loops that no good reading has shown to be sound again. */

export const repairVerifiedFinder: Finder = {
  watch: ({ procedure, readings }) =>
    replacedIn(procedure).map((id) =>
      running({
        ...repairWatcher(procedure, id, provesBy(readings)),
        end: (state: Unverified, step: Step, ending: Ending, report: Report) => {
          if (!state.pending || (step.verb === 'stop' && step.leaves.includes('repair'))) return;
          report({
            rule: 'repair-not-verified',
            ...(ending === 'stop' ? { severity: 'warning' as const } : {}),
            subject: id,
            message:
              `${id} has been replaced, and no later reading shows that its loop is sound: ` +
              'read the loop with everything mated, with an outcome `within`.',
          });
        },
      }),
    ),
};

export const loopVerifiedFinder: Finder = {
  watch: ({ procedure, readings }) =>
    [...procedure.loops.values()].map((loop) =>
      running({
        ...openedLoopWatcher(procedure, loop, provesBy(readings)),
        end: (state: Unverified, step: Step, _ending: Ending, report: Report) => {
          if (!state.pending || excepted(step, loop)) return;
          report({
            rule: 'loop-not-verified',
            subject: loop.id,
            message:
              `${loop.id} has been opened or something of it replaced, and no later reading shows that it is sound: ` +
              'read it with everything mated, with an outcome `within`.',
          });
        },
      }),
    ),
};

function excepted(step: Step, loop: Loop): boolean {
  return (
    step.verb === 'stop' && ['repair', loop.id, ...connectorsOf(loop)].some((id) => step.leaves.includes(id))
  );
}

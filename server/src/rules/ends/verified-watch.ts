import type { EndJudge } from '../../paths/explore.ts';
import { connectorsOf } from '../../bench/circuits.ts';
import { isolatedBy } from '../../bench/hazards.ts';
import { running } from '../../paths/run.ts';
import { replacedIn } from '../../bench/verification.ts';
import type { Unverified } from '../../bench/verification.ts';
import type { Id, Loop, Procedure, Step } from '../../model/procedure.ts';
import type { Finder } from '../rule.ts';

/* Repairs and opened loops that no good reading has shown to be sound again. */

export const repairVerifiedFinder: Finder = {
  watch: ({ procedure, watchers }) =>
    replacedIn(procedure).map((id) => running(watchers.repair(id), judgeRepair(id))),
};

function judgeRepair(id: Id): EndJudge<Unverified> {
  return ({ pending }, step, ending, report) => {
    if (!pending || ending === 'left-live') return;
    if (step.verb === 'stop' && step.leaves.includes('repair')) return;
    report({
      rule: 'repair-not-verified',
      ...(ending === 'stop' ? { severity: 'warning' as const } : {}),
      subject: id,
      cause: 'at the end',
      message:
        `${id} has been replaced, and no later reading shows that it is sound: ` +
        'read or measure its circuit with everything mated, by an outcome `within` whose window leaves out that it is open or has too much resistance.',
    });
  };
}

export const loopVerifiedFinder: Finder = {
  watch: ({ procedure, watchers }) =>
    [...procedure.loops.values()].flatMap((loop) => {
      const opened = watchers.opened(loop.id);
      return opened === null ? [] : [running(opened, judgeLoop(procedure, loop))];
    }),
};

function judgeLoop(procedure: Procedure, loop: Loop): EndJudge<Unverified> {
  return ({ pending }, step, ending, report) => {
    if (!pending || ending === 'left-live' || excepted(procedure, step, loop)) return;
    report({
      rule: 'loop-not-verified',
      subject: loop.id,
      cause: 'at the end',
      message:
        `${loop.id} has been opened or something of it replaced, and no later reading shows that it is sound: ` +
        'read it with everything mated, with an outcome `within`.',
    });
  };
}

/** What stays open at a `stop` is named by its connector, or by the source that this connector takes away. */
function excepted(procedure: Procedure, step: Step, loop: Loop): boolean {
  if (step.verb !== 'stop') return false;
  const connectors = connectorsOf(loop);
  const names = ['repair', loop.id, ...connectors, ...connectors.map((id) => isolatedBy(procedure, id))];
  return names.some((name) => name !== null && step.leaves.includes(name));
}

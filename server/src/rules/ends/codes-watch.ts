import { changesTo } from '../../bench/changes.ts';
import type { EndJudge, Watcher } from '../../paths/explore.ts';
import { running } from '../../paths/run.ts';
import type { Memory } from '../../readings/code-memory.ts';
import type { Id } from '../../model/procedure.ts';
import type { Finder } from '../rule.ts';

/* Codes written down before they can be lost, and cleared before the end. */

export const codesRecordedFinder: Finder = {
  watch: ({ procedure, circuits }) =>
    [...procedure.monitors.keys()].map((id) => running(recordedWatcher(id, circuits.feeding(id)))),
};

function recordedWatcher(id: Id, feeding: readonly Id[]): Watcher<boolean> {
  return {
    watches: `whether the codes of ${id} are recorded`,
    start: false,
    key: String,
    step: (recorded, step, report) => {
      const ofCodes = changesTo('codes', step).filter(({ monitor }) => monitor === id);
      if (ofCodes.some(({ are }) => are === 'read')) return true;
      const lost = changesTo('source', step).find((one) => !one.isConnected && feeding.includes(one.id));
      if (recorded || (ofCodes.length === 0 && lost === undefined)) return recorded;
      const how = lost === undefined ? 'cleared' : `put at risk by disconnecting ${lost.id}`;
      report({
        rule: 'codes-not-recorded',
        subject: id,
        message: `The codes of ${id} are ${how} before they are read: put \`read-codes: ${id}\` first.`,
      });
      return true;
    },
  };
}

export const codesClearedFinder: Finder = {
  watch: ({ procedure, watchers }) =>
    [...procedure.monitors.keys()].flatMap((id) =>
      watchers.memory(id).map((memory) => running(memory, judgeMemory(id))),
    ),
};

function judgeMemory(monitor: Id): EndJudge<Memory> {
  return ({ stored }, step, ending, report) => {
    if (!stored || ending === 'left-live') return;
    if (step.verb === 'stop' && step.leaves.includes('codes')) return;
    const advice =
      ending === 'stop'
        ? 'clear them before, or name `codes` in `leaves`'
        : `put \`clear-codes: ${monitor}\` after the last step that can set one`;
    report({
      rule: 'codes-not-cleared',
      ...(ending === 'stop' ? { severity: 'warning' as const } : {}),
      subject: monitor,
      message: `The procedure ends here with codes in the memory of ${monitor}: ${advice}.`,
    });
  };
}

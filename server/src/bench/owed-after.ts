import { greatestOf } from '../quantity/extremes.ts';
import type { Id } from '../model/procedure.ts';
import { changesOf } from './changes.ts';
import { clockWatcher, isGroupOff } from './clock.ts';
import type { Cluster } from './clock.ts';
import type { Explorer } from '../paths/run.ts';
import type { Work } from '../model/work.ts';

/** The wait that live circuits still owe after a step, where it begins or goes on. */
export interface OwedAfter {
  readonly index: number;
  readonly sources: readonly Id[];
  /** Those of them that are to be proven dead after it. */
  readonly highVoltage: readonly Id[];
  /** The longest over all paths, in seconds. */
  readonly seconds: number;
}

/** Where a wait begins (the last source goes off) and where one ends too early. */
export function* owedAfterSteps(
  { graph, explore }: Explorer,
  clusters: readonly Cluster[],
): Work<readonly OwedAfter[]> {
  const owed: OwedAfter[] = [];
  for (const cluster of clusters) {
    const { around } = yield* explore(clockWatcher(cluster));
    for (const [index, step] of graph.steps.entries()) {
      const changed = changesOf(step).map((change) => change.of);
      if (!changed.some((of) => of === 'ignition' || of === 'source' || of === 'time')) continue;
      for (const [at, group] of cluster.groups.entries()) {
        const seconds = around(index).map(({ state, after }) => {
          const begins = isGroupOff(group, after.power) && !isGroupOff(group, state.power);
          const goesOn = changed.includes('time') && isGroupOff(group, after.power);
          return begins || goesOn ? (after.owed[at] ?? 0) : 0;
        });
        const most = greatestOf(seconds, 0);
        const { sources } = group;
        const highVoltage = sources.filter((source) => cluster.highVoltage.includes(source));
        if (most > 0) owed.push({ index, sources, highVoltage, seconds: most });
      }
    }
  }
  return owed.sort((a, b) => a.index - b.index);
}

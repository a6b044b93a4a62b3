import { changesTo } from '../bench/changes.ts';
import type { Watcher } from '../paths/explore.ts';
import type { Id, Procedure, Step } from '../model/procedure.ts';
import { codesSet, looks } from './codes.ts';
import { loopBenchAtStart, loopBenchKey } from './loop-bench.ts';
import type { LoopAutomaton, LoopBench } from './loop-bench.ts';
import type { Readings } from './reading.ts';

/** The part of a monitor's code memory that one of its loops can fill. */
export interface Memory {
  readonly bench: LoopBench;
  readonly stored: boolean;
}

/**
 * Memory holds codes at the start and until they are cleared; the bench itself can fill it again. The memory of a
 * monitor holds codes when that of one of its loops does, so each loop is watched alone.
 */
function memoryWatcher(procedure: Procedure, readings: Readings, automaton: LoopAutomaton): Watcher<Memory> {
  const { monitor: id } = automaton.loop;
  const subject = readings.subjectOf(automaton.loop);
  const monitor = id === null ? undefined : procedure.monitors.get(id);
  const monitorOf = (loop: Id): Id | null => procedure.loops.get(loop)?.monitor ?? null;
  return {
    watches: `the bench of ${automaton.loop.id} and the code memory`,
    start: { bench: loopBenchAtStart, stored: true },
    key: ({ bench, stored }) => `${loopBenchKey(bench)}/${String(stored)}`,
    step: (state, step) => {
      const bench = automaton.after(state.bench, step);
      const kept = state.stored && !clearsCodes(step, id);
      const sets =
        !kept &&
        looks(step, automaton, monitorOf) &&
        codesSet(automaton, monitor, bench, subject, readings.good).length > 0;
      const stored = kept || sets;
      return bench === state.bench && stored === state.stored ? state : { bench, stored };
    },
  };
}

function clearsCodes(step: Step, id: Id | null): boolean {
  return changesTo('codes', step).some(({ monitor, are }) => are === 'cleared' && monitor === id);
}

/** A monitor that reads no loop keeps what it holds until it is cleared, whatever the bench. */
function bareMemoryWatcher(monitor: Id): Watcher<Memory> {
  const cleared: Memory = { bench: loopBenchAtStart, stored: false };
  return {
    watches: `the code memory of ${monitor}`,
    start: { bench: loopBenchAtStart, stored: true },
    key: ({ stored }) => String(stored),
    step: (state, step) => (clearsCodes(step, monitor) ? cleared : state),
  };
}

/** The code memory of a monitor, watched by loop. */
export function memoryWatchers(
  procedure: Procedure,
  readings: Readings,
  monitor: Id,
): readonly Watcher<Memory>[] {
  const automata = [...readings.automata.values()].filter(({ loop }) => loop.monitor === monitor);
  if (automata.length === 0) return [bareMemoryWatcher(monitor)];
  return automata.map((automaton) => memoryWatcher(procedure, readings, automaton));
}

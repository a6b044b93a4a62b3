import type { Circuits } from '../bench/circuits.ts';
import type { Watcher } from '../paths/explore.ts';
import { hardwareAfter, hardwareAtStart, hardwareKey } from '../bench/hardware.ts';
import type { Cone, Hardware } from '../bench/hardware.ts';
import { powerAfter, powerAtStart, powerKey } from '../bench/power.ts';
import type { Power } from '../bench/power.ts';
import type { Id, Loop, Step } from '../model/procedure.ts';
import type { Island } from './islands.ts';

/** What a reading depends on: the power of its monitor and sources, the connectors, and the loads on them. */
export interface LoopBench {
  readonly power: Power;
  readonly hardware: Hardware;
}

export const loopBenchAtStart: LoopBench = { power: powerAtStart, hardware: hardwareAtStart };

/** The automaton of the bench of something that is read, for the watchers that are built on it. */
export interface BenchAutomaton {
  /** What is read, for people. */
  readonly of: string;
  /** The bench after a step; the same object where the step does not concern it. */
  readonly after: (bench: LoopBench, step: Step) => LoopBench;
}

export interface LoopAutomaton extends BenchAutomaton {
  readonly loop: Loop;
  /** The sources that feed its monitor. */
  readonly feeding: readonly Id[];
}

export function loopAutomaton(circuits: Circuits, loop: Loop, island: Island): LoopAutomaton {
  const feeding = loop.monitor === null ? [] : circuits.feeding(loop.monitor);
  return { loop, feeding, ...islandAutomaton(loop.id, island, feeding) };
}

/** The automaton of an island, with other sources that matter beside its own. */
export function islandAutomaton(
  of: string,
  { connectors, sources }: Island,
  others: readonly Id[] = [],
): BenchAutomaton {
  const cone: Cone = { connectors: new Set(connectors) };
  const watched = [...new Set([...others, ...sources])];
  const after = (bench: LoopBench, step: Step): LoopBench => {
    const power = powerAfter(bench.power, step, watched);
    const hardware = hardwareAfter(bench.hardware, step, cone);
    return power === bench.power && hardware === bench.hardware ? bench : { power, hardware };
  };
  return { of, after };
}

export function loopBenchWatcher(automaton: BenchAutomaton): Watcher<LoopBench> {
  return {
    watches: `the bench of ${automaton.of}`,
    start: loopBenchAtStart,
    key: loopBenchKey,
    step: automaton.after,
  };
}

export function loopBenchKey(bench: LoopBench): string {
  return `${powerKey(bench.power)}/${hardwareKey(bench.hardware)}`;
}

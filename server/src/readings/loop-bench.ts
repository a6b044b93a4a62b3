import type { Circuits } from '../bench/circuits.ts';
import { connectorsOf } from '../bench/circuits.ts';
import type { Watcher } from '../bench/explore.ts';
import { hardwareAfter, hardwareAtStart, hardwareKey } from '../bench/hardware.ts';
import type { Cone, Hardware } from '../bench/hardware.ts';
import { powerAfter, powerAtStart, powerKey } from '../bench/power.ts';
import type { Power } from '../bench/power.ts';
import type { Loop, Step } from '../text/procedure.ts';

/** What a reading of one loop depends on: the power of its monitor, its connectors, and the loads on them. */
export interface LoopBench {
  readonly power: Power;
  readonly hardware: Hardware;
}

export const loopBenchAtStart: LoopBench = { power: powerAtStart, hardware: hardwareAtStart };

/** The automaton of one loop's bench, for the watchers that are built on it. */
export interface LoopAutomaton {
  readonly loop: Loop;
  /** The sources that feed its monitor. */
  readonly feeding: readonly string[];
  /** The bench after a step; the same object where the step does not concern the loop. */
  readonly after: (bench: LoopBench, step: Step) => LoopBench;
}

export function loopAutomaton(circuits: Circuits, loop: Loop): LoopAutomaton {
  const cone: Cone = { connectors: new Set(connectorsOf(loop)) };
  const feeding = loop.monitor === null ? [] : circuits.feeding(loop.monitor);
  const after = (bench: LoopBench, step: Step): LoopBench => {
    const power = powerAfter(bench.power, step, feeding);
    const hardware = hardwareAfter(bench.hardware, step, cone);
    return power === bench.power && hardware === bench.hardware ? bench : { power, hardware };
  };
  return { loop, feeding, after };
}

export function loopBenchWatcher(automaton: LoopAutomaton): Watcher<LoopBench> {
  return {
    watches: `the bench of ${automaton.loop.id}`,
    start: loopBenchAtStart,
    key: loopBenchKey,
    step: automaton.after,
  };
}

export function loopBenchKey(bench: LoopBench): string {
  return `${powerKey(bench.power)}/${hardwareKey(bench.hardware)}`;
}

import { hardwareAfter, hardwareAtStart } from '../bench/hardware.ts';
import type { Hardware } from '../bench/hardware.ts';
import { powerAfter, powerAtStart } from '../bench/power.ts';
import type { Power } from '../bench/power.ts';
import type { Finding } from '../model/finding.ts';
import type { Procedure, Step } from '../model/procedure.ts';

export interface BenchThen {
  readonly power: Power;
  readonly hardware: Hardware;
}

/** The bench that the path of a finding brings about, before its last step or behind it. */
export function benchAlong(
  procedure: Procedure,
  { trace }: Finding,
  until: 'before' | 'behind' = 'behind',
): BenchThen {
  const hops = trace?.hops ?? [];
  const sources = [...procedure.sources.keys()];
  const cone = { connectors: new Set(procedure.connectors.keys()) };
  let bench: BenchThen = { power: powerAtStart, hardware: hardwareAtStart };
  for (const { index } of until === 'before' ? hops.slice(0, -1) : hops) {
    const step = procedure.steps[index];
    if (step === undefined) continue;
    bench = {
      power: powerAfter(bench.power, step, sources),
      hardware: hardwareAfter(bench.hardware, step, cone),
    };
  }
  return bench;
}

/** The step of a finding with its index; null where it is about no step. */
export function stepOf({ steps }: Procedure, { step, trace }: Finding): Step | null {
  const last = trace?.hops.at(-1)?.index;
  const onPath = last === undefined ? undefined : steps[last];
  if (step === undefined) return null;
  const isIt = (one: Step): boolean => one.file === step.file && one.path.join('/') === step.path.join('/');
  return onPath !== undefined && isIt(onPath) ? onPath : (steps.find(isIt) ?? null);
}

/** The last of the steps themselves, not of a routine that they call: behind it the procedure ends. */
export function lastStep({ steps }: Procedure): Step | null {
  return steps.findLast(({ calls }) => calls.length === 0) ?? null;
}

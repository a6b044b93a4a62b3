import type { Element, Indication } from '../circuit/circuit.ts';
import type { Id, Procedure } from '../model/procedure.ts';
import { conditionsOf } from './conditions.ts';
import { readingOf } from './good.ts';
import type { LoopBench } from './loop-bench.ts';
import { ownerOf } from './loop-network.ts';
import type { Subject } from './subject.ts';

/** One thing of the circuit open or bridged, and what is shown with it; null: not known. */
export interface MeasuredFault {
  readonly kind: 'thing-open' | 'thing-bridged';
  readonly thing: Id;
  readonly shown: Indication | null;
}

/**
 * The typical faults of what is measured by hand on a bench: each part open or bridged, and each contact open. Those that
 * change nothing between the probes are among them.
 */
export function measuredFaults(
  procedure: Procedure,
  subject: Subject,
  bench: LoopBench,
): readonly MeasuredFault[] {
  const seen = subject.seen(bench);
  if (seen === null) return [];
  const { network } = seen;
  const ranges = conditionsOf(procedure);
  const shownBy = (elements: readonly Element[]): Indication | null =>
    readingOf(subject, { ...seen, network: elements }, ranges).indication;
  return network.flatMap((element): MeasuredFault[] => {
    const thing = ownerOf(element);
    const isPart = procedure.parts.has(thing);
    if (!isPart && element.id.split('.')[1] !== 'contact') return [];
    const without = network.filter((other) => other !== element);
    const open: MeasuredFault = { kind: 'thing-open', thing, shown: shownBy(without) };
    if (!isPart) return [open];
    const bridged = shownBy([...without, { ...element, part: bridge }]);
    return [open, { kind: 'thing-bridged', thing, shown: bridged }];
  });
}

const bridge = { kind: 'stated', resistance: { least: 0, nominal: 0, most: 0 } } as const;

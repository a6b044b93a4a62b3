import type { ConditionRanges } from '../../server/src/circuit/conditions.ts';
import type { Network } from '../../server/src/circuit/network.ts';
import { numbered } from '../../server/src/circuit/numbered.ts';
import { conflictsOf, operatingPoint } from '../../server/src/circuit/operating-point.ts';
import { resistanceWithin } from '../../server/src/circuit/parts.ts';
import type { Source } from '../../server/src/circuit/voltage-window.ts';

/** A network at nominal, by the names of its nodes. */
export interface Solved {
  /** Volt above ground, of every node that something connects with it. */
  readonly volts: ReadonlyMap<string, number>;
  /** Nodes that nothing connects with ground: they have no potential. */
  readonly floating: readonly string[];
  /** Ampere through each element, from its first node to its second, in the order of the network. */
  readonly amperes: readonly number[];
  /** Ampere out of the plus of each source; 0 where it is in conflict. */
  readonly delivered: readonly number[];
  /** Sources that cannot be as stated, by id: they are left out. */
  readonly conflicts: readonly string[];
}

/** Potentials and currents of a network with any number of sources and islands, every value at nominal. */
export function solved(
  network: Network,
  sources: readonly Source[],
  ground: string,
  ranges: ConditionRanges,
): Solved {
  const whole = numbered(network, ground, ground, sources);
  const edges = whole.edgesWith(({ part }) => resistanceWithin(part, ranges).nominal);
  const drives = sources.map(({ between: [plus, minus], kind, value }) => ({
    a: whole.numberOf(plus),
    b: whole.numberOf(minus),
    kind,
    value: value.nominal,
  }));
  const { joined, stranded } = conflictsOf(edges, drives, whole.nodes);
  const point = operatingPoint(edges, drives, whole.nodes, whole.from);
  const names = [...new Set([ground, ...[...network, ...sources].flatMap(({ between }) => between)])];
  const potentials = names.map((name) => [name, point.volts[whole.numberOf(name)] ?? NaN] as const);
  return {
    volts: new Map(potentials.filter(([, volts]) => !Number.isNaN(volts))),
    floating: potentials.filter(([, volts]) => Number.isNaN(volts)).map(([name]) => name),
    amperes: [...point.amperes],
    delivered: [...point.delivered],
    conflicts: [...joined, ...stranded].map((index) => sources[index]?.id ?? ''),
  };
}

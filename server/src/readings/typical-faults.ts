import { stateOf } from '../bench/hardware.ts';
import { networkWindow } from '../circuit/circuit.ts';
import type { Element } from '../circuit/circuit.ts';
import type { Span } from '../quantity/span.ts';
import type { Id, Loop, Procedure } from '../model/procedure.ts';
import { conditionsOf } from './conditions.ts';
import { leastAdded } from './least-added.ts';
import { loopNetwork } from './island-network.ts';
import type { LoopBench } from './loop-bench.ts';
import { barBetween } from './loop-network.ts';

/** A fault that circuits are known to have, and the ohms between the terminals of the monitor with it. */
export type TypicalFault =
  | { readonly kind: 'open'; readonly circuit: 'open' }
  | { readonly kind: 'added'; readonly ohms: number; readonly circuit: Span }
  | { readonly kind: 'bridged'; readonly circuit: Span }
  | { readonly kind: 'bar'; readonly connector: Id; readonly circuit: Span };

/**
 * The typical faults of a loop that a reading on this bench sees: open, the least added resistance that counts, bridged
 * at the monitor, and each shorting bar that stays closed although its connector is mated. None where nothing of the
 * loop lies between the monitor and what is fitted, or where all is open anyway.
 */
export function typicalFaults(procedure: Procedure, loop: Loop, bench: LoopBench): readonly TypicalFault[] {
  const { hardware } = bench;
  const compiled = loopNetwork(procedure, loop, bench);
  if (compiled === null) return [];
  const { network, probes } = compiled;
  const ranges = conditionsOf(procedure);
  const solve = (elements: readonly Element[]): Span | 'open' =>
    networkWindow(elements, probes[0], probes[1], ranges).value;
  const good = solve(network);
  if (good === 'open') return [];
  // In series with all else: without it nothing is left.
  const isInSeries = (element: Element): boolean =>
    solve(network.filter((other) => other !== element)) === 'open';
  const ofCircuit = network.filter(({ id }) => {
    const [owner = '', piece] = id.split('.');
    return piece === 'contact' || procedure.parts.has(owner);
  });
  if (!ofCircuit.some(isInSeries)) return [];
  const ohms = leastAdded(procedure, loop, network, ranges) ?? 0;
  const added: Span = {
    least: good.least + ohms,
    nominal: good.nominal + ohms,
    most: good.most + ohms,
  };
  return [
    { kind: 'open', circuit: 'open' },
    { kind: 'added', ohms, circuit: added },
    { kind: 'bridged', circuit: { least: 0, nominal: 0, most: 0 } },
    ...loop.elements.flatMap(({ id }): TypicalFault[] => {
      const connector = stateOf(hardware, id) === 'mated' ? procedure.connectors.get(id) : undefined;
      const bar = connector === undefined ? null : barBetween(connector, loop);
      if (bar === null) return [];
      const circuit = solve([...network, bar]);
      // Behind an open connector it changes nothing.
      return circuit === 'open' || circuit.nominal >= good.nominal
        ? []
        : [{ kind: 'bar', connector: id, circuit }];
    }),
  ];
}

import type { Measuring } from '../bench/asked.ts';
import { nodeOf } from '../bench/same-nodes.ts';
import { withConsumers } from '../circuit/circuit.ts';
import type { Network } from '../circuit/circuit.ts';
import { conditionsOf } from './conditions.ts';
import { whereMeasured } from '../model/step-in-words.ts';
import type { Carrying, Id, Loop, Procedure, Quantity } from '../model/procedure.ts';
import { readByMonitor, readByMultimeter } from './instruments.ts';
import type { ReadBy } from './instruments.ts';
import { islandNetwork, loopNetwork } from './island-network.ts';
import type { DrawnSource } from './island-network.ts';
import { islandsOf } from './islands.ts';
import type { Island } from './islands.ts';
import type { LoopBench } from './loop-bench.ts';
import { obstacleBetween } from './obstacles.ts';
import { quantityFacts } from '../model/quantity-kinds.ts';

/** What steps read or measure, and by what. */
export interface Subject {
  /** The loop, or where the probes are: `K30.monitor`, `bus-high..bus-low`. */
  readonly of: string;
  readonly quantity: Quantity;
  /** null: something is measured by hand. */
  readonly loop: Loop | null;
  readonly instrument: ReadBy | null;
  readonly island: Island;
  /** How many parts of it a voltage is searched over: lamps that follow the voltage across them, and wipers. */
  readonly searched: number;
  /** The points between which it is measured; null: a monitor reads its own. */
  readonly probes: readonly [string, string] | null;
  /** Of a current: how it is measured. */
  readonly carrying: Carrying | null;
  /** What lies between the two points on a bench; null: a value could not be read, or something is in the way. */
  readonly seen: (bench: LoopBench) => Seen | null;
}

/** What is read as people say it: `stage-1-loop`, or `the resistance across K4.end`. */
export function subjectInWords({ of, loop, quantity, carrying }: Subject): string {
  return loop === null ? `the ${quantityFacts[quantity].named} ${whereMeasured(carrying)} ${of}` : of;
}

/** What lies between two points. */
export interface Seen {
  readonly network: Network;
  readonly sources: readonly DrawnSource[];
  readonly probes: readonly [string, string];
  /** A consumer of which it is not known whether it draws its current. */
  readonly undecided?: Id;
}

export function loopSubject(procedure: Procedure, loop: Loop): Subject {
  const monitor = loop.monitor === null ? undefined : procedure.monitors.get(loop.monitor);
  return {
    of: loop.id,
    quantity: 'resistance',
    loop,
    instrument: monitor === undefined ? null : readByMonitor(monitor),
    island: islandsOf(procedure).ofLoop(loop),
    searched: 0,
    probes: null,
    carrying: null,
    seen: (bench) => {
      const compiled = loopNetwork(procedure, loop, bench);
      return compiled === null ? null : { ...compiled, sources: [] };
    },
  };
}

export function measuredSubject(procedure: Procedure, step: Measuring): Subject {
  const { across, quantity, of, carrying, drawing } = step;
  const island = islandsOf(procedure).ofProbes(across);
  const meter = procedure.multimeters.get(step.with);
  const instrument = meter === undefined ? null : readByMultimeter(meter, quantity, carrying);
  const probes = [nodeOf(across[0]), nodeOf(across[1])] as const;
  return {
    of,
    quantity,
    loop: null,
    instrument,
    island,
    searched: searchedIn(procedure, island),
    probes,
    carrying,
    seen: (bench) => {
      const compiled = islandNetwork(procedure, island, bench, drawing);
      if (compiled === null || obstacleBetween(island, compiled, probes, quantity) !== null) return null;
      if (compiled.consumers.length === 0 || quantityFacts[quantity].byOwnCurrent)
        return { ...compiled, probes };
      const { network, sources, consumers } = compiled;
      // What stands in series closes the circuit, or nothing would be drawn.
      const meters = carrying?.kind === 'series' ? seriesOf(instrument, probes) : [];
      const settled = withConsumers([...network, ...meters], sources, consumers, conditionsOf(procedure));
      if (settled.kind === 'settled') {
        const { sources: all } = settled;
        const known = new Map(sources.map(({ id, innerIsStated }) => [id, innerIsStated]));
        return {
          network: settled.network.filter((one) => !meters.includes(one)),
          // A consumer is no source of which anything could be stated.
          sources: all.map((one) => ({ ...one, innerIsStated: known.get(one.id) ?? true })),
          probes,
        };
      }
      return { network, sources, probes, undecided: settled.consumer };
    },
  };
}

function searchedIn({ parts }: Procedure, { loops, elements }: Island): number {
  const ids = [...elements, ...loops.flatMap((loop) => loop.elements)].map(({ id }) => id);
  return ids.filter((id) => {
    const part = parts.get(id);
    return part !== undefined && (part.resistance?.kind === 'lamp-rating' || part.wiper !== null);
  }).length;
}

function seriesOf(instrument: ReadBy | null, between: readonly [string, string]): Network {
  const resistance = instrument?.burden ?? null;
  if (resistance === null) return [];
  return [{ id: 'burden of the meter', between, part: { kind: 'stated', resistance } }];
}

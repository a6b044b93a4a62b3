import type { Id, Procedure } from '../model/procedure.ts';
import { islandNetwork } from './island-network.ts';
import type { LoopBench } from './loop-bench.ts';
import { obstacleBetween, ownersBetween } from './obstacles.ts';
import type { Obstacle } from './obstacles.ts';
import type { Subject } from './subject.ts';

/** What lies on the ways between two probes on a bench. */
export interface Standing {
  /** Parts, connectors and loads. */
  readonly things: ReadonlySet<Id>;
  readonly obstacle: Obstacle | null;
}

/** null: nothing is measured by hand, or a value could not be read. */
export function standingBetween(procedure: Procedure, subject: Subject, bench: LoopBench): Standing | null {
  const { island, probes, quantity } = subject;
  const compiled = islandNetwork(procedure, island, bench);
  if (compiled === null || probes === null) return null;
  return {
    things: ownersBetween(island, compiled, probes),
    obstacle: obstacleBetween(island, compiled, probes, quantity),
  };
}

import type { Cluster } from '../bench/clock.ts';
import type { Watcher } from '../paths/explore.ts';
import { hardwareAfter, hardwareAtStart, hardwareKey } from '../bench/hardware.ts';
import type { Hardware } from '../bench/hardware.ts';
import { joinedTo } from '../bench/proofs.ts';
import type { Explorer } from '../paths/run.ts';
import type { Work } from '../model/work.ts';
import type { Id } from '../model/procedure.ts';

/** Of one `prove-dead`: the parts that hang together with its test points on every bench on which it is reached. */
export interface JoinedToProof {
  readonly index: number;
  readonly parts: readonly Id[];
}

/** For which parts each proof of a procedure holds; parts of what is only carried are not drawn, so none are named. */
export function* joinedToProofs(
  { graph, explore }: Explorer,
  clusters: readonly Cluster[],
): Work<readonly JoinedToProof[]> {
  const found: JoinedToProof[] = [];
  for (const cluster of clusters.filter(({ highVoltage }) => highVoltage.length > 0)) {
    const { around } = yield* explore(connectorsOf(cluster));
    for (const [index, step] of graph.steps.entries()) {
      if (step.verb !== 'prove-dead' || !cluster.highVoltage.includes(step.source)) continue;
      const [first = [], ...others] = around(index).map(({ state }) =>
        joinedTo(cluster.procedure, step.source, step.at, state),
      );
      found.push({ index, parts: first.filter((id) => others.every((parts) => parts.includes(id))) });
    }
  }
  return found;
}

function connectorsOf(cluster: Cluster): Watcher<Hardware> {
  return {
    watches: `the connectors around ${cluster.highVoltage.join(', ')}`,
    start: hardwareAtStart,
    key: hardwareKey,
    step: (hardware, step) => hardwareAfter(hardware, step, cluster),
  };
}

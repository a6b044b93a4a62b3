import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import type { Readings } from '../../server/src/readings/reading.ts';
import type { Finding } from '../../server/src/model/finding.ts';
import type { Procedure } from '../../server/src/model/procedure.ts';

export interface Analysed {
  readonly procedure: Procedure;
  readonly readings: Readings;
  readonly findings: readonly Finding[];
}

/** Everything that is known of a text. */
export function analysed(text: string): Analysed {
  const analysis = analyse(snapshotOf([{ id: 'test.procedure.yaml', text }]), 'test.procedure.yaml');
  return {
    procedure: analysis.procedure().value,
    readings: finish(analysis.windows()).value,
    findings: finish(analysis.findings('order')),
  };
}

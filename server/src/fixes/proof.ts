import type { Analysis } from '../project/analysis.ts';
import { proofLimit, unfitFor } from '../readings/proof.ts';
import type { Id, Procedure } from '../model/procedure.ts';
import { isHighVoltage } from '../model/source-kinds.ts';
import type { Unproven } from './along.ts';
import type { NewStep } from './change.ts';

/**
 * The step that proves a source dead: as another step of the procedure does it, else at the connector that is touched or
 * the first that the source reaches, with the first instrument that can; where one half of a connector lacks it, there.
 * None where the file has no such instrument.
 */
export function proofSteps(
  analysis: Analysis,
  { source, at: half }: Unproven,
  touched: Id | undefined,
): readonly NewStep[] {
  const proof = earlierProof(analysis.procedure().value, source) ?? newProof(analysis, source, touched);
  if (proof === null) return [];
  const at = half === null ? proof.at : `${half.connector}.${half.side}`;
  const below = [`at: ${at}`, `with: ${proof.meter}`, `known: ${proof.known}`];
  return [{ line: `prove-dead: ${source}`, below }];
}

interface Proof {
  readonly at: string;
  readonly meter: Id;
  readonly known: Id;
}

function earlierProof({ steps }: Procedure, source: Id): Proof | null {
  for (const step of steps) {
    if (step.verb !== 'prove-dead' || step.source !== source) continue;
    const at =
      'connector' in step.at
        ? `${step.at.connector}.${step.at.side}`
        : `[${step.at.map(({ connector, side, pin }) => `${connector}.${side}.${pin}`).join(', ')}]`;
    return { at, meter: step.with, known: step.known };
  }
  return null;
}

function newProof(analysis: Analysis, source: Id, touched: Id | undefined): Proof | null {
  const procedure = analysis.procedure().value;
  const { connectors, multimeters, sources } = procedure;
  const { hazardsAt } = analysis.circuits();
  const proven = sources.get(source);
  if (!isHighVoltage(proven)) return null;
  const reached = [...connectors.keys()]
    .filter((id) => hazardsAt(id).some((hazard) => hazard.sources.includes(source)))
    // The connector that takes it away is in the hand of whoever measures.
    .filter((id) => id !== proven.isolatedBy);
  const place = reached.find((id) => id === touched) ?? reached[0];
  for (const known of sources.values()) {
    if (known.kind !== 'battery' || place === undefined) continue;
    const meter = [...multimeters.values()].find(
      (one) => one.voltage !== null && unfitFor(proven, known, one, proofLimit(proven, one)) === null,
    );
    const side = connectors.get(place)?.sides[1] ?? 'end';
    if (meter !== undefined) return { at: `${place}.${side}`, meter: meter.id, known: known.id };
  }
  return null;
}

import { hopInWords, tellPath } from '../bench/told-path.ts';
import { traceLength } from '../paths/trace.ts';
import type { Hop, Taken, Trace } from '../model/finding.ts';
import type { Procedure } from '../model/procedure.ts';
import { sarifMessage } from './sarif-places.ts';
import type { StepLocationOf } from './sarif-places.ts';

/** A path as a code flow (3.36) of one thread, all its steps; none where it is the step of the finding alone. */
export function codeFlows(
  procedure: Procedure,
  locationOf: StepLocationOf,
  trace: Trace | undefined,
): readonly unknown[] {
  if (trace === undefined || (traceLength(trace) < 2 && trace.repeatsFrom === undefined)) return [];
  const { hops } = trace;
  const locations = tellPath(procedure, trace).map((hop, index) => ({
    location: { ...locationOf(hop.step), message: sarifMessage(hopInWords(hop)) },
    ...kindsOf(hops[index]),
    nestingLevel: hop.step.calls.length,
    executionOrder: index + 1,
    importance: hop.weight,
  }));
  return [{ threadFlows: [{ locations }] }];
}

/** The words that the standard has for ways out of a step (3.38.8). */
function kindsOf(hop: Hop | undefined): { readonly kinds?: readonly string[] } {
  const kind = kindOf(hop?.taken ?? null);
  return kind === null ? {} : { kinds: [kind] };
}

function kindOf(taken: Taken | null): string | null {
  switch (taken?.kind) {
    case 'outcome':
      return 'branch';
    case 'run':
      return 'call';
    case 'return':
      return 'return';
    case 'next':
    case 'go':
    case 'end':
    case undefined:
      return null;
  }
}

import { hopInWords, tellPath } from '../bench/told-path.ts';
import type { Hop, Taken, Trace } from '../text/finding.ts';
import type { Procedure } from '../text/procedure.ts';
import type { Places } from './json.ts';
import type { LocationOf } from './sarif-places.ts';

/** A path as a code flow (3.36) of one thread, all its steps; none where it is the step of the finding alone. */
export function codeFlows(
  procedure: Procedure,
  places: Places,
  locationOf: LocationOf,
  trace: Trace | undefined,
): readonly unknown[] {
  if (trace === undefined || (trace.hops.length < 2 && trace.repeatsFrom === undefined)) return [];
  const locations = tellPath(procedure, trace).map((hop, index) => ({
    location: locationOf(places, { file: hop.step.file, path: hop.step.path, part: 'key' }, hopInWords(hop)),
    ...kindsOf(trace.hops[index]),
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

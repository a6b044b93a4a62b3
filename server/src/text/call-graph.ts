import { valueAt } from './problem.ts';
import type { Problem } from './problem.ts';
import type { Id } from '../model/procedure.ts';
import type { ListedStep } from './read-steps.ts';
import { strongComponents } from '../paths/strong-components.ts';
import type { Path } from '../model/where.ts';

/** Routines call each other no deeper than this. Each call of a step is named wherever the step is. */
export const deepestCalls = 16;

/** Which routine calls which, once each has been read. */
export interface CallGraph {
  /** Whether a call has steps behind it; one that has not is reported, and leads nowhere. */
  readonly leadsOn: (call: { readonly path: Path }) => boolean;
  /** How many steps a routine has with all that it calls. */
  readonly sizeOf: (routine: Id) => number;
}

type Call = ListedStep & { readonly verb: 'run' };

/** No call may lead back to where it stands, nor into calls that stand in each other too deep. */
export function callGraph(
  routines: ReadonlyMap<Id, readonly ListedStep[]>,
  report: (problem: Problem) => void,
): CallGraph {
  const refused = new Set<string>();
  const refuse = (call: Call, message: string): void => {
    refused.add(keyOf(call));
    report({ rule: 'wrong-call', at: valueAt([...call.path, 'run']), message, subject: call.runs });
  };
  const leadsOn: CallGraph['leadsOn'] = (call) => !refused.has(keyOf(call));

  const ids = [...routines.keys()];
  const numbers = new Map(ids.map((id, number) => [id, number]));
  const callsOf = (id: Id): readonly Call[] =>
    (routines.get(id) ?? []).flatMap((step) => (step.verb === 'run' ? [step] : []));
  const called = ids.map((id) => callsOf(id).flatMap(({ runs }) => numbers.get(runs) ?? []));

  const depths = new Map<Id, number>();
  const sizes = new Map<Id, number>();
  // What is called comes before what calls it.
  for (const component of strongComponents(called)) {
    const members = new Set(component.map((number) => ids[number] ?? ''));
    for (const id of members)
      for (const call of callsOf(id)) {
        if (members.has(call.runs)) refuse(call, leadsBack(id));
        else if ((depths.get(call.runs) ?? 0) >= deepestCalls) refuse(call, tooDeep);
      }
    for (const id of members) {
      const inside = callsOf(id).filter(leadsOn);
      const depth = inside.reduce((most, { runs }) => Math.max(most, depths.get(runs) ?? 0), 0);
      const steps = routines.get(id)?.length ?? 0;
      depths.set(id, depth + 1);
      sizes.set(
        id,
        inside.reduce((sum, { runs }) => sum + (sizes.get(runs) ?? 0), steps),
      );
    }
  }
  return { leadsOn, sizeOf: (routine) => sizes.get(routine) ?? 0 };
}

function keyOf({ path }: { readonly path: Path }): string {
  return path.join('/');
}

function leadsBack(routine: Id): string {
  return `This call leads back into \`${routine}\`, in which it stands. Routines may call others, never themselves.`;
}

const tooDeep =
  `Behind this call routines call each other ${deepestCalls} deep, and no more than that are followed. ` +
  'What lies behind it is not checked: write the steps of some of them out in one.';

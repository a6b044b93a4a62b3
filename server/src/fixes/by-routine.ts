import type { NeedKind } from '../format/procedure.ts';
import type { Verb } from '../format/words.ts';
import type { Id, Procedure, Routine } from '../model/procedure.ts';
import type { Missing } from './along.ts';
import type { NewStep } from './change.ts';

/* Routines of the file, or of its parts files, that do what a fix would write out. Whether one really does is for a trial to say. */

const takingAway: ReadonlySet<Verb> = new Set(['ignition', 'disconnect', 'wait', 'prove-dead', 'read-codes']);
const givingBack: ReadonlySet<Verb> = new Set(['ignition', 'reconnect']);

/** Calls of routines that take power away and do nothing else. */
export function callsToMakeSafe(
  procedure: Procedure,
  subject: Id | undefined,
  { connected }: Missing,
): readonly NewStep[] {
  return callsOf(procedure, 'disconnect', takingAway, { subject, sources: connected });
}

/** Calls of routines that give power back and do nothing else. */
export function callsToGiveBack(procedure: Procedure, { connected }: Missing): readonly NewStep[] {
  return callsOf(procedure, 'reconnect', givingBack, { subject: undefined, sources: connected });
}

/** What can stand for the names that a routine needs. */
interface Fitting {
  readonly subject: Id | undefined;
  readonly sources: readonly Id[];
}

function callsOf(
  procedure: Procedure,
  mainVerb: 'disconnect' | 'reconnect',
  allowed: ReadonlySet<Verb>,
  fitting: Fitting,
): readonly NewStep[] {
  const fit = [...procedure.routines.values()].filter(
    ({ verbs }) => verbs.includes(mainVerb) && verbs.every((verb) => allowed.has(verb)),
  );
  return fit.flatMap((routine) => callOf(procedure, routine, fitting) ?? []);
}

/** null: something that it needs cannot be told. */
function callOf(procedure: Procedure, { id, needs }: Routine, fitting: Fitting): NewStep | null {
  const given = [...needs].map(([need, kind]) => {
    const what = onlyOne(procedure, kind, fitting);
    return what === null ? null : `${need}: ${what}`;
  });
  if (given.includes(null)) return null;
  const line = `run: ${id}`;
  return given.length === 0 ? { line } : { line, below: [`given: { ${given.join(', ')} }`] };
}

/** What is meant where a name of this kind is needed; null: there is none, or there are several. */
function onlyOne(procedure: Procedure, kind: NeedKind, { subject, sources }: Fitting): string | null {
  switch (kind) {
    case 'source':
      return only(sources);
    case 'instrument':
      return only([...procedure.multimeters.keys()]);
    case 'side': {
      const connector = procedure.connectors.get(subject ?? '');
      return connector === undefined ? null : `${connector.id}.${connector.sides[1]}`;
    }
    case 'connector':
      return procedure.connectors.has(subject ?? '') ? (subject ?? null) : null;
    case 'load':
    case 'part':
    case 'loop':
      return null;
  }
}

function only(ids: readonly Id[]): Id | null {
  const [one, other] = ids;
  return one === undefined || other !== undefined ? null : one;
}

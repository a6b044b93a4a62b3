import { checkEntry } from './check-entry.ts';
import { stepNames } from './names.ts';
import { valueAt } from './problem.ts';
import type { Waiver } from '../model/procedure.ts';
import { itemsIn } from './read-entries.ts';
import type { RawItem } from './read-entries.ts';
import type { Reader } from './reader.ts';
import type { Path } from '../model/where.ts';

/** Waivers that could be read and whose step is known; the others are reported and waive nothing. */
export function readWaivers(reader: Reader): readonly Waiver[] {
  const { root, names } = reader;
  const known = new Map<string | null, ReadonlyMap<string, number>>([[null, names.steps]]);
  const stepsOf = (routine: string | null): ReadonlyMap<string, number> => {
    const list: Path = routine === null ? ['steps'] : ['routines', routine, 'steps'];
    const steps = known.get(routine) ?? stepNames(root, list, () => undefined);
    known.set(routine, steps);
    return steps;
  };
  return itemsIn('waivers', reader).flatMap((item) => readWaiver(item, stepsOf, reader) ?? []);
}

function readWaiver(
  { path, node }: RawItem,
  stepsOf: (routine: string | null) => ReadonlyMap<string, number>,
  { names, report }: Reader,
): Waiver | null {
  const { values, bad } = checkEntry('waiver', node, path, { named: 'A waiver' }, report);
  const { rule, step, routine, reason } = values;
  if (bad.size > 0 || rule === undefined || reason === undefined) return null;
  if (routine !== undefined && !names.routines.has(routine)) {
    const { sentence, meant } = names.guess(routine, () => [...names.routines]);
    const message = `No routine is named \`${routine}\`.${sentence}`;
    report({ rule: 'unknown-id', at: valueAt([...path, 'routine']), message, subject: routine, ...meant });
    return null;
  }
  if (step === undefined) return { rule, step: null, reason, path };
  const list: Path = routine === undefined ? ['steps'] : ['routines', routine, 'steps'];
  const steps = stepsOf(routine ?? null);
  const item = steps.get(step);
  if (item !== undefined) return { rule, step: [...list, item], reason, path };
  const { sentence, meant } = names.guess(step, () => [...steps.keys()]);
  const message = `No step has the id \`${step}\`.${sentence}`;
  report({ rule: 'unknown-id', at: valueAt([...path, 'step']), message, subject: step, ...meant });
  return null;
}

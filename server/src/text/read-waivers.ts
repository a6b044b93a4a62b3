import { checkEntry } from './check-entry.ts';
import { didYouMean, suggestion } from './nearest.ts';
import { stepNames } from './names.ts';
import { valueAt } from './problem.ts';
import type { Waiver } from './procedure.ts';
import { itemsIn } from './read-entries.ts';
import type { RawItem } from './read-entries.ts';
import type { Reader } from './reader.ts';
import type { Path } from './where.ts';

/** Waivers that could be read and whose step is known; the others are reported and waive nothing. */
export function readWaivers(reader: Reader): readonly Waiver[] {
  return itemsIn('waivers', reader).flatMap((item) => readWaiver(item, reader) ?? []);
}

function readWaiver({ path, node }: RawItem, { root, names, report }: Reader): Waiver | null {
  const { values, bad } = checkEntry('waiver', node, path, { named: 'A waiver' }, report);
  const { rule, step, routine, reason } = values;
  if (bad.size > 0 || rule === undefined || reason === undefined) return null;
  if (routine !== undefined && !names.routines.has(routine)) {
    const known = [...names.routines];
    const message = `No routine is named \`${routine}\`.${didYouMean(routine, known)}`;
    const meant = suggestion(routine, known);
    report({ rule: 'unknown-id', at: valueAt([...path, 'routine']), message, subject: routine, ...meant });
    return null;
  }
  if (step === undefined) return { rule, step: null, reason, path };
  const list: Path = routine === undefined ? ['steps'] : ['routines', routine, 'steps'];
  const steps = routine === undefined ? names.steps : stepNames(root, list, () => undefined);
  const item = steps.get(step);
  if (item !== undefined) return { rule, step: [...list, item], reason, path };
  const known = [...steps.keys()];
  const message = `No step has the id \`${step}\`.${didYouMean(step, known)}`;
  const meant = suggestion(step, known);
  report({ rule: 'unknown-id', at: valueAt([...path, 'step']), message, subject: step, ...meant });
  return null;
}

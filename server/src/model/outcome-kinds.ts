import type { OutcomeName } from './finding.ts';

interface OutcomeFacts {
  /** What names it: a reading, one other verb, or any step that decides. `own-name`: it is written by a name of the step. */
  readonly of: 'reading' | 'read-codes' | 'inspect' | 'prove-dead' | 'any' | 'own-name';
  /** It shows nothing wrong. */
  readonly isGood: boolean;
}

/** In the order in which they are listed for people. */
export const outcomeFacts: Readonly<Record<OutcomeName, OutcomeFacts>> = {
  within: { of: 'reading', isGood: true },
  below: { of: 'reading', isGood: false },
  above: { of: 'reading', isGood: false },
  open: { of: 'reading', isGood: false },
  leak: { of: 'reading', isGood: false },
  outside: { of: 'reading', isGood: false },
  else: { of: 'any', isGood: false },
  none: { of: 'read-codes', isGood: true },
  stored: { of: 'read-codes', isGood: false },
  present: { of: 'read-codes', isGood: false },
  ok: { of: 'inspect', isGood: true },
  defect: { of: 'inspect', isGood: false },
  dead: { of: 'prove-dead', isGood: true },
  live: { of: 'prove-dead', isGood: false },
  window: { of: 'own-name', isGood: false },
};

/** Those of one kind of step, without `else`. */
export function outcomeNamesOf(wanted: OutcomeFacts['of']): readonly OutcomeName[] {
  const names = Object.keys(outcomeFacts) as OutcomeName[];
  return names.filter((name) => outcomeFacts[name].of === wanted);
}

import { stringify } from 'yaml';
import { chanceFrom } from './chance.ts';
import { ORACLE_RULES, WAIVER_RULES, WINDOW_RULES } from './coverage.ts';
import { oracle } from './oracle.ts';
import { typedProcedure } from './plain-procedure.ts';
import { randomProcedure } from './random-procedure.ts';
import { windowRules } from './windows.ts';

/* A random procedure with waivers: half of them of what is found in it, the others of anything. The same for the same seed. */

export function withWaivers(seed: number): string {
  const chance = chanceFrom(seed + 633_000);
  const { steps: written, ...circuit } = randomProcedure(seed);
  let number = 0;
  const steps = written.map((step) => {
    if ('section' in step) return step;
    number += 1;
    return { id: `step-${number}`, ...step };
  });
  const typed = typedProcedure({ ...circuit, steps });
  const found = [...oracle(typed), ...windowRules(typed)];
  const all = [...ORACLE_RULES, ...WINDOW_RULES, ...WAIVER_RULES, 'too-many-states', 'no-such-rule'];
  const waivers = Array.from({ length: chance.whole(1, 4) }, () => {
    const isMeant = found.length > 0 && chance.happens(0.5);
    const { rule, step } = isMeant
      ? chance.pick(found)
      : { rule: chance.pick(all), step: chance.happens(0.3) ? null : chance.whole(1, number) };
    const id = typed.steps.find((one) => one.number === step)?.id;
    return { rule, ...(id === undefined ? {} : { step: id }), reason: 'It is meant so.' };
  });
  return stringify({ ...circuit, waivers, steps }, { lineWidth: 0, aliasDuplicateObjects: false });
}

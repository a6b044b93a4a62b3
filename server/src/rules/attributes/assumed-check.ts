import { arcing } from '../../bench/energy.ts';
import { owedBy } from '../../bench/owed.ts';
import { isStage } from '../../model/part-kinds.ts';
import type { Context, Finder, Seen } from '../rule.ts';

/* What the author takes upon himself: it is believed, and said in the report and on the card. */

export const inertStageFinder: Finder = { check: inertStages };
export const zeroWaitFinder: Finder = { check: zeroWaits };

function inertStages({ procedure }: Context): readonly Seen[] {
  return [...procedure.parts.values()]
    .filter((part) => isStage(part) && part.statedInert)
    .map(({ id, path }) => ({
      issue: {
        rule: 'inert-stage',
        subject: id,
        place: { path: [...path, 'live'], part: 'value' },
        message: `${id} is marked as inert, a training part: contact with it is not checked. If it is a real part, it can kill: write \`live: true\`.`,
      },
    }));
}

function zeroWaits({ procedure, circuits }: Context): readonly Seen[] {
  return [...procedure.sources.values()]
    .map((source) => ({ ...source, ...owedBy(source) }))
    .filter(({ stated, discharge }) => (stated ?? discharge) === 0)
    .filter(
      ({ id, voltage }) =>
        (voltage?.most ?? 0) > arcing || circuits.hazards.some(({ sources }) => sources.includes(id)),
    )
    .map(({ id, path, stated }) => ({
      issue: {
        rule: 'zero-wait',
        subject: id,
        place: { path: [...path, stated === null ? 'reserve' : 'wait'], part: 'value' },
        message:
          stated === null
            ? `${id} feeds what hands can touch, and its reserve is never charged above the safe voltage: no wait is asked for after it is off.`
            : `${id} feeds what hands can touch and is stated to need no wait after it is off.`,
      },
    }));
}

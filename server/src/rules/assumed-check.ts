import type { Context, Finder, Seen } from './rule.ts';

/* What the author takes upon himself: it is believed, and said in the report and on the card. */

export const inertStageFinder: Finder = { check: inertStages };
export const zeroWaitFinder: Finder = { check: zeroWaits };

function inertStages({ procedure }: Context): readonly Seen[] {
  return [...procedure.parts.values()]
    .filter(({ kind, statedInert }) => kind === 'initiator' && statedInert)
    .map(({ id, path }) => ({
      issue: {
        rule: 'inert-stage',
        subject: id,
        place: { path: [...path, 'live'], part: 'value' },
        message: `${id} is taken as an inert part of a trainer: hands on it are not checked.`,
      },
    }));
}

function zeroWaits({ procedure, circuits }: Context): readonly Seen[] {
  return [...procedure.sources.values()]
    .filter(({ wait }) => wait === 0)
    .filter(({ id }) => circuits.hazards.some(({ sources }) => sources.includes(id)))
    .map(({ id, path }) => ({
      issue: {
        rule: 'zero-wait',
        subject: id,
        place: { path: [...path, 'wait'], part: 'value' },
        message: `${id} feeds what hands can touch and is stated to need no wait after it is off.`,
      },
    }));
}

import { example, makeSafe } from '../examples.ts';
import type { Rule } from '../rule.ts';

/** Each of these connectors is unlocked on some paths and not on others. */
function branches(count: number): string {
  const ids = Array.from({ length: count }, (_, at) => `K${at + 10}`);
  const opened = ids.map(
    (id) => `
- inspect: Is there a second lock?
  outcomes: { ok: past-${id}, defect: next }
- unlock: ${id}
  warning: Stay clear of the front of the airbag.
- inspect: Is the pin seated?
  id: past-${id}
`,
  );
  return `${makeSafe}${opened.join('')}
- stop: Hand over to the workshop lead.
  leaves: [battery, ${ids.join(', ')}, repair, codes]
`;
}

function circuit(count: number) {
  const ids = Array.from({ length: count }, (_, at) => `K${at + 10}`);
  return {
    connectors: `connectors:\n${ids.map((id) => `  ${id}: { contact: 2..15 mΩ }\n`).join('')}`,
    loops: `loops:\n  driver-loop: { path: [control-unit, ${ids.join(', ')}, stage-1] }\n`,
  };
}

export const tooManyStates: Rule = {
  name: 'too-many-states',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning:
    'The paths to a step leave the bench in too many different states to follow them all, or the whole procedure is too large for that.',
  why: 'What is not followed is not checked, and must not pass as checked.',
  source: 'a guard of this program',
  // The explorer itself reports it, for every rule; of the whole procedure see too-much-work.ts.
  finder: {},
  examples: {
    triggers: example('seven connectors that may each be locked or not', branches(7), circuit(7)),
    passes: example('two of them', branches(2), circuit(2)),
  },
};

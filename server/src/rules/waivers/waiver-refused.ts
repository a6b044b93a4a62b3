import { example, giveBackOpened, makeSafe } from '../examples.ts';
import type { Rule } from '../rule.ts';

const steps = (step: string): string => `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
- reconnect: battery
- ignition: on
- ${step}
  id: idle
${giveBackOpened.replace('\n- reconnect: battery\n- ignition: on', '')}`;

const waivers = (rule: string): string => `waivers:
  - { rule: ${rule}, step: idle, reason: The unit needs a minute to wake. }
`;

export const waiverRefused: Rule = {
  name: 'waiver-refused',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning: 'A waiver of a rule that guards live stages or the proof itself, or that does not exist.',
  why: 'No reason makes hands on a live stage safe, and what is not proven cannot be waived.',
  source: 'common practice',
  // Waivers are held against the findings of all other rules.
  finder: {},
  examples: {
    triggers: example('hands on a live circuit', steps('do: Let the unit wake.\n  at: nothing'), {
      waivers: waivers('live-touch'),
    }),
    passes: example('a wait that has no effect', steps('wait: 1 min'), {
      waivers: waivers('wait-without-effect'),
    }),
  },
};

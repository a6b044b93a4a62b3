import { example, makeSafe, readAndHandOver } from '../examples.ts';
import { loadOutOfWindowFinder } from './load-out-of-window-check.ts';
import type { Rule } from '../rule.ts';

export const loadOutOfWindow: Rule = {
  name: 'load-out-of-window',
  severity: 'error',
  stage: 'windows',
  meaning:
    'A reading that cannot tell the load: it does not see it, or no sound circuit with it is accepted.',
  why: 'A load stands for a part that is known to be good. Where it does not come into the reading, a sound circuit reads like a broken one.',
  source: 'a consequence of the circuit as written',
  finder: loadOutOfWindowFinder,
  examples: {
    triggers: example(
      'the adapter sits on the side of the stage, behind the open connector',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- fit: load-plug
  at: K30.end
${readAndHandOver('load-plug')}`,
    ),
    passes: example(
      'the adapter on the side of the monitor',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- fit: load-plug
  at: K30.monitor
${readAndHandOver('load-plug')}`,
    ),
  },
};

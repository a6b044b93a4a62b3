import { example, makeSafe, readAndHandOver } from '../examples.ts';
import { windowDiffersFinder } from './window-check.ts';
import type { Rule } from '../rule.ts';

export const windowDiffers: Rule = {
  name: 'window-differs',
  severity: 'warning',
  stage: 'windows',
  meaning: 'A sound circuit reads differently at one step, depending on the path.',
  why: 'The accepted window then has to hold them all, and tells less on each of the paths.',
  source: 'a consequence of the circuit as written',
  finder: windowDiffersFinder,
  examples: {
    triggers: example(
      'one reading step for two different loads',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- inspect: Which load is on the bench?
  outcomes: { ok: lamp, defect: plug }
- fit: bench-lamp
  id: lamp
  at: K30.monitor
- go: power
- fit: load-plug
  id: plug
  at: K30.monitor
${readAndHandOver('bench-lamp', 'load-plug')}`,
    ),
    passes: example(
      'the step is reached with one load only',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- fit: bench-lamp
  at: K30.monitor
${readAndHandOver('bench-lamp')}`,
    ),
  },
};

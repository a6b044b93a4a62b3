import { example, makeSafe, readAndHandOver } from '../examples.ts';
import { windowUndefinedFinder } from './window-check.ts';
import type { Rule } from '../rule.ts';

export const windowUndefined: Rule = {
  name: 'window-undefined',
  severity: 'error',
  stage: 'windows',
  meaning:
    'A sound circuit reads a number on one path and open on another, and no `expect` says which; insulation that is sound where it is open has no `expect`; or it cannot be as it is written, with sources against each other or a leak.',
  why: 'There is no window that could be printed for the step.',
  source: 'a consequence of the circuit as written',
  finder: windowUndefinedFinder,
  examples: {
    triggers: example(
      'the lamp is fitted on one path only',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- inspect: Is a lamp at hand?
  outcomes: { ok: lamp, defect: power }
- fit: bench-lamp
  id: lamp
  at: K30.monitor
${readAndHandOver('bench-lamp')}`,
    ),
    passes: example(
      'the lamp is fitted on every path',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- fit: bench-lamp
  at: K30.monitor
${readAndHandOver('bench-lamp')}`,
    ),
  },
};

import { example, makeSafe, readAndHandOver } from './examples.ts';
import { loadBridgedFinder } from './load-bridged-watch.ts';
import type { Rule } from './rule.ts';

export const loadBridged: Rule = {
  name: 'load-bridged',
  severity: 'error',
  stage: 'windows',
  meaning: 'A load lies in parallel with a closed shorting bar.',
  why: 'The bar makes any load look like a bridged loop, so that the reading says nothing of what the load stands for. A load goes where no bar is closed, or on an adapter that opens it.',
  source: 'common practice',
  finder: loadBridgedFinder,
  examples: {
    triggers: example(
      'the bar of K30 is on the side of the stage',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- fit: bench-lamp
  at: K30.end
${readAndHandOver('bench-lamp')}`,
    ),
    passes: example(
      'the lamp on the other side, which the monitor reads',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- fit: bench-lamp
  at: K30.monitor
${readAndHandOver('bench-lamp')}`,
    ),
  },
};

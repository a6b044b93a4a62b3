import { circuit, example, giveBackOpened, makeSafe } from './examples.ts';
import { loadLikeABarFinder } from './load-like-a-bar-check.ts';
import type { Rule } from './rule.ts';

const fitted = `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- fit: bench-lamp
  at: K30.monitor
- remove: bench-lamp
- plug: K30
${giveBackOpened}`;

export const loadLikeABar: Rule = {
  name: 'load-like-a-bar',
  severity: 'warning',
  stage: 'order',
  meaning: 'A load is fitted whose resistance can be that of the closed shorting bar of this connector.',
  why: 'A reading then cannot tell whether the load is seen or the bar, which stays closed where it should have opened.',
  source: 'common practice, no source',
  finder: loadLikeABarFinder,
  examples: {
    triggers: example('0.4 Ω, and a bar of 0.2 to 0.4 Ω', fitted, {
      loads: circuit.loads.replace('3.0 Ω ± 5 %', '0.4 Ω ± 5 %'),
    }),
    passes: example('3 Ω', fitted),
  },
};

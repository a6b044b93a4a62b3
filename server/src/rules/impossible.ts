import { example, giveBackOpened, makeSafe } from './examples.ts';
import { impossibleFinder } from './impossible-watch.ts';
import type { Rule } from './rule.ts';

export const impossible: Rule = {
  name: 'impossible',
  severity: 'error',
  stage: 'order',
  meaning: 'Something that cannot be done on the bench as a path leaves it.',
  why: 'The reader stands there with a step that does not fit: a step is missing before, or one too many.',
  source: 'common practice',
  finder: impossibleFinder,
  examples: {
    triggers: example(
      'K30 is unplugged twice',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- unplug: K30
- plug: K30
${giveBackOpened}`,
    ),
    passes: example(
      'once',
      `${makeSafe}- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
  },
};

import { example, giveBackOpened, makeSafe } from './examples.ts';
import { leavesFinder } from './leaves-check.ts';
import type { Rule } from './rule.ts';

const opened = `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`;

export const leavesTooMuch: Rule = {
  name: 'leaves-too-much',
  severity: 'warning',
  stage: 'order',
  meaning: '`leaves` of a stop names something that no path leaves so.',
  why: 'The card would tell the next person of something open or fitted that is not.',
  source: 'common practice',
  finder: leavesFinder,
  examples: {
    triggers: example('K30 is plugged again on every path', opened.replace('[repair]', '[repair, K30]')),
    passes: example('only what stays is named', opened),
  },
};

import { example, giveBackOpened, makeSafe } from './examples.ts';
import { missingNoticeFinder } from './missing-notice-watch.ts';
import type { Rule } from './rule.ts';

export const missingNotice: Rule = {
  name: 'missing-notice',
  severity: 'warning',
  stage: 'order',
  meaning: 'A step that brings people to a hazard has no notice of the signal word that it asks for.',
  why: 'A notice before the step is read before hands are there. Asked for is a WARNING where hands first come to the circuit of a stage and wherever a stage is in the hands, and a DANGER where high voltage is first come near.',
  source: 'common practice; signal words as in ANSI Z535.6',
  finder: missingNoticeFinder,
  examples: {
    triggers: example(
      'the first hands near the stage, and no word of it',
      `${makeSafe}
- unplug: K30
- plug: K30
${giveBackOpened}`,
    ),
    passes: example(
      'a warning at the first of them is enough',
      `${makeSafe}
- unplug: K30
  warning: Touch bare metal first, and stay clear of the front of the airbag.
- plug: K30
${giveBackOpened}`,
    ),
  },
};

import type { Circuits } from '../../bench/circuits.ts';
import type { Watcher } from '../../paths/explore.ts';
import { running } from '../../paths/run.ts';
import type { Id } from '../../model/procedure.ts';
import { example, giveBackOpened, makeSafe } from '../examples.ts';
import { carries, requiredNotices } from './required-notices.ts';
import type { RequiredNotice } from './required-notices.ts';
import type { Rule } from '../rule.ts';

/* Steps that bring people to a hazard and say nothing of it. Each hazard is watched alone. */

export const missingNotice: Rule = {
  name: 'missing-notice',
  severity: 'warning',
  stage: 'order',
  meaning: 'A step that brings people to a hazard has no notice of the signal word that it asks for.',
  why: 'A notice before the step is read before hands are there. Asked for is a WARNING where hands first come to the circuit of a stage and wherever a stage is in the hands, and a DANGER where high voltage is first come near.',
  source: 'common practice; signal words as in ANSI Z535.6',
  finder: {
    watch: ({ procedure, circuits }) =>
      requiredNotices.flatMap((required) =>
        required.hazards(procedure).map((hazard) => running(hazardWatcher(circuits, required, hazard))),
      ),
  },
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

/** Whether the hazard has been come to on the path. */
function hazardWatcher(circuits: Circuits, required: RequiredNotice, hazard: Id): Watcher<boolean> {
  const { signal, often, isMet, asks } = required;
  return {
    watches: `whether hands were at ${hazard}`,
    start: false,
    key: String,
    step: (wasMet, step, report) => {
      if (wasMet || !isMet(circuits, step, hazard)) return wasMet;
      if (!carries(step, signal))
        report({
          rule: 'missing-notice',
          message: `${asks(hazard)}: say what to heed in a \`${signal}\`, which is printed before the step.`,
        });
      return often === 'first';
    },
  };
}

import type { Circuits } from '../bench/circuits.ts';
import type { Watcher } from '../bench/explore.ts';
import { running } from '../bench/run.ts';
import type { Id } from '../text/procedure.ts';
import { carries, requiredNotices } from './required-notices.ts';
import type { RequiredNotice } from './required-notices.ts';
import type { Finder } from './rule.ts';

/* Steps that bring people to a hazard and say nothing of it. Each hazard is watched alone. */

export const missingNoticeFinder: Finder = {
  watch: ({ procedure, circuits }) =>
    requiredNotices.flatMap((required) =>
      required.hazards(procedure).map((hazard) => running(hazardWatcher(circuits, required, hazard))),
    ),
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

import * as z from 'zod';
import { group, id, text } from './values.ts';

/* What every step may carry beside its verb. */

const common = {
  id: id('an id', 'The name by which outcomes and `go` reach this step.', 'make-safe').optional(),
  note: text('A remark that is printed with the step.', 'Turn the wheel while reading.').optional(),
  why: text('Why the step is done.', 'The reserve must empty first.').optional(),
  notice: text(
    'NOTICE, printed before the step: what can be damaged. Nobody is hurt by it.',
    'Do not pull on the wires.',
  ).optional(),
  caution: text(
    'CAUTION, printed before the step: a hazard that could cause minor or moderate injury. Name the hazard, what it does, and how to avoid it.',
    'The edges of the bracket are sharp and can cut. Wear gloves.',
  ).optional(),
  warning: text(
    'WARNING, printed before the step: a hazard that could cause death or serious injury. Name the hazard, what it does, and how to avoid it.',
    'An airbag that deploys can cause serious injury. Keep all persons away from the front of it.',
  ).optional(),
  danger: text(
    'DANGER, printed before the step: a hazard that will cause death or serious injury if it is not avoided.',
    'High voltage behind this cover. Contact causes death. Do not open it.',
  ).optional(),
  minutes: group(
    z.number().gt(0),
    'a number of minutes above 0',
    'How long the step takes. It is never counted as a wait.',
    5,
    0.5,
  ).optional(),
  see: text('Where to read more.', "Maker's service information, restraint system").optional(),
};

/** A definition of a verb, with what every step may carry. */
export function step<T extends z.ZodRawShape>(name: string, description: string, shape: T) {
  return z.strictObject({ ...shape, ...common }).meta({ id: `step-${name}`, description });
}

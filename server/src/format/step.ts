import * as z from 'zod';
import { group, id, text } from './values.ts';

/* What every step may carry beside its verb. */

const common = {
  id: id('an id', 'The name by which outcomes and `go` reach this step.', 'make-safe').optional(),
  note: text('A remark that is printed with the step.', 'Turn the wheel while reading.').optional(),
  why: text('Why the step is done.', 'The reserve must empty first.').optional(),
  caution: text('Printed before the step: what may be damaged.', 'Do not pull at the wires.').optional(),
  warning: text(
    'Printed before the step: how somebody may be hurt.',
    'Nobody in front of the airbag.',
  ).optional(),
  danger: text(
    'Printed before the step: how somebody will be hurt.',
    'High voltage behind this cover.',
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

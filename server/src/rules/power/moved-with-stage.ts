import { example, giveBackOpened, makeSafe } from '../examples.ts';
import type { Rule } from '../rule.ts';
import { underPower } from './under-power-watch.ts';

const wiggle = `
- wiggle: coil-coupling
  watch: driver-loop
  for: 30 s
  warning: Stay clear of the front of the airbag.
`;

export const movedWithStage: Rule = {
  name: 'moved-with-stage',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning:
    'Something is moved by hand to find an intermittent fault while a stage hangs on it, live or inert.',
  why: 'A fault that comes and goes when a wire is moved can open it, short it or join it to a supply, and so fire the stage. Nobody knows which before it is found. So it is asked only whether a stage hangs together with what is moved, ground taken out. Where none does, power may be on.',
  source: 'common practice, no source',
  finder: underPower,
  examples: {
    triggers: example(
      'the stage is still plugged in',
      `
- ignition: on
- read-codes: control-unit
${wiggle}
- clear-codes: control-unit
`,
    ),
    passes: example(
      'a lamp is fitted in the place of the stage',
      `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- fit: bench-lamp
  at: K30.monitor
- reconnect: battery
  warning: Nobody in front of the airbag while power comes back.
- ignition: on
${wiggle}
- ignition: off
- disconnect: battery
- wait: 3 min
- remove: bench-lamp
- plug: K30
${giveBackOpened}`,
    ),
  },
};

import { isOpenAsAWhole, movedBy } from '../../bench/moved.ts';
import type { Reading } from '../../readings/reading.ts';
import { hidesOpen } from '../../readings/shows.ts';
import { subjectInWords } from '../../readings/subject.ts';
import { movedInWords } from '../../model/step-in-words.ts';
import { circuit, example, giveBackOpened, makeSafe } from '../examples.ts';
import type { Context, Rule, Seen } from '../rule.ts';
import { byReading, known, seen } from './window-sides.ts';
import { either } from '../words.ts';

/* Things moved by hand of which the reading that is watched cannot show that they open. */

/** A horn on the same control unit, in a loop of its own. */
const horn = {
  parts: `${circuit.parts}  horn: { kind: resistor, resistance: 3..4 Ω }
`,
  connectors: `${circuit.connectors}  K50: { contact: 2..15 mΩ }
`,
  loops: `${circuit.loops}  horn-loop: { path: [control-unit, K50, horn] }
`,
};

function wiggling(what: string): string {
  return `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- fit: bench-lamp
  at: K30.monitor
- reconnect: battery
  warning: Nobody in front of the airbag while power comes back.
- ignition: on
- wiggle: ${what}
  watch: driver-loop
  for: 30 s
- ignition: off
- disconnect: battery
- wait: 3 min
- remove: bench-lamp
- plug: K30
${giveBackOpened}`;
}

export const movedUnseen: Rule = {
  name: 'moved-unseen',
  severity: 'warning',
  stage: 'windows',
  meaning:
    'Something is moved to find an intermittent fault, and the reading can stay `within` when it opens.',
  why: 'A contact that opens while it is moved would not be seen, and would be called sound.',
  source: 'a consequence of the circuit as written',
  finder: { check: (context) => byReading(context, findUnseen) },
  examples: {
    triggers: example(
      'K50 stands in another loop than the one that is watched',
      wiggling('[coil-coupling, K50]'),
      horn,
    ),
    passes: example('what is moved stands in the loop', wiggling('coil-coupling'), horn),
  },
};

function findUnseen(context: Context, reading: Reading): Seen | null {
  const step = context.graph.steps[reading.index];
  const moved = step === undefined ? [] : movedBy(step);
  for (const side of known(reading)) {
    const { state } = side.arrival;
    const hidden = moved.filter(
      (one) => !isOpenAsAWhole(one, state.hardware) && hidesOpen(context.procedure, reading, state, one),
    );
    if (hidden.length === 0) continue;
    const what = either(hidden.map(movedInWords));
    const message =
      `If ${what} opens while it is moved, ${subjectInWords(reading)} can stay \`within\`, and nobody sees it. ` +
      'Watch a reading that it changes, or do not name it in `wiggle`.';
    return seen(context, reading, 'moved-unseen', message, [side], ['wiggle']);
  }
  return null;
}

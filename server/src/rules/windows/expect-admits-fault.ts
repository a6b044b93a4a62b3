import type { Indication } from '../../circuit/circuit.ts';
import { acceptedWindow } from '../../readings/accepted.ts';
import type { Accepted } from '../../readings/accepted.ts';
import { classesShown } from '../../readings/classes.ts';
import { indicationOf } from '../../readings/instruments.ts';
import { measuredFaults } from '../../readings/measured-faults.ts';
import type { MeasuredFault } from '../../readings/measured-faults.ts';
import type { Reading } from '../../readings/reading.ts';
import { ohmsInWords, shownInWords } from '../../readings/shown-in-words.ts';
import { showsAbsence } from '../../readings/shows.ts';
import { subjectInWords } from '../../readings/subject.ts';
import { typicalFaults } from '../../readings/typical-faults.ts';
import type { TypicalFault } from '../../readings/typical-faults.ts';
import type { Quantity } from '../../model/procedure.ts';
import { quantityFacts } from '../../model/quantity-kinds.ts';
import { example } from '../examples.ts';
import { judgedByLoad } from './load-out-of-window-check.ts';
import type { Context, Rule, Seen } from '../rule.ts';
import { byReading, expects, known, seen } from './window-sides.ts';
import type { Side } from './window-sides.ts';
import { either } from '../words.ts';

/* Windows that accept a faulty circuit for certain, where the computed one would not. */

function expecting(window: string): string {
  return `
- ignition: on
- read-codes: control-unit
- clear-codes: control-unit
- read: driver-loop
  expect: ${window}
`;
}

export const expectAdmitsFault: Rule = {
  name: 'expect-admits-fault',
  severity: 'warning',
  stage: 'windows',
  meaning:
    'The stated window surely accepts a circuit with a typical fault: open, bridged, or with the least added resistance that counts.',
  why: 'A faulty circuit would be judged good and handed back. The window that is computed from the parts would not accept it.',
  source:
    'a consequence of the circuit as written; a tenth of the least load as the least added resistance, 1 Ω at least in a loop, is common practice',
  finder: { check: (context) => byReading(context, admitsFault) },
  examples: {
    triggers: example('a window without an upper limit accepts an open loop', expecting('above 1.5 Ω')),
    passes: example('a window that holds little more than the sound loop', expecting('1.6..2.9 Ω')),
  },
};

type Fault = TypicalFault | MeasuredFault;

interface Admitted {
  readonly fault: Fault;
  readonly shown: Indication;
}

function admitsFault(context: Context, reading: Reading): Seen | null {
  const { accepted, instrument, quantity } = reading;
  if (!quantityFacts[quantity].showsCircuit || !expects(context, reading) || showsAbsence(reading))
    return null;
  if (accepted === null || instrument === null) return null;
  const resolution = instrument.resolution ?? 0;
  const sides = known(reading);
  const computed = acceptedWindow(
    null,
    sides.map(({ indication }) => indication),
    resolution,
  );
  if (computed === null) return null;
  const isSure = (shown: Indication, window: Accepted): boolean =>
    classesShown(shown, window, resolution).every((one) => one === 'within');
  // Of a loop what the computed window accepts at times is told too; of a network that would be most of its parts.
  const isLeftOut = (shown: Indication): boolean =>
    reading.loop === null
      ? !classesShown(shown, computed, resolution).includes('within')
      : !isSure(shown, computed);
  for (const side of sides) {
    const isJudged =
      judgedByLoad(context, reading, side) === null &&
      classesShown(side.indication, accepted, resolution).includes('within');
    if (!isJudged) continue;
    const admitted = faultsOf(context, reading, side)
      .flatMap((fault): Admitted[] => {
        const shown = 'shown' in fault ? fault.shown : indicationOf(fault.circuit, instrument);
        return shown === null ? [] : [{ fault, shown }];
      })
      .filter(({ shown }) => isSure(shown, accepted) && isLeftOut(shown));
    if (admitted.length === 0) continue;
    const message =
      `\`expect\` also accepts ${whatOf(reading)} ${either([...new Set(admitted.map((one) => inWords(one, reading.quantity)))])}: ` +
      `such a fault would pass as good. A sound one shows ${shownInWords(side.indication, reading.quantity)}.`;
    return seen(context, reading, 'expect-admits-fault', message, [side], ['expect']);
  }
  return null;
}

function faultsOf({ procedure }: Context, reading: Reading, { arrival }: Side): readonly Fault[] {
  return reading.loop === null
    ? measuredFaults(procedure, reading, arrival.state)
    : typicalFaults(procedure, reading.loop, arrival.state);
}

function whatOf(reading: Reading): string {
  return reading.loop === null ? `${subjectInWords(reading)} with` : `a ${subjectInWords(reading)} that is`;
}

function inWords({ fault, shown }: Admitted, quantity: Quantity): string {
  switch (fault.kind) {
    case 'open':
      return 'open';
    case 'added':
      return `${ohmsInWords(fault.ohms)} too high (${shownInWords(shown, quantity)})`;
    case 'bridged':
      return `bridged (${shownInWords(shown, quantity)})`;
    case 'bar':
      return `bridged by the bar of ${fault.connector} (${shownInWords(shown, quantity)})`;
    case 'thing-open':
      return `${fault.thing} open (${shownInWords(shown, quantity)})`;
    case 'thing-bridged':
      return `${fault.thing} bridged (${shownInWords(shown, quantity)})`;
  }
}

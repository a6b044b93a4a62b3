import { acceptedWindow } from '../readings/accepted.ts';
import type { Accepted } from '../readings/accepted.ts';
import { classesShown } from '../readings/classes.ts';
import { instrumentOf } from '../readings/instruments.ts';
import type { Reading } from '../readings/reading.ts';
import { ohmsInWords, shownInWords } from '../readings/shown-in-words.ts';
import { leastAdded, typicalFaults } from '../readings/typical-faults.ts';
import type { TypicalFault } from '../readings/typical-faults.ts';
import { indicate } from '../circuit/circuit.ts';
import type { Indication } from '../circuit/circuit.ts';
import { judgedByLoad } from './load-out-of-window-check.ts';
import type { Context, Finder, Seen } from './rule.ts';
import { byReading, expects, known, seen } from './window-sides.ts';
import { either } from './words.ts';

/* Windows that accept a faulty circuit for certain, where the computed one would not. */

export const expectAdmitsFaultFinder: Finder = { check: (context) => byReading(context, admitsFault) };

interface Admitted {
  readonly fault: TypicalFault;
  readonly shown: Indication;
}

function admitsFault(context: Context, reading: Reading): Seen | null {
  const { accepted, loop } = reading;
  const instrument = reading.instrument === null ? null : instrumentOf(reading.instrument);
  // Which faults something measured by hand has depends on the network around it.
  if (loop === null || !expects(context, reading) || accepted === null || instrument === null) return null;
  const { resolution } = instrument;
  const sides = known(reading);
  const computed = acceptedWindow(
    null,
    sides.map(({ indication }) => indication),
    resolution,
  );
  if (computed === null) return null;
  const isSure = (shown: Indication, window: Accepted): boolean =>
    classesShown(shown, window, resolution).every((one) => one === 'within');
  for (const side of sides) {
    const isJudged =
      judgedByLoad(context, reading, side) === null &&
      classesShown(side.indication, accepted, resolution).includes('within');
    if (!isJudged) continue;
    const admitted = typicalFaults(context.procedure, loop, side.arrival.state)
      .map((fault): Admitted => ({ fault, shown: indicate(fault.circuit, instrument) }))
      .filter(({ shown }) => isSure(shown, accepted) && !isSure(shown, computed));
    if (admitted.length === 0) continue;
    const message =
      `\`expect\` also accepts a ${loop.id} that is ${either(admitted.map(inWords))}: ` +
      `such a fault would pass as good. A sound one shows ${shownInWords(side.indication)}.`;
    return seen(context, reading, 'expect-admits-fault', message, [side], ['expect']);
  }
  return null;
}

function inWords({ fault, shown }: Admitted): string {
  switch (fault.kind) {
    case 'open':
      return 'open';
    case 'added':
      return `${ohmsInWords(leastAdded)} too high (${shownInWords(shown)})`;
    case 'bridged':
      return `bridged (${shownInWords(shown)})`;
    case 'bar':
      return `bridged by the bar of ${fault.connector} (${shownInWords(shown)})`;
  }
}

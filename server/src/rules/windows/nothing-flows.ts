import { nameGroups } from '../../bench/name-groups.ts';
import type { Reading } from '../../readings/reading.ts';
import { subjectInWords } from '../../readings/subject.ts';
import type { Seen as ReadingSeen } from '../../readings/subject.ts';
import type { Id } from '../../model/procedure.ts';
import { circuit, example, readOnly } from '../examples.ts';
import type { Context, Rule, Seen } from '../rule.ts';
import { byReading, known, seen } from './window-sides.ts';
import type { Side } from './window-sides.ts';
import { listed } from '../words.ts';

/* Drops of voltage, and currents, that are measured where no current flows: they are zero, whatever the resistance is. */

/** A lamp on a wire of its own, fed behind the plug K50. */
const lamp = {
  sources: `sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [control-unit], wait: 3 min }
  lighting: { kind: battery, voltage: 12..12.8 V, feeds: [lamp] }
`,
  instruments: `${circuit.instruments}  hand-meter: { kind: multimeter, voltage: { range: 0..40 V, accuracy: 0.5 % + 2 digits, resolution: 0.001 V, input: 10 MΩ } }
`,
  parts: `${circuit.parts}  lamp-wire: { kind: cable, resistance: 20..30 mΩ }
  lamp: { kind: resistor, resistance: 4..5 Ω }
`,
  connectors: `${circuit.connectors}  K50: { contact: 2..15 mΩ }
`,
  network: `network:
  - { source: lighting, between: [plus, ground] }
  - { part: lamp-wire, between: [plus, lamp-feed] }
  - { connector: K50, pin: 1, between: [lamp-feed, lamp-plus] }
  - { part: lamp, between: [lamp-plus, ground] }
`,
};

const measured = `- measure: voltage
  across: [plus, lamp-feed]
  with: hand-meter
`;

export const nothingFlows: Rule = {
  name: 'nothing-flows',
  severity: 'warning',
  stage: 'windows',
  meaning: 'A drop of voltage or a current is measured where no current flows on a sound circuit.',
  why: 'A bad contact shows its drop only while current flows through it. Without current every contact looks good, and a current of zero says nothing.',
  source: 'common practice, no source',
  finder: { check: (context) => byReading(context, findZero) },
  examples: {
    triggers: example(
      'the lamp is unplugged',
      `${readOnly}- ignition: off
- unplug: K50
${measured}- plug: K50
`,
      lamp,
    ),
    passes: example('the lamp is on', `${readOnly}${measured}`, lamp),
  },
};

function findZero(context: Context, reading: Reading): Seen | null {
  const step = context.graph.steps[reading.index];
  const drawing = step?.verb === 'measure' ? step.drawing : [];
  const sides = known(reading);
  const [nearest] = sides;
  if (nearest === undefined || !sides.every((side) => isZero(side) && carriesNothing(reading, side, drawing)))
    return null;
  return seen(context, reading, 'nothing-flows', messageOf(reading, drawing), [nearest], underlined(reading));
}

function messageOf(reading: Reading, drawing: readonly Id[]): string {
  const zero = `${subjectInWords(reading)} is zero whatever resistance there is`;
  if (drawing.length > 0)
    return `No current flows here, although ${listed(drawing)} should draw one, so ${zero}. Connect and switch on first what feeds it, close its circuit, and measure where its current flows.`;
  if (reading.quantity === 'current')
    return reading.carrying?.kind === 'clamp'
      ? `No source is on here, so ${zero}. Give the circuit its power back first.`
      : `Nothing but the instrument connects the two terminals here, so ${zero}. Close the rest of the circuit first.`;
  return `No current flows through what lies between the probes here, so ${zero}. Switch on first what draws current through it.`;
}

/** The key that says where it is measured. */
function underlined({ carrying }: Reading): readonly string[] {
  if (carrying === null) return ['across'];
  return [carrying.kind === 'clamp' ? 'around' : 'in'];
}

/** Less than this many volts or amperes is nothing but the rounding of sums. */
const nothing = 1e-9;

function isZero({ circuit }: Side): boolean {
  if (circuit === 'open' || circuit === 'unknown') return false;
  return Math.max(Math.abs(circuit.least), Math.abs(circuit.most)) <= nothing;
}

/**
 * Whether a reading of zero is a mistake. It is where something is said to draw a current meanwhile. A current is, where the
 * circuit is open but for the instrument: that nothing flows in a closed one may be what shall be seen.
 */
function carriesNothing(reading: Reading, { arrival }: Side, drawing: readonly Id[]): boolean {
  const seen = reading.seen(arrival.state);
  if (seen === null || reading.loop !== null) return false;
  if (drawing.length > 0) return true;
  switch (reading.quantity) {
    case 'resistance':
    case 'insulation':
      return false;
    case 'voltage':
      return isJoined(seen);
    case 'current': {
      const [one, other] = seen.probes;
      const { of } = nameGroups([...seen.network, ...seen.sources]);
      // A clamp around a dead wire shows zero whatever is wrong with it.
      return reading.carrying?.kind === 'series' ? of(one) !== of(other) : seen.sources.length === 0;
    }
  }
}

/**
 * Whether the probes of a voltage are joined by parts and contacts, and a source that is on hangs there. Ground is taken
 * out: it joins a dead wire to every source, and that such a wire has no voltage is often what shall be seen.
 */
function isJoined(seen: ReadingSeen): boolean {
  const [one, other] = seen.probes;
  const apart = [...seen.network].filter(({ between }) => !between.includes('ground'));
  const piece = nameGroups(apart).of;
  const isHere = (node: string): boolean => node !== 'ground' && piece(node) === piece(one);
  return isHere(other) && seen.sources.some(({ between }) => between.some(isHere));
}

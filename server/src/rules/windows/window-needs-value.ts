import { benchInWords } from '../../readings/bench-in-words.ts';
import type { Missing } from '../../readings/good.ts';
import type { Reading } from '../../readings/reading.ts';
import { subjectInWords } from '../../readings/subject.ts';
import type { Id } from '../../model/procedure.ts';
import { circuit, example, readOnly } from '../examples.ts';
import type { Context, Rule, Seen } from '../rule.ts';
import { byReading, expects, seen } from './window-sides.ts';
import { listed } from '../words.ts';

const across = `${readOnly}
- measure: voltage
  across: [lamp-feed, lamp-return]
  with: volt-meter
`;

const withLamp = (lamp: string) => ({
  sources: circuit.sources.replace('12.6 V', '12..12.8 V'),
  instruments: `instruments:
  control-unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω, test-current: 10 mA }
  volt-meter: { kind: multimeter, voltage: { range: 0..20 V, accuracy: 0.5 % + 2 digits, resolution: 0.1 V, input: 10 MΩ } }
`,
  parts: `parts:
  coil-coupling: { kind: rotary-coupling, resistance: 0.05..0.15 Ω }
  stage-1: { kind: initiator, resistance: 1.7..2.3 Ω, no-fire: 400 mA, live: true }
  reading-lamp: ${lamp}
  feed-wire: { kind: cable, resistance: 80..100 mΩ }
  return-wire: { kind: cable, resistance: 40..60 mΩ }
`,
  network: `network:
  - { source: battery, between: [plus, ground] }
  - { part: feed-wire, between: [plus, lamp-feed] }
  - { part: reading-lamp, between: [lamp-feed, lamp-return] }
  - { part: return-wire, between: [lamp-return, ground] }
`,
});

export const windowNeedsValue: Rule = {
  name: 'window-needs-value',
  severity: 'error',
  stage: 'windows',
  meaning:
    'A voltage depends on a value that is not stated: what a lamp or heater has under power, where only its cold resistance is stated, or what is inside of a source, where 50 mΩ there move a limit by more than a display step.',
  why: 'A filament has about ten times its cold resistance while it glows. A window computed with the cold one holds no sound circuit, and one without the drop inside of the battery blames the wires for it.',
  source: 'a consequence of the circuit as written',
  finder: { check: (context) => byReading(context, needsValue) },
  examples: {
    triggers: example(
      'a lamp of which only the cold resistance is stated',
      across,
      withLamp('{ kind: lamp, resistance: 2.2..2.6 Ω }'),
    ),
    passes: example('a lamp with its rating', across, withLamp('{ kind: lamp, rated: 12 V 5 W }')),
  },
};

function needsValue(context: Context, reading: Reading): Seen | null {
  const bench = reading.good.find(({ missing }) => missing.length > 0);
  if (bench === undefined || expects(context, reading)) return null;
  const message =
    `No window can be computed for ${subjectInWords(reading)} when ${benchInWords(bench.arrival.state)}. ` +
    whatIsMissing(bench.missing);
  return { ...seen(context, reading, 'window-needs-value', message, []), way: bench.arrival.way };
}

function whatIsMissing(missing: readonly Missing[]): string {
  const ids = [...new Set(missing.map(({ of }) => of))];
  const isInner = missing.some(({ value }) => value === 'inner');
  return isInner ? innerMissing(ids) : hotMissing(ids);
}

function innerMissing(ids: readonly Id[]): string {
  return (
    `It moves by more than a display step if there are 50 mΩ inside ${listed(ids)}, with what flows here. ` +
    `State \`resistance\` ${ids.length === 1 ? 'there' : 'at each'}, such as \`resistance: 5..20 mΩ\`, or \`0 Ω\` if it holds its voltage.`
  );
}

function hotMissing(ids: readonly Id[]): string {
  const [its, at] =
    ids.length === 1 ? ['its cold resistance is', 'there'] : ['their cold resistances are', 'at each'];
  return (
    `It depends on how hot ${listed(ids)} ${ids.length === 1 ? 'gets' : 'get'}, and only ${its} stated. ` +
    `State \`hot\` ${at}, the resistance under power, or \`hot: same\`; or \`rated\` in place of \`resistance\`.`
  );
}

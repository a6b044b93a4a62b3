import { circuit, example, giveBackOpened, makeSafe, withHandMeter } from '../examples.ts';
import type { Rule } from '../rule.ts';
import { underPower } from './under-power-watch.ts';

const withTester = {
  instruments: `${withHandMeter.instruments}  tester:
    kind: multimeter
    insulation: { range: 0..2 GΩ, accuracy: 3 % + 5 digits, resolution: 10 kΩ, discharge: 10 s }
`,
};

const bearing = {
  ...withTester,
  parts: circuit.parts.replace('0.05..0.15 Ω }', '0.05..0.15 Ω, withstands: 250 V }'),
  connectors: circuit.connectors.replaceAll('15 mΩ', '15 mΩ, withstands: 250 V'),
};

const tested = `${makeSafe}
- unplug: K10
  warning: Stay clear of the front of the airbag.
- unplug: K30
- measure: insulation
  across: [K30.monitor.1, ground]
  at-voltage: 50 V
  with: tester
  discharged: true
  expect: above 500 kΩ
- plug: K30
- plug: K10
${giveBackOpened}`;

export const insulationOnElectronics: Rule = {
  name: 'insulation-on-electronics',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning:
    'Insulation is measured where a control unit or a source hangs on the probes, or anything of which nothing says that it withstands that voltage.',
  why: 'An insulation tester puts hundreds of volts on all that hangs on its probes. Electronics are destroyed by it, often without a sign.',
  source: 'common practice, no source',
  finder: underPower,
  examples: {
    triggers: example('nothing says what the coupling bears', tested, withTester),
    passes: example('all that hangs on the probes bears it', tested, bearing),
  },
};

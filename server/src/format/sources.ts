import * as z from 'zod';
import { group, id, ids, keyword, kind, quantity, resistance } from './values.ts';
import type { FormName, Kind } from './words.ts';

/* Where energy comes from, and how it is taken away: one definition a kind. */

const stored = {
  capacitance: quantity(
    'a capacitance',
    'The capacitor that stays charged after power is lost.',
    '6.8 mF ± 20 %',
  ),
  'charged-to': quantity('a voltage', 'The voltage it is charged to while there is power.', '24 V'),
  bleed: quantity('a resistance', 'The resistance through which it empties.', '4.7 kΩ ± 5 %'),
};

const inner = resistance(
  'What is inside of it, between its voltage and its terminals. Not stated: a voltage that would move by more than a display step with 50 mΩ in it has no window.',
).optional();

export const reserve = group(
  z.strictObject({
    ...stored,
    'safe-below': quantity('a voltage', 'Below this voltage a stage can no longer fire.', '2 V'),
  }),
  'the four keys of a reserve',
  'The energy that remains after the source is taken away. All four keys are needed: from them the least wait is computed and held against `wait`.',
  { capacitance: '6.8 mF ± 20 %', 'charged-to': '24 V', bleed: '4.7 kΩ ± 5 %', 'safe-below': '2 V' },
);

const battery = z
  .strictObject({
    kind: kind('battery', 'The battery that the system runs on.'),
    voltage: quantity(
      'a voltage',
      'The voltage at its terminals, with nothing drawn from it.',
      '12.6 V',
      '12..14.5 V',
    ),
    resistance: inner,
    feeds: ids('an id or a list of ids', 'What it supplies: monitors, parts or connectors.', [
      'control-unit',
    ]),
    wait: quantity(
      'a duration',
      'How long to wait after it is disconnected before a live circuit may be touched, as the maker of the system states it.',
      '3 min',
    ).optional(),
    reserve: reserve.optional(),
  })
  .meta({ id: 'battery', description: 'A battery: a source that is taken away by disconnecting it.' });

const regulated = z
  .strictObject({
    kind: kind('regulated', 'A supply that holds its voltage and takes its energy from another source.'),
    voltage: quantity(
      'a voltage',
      'The voltage at its terminals while it is on, with nothing drawn from it.',
      '5.0 V ± 2 %',
    ),
    resistance: inner,
    from: id('a source id', 'The source that it takes its energy from: it goes off with it.', 'battery'),
    needs: keyword(['ignition-on'], 'What it needs beside its source to be on.', 'ignition-on').optional(),
    'after-run': quantity(
      'a duration',
      'How long a supply that needs the ignition stays on after the ignition is off, as the maker states it. Not stated: until its source is off and its wait is over.',
      '0 s',
      '2 min',
    ).optional(),
  })
  .meta({
    id: 'regulated',
    description: 'A supply that holds its voltage, such as 5 V of a control unit. It stands in the network.',
  });

const highVoltage = z
  .strictObject({
    kind: kind('high-voltage', 'A source above the voltage that is safe to touch.'),
    voltage: quantity('a voltage', 'Its voltage, at most while it is charged.', '400 V', '320..410 V'),
    resistance: inner,
    feeds: ids(
      'an id or a list of ids',
      'What it supplies: parts, connectors or monitors of live circuits. If a connector only passes this voltage through, write `carries` at that connector.',
      ['inverter-input'],
    ).optional(),
    'isolated-by': id(
      'a connector id',
      'The connector that isolates it, such as the service plug: `disconnect` of the source opens it, `reconnect` mates it.',
      'S1',
    ),
    wait: quantity(
      'a duration',
      'How long to wait after it is isolated before its circuit is verified to be without voltage, as the maker of the system states it.',
      '5 min',
    ),
    reserve: group(
      z.strictObject(stored),
      'the three keys of a reserve',
      'What stays charged after the source is taken away. From it the least time down to `safe-below` is computed and held against `wait`.',
      { capacitance: '500 µF ± 10 %', 'charged-to': '410 V', bleed: '100 kΩ ± 5 %' },
    ).optional(),
    'safe-below': quantity(
      'a voltage',
      'Below this voltage, in either sign, its circuit counts as without voltage. Not stated: 60 V, the limit of voltage class A for DC (ISO 6469-3).',
      '60 V',
    ).optional(),
  })
  .meta({
    id: 'high-voltage',
    description:
      'A high-voltage source: isolated by opening a connector. After the wait its circuit is verified to be without voltage.',
  });

/** By name. The compiler asks for each that `words.ts` lists. */
export const sourceDefinitions = {
  battery,
  'high-voltage': highVoltage,
  regulated,
} as const satisfies Readonly<Record<FormName<'sources', Kind<'sources'>>, z.ZodType>>;

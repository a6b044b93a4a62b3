import * as z from 'zod';
import { filled, group, kind, quantity, resistance, yes } from './values.ts';
import type { FormName, Kind } from './words.ts';

/* What reads and measures: one definition a kind. */

const monitor = z
  .strictObject({
    kind: kind('monitor', 'A control unit that reads its own loops while it is powered.'),
    range: quantity(
      'a resistance range',
      'What it can show. Beyond the upper end it reads "open".',
      '0..10 Ω',
    ),
    accuracy: quantity(
      'an accuracy',
      'Its error limit: percent of the reading plus a constant.',
      '3 % + 0.1 Ω',
    ),
    resolution: quantity('an exact resistance', 'The step of its display.', '0.01 Ω'),
    'test-current': quantity(
      'a current',
      'The current that it sends through the loop to measure.',
      '40 mA',
    ).optional(),
    codes: group(
      filled(
        z.strictObject({
          'too-low': quantity(
            '`below` and a resistance',
            'It sets a code when a loop reads below this.',
            'below 1.0 Ω',
          ).optional(),
          'too-high': quantity(
            '`above` and a resistance',
            'It sets a code when a loop reads above this.',
            'above 4.5 Ω',
          ).optional(),
        }),
      ),
      '`too-low` and `too-high`',
      'The limits beyond which it stores a trouble code.',
      { 'too-low': 'below 1.0 Ω', 'too-high': 'above 4.5 Ω' },
    ).optional(),
    leak: quantity(
      '`below` and a resistance',
      'It also sees a path to ground or to a supply when that is below this.',
      'below 5 kΩ',
    ).optional(),
  })
  .meta({ id: 'monitor', description: 'A control unit that reads the resistance of its own loops.' });

const furtherRange = z.strictObject({
  range: quantity('a resistance range', 'What it can show in this range.', '0..4 kΩ'),
  accuracy: quantity('an accuracy', 'Its error limit in this range.', '0.8 % + 2 digits'),
  resolution: quantity('an exact resistance', 'The step of its display in this range.', '1 Ω'),
});

const multimeter = z
  .strictObject({
    kind: kind('multimeter', 'A hand-held instrument.'),
    resistance: group(
      z.strictObject({
        range: quantity(
          'a resistance range',
          'What it can show. Beyond the upper end it reads "open".',
          '0..400 Ω',
        ),
        accuracy: quantity(
          'an accuracy',
          'Its error limit: percent of the reading plus digits or a constant.',
          '0.8 % + 3 digits',
        ),
        resolution: quantity('an exact resistance', 'The step of its display.', '0.1 Ω'),
        'test-current': quantity(
          'a current',
          'The current that it sends through the circuit.',
          '1 mA',
        ).optional(),
        further: group(
          z.array(furtherRange).min(1),
          'a list of ranges',
          'Its further ranges, each larger than the one before: it takes the first that holds its reading.',
          [{ range: '0..4 kΩ', accuracy: '0.8 % + 2 digits', resolution: '1 Ω' }],
        ).optional(),
      }),
      'the keys of a resistance range',
      'The range in which it measures resistance.',
      { range: '0..400 Ω', accuracy: '0.8 % + 3 digits', resolution: '0.1 Ω', 'test-current': '1 mA' },
    ).optional(),
    voltage: group(
      z.strictObject({
        range: quantity('a voltage range', 'What it can show.', '0..600 V'),
        accuracy: quantity(
          'an accuracy of a voltage',
          'Its error limit: percent of the reading plus digits or a constant.',
          '0.5 % + 2 digits',
        ),
        resolution: quantity('an exact voltage', 'The step of its display.', '0.1 V'),
        input: quantity('a resistance', 'The resistance between its terminals.', '10 MΩ'),
      }),
      'the keys of a voltage range',
      'The range in which it measures DC voltage.',
      { range: '0..600 V', accuracy: '0.5 % + 2 digits', resolution: '0.1 V', input: '10 MΩ' },
    ).optional(),
    insulation: group(
      z.strictObject({
        range: quantity(
          'a resistance range',
          'What it can show. Beyond the upper end it reads "open".',
          '0..2 GΩ',
        ),
        accuracy: quantity(
          'an accuracy',
          'Its error limit: percent of the reading plus digits or a constant.',
          '3 % + 5 digits',
        ),
        resolution: quantity('an exact resistance', 'The step of its display.', '10 kΩ'),
        discharge: quantity(
          'an exact time',
          'How long it takes, held where it measured, to take away again what it charged.',
          '10 s',
        ).optional(),
      }),
      'the keys of a range for insulation',
      'The range in which it measures insulation, with a voltage of its own.',
      { range: '0..2 GΩ', accuracy: '3 % + 5 digits', resolution: '10 kΩ', discharge: '10 s' },
    ).optional(),
    current: group(
      z.strictObject({
        range: quantity('a current range', 'What it can carry and show.', '0..10 A'),
        accuracy: quantity(
          'an accuracy of a current',
          'Its error limit: percent of the reading plus digits or a constant.',
          '1 % + 3 digits',
        ),
        resolution: quantity('an exact current', 'The step of its display.', '1 mA'),
        burden: quantity(
          'a resistance',
          'The resistance between its terminals, with its leads and its fuse.',
          '20..50 mΩ',
        ),
      }),
      'the keys of a range for currents',
      'The range in which it measures a direct current that flows through it.',
      { range: '0..10 A', accuracy: '1 % + 3 digits', resolution: '1 mA', burden: '20..50 mΩ' },
    ).optional(),
    clamp: group(
      z.strictObject({
        range: quantity('a current range', 'What it can show.', '0..60 A'),
        accuracy: quantity(
          'an accuracy of a current',
          'Its error limit: percent of the reading plus digits or a constant.',
          '2 % + 5 digits',
        ),
        resolution: quantity('an exact current', 'The step of its display.', '10 mA'),
      }),
      'the keys of a clamp for direct currents',
      'The clamp with which it measures a direct current from outside.',
      { range: '0..60 A', accuracy: '2 % + 5 digits', resolution: '10 mA' },
    ).optional(),
    leads: resistance(
      'The resistance of both leads together, part of every resistance that it shows.',
    ).optional(),
    zeroed: yes('The leads are taken out of the reading before it is used.').optional(),
  })
  .meta({
    id: 'multimeter',
    description: 'A hand-held instrument for resistance, voltage, insulation or current.',
  });

/** By name. The compiler asks for each that `words.ts` lists. */
export const instrumentDefinitions = {
  monitor,
  multimeter,
} as const satisfies Readonly<Record<FormName<'instruments', Kind<'instruments'>>, z.ZodType>>;

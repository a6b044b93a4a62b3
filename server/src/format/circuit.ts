import * as z from 'zod';
import { idPattern } from './ids.ts';
import { group, ids, keyword, kind, pinPair, quantity, resistance, text } from './values.ts';

/* What stands in a circuit beside its parts: one definition a kind. */

export const reserve = group(
  z.strictObject({
    capacitance: quantity(
      'a capacitance',
      'The capacitor that keeps the unit going after power is lost.',
      '6.8 mF ± 20 %',
    ),
    'charged-to': quantity('a voltage', 'The voltage it is charged to while the unit is powered.', '24 V'),
    bleed: quantity('a resistance', 'The resistance through which it empties.', '4.7 kΩ ± 5 %'),
    'safe-below': quantity('a voltage', 'Below this voltage a stage can no longer fire.', '2 V'),
  }),
  'the four keys of a reserve',
  'The energy that remains after the source is taken away. All four keys are needed: from them the least wait is computed and held against `wait`.',
  { capacitance: '6.8 mF ± 20 %', 'charged-to': '24 V', bleed: '4.7 kΩ ± 5 %', 'safe-below': '2 V' },
);

export const battery = z
  .strictObject({
    kind: kind('battery', 'The battery that the system runs on.'),
    voltage: quantity('a voltage', 'The voltage at its terminals.', '12.6 V', '12..14.5 V'),
    feeds: ids('an id or a list of ids', 'What it supplies: monitors, parts or connectors.', [
      'control-unit',
    ]),
    wait: quantity(
      'a duration',
      'How long to wait after it is taken away before a live circuit may be touched, as the maker of the system states it.',
      '3 min',
    ).optional(),
    reserve: reserve.optional(),
  })
  .meta({ id: 'battery', description: 'A battery: a source that is taken away by disconnecting it.' });

export const monitor = z
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

export const entry = z
  .strictObject({
    ask: text('What is measured and entered, and where.', 'Coolant temperature at the sensor'),
    range: quantity('a temperature range', 'The temperatures for which the procedure holds.', '15..90 °C'),
    accuracy: quantity('an exact temperature', 'How far what is entered may be off.', '1 °C'),
  })
  .meta({ id: 'entry', description: 'A temperature that is measured and entered before a reading.' });

export const connector = z
  .strictObject({
    contact: quantity('a resistance', 'The resistance of each mated pin.', '2..15 mΩ'),
    'shorting-bar': group(
      z.strictObject({
        side: keyword(
          ['monitor', 'end'],
          'The side that the bar sits on. `monitor` is nearer the instrument.',
          'end',
        ),
        closes: keyword(
          ['unlocked', 'unplugged'],
          'From which state of the connector on the bar is closed.',
          'unlocked',
        ),
        resistance: resistance('The resistance of the closed bar.'),
        pins: pinPair(
          'The two pins that it bridges. Without it: the pins of each loop there.',
          [1, 2],
        ).optional(),
      }),
      'the keys of a shorting bar',
      'A bar that bridges the pins of one side when the connector is taken apart.',
      { side: 'end', closes: 'unlocked', resistance: '0.2..0.4 Ω' },
    ).optional(),
  })
  .meta({
    id: 'connector',
    description: 'One physical connector: unplugging it opens every loop through it.',
  });

export const loop = z
  .strictObject({
    path: group(
      z.array(z.string().regex(idPattern)).min(2),
      'a list of ids',
      'From the monitor that reads the loop outward: connectors and parts with two conductors in order, one end part last.',
      ['control-unit', 'K10', 'dash-harness', 'K21', 'stage-1'],
    ),
    pins: group(
      z.record(
        z.string().regex(idPattern),
        pinPair('The two pins of the loop in this connector.', [3, 4], ['A1', 'A2']),
      ),
      'a pair of pins for each connector',
      'The pins that the loop uses in its connectors. Without it: pins 1 and 2.',
      { K10: [3, 4] },
    ).optional(),
  })
  .meta({ id: 'loop', description: 'A circuit that a monitor reads.' });

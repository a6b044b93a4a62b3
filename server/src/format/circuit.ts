import * as z from 'zod';
import { idPattern } from './ids.ts';
import { flag, group, ids, keyword, kind, pinPair, quantity } from './values.ts';

/* What stands in a circuit: one definition a kind. */

const resistance = (description: string) =>
  quantity('a resistance with its spread', description, '1.7..2.3 Ω', '2.2 Ω ± 1 %');

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

const opensShortingBar = flag(
  'A keyed adapter: it needs the mating face of the connector and opens the shorting bar on its side.',
  true,
).optional();

export const lampLoad = z
  .strictObject({
    kind: kind('lamp', 'A filament lamp.'),
    resistance: resistance('Its resistance, measured cold.'),
    'opens-shorting-bar': opensShortingBar,
  })
  .meta({ id: 'lamp-load', description: "A lamp that is fitted in a part's place." });

export const resistorLoad = z
  .strictObject({
    kind: kind('resistor', 'A resistor.'),
    resistance: resistance('Its resistance.'),
    'opens-shorting-bar': opensShortingBar,
  })
  .meta({ id: 'resistor-load', description: "A resistor that is fitted in a part's place." });

export const cableBySize = z
  .strictObject({
    kind: kind('cable', 'A pair of conductors.'),
    wire: quantity('a wire size', 'The cross-section of each conductor, copper.', '0.5 mm²', 'AWG 20'),
    length: quantity('a length', 'The length of each of the two conductors.', '1.2 m'),
  })
  .meta({ id: 'cable-by-size', description: 'A pair of copper conductors of this size and length.' });

export const cableByResistance = z
  .strictObject({
    kind: kind('cable', 'A pair of conductors.'),
    resistance: resistance('The resistance of each of the two conductors.'),
  })
  .meta({ id: 'cable-by-resistance', description: 'A pair of conductors of this resistance each.' });

export const rotaryCoupling = z
  .strictObject({
    kind: kind('rotary-coupling', 'The coiled flat cable between steering column and wheel.'),
    resistance: resistance('The resistance of each of its two conductors.'),
  })
  .meta({ id: 'rotary-coupling', description: 'The coiled flat cable between steering column and wheel.' });

export const series = z
  .strictObject({
    kind: kind('series', 'Any other part with two conductors.'),
    resistance: resistance('The resistance of each of its two conductors.'),
  })
  .meta({ id: 'series', description: 'Any other part with two conductors: a filter, a splice pack.' });

export const initiator = z
  .strictObject({
    kind: kind('initiator', 'A pyrotechnic stage.'),
    resistance: resistance('The resistance of its bridge.'),
    live: flag("Whether it can fire. `false` only for a trainer's inert part.", true, false),
    'no-fire': quantity('a current', 'The current at which it surely does not fire.', '400 mA').optional(),
  })
  .meta({ id: 'initiator', description: 'A pyrotechnic stage: one airbag or belt tensioner bridge.' });

export const resistorPart = z
  .strictObject({
    kind: kind('resistor', 'A resistor that closes a loop.'),
    resistance: resistance('Its resistance.'),
  })
  .meta({ id: 'resistor', description: 'A resistor that closes a loop.' });

export const lampPart = z
  .strictObject({
    kind: kind('lamp', 'A filament lamp that closes a loop.'),
    resistance: resistance('Its resistance, measured cold.'),
  })
  .meta({ id: 'lamp', description: 'A filament lamp that closes a loop.' });

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

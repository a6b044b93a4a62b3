import * as z from 'zod';
import { idPattern } from './ids.ts';
import {
  filled,
  group,
  id,
  ids,
  keyword,
  nodePair,
  partNodes,
  pin,
  pinPair,
  quantity,
  resistance,
  text,
} from './values.ts';

/* What stands in a circuit beside its parts: one definition a kind. */

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
        side: id(
          'a side of the connector',
          'The side that the bar sits on: `monitor`, nearer the instrument, or `end`; or one of its `sides`.',
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
    sides: group(
      z.array(z.string().regex(idPattern)).min(2).max(2),
      'two names',
      'The names of its two halves, in the order of `between` in the network; in a loop the first is nearer the monitor. Without it: `monitor` and `end`.',
      ['harness', 'unit'],
    ).optional(),
    carries: ids(
      'a source id or a list of source ids',
      'Power sources on other pins of this connector. Whoever touches the connector touches these sources.',
      ['traction'],
    ).optional(),
    withstands: quantity(
      'an exact voltage',
      'The voltage of an insulation tester that it bears between its pins and ground. Not stated: none.',
      '1000 V',
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
      filled(
        z.record(
          z.string().regex(idPattern),
          pinPair('The two pins of the loop in this connector.', [3, 4], ['A1', 'A2']),
        ),
      ),
      'a pair of pins for each connector',
      'The pins that the loop uses in its connectors. Without it: pins 1 and 2.',
      { K10: [3, 4] },
    ).optional(),
  })
  .meta({ id: 'loop', description: 'A circuit that a monitor reads.' });

/** An element of the network between its nodes: exactly one of a part, a pin of a connector, a source. */
const between = nodePair(
  'The two nodes that it stands between.',
  ['bus-high', 'bus-low'],
  ['plus', 'ground'],
);

export const networkPart = z
  .strictObject({
    part: id('a part id', 'The part, as one conductor where it has two in a loop.', 'term-a'),
    between: partNodes(
      'The two nodes that it stands between; of a potentiometer one end, the wiper and the other end.',
      ['bus-high', 'bus-low'],
      ['track-supply', 'wiper', 'track-ground'],
    ),
  })
  .meta({ id: 'network-part', description: 'A part between two nodes, or a potentiometer between three.' });

export const networkConnector = z
  .strictObject({
    connector: id('a connector id', 'The connector that one pin of leads from node to node.', 'K4'),
    pin: pin('The pin that leads.', 1, 'A1'),
    between,
  })
  .meta({ id: 'network-connector', description: 'A pin of a connector between two nodes.' });

export const networkSource = z
  .strictObject({
    source: id('a source id', 'The source; the first node is its plus.', 'battery'),
    between,
  })
  .meta({ id: 'network-source', description: 'A source, its plus first.' });

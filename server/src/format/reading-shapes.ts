import * as z from 'zod';
import { idPattern } from './ids.ts';
import { across, filled, group, id, ids, keyword, quantity, target } from './values.ts';
import { quantities } from './words.ts';

/* What steps that read or measure something share. */

const within = target(
  'Where to go on when the reading lies in the accepted window, limits included.',
  'next',
).optional();
export const otherwise = target('Where to go on for everything that is not named.', 'make-safe').optional();
export const classes = {
  within,
  below: target('Where to go on when the reading lies below the accepted window.', 'stop-low').optional(),
  above: target('Where to go on when the reading lies above the accepted window.', 'make-safe').optional(),
  open: target('Where to go on when the monitor reads "open".', 'loop-open').optional(),
  leak: target(
    'Where to go on when the monitor sees a path to ground or to a supply.',
    'loop-leaks',
  ).optional(),
  outside: target('Where to go on for everything but `within`.', 'make-safe').optional(),
  else: otherwise,
};

/** Outcomes of one reading: its classes, and further windows by the names that the step gives them. */
export const outcomesOfOne = group(
  filled(
    z
      .object(classes)
      .catchall(target('Where to go on when the reading lies in this window.', 'one-end-open')),
  ),
  'outcomes and the steps that they lead to',
  'What the reading can be, and where to go on: classes, and names of `windows`.',
  { within: 'next', else: 'make-safe' },
).optional();

export function windows(...examples: readonly [string, ...string[]]) {
  return group(
    filled(
      z.record(z.string().regex(idPattern), quantity('a range or a limit', 'A further window.', ...examples)),
    ),
    'windows by name',
    'Further windows, used as outcomes beside the classes. One of them counts before the class that it lies in.',
    { 'one-end': examples[0] },
  ).optional();
}

export const readOne = {
  read: id('a loop id or a list of loop ids', 'The loop that its monitor reads.', 'stage-1-loop'),
  expect: quantity(
    'a range, a limit or `open`',
    'The accepted window. Without it the computed one is accepted.',
    '2.4..3.6 Ω',
    'above 4.5 Ω',
    'open',
  ).optional(),
  windows: windows('4.4..5.2 Ω', 'above 8 Ω'),
  outcomes: outcomesOfOne,
};

export const drawing = ids(
  'a part id or a list of part ids',
  'Consumers that are switched on while it is measured and draw their current.',
  'starter',
).optional();

/** What is measured between two points. */
export const measured = {
  measure: keyword(quantities, 'What is measured.', 'resistance', 'voltage'),
  across: across(
    'Where the probes go: a side of a connector, or two terminals or nodes; of a voltage the plus first.',
    ['bus-high', 'bus-low'],
    'K4.end',
    ['K4.end.1', 'ground'],
  ),
  with: id('an instrument id', 'The multimeter that it is measured with.', 'hand-meter'),
  expect: quantity(
    'a range, a limit or `open`',
    'The accepted window. Without it the computed one is accepted.',
    '57..63 Ω',
    'above 11 V',
    '-0.1..0.1 V',
    'open',
  ).optional(),
  windows: windows('114..126 Ω', 'below 0.5 V'),
  outcomes: outcomesOfOne,
};

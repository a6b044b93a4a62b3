import * as z from 'zod';
import { classes, drawing, measured, otherwise, readOne } from './reading-shapes.ts';
import { step } from './step.ts';
import { filled, group, id, keyword, moved, quantity, target } from './values.ts';
import { watchable } from './words.ts';

/* Something is moved by hand while something is read. */

const wiggled = {
  wiggle: moved(
    'What is moved by hand: parts, connectors that are mated, and sides. Of a connector that is unplugged each half is moved by itself, and is named by its side.',
    'coil-coupling',
    ['coil-coupling', 'K30.monitor'],
  ),
  for: quantity('a duration', 'How long it is moved. It is never counted as a wait.', '30 s', '2 min'),
};

/** Of all that is seen while it is moved, the least and the most are taken. */
const outcomesWhileMoved = group(
  filled(
    z
      .object({
        within: target(
          'Where to go on when the least and the most seen both lie in the accepted window, limits included.',
          'next',
        ).optional(),
        below: target(
          'Where to go on when the least seen lies below the accepted window.',
          'stop-low',
        ).optional(),
        above: target(
          'Where to go on when the most seen lies above the accepted window.',
          'make-safe',
        ).optional(),
        open: target('Where to go on when "open" is shown at any time.', 'loop-open').optional(),
        leak: target(
          'Where to go on when the monitor sees a path to ground or to a supply at any time.',
          'loop-leaks',
        ).optional(),
        outside: classes.outside,
        else: otherwise,
      })
      .catchall(
        target('Where to go on when the least and the most seen both lie in this window.', 'one-end-open'),
      ),
  ),
  'outcomes and the steps that they lead to',
  'What is seen while it is moved, and where to go on. The first of leak, open, below and above that is seen at any time counts.',
  { within: 'next', else: 'make-safe' },
).optional();

export const wiggleStep = step('wiggle', 'Moves something by hand while a loop is watched.', {
  ...wiggled,
  watch: id('a loop id', 'The loop that its monitor reads meanwhile.', 'stage-1-loop'),
  expect: readOne.expect,
  windows: readOne.windows,
  outcomes: outcomesWhileMoved,
});

export const wiggleMeasuredStep = step(
  'wiggle-measured',
  'Moves something by hand while something is measured with a hand-held instrument.',
  {
    ...wiggled,
    quantity: keyword(watchable, 'What is measured meanwhile.', 'resistance', 'voltage'),
    across: measured.across,
    with: measured.with,
    drawing,
    expect: measured.expect,
    windows: measured.windows,
    outcomes: outcomesWhileMoved,
  },
);

import * as z from 'zod';
import { givenPattern, idPattern, terminalPattern } from './ids.ts';
import { classes, drawing, measured, otherwise, readOne, windows } from './reading-shapes.ts';
import { step } from './step.ts';
import {
  each,
  filled,
  id,
  ids,
  idsOr,
  group,
  keyword,
  kind,
  place,
  probed,
  quantity,
  seen,
  target,
  text,
  touched,
  yes,
} from './values.ts';
import { wiggleMeasuredStep, wiggleStep } from './wiggle-steps.ts';
import type { Verb } from './words.ts';

/* The verbs: one definition each. A step is exactly one verb and the keys that every step may carry. */

const loopId = (description: string) => id('a loop id', description, 'stage-1-loop').optional();

const ignitionStep = step('ignition', 'Switches the ignition.', {
  ignition: keyword(
    ['on', 'off', 'cycle'],
    'Switches the ignition; `cycle` is off and on again.',
    'on',
    'off',
  ),
});
const disconnectStep = step('disconnect', 'Disconnects (isolates) a power source.', {
  disconnect: id('a source id', 'The source that is isolated.', 'battery'),
});
const reconnectStep = step('reconnect', 'Reconnects a power source.', {
  reconnect: id('a source id', 'The source that is reconnected.', 'battery'),
});
const waitStep = step('wait', 'Waits.', {
  wait: quantity('a duration', 'How long to wait.', '3 min', '90 s'),
});
const proveDeadStep = step(
  'prove-dead',
  'Verifies that the circuit of a high-voltage source is without voltage. The source itself keeps its voltage.',
  {
    'prove-dead': id(
      'a source id',
      'The high-voltage source. Three measurements verify its circuit: of the known source, of the circuit, and of the known source again.',
      'traction',
    ),
    at: probed(
      'Where it is measured: a side of a connector, or two terminals. Its test points are those that the manufacturer gives; a mated connector has no contacts to probe.',
      'K7.end',
      ['K7.end.A', 'K7.end.B'],
    ),
    with: id('an instrument id', 'The multimeter that it is measured with.', 'hand-meter'),
    known: id(
      'a source id',
      'The known voltage source on which the multimeter is tested before and after.',
      'battery',
    ),
    outcomes: group(
      filled(
        z.strictObject({
          dead: target(
            'Where to go on when all three measurements are as stated: the circuit is without voltage.',
            'next',
          ).optional(),
          live: target(
            'Where to go on when there is voltage, or a measurement is not as stated. Not stated: the work ends there.',
            'still-live',
          ).optional(),
        }),
      ),
      'outcomes and the steps that they lead to',
      'What is found, and where to go on. Not stated: `dead` goes on, `live` ends the work.',
      { dead: 'next', live: 'still-live' },
    ).optional(),
  },
);
const unlockStep = step('unlock', 'Unlocks a connector without unplugging it.', {
  unlock: id('a connector id', 'The connector that is unlocked and stays mated.', 'K30'),
});
const unplugStep = step('unplug', 'Unplugs a connector.', {
  unplug: id('a connector id', 'The connector that is taken apart.', 'K30'),
});
const plugStep = step('plug', 'Mates and locks a connector.', {
  plug: id('a connector id', 'The connector that is mated and locked.', 'K30'),
});
const fitStep = step('fit', 'Fits a load on a side of a connector.', {
  fit: id('a load id', 'The load that is fitted.', 'bench-lamp'),
  at: place('The side of the connector that it is fitted on.', 'K30.monitor'),
  loop: loopId('Which loop, where several pass through the connector.'),
});
const removeStep = step('remove', 'Removes a load.', {
  remove: id('a load id', 'The load that is taken off.', 'bench-lamp'),
});
const moveStep = step('move', 'Moves a fitted load to another place.', {
  move: id('a load id', 'The load that is moved.', 'bench-lamp'),
  to: place('The side of the connector that it is moved to.', 'K21.monitor'),
  loop: loopId('Which loop, where several pass through the connector.'),
});

const readOneStep = step('read', "The loop's monitor reads it.", readOne);

const measureStep = step('measure', 'Measures with a hand-held instrument.', { ...measured, drawing });

const measureInsulationStep = step(
  'measure-insulation',
  'Measures how well something is insulated, with a voltage of the instrument.',
  {
    ...measured,
    measure: kind('insulation', 'The resistance of insulation.'),
    'at-voltage': quantity(
      'an exact voltage',
      'The voltage that the instrument puts between the probes.',
      '500 V',
    ),
    discharged: yes(
      'The instrument has taken away again what it charged, before the probes are lifted. Below 60 V only.',
    ).optional(),
  },
);

const { with: measuredWith, expect: measuredExpect, outcomes: measuredOutcomes } = measured;

const measureCurrentStep = step('measure-current', 'Measures a direct current.', {
  measure: kind('current', 'A direct current.'),
  around: id(
    'a part id',
    'The part in the network, as one conductor, that the clamp is around. Its arrow points from the first node of `between` to the second.',
    'ground-strap',
  ).optional(),
  in: group(
    z.array(z.string().regex(terminalPattern)).min(2).max(2),
    'both terminals of a pin',
    'The two terminals of a pin of an unplugged connector between which the instrument stands, the more positive first.',
    ['T1.battery.1', 'T1.harness.1'],
  ).optional(),
  with: measuredWith,
  drawing,
  expect: measuredExpect,
  windows: windows('0.1..0.5 A', 'below 20 mA'),
  outcomes: measuredOutcomes,
});

const readSeveralStep = step('read-several', 'The monitors of several loops read them.', {
  read: group(
    each(id('a loop id', 'A loop that is read.', 'stage-1-loop')),
    'a loop id or a list of loop ids',
    'The loops that are read.',
    ['stage-1-loop', 'stage-2-loop'],
  ),
  outcomes: group(
    filled(
      z
        .object({
          within: target(
            'Where to go on when every loop of the list is within its window.',
            'next',
          ).optional(),
          else: otherwise,
        })
        .catchall(
          group(filled(z.strictObject(classes)), 'outcomes of this loop', 'The outcomes of one loop.', {
            open: 'loop-open',
          }),
        ),
    ),
    'a map of outcomes for each loop',
    'Outcomes by loop; the first that holds in written order is taken.',
    { 'stage-1-loop': { open: 'loop-open' }, else: 'next' },
  ).optional(),
});

const readCodesStep = step('read-codes', 'Reads the trouble codes of a monitor.', {
  'read-codes': id('a monitor id', 'The monitor whose codes are read and written down.', 'control-unit'),
  outcomes: group(
    filled(
      z.strictObject({
        none: target('Where to go on when there is no code.', 'next').optional(),
        stored: target('Where to go on when a code is stored but not present.', 'next').optional(),
        present: target('Where to go on when a code is present.', 'make-safe').optional(),
        else: otherwise,
      }),
    ),
    'outcomes and the steps that they lead to',
    'What is found, and where to go on.',
    { none: 'next', else: 'make-safe' },
  ).optional(),
});
const clearCodesStep = step('clear-codes', 'Clears the trouble codes of a monitor.', {
  'clear-codes': id('a monitor id', 'The monitor whose codes are cleared.', 'control-unit'),
});
const hands = touched(
  'What hands touch on the way, or `nothing`. Needed while something can still fire, is charged or under high voltage.',
  'K30',
  ['K30.monitor', 'stage-1'],
  'nothing',
).optional();
const lookedAt = seen(
  'What is only looked at, and no hand touches: parts, connectors, sources, loads, instruments.',
  'stage-1',
  ['K30', 'bench-lamp'],
).optional();
const inspectStep = step('inspect', 'Looks at something.', {
  inspect: text('What is looked at, and for what.', 'Check the pins of K30 for corrosion.'),
  at: hands,
  of: lookedAt,
  outcomes: group(
    filled(
      z.strictObject({
        ok: target('Where to go on when nothing is wrong.', 'next').optional(),
        defect: target('Where to go on when a defect is seen.', 'replace-coupling').optional(),
        else: otherwise,
      }),
    ),
    'outcomes and the steps that they lead to',
    'What is seen, and where to go on.',
    { ok: 'next', defect: 'replace-coupling' },
  ).optional(),
});
const doStep = step('do', 'An action that does not change the circuit.', {
  do: text('What is done.', 'Remove the steering wheel cover.'),
  at: hands,
  of: lookedAt,
});
const replaceStep = step('replace', 'Replaces something.', {
  replace: ids(
    'an id or a list of ids',
    'The part, connector or monitor that is replaced.',
    'coil-coupling',
    ['coil-coupling', 'K30'],
  ),
});
const concludeStep = step('conclude', 'Names what is at fault.', {
  conclude: idsOr(['none'], 'an id, a list of ids, or `none`', 'What is at fault.', 'coil-coupling', 'none'),
});
const goStep = step('go', 'Goes on at another step.', {
  go: id('a step id', 'The step to go on at.', 'close-up'),
});
const runStep = step('run', 'Runs a routine.', {
  run: id('a routine id', 'The routine whose steps are done here.', 'make-safe'),
  given: group(
    filled(
      z.record(
        z.string().regex(idPattern),
        z.string().regex(givenPattern).meta({ 'x-expected': 'an id or a side of a connector' }),
      ),
    ),
    'what the routine needs, by name',
    'What stands for the names that the routine needs.',
    { where: 'K21.monitor', load: 'bench-lamp' },
  ).optional(),
});
const stopStep = step('stop', 'Ends the procedure.', {
  stop: text('Why it ends here, and what to do.', 'The loop reads too low. Look for a bridged pair.'),
  leaves: idsOr(
    ['codes', 'repair'],
    'an id or a list of ids, `codes`, `repair`',
    'What is left open, fitted or off on purpose.',
    ['K30', 'battery'],
    ['codes'],
  ).optional(),
});

export const section = z
  .strictObject({ section: text('A heading. It is not a step and has no number.', 'Make safe') })
  .meta({ id: 'section', description: 'A heading above the steps that follow.' });

/** By name, one a verb. The compiler asks for each that `words.ts` lists. */
export const stepDefinitions = {
  'step-ignition': ignitionStep,
  'step-disconnect': disconnectStep,
  'step-reconnect': reconnectStep,
  'step-wait': waitStep,
  'step-prove-dead': proveDeadStep,
  'step-unlock': unlockStep,
  'step-unplug': unplugStep,
  'step-plug': plugStep,
  'step-fit': fitStep,
  'step-remove': removeStep,
  'step-move': moveStep,
  'step-read': readOneStep,
  'step-read-several': readSeveralStep,
  'step-measure': measureStep,
  'step-measure-insulation': measureInsulationStep,
  'step-measure-current': measureCurrentStep,
  'step-wiggle': wiggleStep,
  'step-wiggle-measured': wiggleMeasuredStep,
  'step-read-codes': readCodesStep,
  'step-clear-codes': clearCodesStep,
  'step-inspect': inspectStep,
  'step-do': doStep,
  'step-replace': replaceStep,
  'step-conclude': concludeStep,
  'step-go': goStep,
  'step-stop': stopStep,
  'step-run': runStep,
} as const satisfies Readonly<
  Record<
    | `step-${Verb}`
    | 'step-read-several'
    | 'step-measure-insulation'
    | 'step-measure-current'
    | 'step-wiggle-measured',
    z.ZodType
  >
>;

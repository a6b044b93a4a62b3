import { describe, expect, test } from 'vitest';
import { readdirSync, readFileSync } from 'node:fs';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import type { Finding } from '../../server/src/model/finding.ts';

/*
 * Sentences as workshops write them, beside a live stage or with all of it safe. Common practice, no source: each of them
 * is a person's way of saying that hands, a switch or an instrument come near, or that they do not.
 */

const circuit = `format: 1
title: Sentences
sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [control-unit], wait: 3 min }
instruments:
  control-unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω }
loads:
  bench-lamp: { kind: lamp, resistance: 3.0 Ω ± 5 % }
parts:
  dash-harness: { kind: cable, resistance: 0.05 Ω ± 5 % }
  stage-1: { kind: initiator, resistance: 1.7..2.3 Ω, live: true }
connectors:
  K10: { contact: 2..15 mΩ }
  K30: { contact: 2..15 mΩ }
loops:
  stage-1-loop: { path: [control-unit, K10, dash-harness, K30, stage-1] }
steps:
`;

const powered = '  - ignition: on\n  - read-codes: control-unit\n';
const dead = `${powered}  - ignition: off\n  - disconnect: battery\n  - wait: 3 min\n`;

function findingsOf(text: string): readonly Finding[] {
  const findings = finish(
    analyse(snapshotOf([{ id: 'x.procedure.yaml', text }]), 'x.procedure.yaml').findings('order'),
  );
  const read = findings.filter(({ stage }) => stage === 'text');
  expect(read.map(({ message }) => message)).toEqual([]);
  return findings;
}

const ofHands = (findings: readonly Finding[]): readonly Finding[] =>
  findings.filter(({ rule }) => rule === 'hands-in-text' || rule === 'touch-not-said');

/** What is found of a sentence in a step that says that hands touch nothing, under power. */
function underPower(sentence: string, of = ''): readonly Finding[] {
  const seen = of === '' ? '' : `    of: ${of}\n`;
  return ofHands(
    findingsOf(`${circuit}${powered}  - do: ${JSON.stringify(sentence)}\n    at: nothing\n${seen}`),
  );
}

/** What is found of it as a note at the reading, under power. */
function asNote(sentence: string): readonly Finding[] {
  return ofHands(
    findingsOf(`${circuit}${powered}  - read: stage-1-loop\n    note: ${JSON.stringify(sentence)}\n`),
  );
}

/** The same as what is done, with all that is live dead, and nobody says where hands are. */
function whileDead(sentence: string, of = ''): readonly Finding[] {
  const seen = of === '' ? '' : `    of: ${of}\n`;
  return ofHands(findingsOf(`${circuit}${dead}  - do: ${JSON.stringify(sentence)}\n${seen}`));
}

/** All that an innocent sentence may name. */
const seen = '[K30, battery, control-unit]';

/** Deeds: what a careless colleague writes under power. */
const deeds: readonly string[] = [
  'Measure the resistance of the airbag with the multimeter.',
  'Plug the memory keeper into the lighter socket.',
  'Switch the ignition on.',
  'Unplug k30.',
  'Turn the ignition on now.',
  'UNPLUG K30!',
  'Unplug K 30 and look at the pins.',
  'Un-plug k-30.',
  'Disconnect the yellow connector below the seat.',
  'Connect the battery.',
  'Reconnect the battery, then go on.',
  'Probe the squib with an ohmmeter.',
  'Check the squib with an ohmmeter.',
  'Back-probe stage 1 at its plug.',
  'With care, unplug K30.',
  'With care unplug K30.',
  'Very gently pull the airbag connector off.',
  'Wiggle the harness while you watch the value.',
  'Does the value change while you wiggle the harness at K30?',
  'Does the value jump when the airbag lead is moved?',
  'Is the value steady if you bend the wire?',
  'Does it stay open after unplugging K30?',
  'K30 is to be unplugged.',
  'K30 unplugged?',
  'The airbag module is lifted out now.',
  'Unscrew the module and lift it off.',
  'Have a colleague unplug K30.',
  'Do not forget to unplug K30.',
  'Never go on without unplugging K30.',
  'Unplug K30 but never pull at its wires.',
  'Unplug K30 before you go on.',
  'Before you go on unplug K30.',
  'Wait for the tone and push the connector home.',
  'Cut the tie off the harness.',
  'Touch the pins of K10 with the probes.',
  'Bridge the two pins.',
  'Fit the lamp in the place of the stage.',
  'Fit bench_lamp at K30.',
  'Remove the cover and the airbag.',
  'Put the load on K30.',
  'Take the airbag module down.',
  'Open the airbag connector.',
  'Move the wire to and fro.',
  'Press the lock of K30 and see.',
  'Tap on the control unit.',
  'Ignition on now.',
  'Start the engine.',
  'Insert the probe at stage-1.',
  'Loosen K10, please.',
  'Swap the squib for a resistor.',
  'Read the value, unplug K30, read it again.',
  'Look at\nK30, unplug it.',
  'While the lamp is on, tug at the harness.',
  'Until the value jumps, shake the cable.',
  'Turn on the power.',
  'Hook up the battery.',
  'Take the minus lead off the battery.',
  'Pull out the plug.',
  'Pull the fuse.',
  'Separate the connector halves.',
  'Use a multimeter on the squib.',
  'Slide the lock of K30 back.',
  'Hold the module by its sides.',
  'Short the two pins with a wire.',
  'Feed 12 V to the squib.',
  'When unplugged, does K30 show rust?',
  'The second person unplugs K30 now.',
  'Clip the lamp to the squib.',
  'Key on, engine off.',
];

/** Deeds that the note beside a reading gives as a command, by its grammar alone. */
const commands: readonly string[] = [
  'Measure the resistance of the airbag with the multimeter.',
  'Plug the memory keeper into the lighter socket.',
  'Switch the ignition on.',
  'Unplug k30.',
  'Turn the ignition on now.',
  'UNPLUG K30!',
  'Unplug K 30 and look at the pins.',
  'Un-plug k-30.',
  'Connect the battery.',
  'Reconnect the battery, then go on.',
  'Disconnect the battery once the lamp is out.',
  'Now turn the key to on.',
  'Please turn the ignition off and on again.',
  'Ignition on now.',
  'Start the engine.',
  'Probe the squib with an ohmmeter.',
  'Back-probe stage 1 at its plug.',
  'With care, unplug K30.',
  'With care unplug K30.',
  'Very gently pull the airbag connector off.',
  'Wiggle the harness while you watch the value.',
  'Watch the value while you wiggle the harness at K30.',
  'Watch the value while wiggling the harness.',
  'Does the value change when you unplug K30?',
  'Is the value steady if you bend the wire?',
  'Unscrew the airbag module and lift it off.',
  'Have a colleague unplug K30.',
  'Do not forget to unplug K30.',
  'Unplug K30 but never pull at its wires.',
  'Unplug K30 before you go on.',
  'Push the connector home.',
  'Cut the harness tie.',
  'Touch the pins of K10 with the probes.',
  'Unplug K10 and K30.',
  'Fit bench_lamp at K30.',
  'Swap the squib for a resistor.',
  'Read the value, unplug K30, read it again.',
  'Try unplugging K30.',
  'You have to unplug\nK30 for that.',
  'Could you unplug K30?',
  'Until the value jumps, shake the cable.',
  'Ignition: on.',
  'Key on, engine off.',
  'Turn on the power.',
  'Restore power.',
  'Reattach the battery lead.',
  'Pop the connector off.',
  'Clip the lamp to the squib.',
  'Pull the fuse.',
  'K30: unplug.',
];

/** Innocent in every place. */
const innocent: readonly string[] = [
  'Write every code on the job sheet. They are what the customer came with.',
  'Write down what the meter shows.',
  'Write the reading on the job sheet.',
  'Never unplug K30 with the ignition on.',
  'Never probe a stage with an ohmmeter.',
  'Never pull, bend or cut the wires of an airbag.',
  'Do not touch the airbag now.',
  'Do not probe or measure the squib.',
  'Don’t unplug anything here.',
  'Nobody may touch the module.',
  'Nobody in front of the steering wheel, and nobody at the module, while power comes back.',
  'Stay clear of the steering wheel while the ignition is on.',
  'Stay clear of the front of the airbag.',
  'Keep everybody clear of the live stages while power comes back.',
  'An airbag or belt tensioner that fires can kill. Keep all persons clear of them while power comes back.',
  'The load closes the interlock circuit, so the interlock no longer protects you. Keep all persons away while the ignition is on.',
  'Keep your face and chest away from the front of the module.',
  'Before a stage is unplugged the wait must be over.',
  'The control unit looks at all its loops anew when it wakes.',
  'The control unit keeps energy in reserve for firing after the battery is gone.',
  'A new control unit is made known to the vehicle as the maker’s service information says.',
  'The old module can still fire. Dispose of it as its maker and national law say.',
  'A module that fires face down is thrown across the workshop.',
  'Does the airbag warning lamp come on with the ignition and go out as it should?',
  'Does the lamp go out within 6 s?',
  'Is the lamp on?',
  'Look for a fault that comes and goes.',
  'Wait until the value is steady.',
  'Let the control unit wake.',
  'Compare the reading with the last one.',
  'Note the time.',
  'Ask the workshop lead.',
  'Look at the display of the control unit.',
  'Is the value steady?',
  'The reading comes from the control unit.',
  'High voltage comes back. Nobody at its parts while the service plug goes in.',
  'Never open a hot cooling system.',
  'Leave the engine off until the coolant temperature stays where it is.',
  'Their interlock pins cannot be told apart from here.',
  'Two terminations of about 120 Ω side by side are about 60 Ω, one alone is 120 Ω.',
  'From here the whole length of the bus lies between the meter and the rear termination.',
  'Keep people out of the vehicle.',
  'Touch nothing.',
  'Tell the customer what was found.',
  'Is the plug of the trainer seated?',
  'Is the seat fitted?',
  'Put the seat fully back and the steering wheel straight ahead.',
  'Read the whole card.',
];

/** Mentions that a note may have, and a step under power says with `of`. */
const mentions: readonly string[] = [
  'K30 is the yellow one.',
  'K30 sits below the seat.',
  'Look at K30 for corrosion.',
  'Never unplug K30 with the ignition on.',
  'Is K30 seated?',
  'The lock of K30 is green.',
  'See the drawing of K30.',
  'Before you unplug K30, the battery is off.',
];

describe('a word of doing where hands touch nothing and a stage can still fire', () => {
  test.each(deeds)('%j is an error that no waiver holds against', (sentence) => {
    const found = underPower(sentence).filter(({ severity }) => severity === 'error');
    expect(found.length).toBeGreaterThan(0);
    expect(found.every(({ rule, immune }) => rule === 'hands-in-text' && immune === true)).toBe(true);
  });
});

describe('a command in a note', () => {
  test.each(commands)('%j', (sentence) => {
    expect(asNote(sentence).length).toBeGreaterThan(0);
  });
});

describe('innocent sentences', () => {
  test.each(innocent)('%j', (sentence) => {
    const found = [...underPower(sentence, seen), ...asNote(sentence), ...whileDead(sentence, seen)];
    expect(found.map(({ message }) => message)).toEqual([]);
  });
});

describe('what is only looked at may be named', () => {
  test.each(mentions)('%j', (sentence) => {
    const found = [...underPower(sentence, seen), ...asNote(sentence)];
    expect(found.map(({ message }) => message)).toEqual([]);
  });
});

describe('messages', () => {
  const all = [
    ...deeds.flatMap((one) => underPower(one)),
    ...commands.flatMap(asNote),
    ...deeds.flatMap((one) => whileDead(one)),
  ];
  test('say which step to write, and never to leave a name out', () => {
    for (const { message } of all) {
      expect(message).toMatch(/write|Write|add `/);
      expect(message).not.toMatch(/leave .* out|without that word/i);
    }
  });
});

test('the texts of the shipped procedures are clean', () => {
  const folder = new URL('../../procedures/', import.meta.url);
  for (const name of readdirSync(folder)) {
    if (!name.endsWith('.procedure.yaml')) continue;
    const text = readFileSync(new URL(name, folder), 'utf8');
    expect(ofHands(findingsOf(text)).map(({ message }) => `${name}: ${message}`)).toEqual([]);
  }
});

import { describe, expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { oracle } from './oracle.ts';

/*
 * The oracle on what is powered and charged, against procedures worked out by hand: a network with a 12 V battery that
 * feeds a part, a 48 V one that is drawn, and a high-voltage pack behind its service plug.
 */

interface Bench {
  readonly battery?: string;
  readonly link?: string;
  readonly more?: string;
  readonly parts?: string;
  readonly network?: string;
}

const usual = {
  battery: '{ kind: battery, voltage: 12 V, feeds: [sensor, unit], wait: 60 s }',
  link: '{ kind: battery, voltage: 48 V, feeds: [motor], wait: 100 s }',
};

function tell(rule: string, steps: readonly string[], bench: Bench = {}): string[] {
  const { battery, link, more = '', parts = '', network = '' } = { ...usual, ...bench };
  const text = `format: 1
title: Power
conditions: { ambient: 20..20 °C }
sources:
  battery: ${battery}
  link: ${link}
  traction: { kind: high-voltage, voltage: 400 V, isolated-by: S1, wait: 300 s }
${more}
instruments:
  unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω }
  meter:
    kind: multimeter
    zeroed: true
    resistance: { range: 0..1 kΩ, accuracy: 1 %, resolution: 0.1 Ω }
    voltage: { range: 0..600 V, accuracy: 1 % + 2 digits, resolution: 0.1 V, input: 10 MΩ }
  small:
    kind: multimeter
    zeroed: true
    voltage: { range: 0..60 V, accuracy: 1 % + 2 digits, resolution: 0.1 V, input: 10 MΩ }
loads:
  bulb: { kind: lamp, resistance: 3 Ω }
parts:
  sensor: { kind: resistor, resistance: 100 Ω }
  motor: { kind: resistor, resistance: 2 Ω }
  heater: { kind: resistor, resistance: 30 Ω }
  dull: { kind: resistor, resistance: 2 Ω }
${parts}
connectors:
  K1: { contact: 10 mΩ }
  K2: { contact: 10 mΩ }
  K3: { contact: 10 mΩ, sides: [link, heater] }
  K4: { contact: 10 mΩ }
  S1: { contact: 10 mΩ, sides: [pack, link] }
loops:
  loop: { path: [unit, K4, dull] }
network:
  - { connector: K1, pin: 1, between: [wire, sense] }
  - { part: sensor, between: [sense, ground] }
  - { source: link, between: [plus, ground] }
  - { connector: K2, pin: 1, between: [plus, feed] }
  - { part: motor, between: [feed, ground] }
  - { source: traction, between: [pack, ground] }
  - { connector: S1, pin: 1, between: [pack, high] }
  - { connector: K3, pin: 1, between: [high, hot] }
  - { part: heater, between: [hot, ground] }
${network}
steps:
${steps.map((step) => `  - { ${step} }\n`).join('')}`;
  const { procedure, findings } = readProcedure({ id: 'test.procedure.yaml', text });
  expect(findings).toEqual([]);
  return oracle(procedure)
    .filter((told) => told.rule === rule)
    .map(({ subject, step }) => `${subject ?? '-'} at ${step ?? '-'}`)
    .sort();
}

const ohms = (one: string, other = 'ground'): string =>
  `measure: resistance, across: [${one}, ${other}], with: meter`;
const measured = (steps: readonly string[], bench: Bench = {}): string[] =>
  tell('powered-measurement', steps, bench);

describe('powered-measurement', () => {
  test('a part that a battery feeds is powered while that is on, then charged for its wait', () => {
    expect(measured([ohms('sense')])).toEqual(['sense..ground at 1']);
    const waited = (wait: string): string[] => ['disconnect: battery', `wait: ${wait}`, ohms('sense')];
    expect(measured(waited('59 s'))).toEqual(['sense..ground at 3']);
    expect(measured(waited('60 s'))).toEqual([]);
    // The ignition alone counts as power.
    expect(measured(['ignition: on', ...waited('60 s')])).toEqual(['sense..ground at 4']);
  });
  test('the far half of an unplugged connector keeps its charge, and only power makes it whole again', () => {
    const cut = ['disconnect: battery', 'unplug: K1', 'wait: 40 s'];
    expect(measured([...cut, ohms('wire')])).toEqual(['wire..ground at 4']);
    expect(measured([...cut, 'wait: 20 s', ohms('wire')])).toEqual([]);
    // 40 s with the battery off, then it comes back to the sensor alone: 20 s are left of the wire, 60 s of the sensor.
    const back = [...cut, 'reconnect: battery', 'disconnect: battery', 'wait: 20 s'];
    expect(measured([...back, ohms('wire')])).toEqual([]);
    expect(measured([...back, ohms('sense')])).toEqual(['sense..ground at 7']);
    // Joined again both have the longer one.
    expect(measured([...back, 'plug: K1', ohms('wire')])).toEqual(['wire..ground at 8']);
  });
  test('a wait does not count while the battery is on', () => {
    expect(measured(['wait: 60 s', 'disconnect: battery', ohms('sense')])).toEqual(['sense..ground at 3']);
    // Where it is cut off the wait counts with the battery on.
    expect(measured(['unplug: K1', 'wait: 60 s', ohms('wire')])).toEqual([]);
  });
  test('the greatest wait of all that powered it, whatever they feed', () => {
    const bench = { battery: '{ kind: battery, voltage: 12 V, feeds: [motor], wait: 150 s }' };
    const off = ['disconnect: battery', 'disconnect: link', 'wait: 149 s'];
    expect(measured([...off, ohms('feed')], bench)).toEqual(['feed..ground at 4']);
    expect(measured([...off, 'wait: 1 s', ohms('feed')], bench)).toEqual([]);
  });
  test('where the source is drawn in the circuit, what is drawn decides', () => {
    // The link feeds the motor and stands in its circuit: behind the open connector it is not powered.
    const cut = ['unplug: K2', 'wait: 100 s'];
    expect(measured([...cut, ohms('feed')])).toEqual([]);
    expect(measured([...cut, ohms('plus')])).toEqual(['plus..ground at 3']);
    // The battery feeds it and is drawn elsewhere: that says nothing.
    const bench = { battery: '{ kind: battery, voltage: 12 V, feeds: [motor], wait: 60 s }' };
    expect(measured([...cut, ohms('feed')], bench)).toEqual(['feed..ground at 3']);
  });
  test('what a control unit joins is powered by what feeds the unit; ground joins nothing', () => {
    const far = 'measure: resistance, across: K4.end, with: meter';
    const near = 'measure: resistance, across: K4.monitor, with: meter';
    expect(measured(['unplug: K4', 'wait: 60 s', far])).toEqual([]);
    expect(measured(['unplug: K4', 'wait: 60 s', near])).toEqual(['K4.monitor at 3']);
    expect(measured(['disconnect: battery', 'wait: 60 s', ohms('sense')])).toEqual([]);
  });
  test('it stands in place of impossible, and a voltage is measured under power', () => {
    expect(tell('impossible', [ohms('plus')])).toEqual([]);
    expect(measured(['measure: voltage, across: [plus, ground], with: meter'])).toEqual([]);
  });
});

describe('a supply that needs the ignition', () => {
  const bench = (afterRun: string): Bench => ({
    battery: '{ kind: battery, voltage: 12 V, feeds: [unit], wait: 60 s }',
    more: `  five: { kind: regulated, voltage: 5 V, from: battery, needs: ignition-on${afterRun} }`,
    network: '  - { source: five, between: [wire, ground] }',
  });
  test('runs on for its after-run with the ignition off, also from the start', () => {
    const ran = bench(', after-run: 30 s');
    expect(measured(['wait: 29 s', ohms('sense')], ran)).toEqual(['sense..ground at 2']);
    expect(measured(['wait: 30 s', ohms('sense')], ran)).toEqual([]);
    const again = ['wait: 30 s', 'ignition: on', 'wait: 30 s', 'ignition: off', ohms('sense')];
    expect(measured(again, ran)).toEqual(['sense..ground at 5']);
    expect(measured([ohms('sense')], bench(', after-run: 0 s'))).toEqual([]);
  });
  test('not stated: until its battery is off and owes no wait', () => {
    expect(measured(['wait: 10 min', ohms('sense')], bench(''))).toEqual(['sense..ground at 2']);
    const off = (wait: string): string[] => ['disconnect: battery', `wait: ${wait}`, ohms('sense')];
    expect(measured(off('59 s'), bench(''))).toEqual(['sense..ground at 3']);
    expect(measured(off('60 s'), bench(''))).toEqual([]);
    // The battery is sooner than the after-run.
    expect(measured(off('60 s'), bench(', after-run: 5 min'))).toEqual([]);
  });
  test('without need of the ignition it is on while its battery is', () => {
    const five = { ...bench(''), more: '  five: { kind: regulated, voltage: 5 V, from: battery }' };
    expect(measured(['wait: 10 min', ohms('sense')], five)).toEqual(['sense..ground at 2']);
    expect(measured(['disconnect: battery', ohms('sense')], five)).toEqual([]);
  });
  test('a wait is not in vain while it runs', () => {
    const vain = (afterRun: string): string[] => tell('wait-without-effect', ['wait: 1 s'], bench(afterRun));
    expect(vain(', after-run: 30 s')).toEqual([]);
    expect(vain(', after-run: 0 s')).toEqual(['- at 1']);
  });
});

describe('meter-across-live', () => {
  const probed = (step: string, live: boolean): string[] =>
    tell('meter-across-live', ['disconnect: battery', 'wait: 60 s', 'unplug: K1', step], {
      parts: `  stage: { kind: initiator, resistance: 2 Ω, live: ${live} }`,
      network: '  - { part: stage, between: [wire, ground] }',
    });
  test('a probe on what holds an initiator, whatever is measured, ground or nothing on the other', () => {
    for (const live of [true, false]) {
      expect(probed(ohms('wire'), live)).toEqual(['stage at 4']);
      expect(probed(ohms('wire', 'plus'), live)).toEqual(['stage at 4']);
      expect(probed('measure: voltage, across: [wire, ground], with: meter', live)).toEqual(['stage at 4']);
      expect(probed(ohms('sense'), live)).toEqual([]);
    }
  });
});

describe('work above 30 V', () => {
  test('contacts that part or meet under power', () => {
    expect(tell('work-under-power', ['unplug: K2'])).toEqual(['K2 at 1']);
    expect(tell('work-under-power', ['unplug: K1'])).toEqual([]);
    expect(
      tell('work-under-power', ['disconnect: link', 'unplug: K2', 'reconnect: link', 'plug: K2']),
    ).toEqual(['K2 at 4']);
    const exactly = { link: '{ kind: battery, voltage: 24..30 V, feeds: [motor], wait: 100 s }' };
    expect(tell('work-under-power', ['unplug: K2'], exactly)).toEqual([]);
  });
  test('then the charge, for the wait of what is above 30 V', () => {
    const off = (wait: string): string[] => ['disconnect: link', `wait: ${wait}`, 'unplug: K2'];
    expect(tell('short-wait', off('99 s'))).toEqual(['K2 at 3']);
    expect(tell('short-wait', off('100 s'))).toEqual([]);
    // 12 V that stays on draws no arc.
    const both = { battery: '{ kind: battery, voltage: 12 V, feeds: [motor], wait: 60 s }' };
    expect(tell('short-wait', off('100 s'), both)).toEqual([]);
  });
  test('a load where it sits and where it goes', () => {
    const dull = { link: '{ kind: battery, voltage: 48 V, feeds: [dull], wait: 100 s }' };
    const steps = ['unplug: K4', 'fit: bulb, at: K4.monitor', 'move: bulb, to: K4.end', 'remove: bulb'];
    expect(tell('work-under-power', steps, dull)).toEqual(['K4 at 1', 'bulb at 3', 'bulb at 4']);
    // One that sits elsewhere cannot be fitted: nobody comes to where it is.
    const twice = ['unplug: K4', 'fit: bulb, at: K4.end', 'fit: bulb, at: K4.monitor'];
    expect(tell('work-under-power', twice, dull)).toEqual(['K4 at 1', 'bulb at 2']);
  });
  test('what is replaced, of a lamp and of what only hangs on a control unit with the ignition on', () => {
    expect(tell('work-under-power', ['replace: sensor'])).toEqual(['sensor at 1']);
    expect(tell('work-under-power', ['disconnect: battery', 'replace: sensor'])).toEqual([]);
    expect(tell('work-under-power', ['replace: dull', 'ignition: on', 'replace: dull'])).toEqual([
      'dull at 3',
    ]);
    const lamp = {
      parts: '  light: { kind: lamp, resistance: 6 Ω }',
      network: '  - { part: light, between: [sense, ground] }',
    };
    expect(tell('work-under-power', ['replace: light', 'ignition: on', 'replace: light'], lamp)).toEqual([
      'light at 3',
    ]);
  });
  test('a source above 30 V states what it owes', () => {
    const link = (rest: string): Bench => ({
      link: `{ kind: battery, voltage: 48 V, feeds: [motor]${rest} }`,
    });
    expect(tell('no-wait', ['ignition: off'], link(''))).toEqual(['link at -']);
    expect(tell('zero-wait', ['ignition: off'], link(', wait: 0 s'))).toEqual(['link at -']);
    const low = { battery: '{ kind: battery, voltage: 12 V, feeds: [unit] }' };
    expect(tell('no-wait', ['ignition: off'], low)).toEqual([]);
  });
});

describe('high voltage by any name', () => {
  const away = ['disconnect: traction', 'wait: 300 s'];
  const proof = (at: string): string => `prove-dead: traction, at: ${at}, with: meter, known: battery`;
  test('a node and a part of its circuit are touched, live or not', () => {
    expect(tell('live-touch', [ohms('hot')])).toEqual(['hot at 1']);
    expect(tell('live-touch', ['replace: heater'])).toEqual(['heater at 1']);
    expect(tell('short-wait', ['disconnect: traction', ohms('hot')])).toEqual(['hot at 2']);
    expect(tell('not-proven-dead', [...away, ohms('hot')])).toEqual(['hot at 3']);
    expect(tell('not-proven-dead', [...away, proof('K3.link'), ohms('hot')])).toEqual([]);
    expect(measured([...away, proof('K3.link'), ohms('hot')])).toEqual([]);
  });
  test('a proof holds for the piece in which it was taken', () => {
    // Cut off before the proof: the heater needs its own. Cut off after it: it is proven.
    const before = [...away, proof('K3.link'), 'unplug: K3', ohms('hot')];
    expect(tell('not-proven-dead', before)).toEqual([]);
    const open = [...away, 'unplug: K3', 'disconnect: traction'];
    expect(tell('not-proven-dead', [...open, proof('K3.link'), ohms('hot')])).toEqual([
      'K3 at 3',
      'hot at 6',
    ]);
    expect(tell('not-proven-dead', [...open, proof('K3.link'), ohms('high')])).toEqual(['K3 at 3']);
    expect(tell('not-proven-dead', [...open, proof('K3.heater'), ohms('hot')])).toEqual(['K3 at 3']);
    expect(tell('not-proven-dead', [...open, proof('K3.heater'), 'plug: K3'])).toEqual([
      'K3 at 3',
      'K3 at 6',
    ]);
  });
  test('what still hangs together with the source is never dead', () => {
    expect(tell('live-touch', [...away, proof('S1.pack'), ohms('pack')])).toEqual(['pack at 4']);
    expect(measured([...away, proof('S1.pack'), ohms('pack')])).toEqual(['pack..ground at 4']);
    expect(tell('live-touch', [...away, proof('S1.link'), ohms('high')])).toEqual([]);
  });
  test('a voltage may be measured before the proof with a danger and a meter that bears it', () => {
    const volts = (meter: string, more = ''): string =>
      `measure: voltage, across: [hot, ground], with: ${meter}${more}`;
    const danger = ', danger: Gloves.';
    expect(tell('not-proven-dead', [...away, volts('meter', danger)])).toEqual([]);
    expect(tell('not-proven-dead', [...away, volts('meter')])).toEqual(['hot at 3']);
    expect(tell('not-proven-dead', [...away, volts('small', danger)])).toEqual(['hot at 3']);
    expect(tell('short-wait', ['disconnect: traction', volts('meter', danger)])).toEqual(['hot at 2']);
  });
  test('half-open: it comes back to an open connector, and no notice excuses that', () => {
    const back = 'reconnect: traction, danger: Nobody near.';
    expect(tell('half-open', [...away, 'unplug: K3', back])).toEqual(['pack at 4']);
    expect(tell('half-open', [...away, back])).toEqual([]);
  });
});

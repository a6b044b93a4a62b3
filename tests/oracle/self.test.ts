import { describe, expect, test } from 'vitest';
import { oracle } from './oracle.ts';
import { circuit, dead, said, sample, second } from './sample.ts';

/* The oracle against procedures whose findings were worked out by hand: each rule broken and kept. */

test('a procedure with everything in its order has no finding', () => {
  const steps = [
    { ignition: 'on' },
    { 'read-codes': 'unit' },
    { ignition: 'off' },
    ...dead,
    { unplug: 'K2', warning: 'Touch bare metal.' },
    { fit: 'plug', at: 'K2.monitor' },
    { reconnect: 'battery', warning: 'Nobody in front of it.' },
    { ignition: 'on' },
    { read: 'live' },
    { ignition: 'off' },
    ...dead,
    { remove: 'plug' },
    { plug: 'K2' },
    { replace: 'stage', warning: 'It can fire.' },
    { reconnect: 'battery' },
    { ignition: 'on' },
    { read: 'live', outcomes: { within: 'next', else: 'give-up' } },
    { 'clear-codes': 'unit' },
    { stop: 'Done.' },
    { stop: 'Ask for help.', id: 'give-up', leaves: ['codes', 'repair'] },
  ];
  expect(oracle(sample(steps))).toEqual([]);
});

describe('live-touch and short-wait', () => {
  test('a connector of a live loop is touched with the battery on', () => {
    expect(said('live-touch', [{ unlock: 'K1' }])).toEqual(['K1 at 1 in 1']);
    expect(said('live-touch', [{ unlock: 'K3' }])).toEqual([]);
  });
  test('the ignition alone is enough, and no wait helps while it is on', () => {
    const steps = [{ ignition: 'on' }, ...dead, { unlock: 'K1' }];
    expect(said('live-touch', steps)).toEqual(['K1 at 4 in 4']);
    expect(said('short-wait', steps)).toEqual([]);
  });
  test('the wait adds up over several steps, to the second', () => {
    const waited = (last: string) => [
      { disconnect: 'battery' },
      { wait: '60 s' },
      { wait: last },
      { unplug: 'K1' },
    ];
    expect(said('short-wait', waited('59 s'))).toEqual(['K1 at 4 in 4']);
    expect(said('short-wait', waited('60 s'))).toEqual([]);
    expect(said('live-touch', waited('59 s'))).toEqual([]);
  });
  test('the whole wait is owed again after power returned, also by the ignition alone', () => {
    const back = [...dead, { reconnect: 'battery' }, { disconnect: 'battery' }, { unplug: 'K1' }];
    const cycled = [...dead, { ignition: 'on' }, { ignition: 'off' }, { unplug: 'K1' }];
    expect(said('short-wait', back)).toEqual(['K1 at 5 in 5']);
    expect(said('short-wait', cycled)).toEqual(['K1 at 5 in 5']);
  });
  test('the reserve is owed where it takes longer than the stated wait', () => {
    // worst case 1.1 mF · 11 kΩ · ln(20 V / 2 V) = 12.1 s · 2.302585 = 27.861 s
    const reserve = {
      capacitance: '1 mF ± 10 %',
      'charged-to': '18..20 V',
      bleed: '10 kΩ ± 10 %',
      'safe-below': '2..3 V',
    };
    const sources = { battery: { ...circuit.sources.battery, wait: '5 s', reserve } };
    const waited = (wait: string) => [{ disconnect: 'battery' }, { wait }, { unplug: 'K1' }];
    expect(said('short-wait', waited('27.86 s'), { sources })).toEqual(['K1 at 3 in 3']);
    expect(said('short-wait', waited('27.87 s'), { sources })).toEqual([]);
  });
  test('with two sources the longer wait counts, from when both are off', () => {
    const sources = second;
    const steps = [{ disconnect: 'battery' }, { wait: '120 s' }, { disconnect: 'backup' }, { unplug: 'K1' }];
    expect(said('short-wait', steps, { sources })).toEqual(['K1 at 4 in 4']);
    expect(said('live-touch', steps.slice(0, 2).concat({ unplug: 'K1' }), { sources })).toEqual([
      'K1 at 3 in 3',
    ]);
  });
  test('fit, remove and move touch the connectors of their places', () => {
    const steps = [
      { fit: 'lamp', at: 'K1.end' },
      { ignition: 'off' },
      { move: 'lamp', to: 'K2.monitor' },
      { ignition: 'off' },
      { remove: 'lamp' },
      { ignition: 'off' },
      { remove: 'lamp' },
    ];
    expect(said('live-touch', steps)).toEqual([
      'K1 at 1 in 1',
      'K1 at 3 in 3',
      'K2 at 3 in 3',
      'K2 at 5 in 5',
    ]);
  });
  test('hands named in do, inspect and replace touch', () => {
    expect(said('live-touch', [{ do: 'Clean.', at: ['stage'] }])).toEqual(['stage at 1 in 1']);
    expect(said('live-touch', [{ do: 'Clean.' }])).toEqual([]);
    expect(said('live-touch', [{ inspect: 'Look.', at: ['unit', 'K3'] }])).toEqual(['unit at 1 in 1']);
    expect(said('live-touch', [{ replace: ['K2', 'inert'] }])).toEqual(['K2 at 1 in 1']);
  });
  test('a part of an inert loop is live to the touch beside a connector that it shares with a live one', () => {
    const loops = {
      live: { path: ['unit', 'K1', 'stage'], pins: { K1: [1, 2] } },
      dull: { path: ['unit', 'cable', 'K1', 'inert'], pins: { K1: [3, 4] } },
      far: { path: ['unit', 'K3', 'other'] },
    };
    const parts = { ...circuit.parts, other: { kind: 'resistor', resistance: '2.0..2.4 Ω' } };
    expect(said('live-touch', [{ replace: 'inert' }], { loops, parts })).toEqual(['inert at 1 in 1']);
    expect(said('live-touch', [{ replace: 'other' }], { loops, parts })).toEqual([]);
  });
  test('after a finding the sources count as safe until one of them or the ignition is switched', () => {
    expect(said('live-touch', [{ unlock: 'K1' }, { wait: '1 s' }, { unplug: 'K1' }])).toEqual([
      'K1 at 1 in 1',
    ]);
    expect(said('live-touch', [{ unlock: 'K1' }, { ignition: 'off' }, { unplug: 'K1' }])).toEqual([
      'K1 at 1 in 1',
      'K1 at 3 in 3',
    ]);
    expect(said('short-wait', [{ unlock: 'K1' }, { disconnect: 'battery' }, { unplug: 'K1' }])).toEqual([
      'K1 at 3 in 3',
    ]);
  });
  test('an excused source does not excuse the other source of the same loop', () => {
    const loops = { live: { path: ['unit', 'K1', 'stage'] }, twin: { path: ['unit', 'K3', 'other'] } };
    const parts = { ...circuit.parts, other: { kind: 'initiator', resistance: '2.0..2.4 Ω', live: true } };
    const steps = [{ unlock: 'K3' }, { unlock: 'K1' }];
    expect(said('live-touch', steps, { loops, parts })).toEqual(['K3 at 1 in 1']);
    expect(said('live-touch', steps, { loops, parts, sources: second })).toEqual([
      'K1 at 2 in 2',
      'K3 at 1 in 1',
    ]);
    expect(said('live-touch', [...steps].reverse(), { loops, parts, sources: second })).toEqual([
      'K1 at 1 in 1',
    ]);
  });
  test('the shortest of several paths is told', () => {
    const steps = [
      { 'read-codes': 'unit', outcomes: { none: 'touch', else: 'next' } },
      { ignition: 'off' },
      { unlock: 'K1', id: 'touch' },
    ];
    expect(said('live-touch', steps)).toEqual(['K1 at 3 in 2']);
  });
});

describe('power', () => {
  test('ignition-first: a source is taken or given with the ignition on', () => {
    const steps = [{ ignition: 'on' }, { disconnect: 'battery' }, { reconnect: 'battery' }];
    expect(said('ignition-first', steps)).toEqual(['battery at 2 in 2', 'battery at 3 in 3']);
    expect(said('ignition-first', steps.slice(1))).toEqual([]);
  });
  test('half-open: power returns to a live loop that is open or loaded, with no warning there', () => {
    const open = [...dead, { unlock: 'K1' }];
    const warning = 'Nobody in front of it.';
    expect(said('half-open', [...open, { reconnect: 'battery' }])).toEqual(['live at 4 in 4']);
    expect(said('half-open', [...open, { reconnect: 'battery', warning }])).toEqual([]);
    expect(said('half-open', [...open, { reconnect: 'battery', danger: warning }])).toEqual([]);
    expect(said('half-open', [...open, { ignition: 'on' }])).toEqual(['live at 4 in 4']);
    expect(said('half-open', [...open, { ignition: 'cycle' }])).toEqual(['live at 4 in 4']);
    expect(said('half-open', [...dead, { fit: 'lamp', at: 'K1.end' }, { reconnect: 'battery' }])).toEqual([
      'live at 4 in 4',
    ]);
    expect(said('half-open', [...dead, { unlock: 'K3' }, { reconnect: 'battery' }])).toEqual([]);
    expect(said('half-open', [...dead, { unlock: 'K1' }, { plug: 'K1' }, { reconnect: 'battery' }])).toEqual(
      [],
    );
  });
  test('half-open: a source that was never off does not return', () => {
    expect(said('half-open', [{ unlock: 'K1' }, { ignition: 'on' }, { ignition: 'on' }])).toEqual([]);
  });
  test('wait-without-effect: each fed live loop has a source that is on', () => {
    expect(said('wait-without-effect', [{ wait: '1 s' }])).toEqual(['- at 1 in 1']);
    expect(said('wait-without-effect', dead)).toEqual([]);
    // A loop that is not live stays charged too, for as long as its source owes.
    const loops = { dull: circuit.loops.dull ?? {} };
    expect(said('wait-without-effect', [{ wait: '1 s' }], { loops })).toEqual(['- at 1 in 1']);
    expect(said('wait-without-effect', dead, { loops })).toEqual([]);
    const { wait: owed, ...battery } = circuit.sources.battery ?? {};
    expect(owed).toBe('120 s');
    expect(said('wait-without-effect', [{ wait: '1 s' }], { loops, sources: { battery } })).toEqual([]);
  });
});

describe('impossible', () => {
  const twice = (first: object, again: object) => said('impossible', [{ ...first }, { ...again }]);
  test('connectors', () => {
    expect(twice({ unlock: 'K1' }, { unlock: 'K1' })).toEqual(['K1 at 2 in 2']);
    expect(twice({ unlock: 'K1' }, { unplug: 'K1' })).toEqual([]);
    expect(twice({ unplug: 'K1' }, { unplug: 'K1' })).toEqual(['K1 at 2 in 2']);
    expect(twice({ unlock: 'K1' }, { plug: 'K1' })).toEqual([]);
    expect(twice({ ignition: 'off' }, { plug: 'K1' })).toEqual(['K1 at 2 in 2']);
    expect(twice({ fit: 'lamp', at: 'K1.end' }, { unplug: 'K1' })).toEqual(['K1 at 2 in 2']);
    expect(twice({ fit: 'lamp', at: 'K1.end' }, { unlock: 'K1' })).toEqual([]);
  });
  test('loads', () => {
    expect(twice({ fit: 'lamp', at: 'K1.end' }, { fit: 'lamp', at: 'K2.end' })).toEqual(['lamp at 2 in 2']);
    expect(twice({ fit: 'plug', at: 'K1.end' }, { ignition: 'off' })).toEqual(['plug at 1 in 1']);
    expect(twice({ unlock: 'K1' }, { fit: 'plug', at: 'K1.end' })).toEqual(['plug at 2 in 2']);
    expect(twice({ unplug: 'K1' }, { fit: 'plug', at: 'K1.end' })).toEqual([]);
    expect(twice({ remove: 'lamp' }, { fit: 'lamp', at: 'K1.end' })).toEqual(['lamp at 1 in 1']);
    expect(twice({ fit: 'lamp', at: 'K1.end' }, { move: 'lamp', to: 'K2.end' })).toEqual([]);
    expect(twice({ ignition: 'off' }, { move: 'lamp', to: 'K2.end' })).toEqual(['lamp at 2 in 2']);
  });
  test('replacing what a load sits on', () => {
    const replacing = (at: string, replace: string | string[]) => twice({ fit: 'lamp', at }, { replace });
    expect(replacing('K1.end', 'K1')).toEqual(['K1 at 2 in 2']);
    expect(replacing('K1.end', 'K2')).toEqual([]);
    // The half of a connector goes with what it hangs on.
    expect(replacing('K1.end', ['cable', 'unit'])).toEqual(['cable at 2 in 2']);
    expect(replacing('K1.monitor', ['cable', 'unit'])).toEqual(['unit at 2 in 2']);
    expect(replacing('K2.monitor', 'stage')).toEqual([]);
    expect(replacing('K2.end', 'stage')).toEqual(['stage at 2 in 2']);
  });
  test('sources and monitors', () => {
    expect(twice({ disconnect: 'battery' }, { disconnect: 'battery' })).toEqual(['battery at 2 in 2']);
    expect(twice({ ignition: 'off' }, { reconnect: 'battery' })).toEqual(['battery at 2 in 2']);
    expect(twice({ ignition: 'on' }, { read: 'live' })).toEqual([]);
    expect(twice({ ignition: 'off' }, { read: ['live', 'dull'] })).toEqual(['unit at 2 in 2']);
    expect(twice({ ignition: 'off' }, { 'read-codes': 'unit' })).toEqual(['unit at 2 in 2']);
    expect(twice({ ignition: 'off' }, { 'clear-codes': 'unit' })).toEqual(['unit at 2 in 2']);
  });
});

describe('the file itself', () => {
  test('a test current above a tenth of the no-fire current', () => {
    const stated = (current: string, noFire: string, live = true) =>
      said('test-current', [{ ignition: 'on' }], {
        instruments: { unit: { ...circuit.instruments.unit, 'test-current': current } },
        parts: { ...circuit.parts, stage: { ...circuit.parts.stage, 'no-fire': noFire, live } },
      });
    expect(stated('40 mA', '400 mA')).toEqual([]);
    expect(stated('40 mA', '0.4 A')).toEqual([]);
    expect(stated('40.1 mA', '400 mA')).toEqual(['stage at - in -']);
    expect(stated('30..50 mA', '400 mA')).toEqual(['stage at - in -']);
    expect(stated('40 mA', '390..500 mA')).toEqual(['stage at - in -']);
    expect(stated('50 mA', '400 mA', false)).toEqual([]);
  });
  test('unfed circuits and monitors', () => {
    const sources = { battery: { ...circuit.sources.battery, feeds: ['K3'] } };
    expect(said('unfed-circuit', [{ ignition: 'off' }], { sources })).toEqual(['live at - in -']);
    // The live loop stands for its monitor; without it the monitor is told.
    expect(said('unfed-monitor', [{ ignition: 'off' }], { sources })).toEqual([]);
    const loops = Object.fromEntries(Object.entries(circuit.loops).filter(([id]) => id !== 'live'));
    expect(said('unfed-monitor', [{ ignition: 'off' }], { sources, loops })).toEqual(['unit at - in -']);
    expect(said('impossible', [{ read: 'live' }], { sources })).toEqual([]);
    expect(said('unfed-circuit', [{ ignition: 'off' }])).toEqual([]);
    expect(said('unfed-monitor', [{ ignition: 'off' }])).toEqual([]);
  });
  test('a step on what stands in no circuit', () => {
    const connectors = { ...circuit.connectors, K9: { contact: '2..15 mΩ' } };
    const steps = [{ unplug: 'K9' }, { fit: 'lamp', at: 'K9.end' }, { unplug: 'K1' }];
    expect(said('in-no-circuit', steps, { connectors })).toEqual(['K9 at 1 in -', 'K9 at 2 in -']);
  });
  test('hands in a note', () => {
    const noted = (note: string) => said('hands-in-text', [{ ignition: 'on', note }]);
    expect(noted('Unplug K1.')).toEqual(['K1 at 1 in -']);
    expect(noted('If it sticks, wiggle the harness at K2 and touch the stage.')).toEqual([
      'K2 at 1 in -',
      'stage at 1 in -',
    ]);
    expect(noted('You must first Disconnect battery')).toEqual(['battery at 1 in -']);
    for (const mention of ['K1 is unplugged now.', 'Do not touch K1.', 'Before you unplug K1, look.'])
      expect(noted(mention)).toEqual([]);
    for (const mention of ['Plug K1 is the yellow one.', 'Write the colour of plug K1 down.', 'Look at K1.'])
      expect(noted(mention)).toEqual([]);
    expect(said('hands-in-text', [{ stop: 'Reconnect battery.' }])).toEqual(['battery at 1 in -']);
    expect(said('hands-in-text', [{ unplug: 'K1', note: 'Pull K1 straight, never K2.' }])).toEqual([]);
  });
  test('hands in a text', () => {
    expect(said('hands-in-text', [{ do: 'Clean K1, not K10.' }])).toEqual(['K1 at 1 in -']);
    expect(said('hands-in-text', [{ do: 'Clean K1.', at: ['K1'] }])).toEqual([]);
    expect(said('hands-in-text', [{ inspect: 'Look.' }])).toEqual([]);
  });
});

describe('the graph', () => {
  test('unreachable', () => {
    expect(said('unreachable', [{ stop: 'Here.' }, { ignition: 'off' }])).toEqual(['- at 2 in -']);
    expect(said('unreachable', [{ nonsense: 1 }, { stop: 'Here.' }, { ignition: 'off' }])).toEqual([]);
    expect(said('unreachable', [{ go: 'nowhere' }, { ignition: 'off' }])).toEqual([]);
    expect(said('unreachable', [{ ignition: 'off' }, { ignition: 'on' }])).toEqual([]);
  });
  test('endless is told where the paths go in', () => {
    const steps = [
      { 'read-codes': 'unit', outcomes: { none: 'round', else: 'out' } },
      { do: 'Look.', id: 'round' },
      { go: 'round' },
      { stop: 'Here.', id: 'out' },
    ];
    expect(said('endless', steps)).toEqual(['- at 2 in -']);
    expect(said('endless', steps.slice(1))).toEqual(['- at 1 in -']);
    expect(
      said('endless', [steps[0] ?? {}, { do: 'Look.', id: 'round' }, { stop: 'Here.', id: 'out' }]),
    ).toEqual([]);
  });
  test('a way that leads nowhere known may end', () => {
    expect(said('endless', [{ go: 'nowhere' }])).toEqual([]);
    expect(said('endless', [{ nonsense: 1 }])).toEqual([]);
  });
  test('repeats: a cycle with nothing done, inspected or replaced in it', () => {
    const round = (inside: object) => [
      { ignition: 'off' },
      { ignition: 'on', id: 'again' },
      { ...inside },
      { 'read-codes': 'unit', outcomes: { none: 'next', else: 'again' } },
    ];
    expect(said('repeats', round({ wait: '1 s' }))).toEqual(['- at 2 in -']);
    expect(said('repeats', round({ do: 'Wiggle it.' }))).toEqual([]);
  });
  test('nothing is told behind a step that could not be read', () => {
    expect(said('live-touch', [{ nonsense: 1 }, { unplug: 'K1' }])).toEqual([]);
  });
});

describe('ends', () => {
  test('not-restored behind the last step, told at the step that the path ends from', () => {
    const steps = [...dead, { unplug: 'K3' }, { fit: 'lamp', at: 'K3.end' }];
    expect(said('not-restored', steps)).toEqual(['K3 at 4 in 4', 'battery at 4 in 4', 'lamp at 4 in 4']);
    expect(said('not-restored', [{ ignition: 'on' }])).toEqual([]);
  });
  test('a stop may leave what it names, and no more than is really left', () => {
    const steps = (...leaves: string[]) => [...dead, { unplug: 'K3' }, { stop: 'Here.', leaves }];
    expect(said('not-restored', steps('battery'))).toEqual(['K3 at 4 in 4']);
    expect(said('not-restored', steps('battery', 'K3'))).toEqual([]);
    expect(said('leaves-too-much', steps('battery', 'K3'))).toEqual([]);
    expect(said('leaves-too-much', steps('battery', 'K3', 'lamp'))).toEqual(['lamp at 4 in -']);
  });
  test('a live loop left open with a source on is never excused', () => {
    const stop = { stop: 'Here.', leaves: ['K1', 'K3'] };
    expect(said('not-restored', [{ unplug: 'K1' }, { unplug: 'K3' }, stop])).toEqual(['K1 at 3 in 3']);
    expect(
      said('not-restored', [...dead, { unplug: 'K1' }, { stop: 'Here.', leaves: ['battery', 'K1'] }]),
    ).toEqual([]);
  });
  test('an outcome that leads behind the last step ends the path there', () => {
    const steps = [{ unplug: 'K3' }, { inspect: 'Look.', outcomes: { ok: 'next', defect: 'next' } }];
    expect(said('not-restored', steps)).toEqual(['K3 at 2 in 2']);
  });
});

describe('codes', () => {
  test('they are written down before a source is taken away or the memory is cleared', () => {
    expect(said('codes-not-recorded', [...dead, { 'clear-codes': 'unit' }])).toEqual(['unit at 1 in 1']);
    expect(said('codes-not-recorded', [{ 'clear-codes': 'unit' }])).toEqual(['unit at 1 in 1']);
    expect(said('codes-not-recorded', [{ 'read-codes': 'unit' }, ...dead])).toEqual([]);
  });
  test('memory holds codes at the start and is cleared by clear-codes', () => {
    expect(said('codes-not-cleared', [{ ignition: 'on' }])).toEqual(['unit at 1 in 1']);
    expect(said('codes-not-cleared', [{ ignition: 'on' }, { 'clear-codes': 'unit' }])).toEqual([]);
    expect(said('codes-not-cleared', [{ stop: 'Here.', leaves: ['codes'] }])).toEqual([]);
    expect(
      said('leaves-too-much', [{ 'clear-codes': 'unit' }, { stop: 'Here.', leaves: ['codes'] }]),
    ).toEqual(['codes at 2 in -']);
  });
  test('an open loop fills the memory again when the monitor looks', () => {
    const cleared = [{ ignition: 'on' }, { unplug: 'K3' }, { 'clear-codes': 'unit' }];
    expect(said('codes-not-cleared', cleared)).toEqual([]);
    expect(said('codes-not-cleared', [...cleared, { ignition: 'on' }])).toEqual(['unit at 4 in 4']);
    expect(said('codes-not-cleared', [...cleared, { ignition: 'off' }])).toEqual([]);
    expect(said('codes-not-cleared', [...cleared, { read: 'live' }])).toEqual(['unit at 4 in 4']);
    expect(said('codes-not-cleared', [...cleared, { plug: 'K3' }, { read: 'live' }])).toEqual([]);
  });
});

import { describe, expect, test } from 'vitest';
import { oracle } from './oracle.ts';
import type { PlainStep } from './plain-procedure.ts';
import { circuit, dead, said, sample } from './sample.ts';
import type { Changes } from './sample.ts';

/*
 * The oracle on high voltage, against procedures worked out by hand: a service plug S1 in the dull loop, K3 that carries
 * the traction voltage past the pins of that loop, and where it is said a section of its own.
 */

const traction = {
  kind: 'high-voltage',
  voltage: '400 V',
  'isolated-by': 'S1',
  wait: '300 s',
};

const changes: Changes = {
  sources: { ...circuit.sources, traction },
  instruments: {
    ...circuit.instruments,
    meter: {
      kind: 'multimeter',
      voltage: { range: '0..600 V', accuracy: '0.5 % + 2 digits', resolution: '0.1 V', input: '10 MΩ' },
    },
  },
  connectors: {
    ...circuit.connectors,
    K3: { contact: '2..15 mΩ', carries: ['traction'] },
    S1: { contact: '2..15 mΩ' },
  },
  loops: { ...circuit.loops, dull: { path: ['unit', 'S1', 'K3', 'inert'] } },
};

/** The same, and a live section that both the battery (through its monitor) and the traction source feed. */
const withSection: Changes = {
  ...changes,
  sources: { ...changes.sources, traction: { ...traction, feeds: ['section'] } },
  parts: {
    ...circuit.parts,
    section: { kind: 'hv-section', voltage: '400 V', resistance: '2.0..2.4 Ω', live: true },
  },
  connectors: { ...changes.connectors, K8: { contact: '2..15 mΩ' } },
  loops: { ...changes.loops, high: { path: ['unit', 'K8', 'section'] } },
};

const proof = (more: PlainStep = {}): PlainStep => ({
  'prove-dead': 'traction',
  at: 'K3.end',
  with: 'meter',
  known: 'battery',
  ...more,
});

const away: readonly PlainStep[] = [{ disconnect: 'traction' }, { wait: '300 s' }];
const tell = (rule: string, steps: readonly PlainStep[], on: Changes = changes): string[] =>
  said(rule, steps, on);

test('a procedure with everything in its order has no finding', () => {
  const steps = [
    { ignition: 'on' },
    { 'read-codes': 'unit' },
    { ignition: 'off' },
    { disconnect: 'traction', danger: 'High voltage.' },
    { wait: '300 s' },
    proof(),
    { unplug: 'K3' },
    { plug: 'K3' },
    { reconnect: 'traction', danger: 'High voltage comes back.' },
    { ignition: 'on' },
    { 'clear-codes': 'unit' },
    { read: 'dull', outcomes: { within: 'next', else: 'give-up' } },
    { stop: 'Done.' },
    { stop: 'Ask for help.', id: 'give-up', leaves: ['repair'] },
  ];
  expect(oracle(sample(steps, changes))).toEqual([]);
});

test('high voltage that is come near for the first time asks for a danger, and no warning will do', () => {
  expect(tell('missing-notice', [...away, proof(), ...away])).toEqual(['- at 1 in 1']);
  const warned = [{ disconnect: 'traction', warning: 'Gloves.' }, { wait: '300 s' }, proof()];
  expect(tell('missing-notice', warned)).toEqual(['- at 1 in 1']);
  expect(tell('missing-notice', [{ disconnect: 'traction', danger: 'Gloves.' }, proof()])).toEqual([]);
});

test('high voltage that comes back for the first time asks for a danger of its own', () => {
  const gone = { disconnect: 'traction', danger: 'Gloves.' };
  const back = { reconnect: 'traction' };
  expect(tell('missing-notice', [gone, back, gone, back])).toEqual(['- at 2 in 2']);
  const warned = { ...back, warning: 'Nobody near.' };
  expect(tell('missing-notice', [gone, warned])).toEqual(['- at 2 in 2']);
  expect(tell('missing-notice', [gone, { ...back, danger: 'Nobody near.' }, gone, back])).toEqual([]);
  expect(tell('missing-notice', [{ disconnect: 'battery' }, { reconnect: 'battery' }])).toEqual([]);
});

describe('hands on a connector that carries a source', () => {
  test('are hands on the source, which its loop knows nothing of', () => {
    expect(tell('live-touch', [{ unplug: 'K3' }])).toEqual(['K3 at 1 in 1']);
    expect(said('live-touch', [{ unplug: 'K3' }])).toEqual([]);
  });
  test('first the source is off, then the wait is over, then it is proven dead: one cause at a time', () => {
    const steps = (wait: string, ...more: PlainStep[]) => [
      { disconnect: 'traction' },
      { wait },
      ...more,
      { unplug: 'K3' },
    ];
    expect(tell('short-wait', steps('299 s'))).toEqual(['K3 at 3 in 3']);
    expect(tell('not-proven-dead', steps('299 s'))).toEqual([]);
    expect(tell('short-wait', steps('300 s'))).toEqual([]);
    expect(tell('not-proven-dead', steps('300 s'))).toEqual(['K3 at 3 in 3']);
    expect(tell('not-proven-dead', steps('300 s', proof()))).toEqual([]);
  });
  test('a part beside it is touched with it, and so is the connector that takes the source away', () => {
    expect(tell('live-touch', [{ replace: 'inert' }])).toEqual(['inert at 1 in 1']);
    expect(tell('live-touch', [{ do: 'Look.', at: ['S1'] }])).toEqual(['S1 at 1 in 1']);
  });
  test('it needs no loop to be known', () => {
    const loops = { live: circuit.loops.live ?? {} };
    expect(tell('in-no-circuit', [{ unplug: 'K3' }], { ...changes, loops })).toEqual([]);
    expect(tell('live-touch', [{ unplug: 'K3' }], { ...changes, loops })).toEqual(['K3 at 1 in 1']);
  });
  test('taking the source away is no touch, and neither is the proof', () => {
    expect(tell('live-touch', [...away, proof(), { reconnect: 'traction' }])).toEqual([]);
  });
});

describe('a proof', () => {
  const touch = { unplug: 'K3' };
  test('lapses when the source or the ignition comes on, with the wait', () => {
    const again = [{ reconnect: 'traction' }, ...away];
    expect(tell('not-proven-dead', [...away, proof(), ...again, touch])).toEqual(['K3 at 7 in 7']);
    const key = [{ ignition: 'on' }, { ignition: 'off' }, { wait: '300 s' }];
    expect(tell('not-proven-dead', [...away, proof(), ...key, touch])).toEqual(['K3 at 7 in 7']);
  });
  test('does not lapse with a source that feeds nothing of it', () => {
    const other = [{ disconnect: 'battery' }, { reconnect: 'battery' }];
    expect(tell('not-proven-dead', [...away, proof(), ...other, touch])).toEqual([]);
  });
  test('lapses with any source of a circuit that they share', () => {
    const steps = [
      ...dead,
      ...away,
      proof({ at: 'K8.end' }),
      { reconnect: 'battery' },
      { disconnect: 'battery' },
      { wait: '300 s' },
      { unplug: 'K8' },
    ];
    expect(tell('not-proven-dead', steps, withSection)).toEqual(['K8 at 9 in 9']);
  });
  test('counts on the way out by `dead` alone', () => {
    const steps = [...away, proof({ outcomes: { live: 'next' } }), touch, { stop: 'Here.' }];
    expect(tell('not-proven-dead', steps)).toEqual(['K3 at 4 in 4']);
    const twice = [
      ...away,
      proof(),
      proof({ outcomes: { live: 'touch' } }),
      { stop: 'Here.' },
      { ...touch, id: 'touch' },
    ];
    expect(tell('not-proven-dead', twice)).toEqual(['K3 at 6 in 5']);
  });
  test('that comes before the source is off or the wait is over proves nothing, and is told once', () => {
    expect(tell('proof-too-early', [proof(), touch])).toEqual(['traction at 1 in 1']);
    expect(tell('live-touch', [proof(), touch])).toEqual([]);
    const early = [{ disconnect: 'traction' }, { wait: '299 s' }, proof(), touch];
    expect(tell('proof-too-early', early)).toEqual(['traction at 3 in 3']);
    expect(tell('short-wait', early)).toEqual([]);
    expect(tell('proof-too-early', [...away, proof()])).toEqual([]);
  });
  test('that came too early counts until the source is switched', () => {
    const steps = [proof(), ...away, touch];
    expect(tell('not-proven-dead', steps)).toEqual(['K3 at 4 in 4']);
  });
  test('of a source that shares a circuit waits for the others of it', () => {
    const at = { at: 'K8.end' };
    expect(tell('proof-too-early', [...away, proof(at)], withSection)).toEqual(['traction at 3 in 3']);
    expect(tell('proof-too-early', [...dead, ...away, proof(at)], withSection)).toEqual([]);
  });
  test('is taken where the source is', () => {
    expect(tell('proof-elsewhere', [...away, proof({ at: 'K1.end' })])).toEqual(['traction at 3 in -']);
    expect(tell('proof-elsewhere', [...away, proof({ at: ['K3.end.1', 'K1.end.1'] })])).toEqual([
      'traction at 3 in -',
    ]);
    expect(tell('proof-elsewhere', [...away, proof({ at: 'S1.end' })])).toEqual([]);
    expect(tell('proof-elsewhere', [...away, proof({ at: 'K8.end' })], withSection)).toEqual([]);
  });
  test('in a cycle may come out otherwise the second time', () => {
    const steps = [{ ignition: 'off' }, proof({ id: 'again', outcomes: { live: 'again' } })];
    expect(tell('repeats', steps)).toEqual([]);
  });
});

describe('the end of the work where something is live', () => {
  test('owes nothing', () => {
    const steps = [
      ...away,
      proof(),
      { unplug: 'K3' },
      proof({ at: 'S1.end', outcomes: { dead: 'next' } }),
      { stop: 'Here.', leaves: ['traction', 'K3', 'codes', 'repair'] },
    ];
    expect(tell('not-restored', steps)).toEqual([]);
    expect(tell('loop-not-verified', steps)).toEqual([]);
    expect(tell('codes-not-cleared', steps)).toEqual([]);
  });
  test('but never with something open under power', () => {
    const steps = [{ unplug: 'K3' }, proof(), { stop: 'Here.', leaves: ['K3', 'codes', 'repair'] }];
    expect(tell('not-restored', steps)).toEqual(['K3 at 2 in 2', 'K3 at 3 in 3']);
  });
  test('by a written outcome owes what every end owes', () => {
    const steps = [...away, proof({ outcomes: { live: 'next' } })];
    expect(tell('not-restored', steps)).toEqual(['traction at 3 in 3']);
  });
});

describe('the connector that takes the source away', () => {
  test('is opened and mated with it: its loops are open, and have to be verified', () => {
    const codes = [{ ignition: 'on' }, { 'clear-codes': 'unit' }];
    expect(tell('codes-not-cleared', [...away, ...codes, { read: 'dull' }])).toEqual(['unit at 5 in 5']);
    expect(
      tell('codes-not-cleared', [...away, { reconnect: 'traction' }, ...codes, { read: 'dull' }]),
    ).toEqual([]);
    expect(tell('loop-not-verified', [...away, { reconnect: 'traction' }])).toEqual(['dull at 3 in 3']);
    const left = [...away, { stop: 'Here.', leaves: ['traction', 'codes'] }];
    expect(tell('loop-not-verified', left)).toEqual([]);
    expect(tell('leaves-too-much', left)).toEqual([]);
  });
  test('stays open under the name of the source', () => {
    expect(tell('not-restored', [{ disconnect: 'traction' }])).toEqual(['traction at 1 in 1']);
  });
  test('is neither opened nor mated with a load on it', () => {
    const fit = { fit: 'lamp', at: 'S1.monitor' };
    expect(tell('impossible', [fit, { disconnect: 'traction' }])).toEqual(['S1 at 2 in 2']);
    expect(tell('impossible', [{ disconnect: 'traction' }, fit, { reconnect: 'traction' }])).toEqual([
      'S1 at 3 in 3',
    ]);
    expect(tell('impossible', [{ disconnect: 'traction' }, { disconnect: 'traction' }])).toEqual([
      'traction at 2 in 2',
    ]);
  });
  test('half-open: power comes back with a carrying connector open; the plug itself is mated by it', () => {
    const open = [...away, proof(), { unplug: 'K3' }, { reconnect: 'traction' }];
    expect(tell('half-open', open)).toEqual(['traction at 5 in 5']);
    expect(tell('half-open', [...away, { reconnect: 'traction' }])).toEqual([]);
    expect(tell('half-open', [...away, { ignition: 'on' }])).toEqual([]);
  });
});

test('a wait has its effect while the source that is carried runs down', () => {
  expect(tell('wait-without-effect', away)).toEqual([]);
  expect(tell('wait-without-effect', [{ wait: '1 s' }])).toEqual(['- at 1 in 1']);
});

test('a source that no touch would be held against is told', () => {
  const steps = [{ ignition: 'off' }];
  const connectors = { ...changes.connectors, K3: { contact: '2..15 mΩ' } };
  expect(tell('unguarded-source', steps)).toEqual([]);
  expect(tell('unguarded-source', steps, { ...changes, connectors })).toEqual(['traction at - in -']);
  expect(tell('unguarded-source', steps, { ...withSection, connectors })).toEqual([]);
  // What it feeds needs not be live to be guarded.
  const sources = { ...changes.sources, traction: { ...traction, feeds: ['inert'] } };
  expect(tell('unguarded-source', steps, { ...changes, sources, connectors })).toEqual([]);
  expect(tell('live-touch', [{ unplug: 'K3' }], { ...changes, sources, connectors })).toEqual([
    'K3 at 1 in 1',
  ]);
});

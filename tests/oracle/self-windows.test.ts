import { describe, expect, test } from 'vitest';
import type { PlainStep } from './plain-procedure.ts';
import { circuit, dead, sample } from './sample.ts';
import { windowRules, windowsOf } from './windows.ts';

/* What the oracle makes of accepted windows, worked out by hand. */

const told = (...steps: PlainStep[]): string[] =>
  windowRules(sample(steps)).map(({ rule, step, loop }) => `${rule} of ${loop} at ${step}`);
const near = (value: number): unknown => expect.closeTo(value, 9);
const on = { ignition: 'on' };
/** Goes to `there` or on to the next step, whatever the bench. */
const fork = { 'read-codes': 'unit', outcomes: { none: 'there', else: 'next' } };

test('the computed window: after the instrument, rounded outward', () => {
  // (1.808 · 0.97 - 0.1) .. (2.460 · 1.03 + 0.1) = 1.65376 .. 2.6338
  const [window] = windowsOf(sample([on, { read: 'live' }]));
  expect(window?.accepted).toEqual({ least: near(1.65), most: near(2.64) });
});

test('the hull over two benches, and that they differ', () => {
  const twoLoads = [
    ...dead,
    { unplug: 'K2' },
    { fit: 'lamp', at: 'K2.monitor' },
    fork,
    { remove: 'lamp' },
    { fit: 'plug', at: 'K2.monitor' },
    { read: 'live', id: 'there' },
  ];
  // plug: (0.104 + 2.178) · 0.97 - 0.1 = 2.11354; lamp: (0.130 + 3.15) · 1.03 + 0.1 = 3.4784
  expect(windowsOf(sample(twoLoads))[0]?.accepted).toEqual({
    least: near(2.11),
    most: near(3.48),
  });
  expect(told(...twoLoads)).toEqual(['window-differs of live at 8']);
  expect(told(...twoLoads.filter((step) => step !== fork))).toEqual([]);
});

test('a number on one bench and open on another has no window unless one is expected', () => {
  const steps = (read: object) => [fork, { unplug: 'K1' }, { ...read, id: 'there' }];
  expect(told(...steps({ read: 'live' }))).toEqual(['window-undefined of live at 3']);
  expect(windowsOf(sample(steps({ read: 'live' })))[0]?.accepted).toBeNull();
  expect(told(...steps({ read: 'live', expect: 'above 1 Ω' }))).toEqual(['window-differs of live at 3']);
  expect(told(...steps({ read: 'dull' }))).toEqual([]);
});

test('what may read open on one bench has a window that holds the open of another', () => {
  // 8.1..9.9 Ω and 0.1 Ω more or less, with 3 %: 7.8..10 Ω or open.
  const parts = { ...circuit.parts, inert: { kind: 'resistor', resistance: '8.1..9.9 Ω' } };
  const procedure = sample([fork, { unplug: 'K3' }, { read: 'dull', id: 'there' }], { parts });
  expect(windowsOf(procedure)[0]?.accepted).toEqual({ least: near(7.76), most: null });
  expect(windowRules(procedure)).toEqual([]);
});

describe('loads that a reading cannot tell', () => {
  const open = [...dead, { unplug: 'K1' }];
  const back = [{ reconnect: 'battery' }, on];
  const out = (...steps: PlainStep[]) => told(...open, ...steps);
  const read = { read: 'live' };
  test('behind an open connector', () => {
    expect(out({ fit: 'lamp', at: 'K1.end' }, ...back, read)).toEqual(['load-out-of-window of live at 7']);
    expect(out({ fit: 'lamp', at: 'K1.monitor' }, ...back, read)).toEqual([]);
    expect(out({ fit: 'lamp', at: 'K2.monitor' }, ...back, read)).toEqual([
      'load-out-of-window of live at 7',
    ]);
    // One that is seen is enough, and open may be meant.
    const both = [
      { fit: 'lamp', at: 'K1.end' },
      { fit: 'plug', at: 'K1.monitor' },
    ];
    expect(out(...both, ...back, read)).toEqual([]);
    expect(out({ fit: 'lamp', at: 'K1.end' }, ...back, { ...read, expect: 'open' })).toEqual([]);
  });
  test('with a window that no sound circuit meets', () => {
    const expecting = (window: string) =>
      out({ fit: 'lamp', at: 'K1.monitor' }, ...back, { ...read, expect: window });
    // The lamp alone: 2.85 · 0.97 - 0.1 = 2.6645 .. 3.15 · 1.03 + 0.1 = 3.3445
    expect(expecting('2.66..3.35 Ω')).toEqual([]);
    expect(expecting('2.8..3.35 Ω')).toEqual(['expect-excludes-good of live at 7']);
    expect(expecting('1.5..2.6 Ω')).toEqual(['load-out-of-window of live at 7']);
    expect(expecting('open')).toEqual(['load-out-of-window of live at 7']);
  });
  test('not under a closed bar, which is told where it closes', () => {
    const bridged = [{ unplug: 'K2' }, { fit: 'lamp', at: 'K2.end' }, ...back];
    expect(told(...dead, ...bridged, read)).toEqual([]);
    expect(told(...dead, ...bridged, { ...read, expect: '2..4 Ω' })).toEqual([]);
  });
});

describe('an expected window holds every good one', () => {
  const excluded = (expected: string, ...before: PlainStep[]) =>
    told(on, ...before, { read: 'live', expect: expected }).includes(
      `expect-excludes-good of live at ${before.length + 2}`,
    );
  test('as displayed, limits included', () => {
    expect(excluded('1.65..2.64 Ω')).toBe(false);
    expect(excluded('1.66..2.64 Ω')).toBe(true);
    expect(excluded('1.65..2.63 Ω')).toBe(true);
    expect(excluded('below 2.64 Ω')).toBe(false);
    expect(excluded('above 1.66 Ω')).toBe(true);
    expect(excluded('open')).toBe(true);
    expect(excluded('open', { unplug: 'K1' })).toBe(false);
    expect(excluded('1..10 Ω', { unplug: 'K1' })).toBe(true);
  });
  test('not where no sound circuit comes', () => {
    const after = (outcomes: object, first: object = { read: 'live' }) =>
      told(on, { ...first, outcomes }, { stop: 'Good.' }, { read: 'live', expect: '5..6 Ω', id: 'bad' });
    expect(after({ within: 'next', else: 'bad' })).toEqual([]);
    expect(after({ within: 'bad', else: 'next' })).toEqual(['expect-excludes-good of live at 4']);
    expect(after({ live: { open: 'bad' }, else: 'next' }, { read: ['live', 'dull'] })).toEqual([]);
    expect(after({ ok: 'next', defect: 'bad' }, { inspect: 'Look.' })).toEqual([]);
  });
});

describe('an expected window holds no typical fault', () => {
  const admits = (expected: string, ...before: PlainStep[]) =>
    told(on, ...before, { read: 'live', expect: expected }).includes(
      `expect-admits-fault of live at ${before.length + 2}`,
    );
  test('open, where it has no upper limit', () => {
    expect(admits('above 1.5 Ω')).toBe(true);
    expect(admits('1.5..3 Ω')).toBe(false);
  });
  test('1 Ω too much: 2.808 · 0.97 - 0.1 = 2.62376 .. 3.46 · 1.03 + 0.1 = 3.6638', () => {
    expect(admits('1.5..3.66 Ω')).toBe(false);
    expect(admits('1.5..3.67 Ω')).toBe(true);
  });
  test('bridged: 0 .. 0.1', () => {
    expect(admits('0..3 Ω')).toBe(true);
    expect(admits('below 3 Ω')).toBe(true);
    // With the lamp in the place of the stage no bar can come in between.
    const lamp = [{ unplug: 'K2' }, { fit: 'lamp', at: 'K2.monitor' }];
    expect(admits('0..3.6 Ω', ...lamp)).toBe(true);
    expect(admits('0.01..3.6 Ω', ...lamp)).toBe(false);
  });
  test('a bar that stays closed: 2 · (0.002 + 0.05 + 0.002) + 0.2 ∥ 1.7 = 0.28695 .. 0.16 + 0.4 ∥ 2.3 = 0.50074', () => {
    // After the instrument 0.17834 .. 0.61576
    expect(admits('0.17..3 Ω')).toBe(true);
    expect(admits('0.18..3 Ω')).toBe(false);
  });
  test('not where a good one is open, nor where only the load is read', () => {
    expect(admits('0.01..10 Ω', { unplug: 'K1' })).toBe(false);
    const lampOnly = [{ unplug: 'K1' }, { fit: 'lamp', at: 'K1.monitor' }];
    expect(admits('above 2 Ω', ...lampOnly)).toBe(false);
    const lampBehind = [{ unplug: 'K2' }, { fit: 'lamp', at: 'K2.monitor' }];
    expect(admits('above 2 Ω', ...lampBehind)).toBe(true);
  });
});

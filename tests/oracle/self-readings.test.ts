import { describe, expect, test } from 'vitest';
import { codeDifference, compare, windowDifference } from './compare.ts';
import { codesForetold } from './oracle.ts';
import { circuit, dead, said, sample } from './sample.ts';
import type { Changes } from './sample.ts';
import { circuitOf } from './values.ts';
import { start } from './verbs.ts';
import type { World } from './world.ts';

/* What the oracle makes of circuits, worked out by hand beside each number. */

function ohms(world: Partial<World>, changes: Changes = {}): number[] {
  const procedure = sample([{ ignition: 'on' }], changes);
  const loop = procedure.loops.get('live');
  const found = loop === undefined ? null : circuitOf(procedure, { ...start(procedure), ...world }, loop);
  return found === null ? [] : [found.least, found.most];
}
const near = (least: number, most: number): unknown[] => [expect.closeTo(least, 9), expect.closeTo(most, 9)];

describe('the value of a loop', () => {
  test('as built: two connectors of two contacts, two conductors, the stage', () => {
    expect(ohms({})).toEqual(near(4 * 0.002 + 2 * 0.05 + 1.7, 4 * 0.015 + 2 * 0.05 + 2.3));
  });
  test('unplugged is open', () => {
    expect(ohms({ connectors: { K1: 'unplugged' } })).toEqual([Infinity, Infinity]);
  });
  test('the bar on the end side lies across the stage once the connector is unlocked', () => {
    const stage = { least: (1.7 * 0.2) / 1.9, most: (2.3 * 0.4) / 2.7 };
    expect(ohms({ connectors: { K2: 'unlocked' } })).toEqual(
      near(4 * 0.002 + 0.1 + stage.least, 4 * 0.015 + 0.1 + stage.most),
    );
  });
  test('a load in place of the stage; at the other side of the plug it is not seen', () => {
    const at = (side: 'monitor' | 'end') =>
      ohms({ connectors: { K2: 'unplugged' }, loads: { lamp: { connector: 'K2', side, loop: 'live' } } });
    expect(at('monitor')).toEqual(near(2 * 0.002 + 0.1 + 2.85, 2 * 0.015 + 0.1 + 3.15));
    expect(at('end')).toEqual([Infinity, Infinity]);
  });
  test('a load at a mated connector lies in parallel with what is behind it', () => {
    const loads = { lamp: { connector: 'K2', side: 'end', loop: 'live' } } as const;
    expect(ohms({ loads })).toEqual(
      near(4 * 0.002 + 0.1 + (1.7 * 2.85) / 4.55, 4 * 0.015 + 0.1 + (2.3 * 3.15) / 5.45),
    );
  });
  test('an adapter on its side holds the bar open', () => {
    const bar = { side: 'monitor', closes: 'unplugged', resistance: '0.3 Ω' };
    const connectors = { ...circuit.connectors, K2: { contact: '2..15 mΩ', 'shorting-bar': bar } };
    const place = { connector: 'K2', side: 'monitor', loop: 'live' } as const;
    const on = (load: string) =>
      ohms({ connectors: { K2: 'unplugged' }, loads: { [load]: place } }, { connectors });
    expect(on('plug')).toEqual(near(0.104 + 2.178, 0.13 + 2.222));
    expect(on('lamp')).toEqual(near(0.104 + (2.85 * 0.3) / 3.15, 0.13 + (3.15 * 0.3) / 3.45));
  });
  test('a bar bridges only the loop whose pins it names', () => {
    const barOn = (...pins: number[]) => {
      const bar = { side: 'end', closes: 'unlocked', resistance: '0.2..0.4 Ω', pins };
      return ohms(
        { connectors: { K2: 'unlocked' } },
        { connectors: { ...circuit.connectors, K2: { contact: '2..15 mΩ', 'shorting-bar': bar } } },
      );
    };
    expect(barOn(3, 4)).toEqual(ohms({}));
    expect(barOn(2, 1)).toEqual(ohms({ connectors: { K2: 'unlocked' } }));
  });
  test('copper by size: 1/58 Ω mm²/m at 20 °C (IEC 60028)', () => {
    const parts = { ...circuit.parts, cable: { kind: 'cable', wire: '0.5 mm²', length: '1.2 m' } };
    expect(ohms({}, { parts })).toEqual(near(0.008 + 2.4 / 29 + 1.7, 0.06 + 2.4 / 29 + 2.3));
  });
});

describe('no-difference', () => {
  const told = (step: object, ...behind: object[]) =>
    said('no-difference', [{ ignition: 'on' }, { ...step }, ...behind.map((one) => ({ ...one }))]);
  const after = { stop: 'Here.', id: 'after' };
  test('all outcomes lead to one step, by its id or as the next one', () => {
    expect(told({ read: 'live', outcomes: { within: 'next', else: 'next' } }, after)).toEqual([
      '- at 2 in 2',
    ]);
    expect(told({ read: 'live', outcomes: { within: 'next', else: 'after' } }, after)).toEqual([
      '- at 2 in 2',
    ]);
    expect(told({ inspect: 'Look.', outcomes: { ok: 'after', defect: 'next' } }, after)).toEqual([
      '- at 2 in 2',
    ]);
    expect(told({ 'read-codes': 'unit', outcomes: { none: 'next', else: 'next' } })).toEqual(['- at 2 in 2']);
  });
  test('one leads elsewhere, one is missing, or none is stated', () => {
    const far = [{ ignition: 'off' }, after];
    expect(told({ read: 'live', outcomes: { within: 'next', else: 'after' } }, ...far)).toEqual([]);
    expect(told({ read: 'live', outcomes: { within: 'next' } }, after)).toEqual([]);
    expect(told({ read: 'live' }, after)).toEqual([]);
  });
  test('of a list all outcomes of all loops', () => {
    const list = (to: string) => ({ read: ['live', 'dull'], outcomes: { live: { open: to }, else: 'next' } });
    expect(told(list('next'), after)).toEqual(['- at 2 in 2']);
    expect(told(list('after'), { ignition: 'off' }, after)).toEqual([]);
  });
});

describe('uncovered', () => {
  const read = (step: object, changes: Changes = {}) =>
    said('uncovered', [{ ignition: 'on' }, { ...step }], changes).length === 1;
  const outcomes = (...names: string[]) => Object.fromEntries(names.map((name) => [name, 'next']));
  const unit = circuit.instruments.unit ?? {};
  test('below, within, above and open are to be named', () => {
    expect(read({ read: 'live', outcomes: outcomes('within', 'below', 'above', 'open') })).toBe(false);
    for (const left of ['within', 'below', 'above', 'open']) {
      const named = ['within', 'below', 'above', 'open'].filter((name) => name !== left);
      expect(read({ read: 'live', outcomes: outcomes(...named) })).toBe(true);
      expect(read({ read: 'live', outcomes: outcomes(...named, 'else') })).toBe(false);
    }
    expect(read({ read: 'live', outcomes: outcomes('within', 'outside') })).toBe(false);
    expect(read({ read: 'live', outcomes: outcomes('outside') })).toBe(true);
    expect(read({ read: 'live' })).toBe(false);
  });
  test('leak only where the monitor looks for it', () => {
    const instruments = { unit: { ...unit, leak: 'below 5 kΩ' } };
    expect(
      read({ read: 'live', outcomes: outcomes('within', 'below', 'above', 'open') }, { instruments }),
    ).toBe(true);
    expect(
      read({ read: 'live', outcomes: outcomes('within', 'below', 'above', 'open', 'leak') }, { instruments }),
    ).toBe(false);
  });
  test('what the instrument cannot show need not be named', () => {
    expect(read({ read: 'live', expect: '0..3 Ω', outcomes: outcomes('within', 'above', 'open') })).toBe(
      false,
    );
    expect(read({ read: 'live', expect: '1..10 Ω', outcomes: outcomes('within', 'below', 'open') })).toBe(
      false,
    );
    expect(read({ read: 'live', expect: 'above 1 Ω', outcomes: outcomes('within', 'below') })).toBe(false);
    expect(read({ read: 'live', expect: 'open', outcomes: outcomes('within', 'below') })).toBe(false);
    expect(read({ read: 'live', expect: 'open', outcomes: outcomes('within') })).toBe(true);
    expect(read({ read: 'live', expect: 'below 3 Ω', outcomes: outcomes('within', 'above', 'open') })).toBe(
      false,
    );
  });
  test('a loop that reads open on its only bench requires within and below', () => {
    const steps = (...names: string[]) => [
      ...dead,
      { unplug: 'K1' },
      { read: 'live', outcomes: outcomes(...names) },
    ];
    expect(said('uncovered', steps('within', 'below'))).toEqual([]);
    expect(said('uncovered', steps('within'))).toEqual(['- at 4 in 4']);
  });
  test('a sound circuit that may read open makes open part of within', () => {
    const loads = { lamp: { kind: 'lamp', resistance: '9.5..9.9 Ω' } };
    const steps = (...names: string[]) => [
      { unplug: 'K2' },
      { fit: 'lamp', at: 'K2.monitor' },
      { read: 'live', outcomes: outcomes(...names) },
    ];
    expect(said('uncovered', steps('within', 'below'), { loads })).toEqual([]);
    expect(said('uncovered', steps('within', 'above'), { loads })).toEqual(['- at 3 in 3']);
  });
  test('a list is covered by else, by all classes of one loop, or by within and all other classes of each', () => {
    const list = (of: object) => read({ read: ['live', 'dull'], outcomes: of });
    const others = outcomes('below', 'above', 'open');
    expect(list({ within: 'next' })).toBe(true);
    expect(list({ within: 'next', else: 'next' })).toBe(false);
    expect(list({ live: others, within: 'next' })).toBe(true);
    expect(list({ live: others, dull: { outside: 'next' }, within: 'next' })).toBe(false);
    expect(list({ live: others, dull: others })).toBe(true);
    expect(list({ live: { ...others, within: 'next' } })).toBe(false);
  });
  test('codes and inspections', () => {
    expect(read({ 'read-codes': 'unit', outcomes: outcomes('none', 'stored') })).toBe(true);
    expect(read({ 'read-codes': 'unit', outcomes: outcomes('none', 'stored', 'present') })).toBe(false);
    expect(read({ inspect: 'Look.', outcomes: outcomes('ok') })).toBe(true);
    expect(read({ inspect: 'Look.', outcomes: outcomes('ok', 'else') })).toBe(false);
  });
});

describe('codes foretold', () => {
  const at = (number: number, steps: readonly Record<string, unknown>[], changes: Changes = {}) =>
    (codesForetold(sample(steps, changes)).get(number) ?? []).map(
      ({ loop, code, certain }) => `${loop} ${code} ${certain ? 'certain' : 'possible'}`,
    );
  test('none as built, open when unplugged, too low when the bar closes', () => {
    expect(at(1, [{ ignition: 'on' }])).toEqual([]);
    expect(at(2, [{ unplug: 'K1' }, { ignition: 'on' }])).toEqual(['live open certain']);
    // at most (0.341 + 0.160) · 1.03 + 0.1 = 0.615 Ω, below 1.0 Ω
    expect(at(2, [{ unlock: 'K2' }, { ignition: 'on' }])).toEqual(['live too-low certain']);
  });
  test('only where the monitor looks and is powered', () => {
    const steps = [
      { unplug: 'K1' },
      { ignition: 'on' },
      { wait: '1 s' },
      { read: 'dull' },
      { ignition: 'off' },
      { read: 'dull' },
    ];
    expect(at(3, steps)).toEqual([]);
    expect(at(4, steps)).toEqual(['live open certain']);
    expect(at(5, steps)).toEqual([]);
    expect(at(6, steps)).toEqual([]);
  });
  test('possible where the limit lies inside what can be shown, or only some benches set it', () => {
    // as built the loop shows 1.654..2.634 Ω
    const limit = (codes: object) => ({ instruments: { unit: { ...circuit.instruments.unit, codes } } });
    expect(at(1, [{ ignition: 'on' }], limit({ 'too-high': 'above 2.63 Ω' }))).toEqual([
      'live too-high possible',
    ]);
    expect(at(1, [{ ignition: 'on' }], limit({ 'too-high': 'above 2.64 Ω' }))).toEqual([]);
    expect(at(1, [{ ignition: 'on' }], limit({ 'too-low': 'below 1.66 Ω' }))).toEqual([
      'live too-low possible',
    ]);
    const branch = [
      { 'read-codes': 'unit', outcomes: { none: 'power', else: 'next' } },
      { unplug: 'K1' },
      { ignition: 'on', id: 'power' },
    ];
    expect(at(3, branch)).toEqual(['live open possible']);
  });
  test('beyond the range it is open, not too high', () => {
    const loads = { lamp: { kind: 'lamp', resistance: '20 Ω' } };
    const steps = [{ unplug: 'K2' }, { fit: 'lamp', at: 'K2.monitor' }, { ignition: 'on' }];
    expect(at(3, steps, { loads })).toEqual(['live open certain']);
    // (9.5 + 0.104) · 0.97 - 0.1 = 9.216 is a number, (9.9 + 0.13) · 1.03 + 0.1 = 10.431 is beyond 10 Ω
    const across = { lamp: { kind: 'lamp', resistance: '9.5..9.9 Ω' } };
    expect(at(3, steps, { loads: across })).toEqual(['live open possible', 'live too-high possible']);
    // (8.2 .. 8.8 + 0.1) · 1.03 + 0.1 reaches beyond no range of 10 Ω
    expect(at(3, steps, { loads: { lamp: { kind: 'lamp', resistance: '8.2..8.8 Ω' } } })).toEqual([
      'live too-high certain',
    ]);
  });
});

test('differences are told by rule, step, subject and length', () => {
  const one = { rule: 'live-touch', step: 3, subject: 'K1', shortest: 3 };
  expect(compare([one], [one])).toEqual([]);
  expect(compare([one], [{ ...one, shortest: null }])).toEqual([]);
  expect(compare([one], [{ ...one, shortest: 2 }])).toEqual([
    'live-touch of K1 at step 3: engine 3 steps, oracle 2',
  ]);
  expect(compare([one, one], [one])).toEqual(['engine twice: live-touch of K1 at step 3']);
  expect(compare([one], [{ ...one, subject: 'K2' }])).toEqual([
    'engine only: live-touch of K1 at step 3 (3 steps)',
    'oracle only: live-touch of K2 at step 3 (3 steps)',
  ]);
});

test('differences of codes and windows', () => {
  const procedure = sample([
    { unplug: 'K1' },
    { ignition: 'on' },
    { read: 'dull' },
    { stop: 'Here.' },
    { read: 'live' },
  ]);
  const code = { step: 2, loop: 'live', code: 'open', certain: true };
  // dull shows (2.004 · 0.97 - 0.1) .. (2.430 · 1.03 + 0.1) = 1.84388 .. 2.6029
  const window = { step: 3, loop: 'dull', accepted: { least: 1.84, most: 2.61 } };
  expect(codeDifference([code, { ...code, step: 3, certain: false }], procedure)).toEqual([
    'engine only: possible code of live at step 3: open',
    'oracle only: certain code of live at step 3: open',
  ]);
  expect(codeDifference([code, { ...code, step: 3 }], procedure)).toEqual([]);
  expect(windowDifference([window], procedure)).toEqual([]);
  expect(windowDifference([{ ...window, accepted: 'open' }], procedure)).toEqual([
    'engine only: window of dull at step 3: open',
    'oracle only: window of dull at step 3: 1.84..2.61',
  ]);
});

import { describe, expect, test } from 'vitest';
import { circuit, said } from './sample.ts';
import type { Changes } from './sample.ts';

/* What the oracle takes for verified, worked out by hand. */

describe('verification', () => {
  const verified = { read: 'live', outcomes: { within: 'next', else: 'out' } };
  const out = { stop: 'Here.', id: 'out', leaves: ['codes', 'repair'] };
  const done = { stop: 'Done.', leaves: ['codes'] };
  test('a repair is verified by a reading that contains it and comes out within', () => {
    const after = (...steps: object[]) =>
      said('repair-not-verified', [{ replace: 'cable' }, ...steps.map((step) => ({ ...step })), done, out]);
    expect(after()).toEqual(['cable at 2 in 2']);
    expect(after(verified)).toEqual([]);
    expect(after({ read: 'live' })).toEqual(['cable at 3 in 3']);
    expect(after({ ...verified, read: 'dull' })).toEqual(['cable at 3 in 3']);
    expect(after({ read: 'live', outcomes: { within: 'next', above: 'next', else: 'out' } })).toEqual([
      'cable at 3 in 3',
    ]);
    expect(after({ unlock: 'K1' }, verified)).toEqual(['cable at 4 in 4']);
    expect(after({ fit: 'lamp', at: 'K1.end' }, verified)).toEqual(['cable at 4 in 4']);
  });
  test('else is what is left over: it verifies where every other class is named', () => {
    const by = (outcomes: object, changes: Changes = {}) =>
      said('repair-not-verified', [{ replace: 'cable' }, { read: 'live', outcomes }, done, out], changes);
    const each = { below: 'out', above: 'out', open: 'out' };
    expect(by({ outside: 'out', else: 'next' })).toEqual([]);
    expect(by({ ...each, else: 'next' })).toEqual([]);
    expect(by({ below: 'out', above: 'out', else: 'next' })).toEqual(['cable at 3 in 3']);
    const unit = { ...circuit.instruments.unit, leak: 'below 5 kΩ' };
    expect(by({ ...each, else: 'next' }, { instruments: { unit } })).toEqual(['cable at 3 in 3']);
    expect(by({ ...each, leak: 'out', else: 'next' }, { instruments: { unit } })).toEqual([]);
  });
  test('of a list else says it of each loop of which every other class is named', () => {
    const by = (outcomes: object, replace: string) =>
      said('repair-not-verified', [{ replace }, { read: ['live', 'dull'], outcomes }, done, out]);
    const one = { live: { outside: 'out' }, else: 'next' };
    expect(by(one, 'cable')).toEqual([]);
    expect(by(one, 'inert')).toEqual(['inert at 3 in 3']);
    expect(by({ ...one, dull: { outside: 'out' } }, 'inert')).toEqual([]);
    expect(by({ live: { within: 'next' }, else: 'out' }, 'cable')).toEqual([]);
  });
  test('a monitor is verified by any of its loops', () => {
    expect(
      said('repair-not-verified', [{ replace: 'unit' }, { ...verified, read: 'dull' }, done, out]),
    ).toEqual([]);
  });
  test('of a list, within verifies all, and within of one loop that loop', () => {
    const list = (outcomes: object) =>
      said('repair-not-verified', [
        { replace: ['cable', 'inert'] },
        { read: ['live', 'dull'], outcomes },
        done,
        out,
      ]);
    expect(list({ within: 'next', else: 'out' })).toEqual([]);
    expect(list({ live: { within: 'next' }, else: 'out' })).toEqual(['inert at 3 in 3']);
  });
  test('a loop that was opened needs a verifying reading', () => {
    const after = (...steps: object[]) =>
      said('loop-not-verified', [
        { unplug: 'K1' },
        { plug: 'K1' },
        ...steps.map((step) => ({ ...step })),
        done,
        out,
      ]);
    expect(after()).toEqual(['live at 3 in 3']);
    expect(after(verified)).toEqual([]);
    expect(after({ ...verified, read: 'dull' })).toEqual(['live at 4 in 4']);
    expect(said('loop-not-verified', [{ unplug: 'K1' }, { stop: 'Here.', leaves: ['K1'] }])).toEqual([]);
    expect(said('loop-not-verified', [{ unplug: 'K1' }, { stop: 'Here.', leaves: ['live'] }])).toEqual([]);
    expect(said('loop-not-verified', [{ unplug: 'K1' }])).toEqual(['live at 1 in 1']);
  });
});

import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';

/* A monitor that looks for leaks reads a loop of which a path leads to ground or to a supply. */

function readWith(network: string, leak = 'leak: below 5 kΩ') {
  const text = `format: 1
title: A loop with a leak
sources: { battery: { kind: battery, voltage: 12 V, feeds: [unit] } }
instruments: { unit: { kind: monitor, range: 0..10 Ω, accuracy: 1 %, resolution: 0.01 Ω, ${leak} } }
parts:
  lamp: { kind: lamp, resistance: 3.0 Ω ± 5 % }
  dirt: { kind: resistor, resistance: 3 kΩ ± 10 % }
  mud: { kind: resistor, resistance: 3 kΩ ± 10 % }
connectors: { K1: { contact: 2..15 mΩ } }
loops: { lit: { path: [unit, K1, lamp] } }
${network}steps:
  - ignition: on
  - read-codes: unit
  - clear-codes: unit
  - read: lit
`;
  const analysis = analyse(snapshotOf([{ id: 'leak.procedure.yaml', text }]), 'leak.procedure.yaml');
  const { readings, codes } = finish(analysis.windows()).value;
  return {
    leak: readings[0]?.good[0]?.leak,
    printed: readings[0]?.printed,
    codes: codes
      .filter(({ index }) => index === 3)
      .flatMap((one) => one.codes.map(({ code, certain }) => ({ code, certain }))),
    rules: finish(analysis.findings('order')).map(({ rule }) => rule),
  };
}

const toGround = 'network: [{ part: dirt, between: [K1.end.1, ground] }]\n';

describe('a path to ground', () => {
  test('below the limit of the monitor is reported as a leak, for certain', () => {
    const read = readWith(toGround);
    expect(read.leak).toBe('always');
    expect(read.codes).toEqual([{ code: 'leak', certain: true }]);
    expect(read.rules).toContain('window-undefined');
  });

  test('around the limit may be reported', () => {
    // 2.7 to 3.3 kΩ, and a little of the loop, on either side of 3 kΩ.
    const read = readWith(toGround, 'leak: below 3 kΩ');
    expect(read.leak).toBe('sometimes');
    expect(read.codes).toEqual([{ code: 'leak', certain: false }]);
    expect(read.rules).not.toContain('window-undefined');
  });

  test('above it, or to a monitor that does not look, is none', () => {
    expect(readWith(toGround, 'leak: below 2 kΩ').leak).toBe('never');
    expect(readWith(toGround, 'codes: { too-low: below 1 Ω }').leak).toBe('never');
  });

  test('from both wires counts as both side by side: 1.5 kΩ of twice 3 kΩ', () => {
    const both = `network:
  - { part: dirt, between: [K1.end.1, ground] }
  - { part: mud, between: [K1.end.2, ground] }
`;
    expect(readWith(both, 'leak: below 2 kΩ').leak).toBe('always');
    expect(readWith(both, 'leak: below 1.3 kΩ').leak).toBe('never');
  });
});

test('a path to a supply is a leak like one to ground', () => {
  const read = readWith(
    'network:\n  - { source: battery, between: [plus, ground] }\n  - { part: dirt, between: [K1.end.1, plus] }\n',
  );
  expect(read.leak).toBe('always');
});

test('without a leak nothing is reported, and a window is printed', () => {
  const read = readWith('');
  expect(read).toMatchObject({ leak: 'never', codes: [], rules: [] });
  // 2.85 to 3.15 Ω and twice 2..15 mΩ, 1 % of it, in steps of 0.01 Ω.
  expect(read.printed).toBe('2.82..3.22 Ω');
});

import { describe, expect, test } from 'vitest';
import type { Network } from '../../server/src/circuit/circuit.ts';
import { networkWindow } from '../../server/src/circuit/circuit.ts';
import { temperatureFactor } from '../../server/src/circuit/materials.ts';
import type { Span } from '../../server/src/quantity/quantity.ts';
import { parseSpan } from '../../server/src/quantity/quantity.ts';
import { analysed } from '../readings/analysed.ts';
import { expectPrinted } from './printed.ts';

function read(text: string): Span {
  const span = parseSpan(text, 'resistance');
  if (!span.ok) throw new Error(span.message);
  return span.value;
}

function windowOf(arrangement: 'series' | 'parallel', ...texts: readonly string[]): Span {
  const network: Network = texts.map((text, index) => ({
    id: `part-${index}`,
    between:
      arrangement === 'parallel'
        ? ['0', 'end']
        : [`${index}`, index === texts.length - 1 ? 'end' : `${index + 1}`],
    part: { kind: 'stated', resistance: read(text) },
  }));
  const ambient = { least: 20, nominal: 20, most: 20 };
  const { value } = networkWindow(network, '0', 'end', { ambient, entered: new Map() });
  if (value === 'open') throw new Error('open');
  return value;
}

function expectWindow({ least, nominal, most }: Span, printed: readonly [string, string, string]): void {
  expectPrinted(least, printed[0]);
  expectPrinted(nominal, printed[1]);
  expectPrinted(most, printed[2]);
}

describe('equal tolerances side by side stay what they are; textbooks print 25 % and 3 % by the product rule', () => {
  test('200, 100 and 50 Ω, all ± 5 %: 28.571 Ω, 27.143 to 30.000', () => {
    expectWindow(windowOf('parallel', '200 Ω ± 5 %', '100 Ω ± 5 %', '50 Ω ± 5 %'), [
      '27.143',
      '28.571',
      '30.000',
    ]);
  });

  test('1 kΩ and 500 Ω, both ± 1 %: 333.33 Ω, 330.00 to 336.67', () => {
    expectWindow(windowOf('parallel', '1 kΩ ± 1 %', '500 Ω ± 1 %'), ['330.00', '333.33', '336.67']);
  });
});

test('LIN, pull-up of a commander, 1 kΩ: two of 2 kΩ ± 1 % side by side (transceiver note SLLA383) are 990 to 1010 Ω', () => {
  expectWindow(windowOf('parallel', '2 kΩ ± 1 %', '2 kΩ ± 1 %'), ['990', '1000', '1010']);
});

test('two equal resistors of ± 5 % side by side are ± 5 %; interval arithmetic on R1 R2 / (R1 + R2) gives ± 15 %', () => {
  const { least, nominal, most } = windowOf('parallel', '100 Ω ± 5 %', '100 Ω ± 5 %');
  expect([least, nominal, most]).toEqual([
    expect.closeTo(47.5, 12),
    expect.closeTo(50, 12),
    expect.closeTo(52.5, 12),
  ]);
  // As if numerator and denominator had nothing to do with each other.
  const naive = [(95 * 95) / (105 + 105), (105 * 105) / (95 + 95)] as const;
  expect(naive[0] / 50 - 1).toBeCloseTo(-0.14, 2);
  expect(naive[1] / 50 - 1).toBeCloseTo(0.16, 2);
  expect((most - least) / (naive[1] - naive[0])).toBeLessThan(1 / 3 + 0.01);
});

describe('in series worst cases add', () => {
  test('ten equal parts of ± 0.1 together ± 1.0', () => {
    const parts = Array.from({ length: 10 }, () => '1.0 Ω ± 0.1 Ω');
    expectWindow(windowOf('series', ...parts), ['9.0', '10.0', '11.0']);
  });

  test('Rajput, Electronic Measurements, chapter 1: 0.3, 1.4 and 0.9 % of like parts are 2.6 % of one at worst', () => {
    const { least, most } = windowOf('series', '100 Ω ± 0.3 %', '100 Ω ± 1.4 %', '100 Ω ± 0.9 %');
    expectPrinted(300 - least, '2.6');
    expectPrinted(most - 300, '2.6');
  });

  test('470 + 470 Ω ± 1 %: 930.6 to 949.4 Ω, not the 925.9 to 954.1 that a calculator page prints', () => {
    expectWindow(windowOf('series', '470 Ω ± 1 %', '470 Ω ± 1 %'), ['930.6', '940.0', '949.4']);
  });
});

test('copper part of a library example, 1 Ω at 20 °C and 0.0039 per kelvin: 1.0312 Ω at 28 °C (computed)', () => {
  expectPrinted(temperatureFactor(0.0039, 20, 28), '1.0312');
});

test('a wire of 5 Ω at 20 °C and 0.004 per kelvin is 5.2 Ω at 30 °C (worked example)', () => {
  expectPrinted(5 * temperatureFactor(0.004, 20, 30), '5.2');
});

describe('NASA standard initiator, 1.05 ± 0.1 Ω (NTRS 20130009741)', () => {
  test('as it is written in a file', () => {
    expect(read('1.05 ± 0.1 Ω')).toEqual({ least: 0.95, nominal: 1.05, most: 1.15 });
  });

  test('reads 0.95..1.15 Ω on a monitor without an error of its own', () => {
    const { readings } = analysed(`format: 1
title: An initiator at its monitor
sources: { battery: { kind: battery, voltage: 12 V, feeds: [unit], wait: 1 min } }
instruments: { unit: { kind: monitor, range: 0..10 Ω, accuracy: 0 Ω, resolution: 0.01 Ω } }
parts: { stage: { kind: initiator, resistance: 1.05 ± 0.1 Ω, live: true } }
loops: { loop: { path: [unit, stage] } }
steps:
  - ignition: on
  - read: loop
`);
    expect(readings.readings.map(({ printed }) => printed)).toEqual(['0.95..1.15 Ω']);
  });
});

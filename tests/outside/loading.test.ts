import { describe, expect, test } from 'vitest';
import {
  indicateSigned,
  inputOf,
  leakSeen,
  leakWindow,
  networkWindow,
} from '../../server/src/circuit/circuit.ts';
import type { Element, Source, Voltmeter } from '../../server/src/circuit/circuit.ts';
import { exact, resistor, room, source, volts } from './elements.ts';
import { expectPrinted } from './printed.ts';
import { solved } from './solved.ts';

describe('instruments load what they read', () => {
  test('100 V and 5 mA by a meter of 150 kΩ: 20 kΩ apparent, 23.077 kΩ true (worked example)', () => {
    // 20 kΩ is what the unknown and the meter are together: 1 kΩ a volt on the 150 V range.
    const unknown = 23_077;
    const meter = {
      input: exact(150_000),
      range: exact(150),
      accuracy: { fraction: 0, constant: 0, digits: 0 },
      resolution: 0.1,
    };
    const { value: apparent } = networkWindow(
      [resistor('unknown', 'a', 'b', unknown), inputOf(meter, 'a', 'b')],
      'a',
      'b',
      room,
    );
    expectPrinted(apparent === 'open' ? NaN : apparent.nominal / 1000, '20.000');
    expectPrinted(apparent === 'open' ? NaN : 100 * (1 - apparent.nominal / unknown), '13.33');
  });

  test('Kalsi: 80 V and 10 mA by the same meter: 8 kΩ apparent, 8.45 kΩ true', () => {
    const meter = resistor('meter', 'a', 'b', 150_000);
    const { value: apparent } = networkWindow([resistor('unknown', 'a', 'b', 8450), meter], 'a', 'b', room);
    expectPrinted(apparent === 'open' ? NaN : apparent.nominal / 1000, '8.0');
    expectPrinted(apparent === 'open' ? NaN : 100 * (1 - apparent.nominal / 8450), '5.3');
  });

  test('Bird, chapter 10: an ammeter of 50 Ω makes 18.18 mA out of the 20 mA of 10 V in 500 Ω', () => {
    const circuit = [resistor('load', 'plus', 'a', 500), resistor('ammeter', 'a', 'minus', 50)];
    const { amperes, delivered } = solved(circuit, [source(10)], 'minus', room);
    expectPrinted(1000 * (amperes[1] ?? NaN), '18.18');
    expectPrinted(1000 * (delivered[0] ?? NaN), '18.18');
    expectPrinted(
      1000 *
        (solved([resistor('load', 'plus', 'minus', 500)], [source(10)], 'minus', room).amperes[0] ?? NaN),
      '20.00',
    );
  });

  test('Patranabis, chapter 10: insulation of 1 GΩ shunted by 20 GΩ reads 4.76 % low, by 2 GΩ 33.3 % low', () => {
    for (const [shunt, printed] of [
      [2e10, '4.76'],
      [2e9, '33.33'],
    ] as const) {
      const { value: both } = networkWindow(
        [resistor('insulation', 'a', 'b', 1e9), resistor('shunt', 'a', 'b', shunt)],
        'a',
        'b',
        room,
      );
      expectPrinted(100 * (1 - (both === 'open' ? NaN : both.nominal) / 1e9), printed);
    }
  });
});

describe('series and parallel with a source, Bird, chapter 5', () => {
  test('12 V over 4 + 9 + 11 Ω: 0.5 A, 4.5 V across the 9 Ω, 2.75 W in the 11 Ω', () => {
    const chain = [
      resistor('a', 'plus', 'x', 4),
      resistor('b', 'x', 'y', 9),
      resistor('c', 'y', 'minus', 11),
    ];
    const { volts: potentials, amperes } = solved(chain, [source(12)], 'minus', room);
    expect(amperes.map((one) => Number(one.toFixed(12)))).toEqual([0.5, 0.5, 0.5]);
    expect((potentials.get('x') ?? NaN) - (potentials.get('y') ?? NaN)).toBeCloseTo(4.5, 12);
    expect(11 * (amperes[2] ?? NaN) ** 2).toBeCloseTo(2.75, 12);
  });

  test('50 V over 4 + 6 Ω: 30 V across the 6 Ω', () => {
    expect(
      volts([resistor('a', 'plus', 'x', 4), resistor('b', 'x', 'minus', 6)], source(50), 'x', 'minus'),
    ).toBeCloseTo(30, 12);
  });

  test('12 V over 3 Ω beside 6 Ω: 4 A in the 3 Ω', () => {
    const pair = [resistor('three', 'plus', 'minus', 3), resistor('six', 'plus', 'minus', 6)];
    expect(solved(pair, [source(12)], 'minus', room).amperes[0]).toBeCloseTo(4, 12);
  });

  test('8 A in 5 Ω and 11 A in all, beside 20 Ω: 2 A in the 20 Ω, and the third is 40 Ω', () => {
    const three = [5, 40, 20].map((ohms) => resistor(`of-${ohms}`, 'plus', 'minus', ohms));
    const { amperes, delivered } = solved(three, [source(8 * 5)], 'minus', room);
    for (const [at, ampere] of [8, 1, 2].entries()) expect(amperes[at]).toBeCloseTo(ampere, 12);
    expect(delivered[0]).toBeCloseTo(11, 12);
  });

  test('with what hangs in the air named, and sources that cannot be so left out', () => {
    const circuit = [resistor('load', 'plus', 'minus', 5), resistor('lost', 'x', 'y', 5)];
    const second: Source = { ...source(9), id: 'second' };
    const { floating, conflicts, delivered } = solved(circuit, [source(10), second], 'minus', room);
    expect(floating).toEqual(['x', 'y']);
    expect(conflicts).toEqual(['second']);
    expect(delivered).toEqual([2, 0]);
  });
});

describe('worked examples of meter makers for voltages, ± (percent of reading + digits)', () => {
  test.each([
    [100, '97.8', '102.2', 0.02, 2, 0.1],
    [-100, '-102.2', '-97.8', 0.02, 2, 0.1],
    [2, '1.9964', '2.0036', 0.0008, 2, 0.001],
  ] as const)('%d V: %s to %s V', (reading, least, most, fraction, digits, resolution) => {
    const meter: Voltmeter = {
      range: { least: 0, nominal: 300, most: 600 },
      accuracy: { fraction, constant: 0, digits },
      resolution,
      input: exact(10e6),
    };
    const { value, canBeOpen } = indicateSigned(exact(reading), meter);
    expect(canBeOpen).toBe(false);
    expect(value?.least).toBeCloseTo(Number(least), 12);
    expect(value?.most).toBeCloseTo(Number(most), 12);
    expect(indicateSigned(exact(700), meter)).toEqual({ value: null, canBeOpen: true });
    expect(indicateSigned(exact(-700), meter)).toEqual({ value: null, canBeOpen: true });
    expect(indicateSigned(exact(600), meter).canBeOpen).toBe(true);
  });
});

describe('leaks as a monitor sees them', () => {
  // A loop of 2 Ω with 8 kΩ from its one end to ground and 8 kΩ from its other to the battery's plus.
  const loop = [
    resistor('stage', 'one', 'two', 2),
    resistor('to-ground', 'one', 'ground', 8000),
    resistor('to-supply', 'two', 'plus', 8000),
  ];

  test('all paths to ground and supplies count side by side', () => {
    const ofGround = leakWindow(loop, ['one', 'two'], ['ground'], room);
    expect(ofGround).toEqual({ least: 8000, nominal: 8000, most: 8000 });
    const all = leakWindow(loop, ['one', 'two'], ['ground', 'plus'], room);
    expect(all === 'open' ? NaN : all.nominal).toBeCloseTo(4000, 9);
    expect(leakSeen(all, 5000)).toBe('always');
    expect(leakSeen(ofGround, 5000)).toBe('never');
  });

  test('are seen on some circuits where the path lies on both sides of the limit, and on none without a path', () => {
    const path: Element = {
      id: 'moist',
      between: ['one', 'ground'],
      part: { kind: 'stated', resistance: { least: 3000, nominal: 6000, most: 9000 } },
    };
    expect(leakSeen(leakWindow([path], ['one', 'two'], ['ground'], room), 5000)).toBe('sometimes');
    expect(leakWindow(loop.slice(0, 1), ['one', 'two'], ['ground', 'plus'], room)).toBe('open');
    expect(leakWindow(loop, ['one', 'two'], [], room)).toBe('open');
    expect(leakSeen('open', 5000)).toBe('never');
  });

  test('UN R100, annex on isolation: 100 Ω per volt at 400 V is 40 kΩ; 1 MΩ from each rail to the body is far above (computed)', () => {
    const rails = [
      resistor('plus-body', 'hv-plus', 'body', 1e6),
      resistor('minus-body', 'hv-minus', 'body', 1e6),
    ];
    const both = leakWindow(rails, ['hv-plus', 'hv-minus'], ['body'], room);
    expect(both === 'open' ? NaN : both.nominal).toBeCloseTo(5e5, 6);
    expect(leakSeen(both, 100 * 400)).toBe('never');
    // 500 Ω per volt, of an AC bus.
    expect(leakSeen(both, 500 * 400)).toBe('never');
    expect(leakSeen(both, 500e3 + 1)).toBe('always');
  });
});

describe('bus isolation by three voltages (UN R100 and FMVSS 305, formula from memory)', () => {
  test('400 V, 1 MΩ from each rail to the body, 200 kΩ put in: 200 V and 57.142857 V, which give 1.000 MΩ', () => {
    const bus: Source = { id: 'bus', between: ['plus', 'minus'], kind: 'voltage', value: exact(400) };
    const rails = [resistor('plus-body', 'plus', 'body', 1e6), resistor('minus-body', 'body', 'minus', 1e6)];
    const before = volts(rails, bus, 'plus', 'body');
    const after = volts([...rails, resistor('put-in', 'plus', 'body', 2e5)], bus, 'plus', 'body');
    expect(before).toBeCloseTo(200, 9);
    expectPrinted(after, '57.142857');
    expect(2e5 * (400 / after - 400 / before)).toBeCloseTo(1e6, 3);
  });
});

import fc from 'fast-check';
import { expect, test, describe } from 'vitest';
import { filamentResistance, litVoltageBetween, voltageWindow } from '../../server/src/circuit/circuit.ts';
import type { Element, Source } from '../../server/src/circuit/circuit.ts';
import { decades } from '../circuit/arbitrary-networks.ts';
import { describeWith } from '../needs.ts';
import { lacksNgspice, runDeck } from './ngspice.ts';

const celsius = { least: 20, nominal: 20, most: 20 };
const ranges = { ambient: celsius, entered: new Map() };

const resistor = (id: string, a: string, b: string, least: number, most = least): Element => ({
  id,
  between: [a, b],
  part: { kind: 'stated', resistance: { least, nominal: (least + most) / 2, most } },
});

const lamp = (id: string, a: string, b: string, volts: number, watts: number): Element => ({
  id,
  between: [a, b],
  part: { kind: 'lamp-rating', volts, watts },
});

const source = (least: number, most = least): Source => ({
  id: 'battery',
  between: ['plus', 'ground'],
  kind: 'voltage',
  value: { least, nominal: (least + most) / 2, most },
});

describe('a filament under power', () => {
  test('has volts squared by watts as rated, give or take a tenth of the watts', () => {
    const { least, nominal, most } = filamentResistance({ volts: 12, watts: 21 }, 12);
    expect(nominal).toBeCloseTo(144 / 21, 12);
    expect(144 / least).toBeCloseTo(21 * 1.1, 10);
    expect(144 / most).toBeCloseTo(21 * 0.9, 10);
  });

  test.each([
    ['21 W', 21, 26.5],
    ['5 W', 5, 6.6],
  ])(
    'UN Regulation 37, sheet PY21/5W: a 12 V filament of %s takes at most %d and %d W at 13.5 V',
    (_, watts, most) => {
      const { least } = filamentResistance({ volts: 12, watts }, 13.5);
      const { most: greatest } = filamentResistance({ volts: 12, watts }, 13.5);
      const ohms = 13.5 ** 2 / most;
      expect(ohms).toBeGreaterThan(least);
      expect(ohms).toBeLessThan(greatest);
    },
  );

  test.each([
    [1000, 4.41, 0.602],
    [1500, 7.19, 5.52],
    [2000, 10.03, 24.04],
  ])(
    'Jones and Langmuir (from memory): at %i K tungsten has %d times its resistance at 300 K and radiates %d W/cm²',
    (_, ratio, watts) => {
      // A lamp that is rated at 2500 K: 13.08 times, 69.8 W/cm².
      const volts = Math.sqrt((watts * ratio) / (69.8 * 13.08));
      const { least, most } = filamentResistance({ volts: 1, watts: 1 }, volts);
      expect(ratio / 13.08).toBeGreaterThan(least);
      expect(ratio / 13.08).toBeLessThan(most);
    },
  );

  test.each([400, 600, 800, 1000, 1500, 2000, 2500])(
    'at %i K, with up to a fifth of the heat going by the gas, it lies in the range of its voltage',
    (kelvin) => {
      // Heat as a sum of a term with the temperature and one with its 4.9th power; resistance with its 1.2th; 2700 K as rated.
      for (const byGas of [0, 0.1, 0.2]) {
        const ohms = (kelvin / 2700) ** 1.2;
        const heat = (byGas * (kelvin - 300)) / 2400 + (1 - byGas) * (kelvin / 2700) ** 4.9;
        const { least, most } = filamentResistance({ volts: 1, watts: 1 }, Math.sqrt(heat * ohms));
        expect(ohms).toBeGreaterThan(least);
        expect(ohms).toBeLessThan(most);
      }
    },
  );

  test('carries more current with more voltage, whichever of its limits it has', () => {
    const rated = { volts: 13.5, watts: 5 };
    let before = { least: 0, nominal: 0, most: 0 };
    for (let volts = 0.001; volts < 60; volts *= 1.01) {
      const ohms = filamentResistance(rated, volts);
      const now = { least: volts / ohms.most, nominal: volts / ohms.nominal, most: volts / ohms.least };
      for (const end of ['least', 'nominal', 'most'] as const) expect(now[end]).toBeGreaterThan(before[end]);
      expect(ohms).toEqual(filamentResistance(rated, -volts));
      before = now;
    }
  });
});

describe('a lamp circuit', () => {
  test('a sound one shows its lamp with almost all of the voltage, not with what it would take cold', () => {
    const wires = [
      resistor('feed', 'plus', 'top', 0.15, 0.25),
      resistor('return', 'bottom', 'ground', 0.05, 0.1),
    ];
    const window = voltageWindow(
      [...wires, lamp('lamp', 'top', 'bottom', 12, 21)],
      [source(12.6)],
      'top',
      'bottom',
      ranges,
    );
    if (window.kind !== 'number') throw new Error(window.kind);
    // By hand: 6.2 to 7.7 Ω of lamp (12 V ± 1 V, 21 W ± 10 %) beside 0.2 to 0.35 Ω of wire.
    expect(window.value.least).toBeGreaterThan((12.6 * 6.2) / 6.55);
    expect(window.value.most).toBeLessThan((12.6 * 7.8) / 8.0);
    expect(window.value.least).toBeLessThan(window.value.nominal);
    expect(window.value.nominal).toBeLessThan(window.value.most);
  });

  test('a lamp alone on its source has the voltage of the source, and that is no outer bound', () => {
    const window = voltageWindow(
      [lamp('lamp', 'plus', 'ground', 12, 21)],
      [source(12, 12.8)],
      'plus',
      'ground',
      ranges,
    );
    expect(window).toMatchObject({ value: { least: 12, most: 12.8 }, exact: true });
  });

  /** Where the current through a lamp of one law and a resistor is the same, found by bisection of the voltage. */
  const bisected = (volts: number, ohms: number, law: (across: number) => number): number => {
    let [low, high] = [0, volts];
    for (let round = 0; round < 200; round += 1) {
      const middle = (low + high) / 2;
      if (middle / law(middle) < (volts - middle) / ohms) low = middle;
      else high = middle;
    }
    return low;
  };

  test('of a lamp and a resistor the window ends where bisection finds the ends', () => {
    const rated = { volts: 12, watts: 5 };
    for (const ohms of [0.05, 1, 10, 100, 1000]) {
      const network = [
        resistor('wire', 'plus', 'top', ohms * 0.9, ohms * 1.1),
        lamp('lamp', 'top', 'ground', 12, 5),
      ];
      const window = voltageWindow(network, [source(12.6)], 'top', 'ground', ranges);
      if (window.kind !== 'number') throw new Error(window.kind);
      const least = bisected(12.6, ohms * 1.1, (across) => filamentResistance(rated, across).least);
      const most = bisected(12.6, ohms * 0.9, (across) => filamentResistance(rated, across).most);
      expect(window.value.least).toBeCloseTo(least, 6);
      expect(window.value.most).toBeCloseTo(most, 6);
      expect(window.value.nominal).toBeCloseTo(
        bisected(12.6, ohms, (across) => filamentResistance(rated, across).nominal),
        9,
      );
    }
  });

  test('no circuit within the limits leaves the window, and it is not much wider than they are', () => {
    const parts = [
      { a: 'plus', b: 'top', least: 0.05, most: 0.2 },
      { a: 'top', b: 'middle', least: 0.4, most: 0.5 },
      { a: 'bottom', b: 'ground', least: 0.01, most: 0.1 },
    ];
    const lamps = [
      { a: 'middle', b: 'bottom', volts: 12, watts: 21 },
      { a: 'top', b: 'bottom', volts: 12, watts: 5 },
      { a: 'plus', b: 'middle', volts: 24, watts: 5 },
    ];
    const network = [
      ...parts.map(({ a, b, least, most }, at) => resistor(`r${at}`, a, b, least, most)),
      ...lamps.map(({ a, b, volts, watts }, at) => lamp(`l${at}`, a, b, volts, watts)),
    ];
    const nodes = ['ground', 'plus', 'top', 'middle', 'bottom'];
    const number = (node: string): number => nodes.indexOf(node);
    for (const [from, to] of [
      ['bottom', 'ground'],
      ['middle', 'bottom'],
      ['plus', 'middle'],
    ] as const) {
      const window = voltageWindow(network, [source(11.8, 14.5)], from, to, ranges);
      if (window.kind !== 'number') throw new Error(window.kind);
      const { least, most } = window.value;
      let [lowest, highest] = [Infinity, -Infinity];
      const part = fc.oneof(fc.constant(0), fc.constant(1), fc.double({ min: 0, max: 1, noNaN: true }));
      for (const places of fc.sample(fc.array(part, { minLength: 7, maxLength: 7 }), {
        numRuns: 1500,
        seed: 7,
      })) {
        const between = (low: number, high: number, at: number): number =>
          low + (high - low) * (places[at] ?? 0);
        const edges = [
          ...parts.map(({ a, b, least: low, most: high }, at) => ({
            a: number(a),
            b: number(b),
            ohms: between(low, high, at),
          })),
          ...lamps.map(({ a, b }) => ({ a: number(a), b: number(b), ohms: 1 })),
        ];
        const lit = lamps.map((rated, at) => ({
          at: parts.length + at,
          ohms: (volts: number) => {
            const span = filamentResistance(rated, volts);
            return between(span.least, span.most, parts.length + at);
          },
        }));
        const drives = [{ a: 1, b: 0, kind: 'voltage' as const, value: between(11.8, 14.5, 6) }];
        const volts = litVoltageBetween(edges, lit, drives, nodes.length, number(from), number(to));
        [lowest, highest] = [Math.min(lowest, volts), Math.max(highest, volts)];
      }
      expect(lowest).toBeGreaterThanOrEqual(least);
      expect(highest).toBeLessThanOrEqual(most);
      expect(most - least).toBeLessThan(1.25 * (highest - lowest));
    }
  });
});

describeWith(lacksNgspice, '300 ladders of resistors and lamps, in one deck', () => {
  const rung = fc.record({
    series: decades(-2, 1),
    shunt: fc.oneof(
      decades(0, 3).map((ohms) => ({ ohms })),
      fc.record({ volts: fc.constantFrom(6, 12, 24), watts: fc.constantFrom(1.2, 5, 21, 55) }),
    ),
  });
  const drawn = fc.sample(
    fc.record({
      volts: fc.double({ min: 1, max: 30, noNaN: true }),
      rungs: fc.array(rung, { minLength: 1, maxLength: 5 }),
    }),
    { numRuns: 300, seed: 20_260_301 },
  );

  test('every potential, to one part in ten thousand', () => {
    const cards = drawn.flatMap(({ volts, rungs }, ladder) => [
      `VS${ladder} n${ladder}_0 0 ${volts}`,
      ...rungs.flatMap(({ series, shunt }, at) => {
        const node = `n${ladder}_${at + 1}`;
        const law =
          'ohms' in shunt
            ? `RP${ladder}_${at} ${node} 0 ${shunt.ohms}`
            : // The nominal law, written out: cold is hot by the root of 8 times 15.
              `B${ladder}_${at} ${node} 0 I=V(${node})/max(${shunt.volts ** 2 / shunt.watts / Math.sqrt(120)}, ${shunt.volts ** 2 / shunt.watts}*pow(abs(V(${node}))/${shunt.volts},0.45))`;
        return [`RS${ladder}_${at} n${ladder}_${at} ${node} ${series}`, law];
      }),
    ]);
    const printed = runDeck(cards);
    let lit = 0;
    for (const [ladder, { volts, rungs }] of drawn.entries()) {
      const edges = rungs.flatMap(({ series, shunt }, at) => [
        { a: at + 1, b: at + 2, ohms: series },
        { a: at + 2, b: 0, ohms: 'ohms' in shunt ? shunt.ohms : 1 },
      ]);
      const lamps = rungs.flatMap(({ shunt }, at) =>
        'ohms' in shunt
          ? []
          : [{ at: 2 * at + 1, ohms: (across: number) => filamentResistance(shunt, across).nominal }],
      );
      lit += lamps.length;
      const drives = [{ a: 1, b: 0, kind: 'voltage' as const, value: volts }];
      for (const at of rungs.keys()) {
        const theirs = printed.get(`n${ladder}_${at + 1}`) ?? NaN;
        const ours = litVoltageBetween(edges, lamps, drives, rungs.length + 2, at + 2, 0);
        expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-4 * Math.abs(theirs));
      }
    }
    expect(lit).toBeGreaterThan(200);
  });
});

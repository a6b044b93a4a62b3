import { describe, expect, test } from 'vitest';
import type { Span } from '../../server/src/quantity/quantity.ts';
import { resistor, source, voltageSpan, volts } from './elements.ts';
import { expectPrinted, halfDigit } from './printed.ts';

describe('bridges with a source and a galvanometer', () => {
  // Voltage across the open bridge, and the current through a galvanometer in it.
  test.each([
    [
      'FOSSEE Scilab textbook companion 3830, example 6.2',
      [1000, 400, 100, 41],
      1.5,
      50,
      '0.007599',
      '20.83',
    ],
    ['Bakshi, example 8.3', [7000, 2000, 20_000, 4000], 8, 300, '0.44444', '85.65'],
    [
      'Electronic Instrumentation, example 7.5.2 (its own answer is flagged as wrong)',
      [1500, 5000, 3000, 14_000],
      10,
      250,
      '0.54299',
      '140.15',
    ],
  ] as const)('%s', (_name, [p, q, r, s], supply, galvanometer, open, microampere) => {
    const arms = [
      resistor('p', 'plus', 'g', p),
      resistor('q', 'g', 'minus', q),
      resistor('r', 'plus', 'h', r),
      resistor('s', 'h', 'minus', s),
    ];
    const across = Math.abs(volts(arms, source(supply), 'g', 'h'));
    expectPrinted(across, open);
    const loaded = [...arms, resistor('galvanometer', 'g', 'h', galvanometer)];
    expectPrinted((1e6 * Math.abs(volts(loaded, source(supply), 'g', 'h'))) / galvanometer, microampere);
  });

  test('a bridge of 2, 4, 8, 4 Ω, galvanometer 10 Ω, 5 V: 0.1190 A by the node equations, not the 1.071 A printed', () => {
    const arms = [
      resistor('p', 'plus', 'g', 2),
      resistor('q', 'g', 'minus', 4),
      resistor('r', 'plus', 'h', 8),
      resistor('s', 'h', 'minus', 4),
      resistor('galvanometer', 'g', 'h', 10),
    ];
    expectPrinted(Math.abs(volts(arms, source(5), 'g', 'h')) / 10, '0.1190');
  });

  test('Electronic Instrumentation, example 7.5.4: 500 Ω in three arms, 10 Ω more in the fourth, 6 V, 150 Ω: 46.15 µA by the slope, 45.5 µA', () => {
    const microampere = (more: number): number => {
      const arms = [
        resistor('p', 'plus', 'g', 500),
        resistor('q', 'g', 'minus', 500),
        resistor('r', 'plus', 'h', 500 + more),
        resistor('s', 'h', 'minus', 500),
        resistor('galvanometer', 'g', 'h', 150),
      ];
      return (1e6 * Math.abs(volts(arms, source(6), 'g', 'h'))) / 150;
    };
    expectPrinted(microampere(10), '45.5');
    // The book takes the change for so small that all goes in proportion to it: a thousandth of it, a thousand times.
    expectPrinted(1000 * microampere(0.01), '46.15');
  });
});

/** Within ± a part of its nominal value. */
function within(nominal: number, part: number): Span {
  return { least: nominal * (1 - part), nominal, most: nominal * (1 + part) };
}

describe('what balances a bridge of p over q against it over s, all within their tolerances', () => {
  test.each([
    [
      'Wheatstone bridge of 100 Ω and 100 Ω ± 0.02 % and 230 Ω ± 0.01 % (worked example)',
      { p: within(100, 2e-4), q: within(100, 2e-4), s: within(230, 1e-4) },
      '229.885',
      '230.115',
    ],
    [
      'Helfrick and Cooper, example 1-13, as a bridge: three parts of 0.1 % give + 0.3004 % and - 0.2996 %',
      { p: within(1000, 1e-3), q: within(1000, 1e-3), s: within(1000, 1e-3) },
      '997.004',
      '1003.004',
    ],
    [
      '500 Ω by 440 Ω over 50 Ω, each ± 0.5 %: 4400 ± 66 Ω (worked example)',
      { p: within(500, 5e-3), q: within(50, 5e-3), s: within(440, 5e-3) },
      '4334',
      '4466',
    ],
  ] as const)('%s', (_name, { p, q, s }, least, most) => {
    const balances = (ohms: number): boolean => {
      const arms = [
        resistor('p', 'plus', 'g', p),
        resistor('q', 'g', 'minus', q),
        resistor('x', 'plus', 'h', ohms),
        resistor('s', 'h', 'minus', s),
      ];
      const across = voltageSpan(arms, source(10), 'g', 'h');
      return across.least <= 0 && 0 <= across.most;
    };
    for (const [printed, inward] of [
      [least, 1],
      [most, -1],
    ] as const) {
      expect(balances(Number(printed) + inward * halfDigit(printed))).toBe(true);
      expect(balances(Number(printed) - inward * halfDigit(printed))).toBe(false);
    }
  });
});

describe('Kelvin double bridge: standard 100.03 µΩ, arms 100.24 and 200 Ω, inner arms 100.31 and 200 Ω, link 700 µΩ', () => {
  /** What the detector shows, in volts, with so many microohms in the place of the unknown. */
  function detector(microohms: number, outer: readonly [number, number], inner: readonly [number, number]) {
    const network = [
      resistor('unknown', 'plus', 'link-x', microohms / 1e6),
      resistor('link', 'link-x', 'link-s', 700e-6),
      resistor('standard', 'link-s', 'minus', 100.03e-6),
      resistor('outer-x', 'plus', 'g', outer[0]),
      resistor('outer-s', 'g', 'minus', outer[1]),
      resistor('inner-x', 'link-x', 'h', inner[0]),
      resistor('inner-s', 'h', 'link-s', inner[1]),
    ];
    return volts(network, source(1), 'h', 'g');
  }

  test.each([
    [
      '49.97 µΩ (computed) and not the 50.09 printed, for which 700 µΩ were added as 700 Ω',
      [100.24, 200],
      [100.31, 200],
      '49.97',
      50.09,
    ],
    [
      'with its arms exchanged it would be 199.907 µΩ, as another source prints',
      [200, 100.24],
      [200, 100.31],
      '199.907',
      49.97,
    ],
  ] as const)('%s', (_name, outer, inner, balanced, other) => {
    const half = halfDigit(balanced);
    const below = detector(Number(balanced) - half, outer, inner);
    const above = detector(Number(balanced) + half, outer, inner);
    expect(Math.sign(below)).toBe(-Math.sign(above));
    // The other figure is far from balance, by the measure of the last digit.
    expect(Math.abs(detector(other, outer, inner))).toBeGreaterThan(5 * Math.abs(above - below));
  });
});

import { describe, expect, test } from 'vitest';
import type { Part } from '../../server/src/model/procedure.ts';
import { expectMarked, instead } from './marked.ts';

/** The sound procedure with one more part, and what stands under it. */
function withPart(entry: string, marks = '', sections = ''): string {
  return instead('parts:\n', `${sections}parts:\n  x: ${entry}\n${marks}`);
}

/** The same with one finding at the characters of a word of the entry. */
function withMarked(entry: string, word: string, says: string, sections = ''): string {
  const from = '  x: '.length + entry.lastIndexOf(word);
  return withPart(entry, `${' '.repeat(from)}${'^'.repeat(word.length)} ${says}\n`, sections);
}

function partOf(entry: string, sections = ''): Part | undefined {
  return expectMarked(withPart(entry, '', sections)).procedure.parts.get('x');
}

const exactly = (value: number) => ({ least: value, nominal: value, most: value });
const coolant =
  'entries: { coolant: { ask: Coolant temperature at the sensor, range: 15..90 °C, accuracy: 1 °C } }\n';

describe('every kind of part is read', () => {
  test.each([
    ['heater', '4 Ω'],
    ['switch', '4 Ω'],
  ])('%s: a stated resistance that closes a loop', (kind, resistance) => {
    expect(partOf(`{ kind: ${kind}, resistance: ${resistance} }`)).toMatchObject({
      kind,
      form: 'end',
      live: false,
      resistance: { kind: 'stated', resistance: exactly(4) },
    });
  });

  test.each(['lamp', 'heater'])('%s: cold, and hot as it is stated', (kind) => {
    const hotOf = (written: string): unknown => {
      const resistance = partOf(`{ kind: ${kind}, resistance: 4 Ω${written} }`)?.resistance;
      return resistance?.kind === 'stated' ? resistance.hot : null;
    };
    expect(hotOf('')).toBe('unstated');
    expect(hotOf(', hot: same')).toBeUndefined();
    expect(hotOf(', hot: 30..34 Ω')).toEqual({ least: 30, nominal: 32, most: 34 });
    expectMarked(
      withMarked(
        `{ kind: ${kind}, resistance: 4 Ω, hot: 0 Ω }`,
        '0 Ω',
        'quantity: This must be more than zero, also at its least.',
      ),
    );
  });

  test('heater by its rating', () => {
    expect(partOf('{ kind: heater, rated: 12 V 120 W }')?.resistance).toEqual({
      kind: 'heater-rating',
      volts: 12,
      watts: 120,
    });
  });

  test('coil, stated at 20 °C unless it says otherwise', () => {
    const coil = { kind: 'copper-coil', resistance: exactly(12), at: 20, temperature: 'ambient' };
    expect(partOf('{ kind: coil, resistance: 12 Ω }')?.resistance).toEqual(coil);
    expect(partOf('{ kind: coil, resistance: 12 Ω, at: 23 °C }')?.resistance).toEqual({ ...coil, at: 23 });
  });

  test('thermistor, by B value', () => {
    const curve = { r25: exactly(10_000), beta: exactly(3380) };
    expect(partOf('{ kind: thermistor, r25: 10 kΩ, beta: 3380 K, tolerance: 3 % }')?.resistance).toEqual({
      kind: 'thermistor',
      curve,
      tolerance: { fraction: 0.03 },
      temperature: 'ambient',
    });
    expect(partOf('{ kind: thermistor, r25: 10 kΩ ± 1 %, beta: 3380 K }')?.resistance).toMatchObject({
      curve: { r25: { least: 9900, nominal: 10_000, most: 10_100 } },
      tolerance: null,
    });
    expect(
      partOf('{ kind: thermistor, r25: 10 kΩ, beta: 3380 K, tolerance: ± 0.5 °C }')?.resistance,
    ).toMatchObject({
      tolerance: { kelvin: 0.5 },
    });
  });

  test('thermistor, by the coefficients of Steinhart and Hart', () => {
    const entry =
      '{ kind: thermistor, coefficients: [1.129148e-3, 2.34125e-4, 8.76741e-8], tolerance: 1 °C }';
    expect(partOf(entry)?.resistance).toEqual({
      kind: 'thermistor',
      curve: { coefficients: [1.129148e-3, 2.34125e-4, 8.76741e-8] },
      tolerance: { kelvin: 1 },
      temperature: 'ambient',
    });
  });

  test('rtd', () => {
    expect(partOf('{ kind: rtd, r0: 100 Ω, class: AA }')).toMatchObject({
      form: 'end',
      resistance: { kind: 'platinum', r0: 100, class: 'AA', temperature: 'ambient' },
    });
  });

  test('fuse, by its resistance and by its rating', () => {
    expect(partOf('{ kind: fuse, resistance: 8 mΩ }')?.resistance).toMatchObject({ kind: 'stated' });
    expect(partOf('{ kind: fuse, rated: 7.5 A }')).toMatchObject({
      form: 'end',
      resistance: { kind: 'fuse-rating', amperes: 7.5 },
    });
  });

  test('lamp by its rating, as a part and as a load', () => {
    const rating = { kind: 'lamp-rating', volts: 13.5, watts: 5 };
    expect(partOf('{ kind: lamp, rated: 13.5 V 5 W }')?.resistance).toEqual(rating);
    const read = expectMarked(
      instead(
        'bench-lamp: { kind: lamp, resistance: 3.0 Ω ± 5 % }',
        'bench-lamp: { kind: lamp, rated: 13.5 V 5 W }',
      ),
    );
    expect(read.procedure.loads.get('bench-lamp')?.resistance).toEqual(rating);
  });

  test('resistor of a series, as a part and as a load', () => {
    const resistance = { kind: 'preferred', resistance: exactly(2200), series: 'E24' };
    expect(partOf('{ kind: resistor, resistance: 2.2 kΩ, series: E24 }')?.resistance).toEqual(resistance);
    const read = expectMarked(
      instead(
        'loads:\n',
        'loads:\n  y: { kind: resistor, resistance: 2.2 kΩ, series: E24, opens-shorting-bar: true }\n',
      ),
    );
    expect(read.procedure.loads.get('y')).toMatchObject({ resistance, opensShortingBar: true });
  });
});

describe('the temperature of a part', () => {
  test('is a range, an entry, or else that of the place', () => {
    const temperatureOf = (key: string): unknown => {
      const resistance = partOf(`{ kind: cable, wire: 1 mm², length: 2 m${key} }`, coolant)?.resistance;
      return resistance?.kind === 'copper-wire' ? resistance.temperature : null;
    };
    expect(temperatureOf('')).toBe('ambient');
    expect(temperatureOf(', temperature: 60..90 °C')).toEqual({
      stated: { least: 60, nominal: 75, most: 90 },
    });
    expect(temperatureOf(', temperature: coolant')).toEqual({ entry: 'coolant' });
  });

  test('an entry has its question, its range and its accuracy', () => {
    const { procedure } = expectMarked(
      withPart('{ kind: rtd, r0: 1 kΩ, class: B, temperature: coolant }', '', coolant),
    );
    expect(procedure.entries.get('coolant')).toMatchObject({
      ask: 'Coolant temperature at the sensor',
      range: { least: 15, nominal: 52.5, most: 90 },
      accuracy: 1,
    });
  });

  test('names an entry that there is', () => {
    const entry = (temperature: string) => `{ kind: rtd, r0: 1 kΩ, class: B, temperature: ${temperature} }`;
    const unknown = 'unknown-id: expected an entry. Did you mean `coolant`?';
    expectMarked(withMarked(entry('coolent'), 'coolent', unknown, coolant));
    const wrong = 'wrong-id: `K10` is a connector; expected an entry.';
    expectMarked(withMarked(entry('K10'), 'K10', wrong, coolant));
  });

  test('that cannot be read leaves the part without a resistance, and is told once', () => {
    const marked = withPart(
      '{ kind: rtd, r0: 1 kΩ, class: B, temperature: coolant }',
      '',
      'entries: { coolant: { ask: Where, range: 15 °C, accuracy: 1 °C } }\n                                         ^^^^^ quantity: One value is not enough here\n',
    );
    expect(expectMarked(marked).procedure.parts.get('x')?.resistance).toBeNull();
  });

  test('lies above absolute zero', () => {
    const says = 'quantity: A temperature lies above -273.15 °C.';
    expectMarked(withMarked('{ kind: coil, resistance: 12 Ω, at: -300 °C }', '-300 °C', says));
    const cold = '{ kind: rtd, r0: 1 kΩ, class: B, temperature: -280..20 °C }';
    expectMarked(withMarked(cold, '-280', says));
  });
});

describe('what an entry needs', () => {
  test('an accuracy of more than nothing, in °C', () => {
    const line = (accuracy: string) =>
      `entries: { t: { ask: Where, range: 15..90 °C, accuracy: ${accuracy} } }\n`;
    const marked = (accuracy: string, word: string, says: string) => {
      const marks = `${' '.repeat(line(accuracy).lastIndexOf(word))}${'^'.repeat(word.length)} ${says}\n`;
      return withPart('{ kind: heater, resistance: 4 Ω }', '', `${line(accuracy)}${marks}`);
    };
    expectMarked(marked('0 °C', '0 °C', 'quantity: This must be more than zero.'));
    expectMarked(marked('1 K', 'K', 'quantity: expected a temperature'));
  });

  test('all three keys', () => {
    expectMarked(
      withPart(
        '{ kind: heater, resistance: 4 Ω }',
        '',
        'entries: { coolant: { range: 15..90 °C, accuracy: 1 °C } }\n           ^^^^^^^ missing-key: The entry `coolant` needs `ask`\n',
      ),
    );
  });

  test('a name of its own', () => {
    expectMarked(
      instead(
        '  K10: {',
        '  coolant: { contact: 2 mΩ }\n  ^^^^^^^ duplicate-id: name of something else\n  K10: {',
      ).replace('parts:\n', `${coolant}parts:\n`),
    );
  });
});

describe('findings at the exact characters', () => {
  test.each([
    ['{ kind: rtd, r0: 100 Ω, class: C }', 'C }', 1, 'wrong-value: `AA`, `A` or `B`'],
    ['{ kind: cable, wire: AWG 57, length: 1 m }', '57', 2, 'quantity: AWG numbers are whole, from 0 to 56.'],
    ['{ kind: cable, wire: AWG 20.5, length: 1 m }', '20.5', 4, 'quantity: AWG numbers are whole'],
    [
      '{ kind: thermistor, r25: 10 kΩ, beta: -3380 K, tolerance: 3 % }',
      '-3380 K',
      7,
      'quantity: is never negative',
    ],
    [
      '{ kind: thermistor, r25: 10 kΩ, beta: 0 K, tolerance: 3 % }',
      '0 K',
      3,
      'quantity: This must be more than zero',
    ],
    [
      '{ kind: thermistor, r25: 10 kΩ, beta: 3380, tolerance: 3 % }',
      '3380',
      4,
      'quantity: The unit is missing',
    ],
    [
      '{ kind: thermistor, r25: 0 Ω, beta: 3380 K, tolerance: 3 % }',
      '0 Ω',
      3,
      'quantity: This must be more than zero',
    ],
    [
      '{ kind: thermistor, r25: 10 kΩ, beta: 3380 K, tolerance: 0 % }',
      '0 %',
      3,
      'quantity: off by more than nothing',
    ],
    [
      '{ kind: thermistor, r25: 10 kΩ, beta: 3380 K, tolerance: 0 °C }',
      '0 °C',
      4,
      'quantity: off by more than nothing',
    ],
    [
      '{ kind: thermistor, r25: 10 kΩ, beta: 3380 K, tolerance: 2 Ω }',
      '2 Ω',
      3,
      'quantity: in percent or in °C',
    ],
    [
      '{ kind: thermistor, r25: 10 kΩ, beta: 3380 K, tolerance: 3 }',
      '3 }',
      1,
      'quantity: The unit is missing',
    ],
    ['{ kind: resistor, resistance: 2.2 kΩ, series: E25 }', 'E25', 3, 'wrong-value: Did you mean `E24`'],
    ['{ kind: resistor, resistance: 0 Ω, series: E24 }', '0 Ω', 3, 'quantity: This must be more than zero'],
    ['{ kind: lamp, rated: 13.5 V }', 'V }', 1, 'quantity: expected a rating'],
    ['{ kind: lamp, rated: 13.5 V 0 W }', '0 W', 3, 'quantity: A rating is above zero.'],
    [
      '{ kind: fuse, rated: 12 A }',
      '12 A',
      4,
      'wrong-value: Blade fuses are rated 1, 2, 3, 4, 5, 7.5, 10, 15,',
    ],
    ['{ kind: fuse, rated: 0 A }', '0 A', 3, 'quantity: This must be more than zero.'],
    ['{ kind: rtd, r0: 0 Ω, class: B }', '0 Ω', 3, 'quantity: This must be more than zero.'],
    [
      '{ kind: thermistor, coefficients: [1e-3, -2e-4, 1e-7], tolerance: 3 % }',
      '-2e-4',
      5,
      'wrong-value: B is above zero',
    ],
    [
      '{ kind: thermistor, coefficients: [1e-3, 2e-4, -1e-7], tolerance: 3 % }',
      '-1e-7',
      5,
      'wrong-value: C is not below zero',
    ],
    ['{ kind: thermistor, coefficients: [1e-3, x, 1e-7], tolerance: 3 % }', 'x,', 1, 'wrong-value: a number'],
  ])('%s', (entry, at, length, says) => {
    const read = expectMarked(withMarked(entry, at.slice(0, length), says));
    expect(read.procedure.parts.get('x')?.resistance).toBeNull();
  });

  test('two ways of stating a resistance at once', () => {
    expectMarked(
      withMarked(
        '{ kind: thermistor, r25: 10 kΩ, beta: 3380 K, coefficients: [1e-3, 2e-4, 1e-7], tolerance: 3 % }',
        'coefficients',
        'wrong-value: A thermistor has either `r25` and `beta`, or `coefficients`.',
      ),
    );
    expectMarked(
      withMarked(
        '{ kind: lamp, resistance: 3 Ω, rated: 13.5 V 5 W }',
        'rated',
        'wrong-value: A lamp has either `resistance`, or `rated`.',
      ),
    );
  });

  test('none of them', () => {
    expectMarked(
      withPart(
        '{ kind: thermistor }',
        '  ^ missing-key: needs `r25` and `beta`, such as `1.7..2.3 Ω` and `3380 K`, or `coefficients`.\n',
      ),
    );
    expectMarked(
      withPart('{ kind: lamp }', '  ^ missing-key: needs `resistance`, such as `1.7..2.3 Ω`, or `rated`.\n'),
    );
  });

  test('a thermistor without any spread', () => {
    expectMarked(
      withPart(
        '{ kind: thermistor, r25: 10 kΩ, beta: 3380 K }',
        '  ^ missing-key: needs `tolerance`, such as `3 %` or `1 °C`, or a spread on `r25` or `beta`.\n',
      ),
    );
    expectMarked(
      withPart(
        '{ kind: thermistor, coefficients: [1e-3, 2e-4, 1e-7] }',
        '  ^ missing-key: The part `x` needs `tolerance`\n',
      ),
    );
  });

  test('three coefficients', () => {
    const entry = '{ kind: thermistor, coefficients: [1e-3, 2e-4], tolerance: 3 % }';
    expectMarked(withMarked(entry, '[1e-3, 2e-4]', 'wrong-value: three numbers'));
  });
});

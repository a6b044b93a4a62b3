import { good } from './good.ts';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { describe, expect, test } from 'vitest';
import { expectMarked, instead } from './marked.ts';

describe('quantities are marked at the exact characters', () => {
  test('a decimal comma', () => {
    const read = expectMarked(instead('12.6 V\n', '12,6 V\n             ^^^^ quantity: comma\n'));
    expect(read.procedure.sources.get('battery')?.voltage).toBeNull();
  });

  test('a unit of something else, also inside quotes', () => {
    expectMarked(instead('12.6 V\n', '12.6 Ω\n                  ^ quantity: expected a voltage\n'));
    expectMarked(instead('12.6 V\n', '"12.6 Ω"\n                   ^ quantity: expected a voltage\n'));
    expectMarked(instead('12.6 V\n', "'12.6 Ω'\n                   ^ quantity: expected a voltage\n"));
  });

  test('where escapes stand between, the whole text is marked', () => {
    expectMarked(
      instead('12.6 V\n', '"12.6 \\u03a9"\n             ^^^^^^^^^^^^^ quantity: expected a voltage\n'),
    );
  });

  test('a missing unit', () => {
    expectMarked(instead('    wait: 3 min\n', '    wait: 3\n          ^ quantity: The unit is missing\n'));
  });

  test('a range that runs backwards', () => {
    expectMarked(
      instead(
        'coil-coupling: { kind: rotary-coupling, resistance: 0.05..0.15 Ω }\n',
        `coil-coupling: { kind: rotary-coupling, resistance: 0.15..0.05 Ω }
                                                      ^^^^^^^^^^^^ quantity: runs backwards
`,
      ),
    );
  });

  test('a negative resistance', () => {
    expectMarked(
      instead(
        '  K10: { contact: 2..15 mΩ }\n',
        '  K10: { contact: -2 mΩ }\n                  ^^^^^ quantity: never negative\n',
      ),
    );
  });
});

describe('quantities of the shape that their key takes', () => {
  test('what a monitor can show is a range', () => {
    expectMarked(instead('range: 0..10 Ω\n', 'range: 10 Ω\n           ^^^^ quantity: expected a range\n'));
  });

  test('code limits lie on their own side', () => {
    expectMarked(
      instead(
        '    codes: { too-low: below 1.0 Ω, too-high: above 4.5 Ω }\n',
        `    codes: { too-low: above 1.0 Ω, too-high: above 4.5 Ω }
                      ^^^^^^^^^^^ quantity: expected \`below\`
`,
      ),
    );
    expectMarked(
      instead('leak: below 5 kΩ\n', 'leak: above 5 kΩ\n          ^^^^^^^^^^ quantity: expected `below`\n'),
    );
  });

  test('a display has a step above zero', () => {
    expectMarked(
      instead('resolution: 0.01 Ω\n', 'resolution: 0 Ω\n                ^^^ quantity: more than zero\n'),
    );
  });

  test('an accepted window is a range, a limit or `open`', () => {
    const read = (text: string) =>
      expectMarked(instead('expect: 1.9..4.0 Ω', `expect: ${text}`)).procedure.steps[22];
    expect(read('open')).toMatchObject({ verb: 'read', expect: 'open' });
    expect(read('above 4.5 Ω')).toMatchObject({ expect: { above: 4.5 } });
    expect(read('2 Ω ± 10 %')).toMatchObject({ expect: { least: 1.8, nominal: 2, most: 2.2 } });
    expect(read('2 Ω\n            ^^^ quantity: One value is not enough here')).toMatchObject({
      verb: 'broken',
    });
    expect(read('opn\n            ^^^ quantity: `opn`')).toMatchObject({ verb: 'broken' });
  });

  test('an ambient temperature may be one value', () => {
    expect(expectMarked(instead('10..35 °C', '20 °C')).procedure.ambient).toEqual({
      least: 20,
      nominal: 20,
      most: 20,
      assumed: false,
    });
  });

  // The range of standard atmospheric conditions for tests, IEC 60068-1 (from memory).
  test('where no ambient is stated 15..35 °C is assumed, and the procedure says so', () => {
    expect(expectMarked(instead('conditions: { ambient: 10..35 °C }\n', '')).procedure.ambient).toEqual({
      least: 15,
      nominal: 25,
      most: 35,
      assumed: true,
    });
  });
});

describe('a voltage that is safe', () => {
  test('is above zero: no capacitor ever falls to 0 V', () => {
    const { findings } = readProcedure({ id: 'a', text: good.replace('safe-below: 2 V', 'safe-below: 0 V') });
    expect(findings.map(({ rule, at }) => [rule, at.path.at(-1)])).toEqual([['quantity', 'safe-below']]);
  });
});

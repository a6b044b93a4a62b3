import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { ran } from './fake-terminal.ts';

describe('windows --entry', () => {
  const sensor = fileURLToPath(new URL('../../procedures/coolant-sensor.procedure.yaml', import.meta.url));
  const asked = (...words: readonly string[]): ReturnType<typeof ran> =>
    ran(['windows', sensor, '--step', 'complaint', ...words.flatMap((word) => ['--entry', word])]);

  test('gives the window at what was measured, with or without the unit', () => {
    const { exit, out } = asked('coolant=25');
    expect(exit).toBe(0);
    expect(out).toContain('    coolant 25 °C: 2.026..2.387 kΩ\n');
    expect(out).not.toContain('coolant 30 °C');
    expect(asked('coolant = 25.0 °C').out).toBe(out);
  });

  test('gives it to programs beside the table', () => {
    const { out } = ran(['windows', sensor, '--entry', 'coolant=25', '--format', 'json']);
    const { readings } = JSON.parse(out) as { readings: Record<string, unknown>[] };
    expect(readings[0]?.['at-entered']).toMatchObject({
      entered: { coolant: { least: 25, most: 25 } },
      printed: '2.026..2.387 kΩ',
    });
    expect(readings.some((reading) => !('at-entered' in reading))).toBe(true);
  });

  test.each([
    ['coolant', /write the entry and what was measured/],
    ['=25', /write the entry and what was measured/],
    ['oil=25', /no entry oil in this file, only coolant/],
    ['coolant=warm', /warm is no temperature/],
    ['coolant=20..30', /20\.\.30 is no temperature/],
    ['coolant=25 Ω', /25 Ω is no temperature/],
    ['coolant=14.9', /the range of coolant is 15..90 °C, and beyond it no window is known/],
  ])('refuses %s with the reason', (word, why) => {
    const { exit, err } = asked(word);
    expect(exit).toBe(2);
    expect(err).toMatch(why);
  });

  test('refuses two values of one entry, and a value on which nothing depends', () => {
    expect(asked('coolant=20', 'coolant=21').err).toContain('there is a value for coolant already');
    const { exit, err } = ran(['windows', sensor, '--step', '10', '--entry', 'coolant=25']);
    expect(exit).toBe(2);
    expect(err).toContain('no window that was asked for depends on coolant');
    const bus = fileURLToPath(new URL('../../procedures/two-wire-bus.procedure.yaml', import.meta.url));
    expect(ran(['windows', bus, '--entry', 'coolant=25']).err).toContain('this file has no entries');
  });
});

import { readFileSync } from 'node:fs';
import { readText } from '../card/well-formed.ts';
import { describe, expect, test } from 'vitest';
import { buildCardOf } from './card-of.ts';
import { plainWords } from '../../server/src/card/words.ts';
import { windowAt, windowsOver } from '../../server/src/readings/at-entered.ts';
import type { EntryRow } from '../../server/src/readings/by-entry.ts';
import { analysed } from './analysed.ts';

const coolant = readFileSync(
  new URL('../../procedures/coolant-sensor.procedure.yaml', import.meta.url),
  'utf8',
);

function rowsOf(text: string, step = 4): readonly EntryRow[] {
  const { procedure, readings } = analysed(text);
  const reading = readings.readings.find(({ index }) => procedure.steps[index]?.number === step);
  if (reading === undefined) throw new Error(`step ${step} reads nothing`);
  return reading.byEntry;
}

/** The greatest and the least that any row prints, ohms. */
function hullOf(rows: readonly EntryRow[]): readonly (number | null | undefined)[] {
  const windows = rows.map(({ accepted }) => (accepted === 'open' ? null : accepted));
  return [
    Math.min(...windows.map((window) => window?.least ?? NaN)),
    Math.max(...windows.map((window) => window?.most ?? NaN)),
  ];
}

const bands = (rows: readonly EntryRow[]): readonly string[] =>
  rows.map((row) => row.bands.map(({ entered }) => `${entered.least}..${entered.most}`).join(' '));

describe('the window of a sensor over what is entered', () => {
  const rows = rowsOf(coolant);

  test('has a row for every degree of the range', () => {
    expect(bands(rows).slice(0, 2)).toEqual(['15..16', '16..17']);
    expect(bands(rows).at(-1)).toBe('89..90');
    expect(rows).toHaveLength(75);
  });

  test('a row holds what the sensor has with its tolerance and the accuracy of what is entered (by hand)', () => {
    // 60..61 °C entered to ± 1 °C is 59..62 °C; 2.2 kΩ, B 3500 K, ± 3 %, then 1 % + 5 Ω of the control unit. The
    // harness and the contacts add less than 0.5 Ω.
    const ohms = (celsius: number): number => 2200 * Math.exp(3500 * (1 / (celsius + 273.15) - 1 / 298.15));
    const least = ohms(62) * 0.97 * 0.99 - 5;
    const most = ohms(59) * 1.03 * 1.01 + 5;
    const row = rows.find(({ bands: [band] }) => band?.entered.least === 60);
    const accepted = row?.accepted === 'open' ? null : row?.accepted;
    expect((accepted?.least ?? 0) - least).toBeGreaterThan(-1);
    expect((accepted?.least ?? 0) - least).toBeLessThan(0.5);
    expect((accepted?.most ?? 0) - most).toBeGreaterThan(0);
    expect((accepted?.most ?? 0) - most).toBeLessThan(1.5);
  });

  test('all rows together are the whole window, which is what order is checked with', () => {
    const { readings } = analysed(coolant);
    const whole = readings.readings[0]?.accepted;
    expect(whole).toMatchObject({ from: 'computed' });
    expect(hullOf(rows)).toEqual(whole === 'open' ? [] : [whole?.least, whole?.most]);
  });

  test('is not made where what is read does not depend on it, nor where the author says what to expect', () => {
    expect(rowsOf(coolant, 10)).toEqual([]);
    const stated = coolant.replace('    id: complaint\n', '    id: complaint\n    expect: 200..4000 Ω\n');
    expect(rowsOf(stated)).toEqual([]);
    expect(rowsOf(stated.replace('    expect: 200..4000 Ω\n', '')).length).toBe(75);
  });

  test('has wider bands where the range is wide, cut at round values, the ends where they are', () => {
    const wide = rowsOf(coolant.replace('15..90 °C, accuracy', '-63..355 °C, accuracy'));
    expect(bands(wide)).toEqual([
      '-63..-60',
      ...Array.from({ length: 83 }, (_, index) => `${5 * index - 60}..${5 * index - 55}`),
    ]);
  });

  test('over two entries has a row for each pair, few enough to be read', () => {
    const two = coolant
      .replace(
        'entries:\n',
        'entries:\n  engine-bay: { ask: Temperature beside the harness, range: 10..60 °C, accuracy: 2 °C }\n',
      )
      .replace('length: 2.5 m }', 'length: 500 m, temperature: engine-bay }');
    const pairs = rowsOf(two);
    expect(pairs.length).toBeGreaterThan(1);
    expect(pairs.length).toBeLessThanOrEqual(200);
    expect(pairs[0]?.bands.map(({ entry }) => entry)).toEqual(['engine-bay', 'coolant']);
    expect(new Set(bands(pairs)).size).toBe(pairs.length);
  });

  test('says open where the instrument ends, row by row', () => {
    const short = rowsOf(coolant.replace('range: 0..50 kΩ', 'range: 0..2 kΩ'));
    const printed = short.map((row) => row.printed);
    expect(printed[0]).toBe('open');
    const mixed = printed.findIndex((one) => one !== 'open');
    expect(printed[mixed]).toMatch(/^above /);
    expect(printed.at(-1)).toBe('246..301 Ω');
  });
});

describe('the window at a value that is entered', () => {
  const { procedure, readings } = analysed(coolant);
  const reading = readings.readings[0];
  if (reading === undefined) throw new Error('the procedure reads nothing');
  const at = (celsius: number): EntryRow | null =>
    windowAt(procedure, reading, new Map([['coolant', celsius]]));

  test('holds what the sensor has within the error of that value alone (by hand)', () => {
    // As for a row, from 24 to 26 °C: 2.2 kΩ, B 3500 K, ± 3 %, then 1 % + 5 Ω of the control unit.
    const ohms = (celsius: number): number => 2200 * Math.exp(3500 * (1 / (celsius + 273.15) - 1 / 298.15));
    const accepted = at(25)?.accepted;
    if (accepted === undefined || accepted === null || accepted === 'open') throw new Error('no window');
    expect((accepted.least ?? 0) - (ohms(26) * 0.97 * 0.99 - 5)).toBeGreaterThan(-1);
    expect((accepted.least ?? 0) - (ohms(26) * 0.97 * 0.99 - 5)).toBeLessThan(0.5);
    expect((accepted.most ?? 0) - (ohms(24) * 1.03 * 1.01 + 5)).toBeGreaterThan(0);
    expect((accepted.most ?? 0) - (ohms(24) * 1.03 * 1.01 + 5)).toBeLessThan(1.5);
  });

  test('is within both rows that it borders on', () => {
    const accepted = at(30)?.accepted;
    if (accepted === undefined || accepted === null || accepted === 'open') throw new Error('no window');
    for (const row of reading.byEntry.filter(({ bands: [band] }) =>
      [29, 30].includes(band?.entered.least ?? NaN),
    )) {
      if (row.accepted === null || row.accepted === 'open') throw new Error('no window');
      expect(row.accepted.least).toBeLessThanOrEqual(accepted.least ?? NaN);
      expect(row.accepted.most).toBeGreaterThanOrEqual(accepted.most ?? NaN);
    }
  });

  test('is shown at the ends of the range and round values between to who has entered none', () => {
    const shown = windowsOver(procedure, reading).map(({ bands: [band] }) => band?.entered.nominal);
    expect(shown).toEqual([15, 20, 30, 40, 50, 60, 70, 80, 90]);
  });

  test('is not known where nothing that the reading depends on was entered', () => {
    expect(windowAt(procedure, reading, new Map([['ambient', 20]]))).toBeNull();
  });
});

describe('outcomes are held against the narrowest window', () => {
  // Over the whole range the sensor can read from 0 Ω to open, so no class seems to be outside; in each row there is.
  const wide = coolant
    .replace('range: 15..90 °C', 'range: -40..400 °C')
    .replace('range: 0..50 kΩ', 'range: 0..20 kΩ')
    .replace('{ within: not-now, else: take-off }', '{ within: not-now, open: take-off }');

  test('below and above have to be covered although the whole window has neither', () => {
    const { readings, findings } = analysed(wide);
    expect(readings.readings[0]?.accepted).toMatchObject({ most: null });
    const uncovered = findings.find(({ rule, step }) => rule === 'uncovered' && step?.number === 4);
    expect(uncovered?.message).toContain('`above`');
  });
});

describe('the card of it', () => {
  const { html, model } = buildCardOf(coolant);
  const step = model.steps.sections.flatMap(({ steps }) => steps).find(({ number }) => number === '4');

  test('asks for the temperature first, with a line to write it on', () => {
    expect(step?.blanks).toEqual(['Coolant temperature at the sensor', 'Window of the row in Table 1']);
    expect(step?.details.map(plainWords).join(' ')).toContain(
      'Measure first and write down: Coolant temperature at the sensor, to ± 1 °C. The table holds for 15..90 °C; outside of it, stop.',
    );
  });

  test('has a row for each band, with the same words as every other face', () => {
    const rows = rowsOf(coolant);
    const [table, ...others] = model.annex?.tables ?? [];
    expect(table?.headings).toEqual(['Measured', 'Should show']);
    expect(table?.rows.map(({ window }) => window)).toEqual(rows.map(({ printed }) => printed));
    expect(table?.rows[0]?.entered).toEqual(['15..16 °C']);
    // The reading of the complaint and that of the repair share it.
    expect(others).toEqual([]);
    expect(html.split('<tr><th scope="row">15..16 °C</th>').length).toBe(2);
  });

  test('its step names the table, and the table says what its rows allow for', () => {
    expect(step?.windows[0]).toMatchObject({ window: 'Table 1', table: null });
    expect(plainWords(model.annex?.tables[0]?.caption ?? [])).toContain(
      'A row allows for every value in it and for the error of the measurement (± 1 °C).',
    );
  });

  test('a table of 20 rows or less stands at its step', () => {
    const { model: narrow } = buildCardOf(coolant.replace('range: 15..90 °C', 'range: 15..35 °C'));
    expect(narrow.annex).toBeNull();
    const [first] = narrow.steps.sections.flatMap(({ steps }) => steps).flatMap(({ windows }) => windows);
    expect(first?.table?.rows).toHaveLength(20);
    expect(first?.table?.title).toBeNull();
  });

  test('a long table stands in two halves side by side, so that it keeps to one page with its step', () => {
    const { html: narrow } = buildCardOf(coolant.replace('range: 15..90 °C', 'range: 15..35 °C'));
    const tables = narrow
      .split('<div class="by-entry">')[1]
      ?.split('</div>')[0]
      ?.match(/<table/g);
    expect(tables).toHaveLength(2);
  });

  test('its outcomes speak of the row', () => {
    expect(html).toContain('Shows a number within the window of its row');
    expect(html).toContain('Anything else (less; more; open)');
  });

  test('where some rows end in open, an open circuit is judged by its row', () => {
    const { html: mixed } = buildCardOf(coolant.replace('range: 0..50 kΩ', 'range: 0..2 kΩ'));
    expect(mixed).toContain('within the window of its row, or open where the row says so');
    expect(mixed).toContain('open (no number), where the row does not say so');
    expect(readText(mixed)).toContain('above 1.671 kΩ, or open');
  });

  test('assumes what was asked, and says nothing of stages where there are none', () => {
    const entered = model.assumptions.facts.find(({ label }) => label === 'Entered');
    expect(plainWords(entered?.words ?? [])).toBe(
      'coolant: Coolant temperature at the sensor, 15..90 °C, measured to ± 1 °C',
    );
    expect(html).not.toContain('pyrotechnic');
  });
});

import { describe, expect, test } from 'vitest';
import type { Dimension } from '../../server/src/quantity/quantity.ts';
import { parseExact, parseSpan } from '../../server/src/quantity/quantity.ts';
import { expectComplaint } from './marked.ts';

type Row = readonly [marked: string, says: RegExp];

function complaints(
  dimension: Dimension,
  rows: readonly Row[],
  parse: typeof parseSpan | typeof parseExact = parseSpan,
): void {
  test.each(rows)(`%s (${dimension})`, (marked, says) => {
    expectComplaint(marked, says, (text) => parse(text, dimension));
  });
}

describe('numbers that are none', () => {
  complaints('resistance', [
    ['«13,5» Ω', /Write 13\.5, with a point/],
    ['2.0 Ω ± «0,3» Ω', /Write 0\.3, with a point/],
    ['«1,7»..2,3 Ω', /Write 1\.7/],
    ['«1,000.5» Ω', /no commas/],
    ['«1.2.3» Ω', /more than one decimal point/],
    ['«.5» Ω', /Write 0\.5/],
    ['5«.» Ω', /digit is missing behind the decimal point/],
    ['«NaN»', /not a number; expected a resistance/],
    ['«inf» Ω', /not a number/],
    ['«Infinity» Ω', /not a number/],
    ['«∞» Ω', /no meaning/],
    ['«.»inf', /no meaning/],
    ['«1e999» Ω', /too large/],
    ['2 Ω ± «1e999» Ω', /too large/],
    ['«1e-999» Ω', /too small/],
    ['«11111111111111111111111111111111111111111» Ω', /at most 40/],
    ['2 «😀»', /no meaning/],
    ['«😀» 2 Ω', /no meaning/],
    ['«x» Ω', /not a number/],
    ['«abc»', /not a number/],
  ]);
});

describe('units that are missing, wrong or of the wrong case', () => {
  complaints('resistance', [
    ['«2»', /unit is missing behind 2; expected a resistance, such as/],
    ['2 Ω ± «5»', /unit is missing behind 5/],
    ['2.0 Ω ± «0.3»', /unit is missing/],
    ['«2» ± 5 %', /unit is missing behind 2/],
    ['1.7 Ω..«2.3»', /unit is missing behind 2\.3/],
    ['1.7..«2.3»', /unit is missing/],
    ['2 «V»', /unit of voltage; expected a resistance/],
    ['2 «mA»', /unit of current; expected a resistance/],
    ['2 Ω ± 5 «s»', /unit of time/],
    ['2 «KΩ»', /write `kΩ`: upper and lower case matter/],
    ['2 «K\u2126»', /write `kΩ`/],
    ['2 «MOHM»', /write `mohm` \(0\.001 Ω\) or `Mohm` \(1000000 Ω\)/],
    ['2 «mOhm»', /is not a unit; write `mohm`: upper/],
    ['2 «Ohm»', /write `ohm`/],
    ['2 «kOhm»', /write `kohm`/],
    ['2 «ω»', /write `Ω`/],
    ['2 «k»', /`k` on its own is not a unit/],
    ['2 «R»', /not a unit/],
    ['5 «%» ± 2 Ω', /percentage does not stand here/],
    ['5 «%»', /percentage does not stand here/],
  ]);
  complaints('voltage', [
    ['12 «v»', /write `V`/],
    ['12 «Mv»', /write `mV`/],
    ['12 «Ω»', /unit of resistance; expected a voltage/],
  ]);
  complaints('current', [['5 «MA»', /write `mA`/]]);
  complaints('time', [
    ['3 «Min»', /write `min`/],
    ['3 «minutes»', /not a unit; expected a time, such as `3 min`/],
    ['3 «m»', /unit of length; expected a time/],
  ]);
  complaints('temperature', [
    ['20 «C»', /not a unit; expected a temperature, such as/],
    ['20 «°c»', /write `°C`/],
    ['20 «K»', /a unit of temperature in kelvin; expected a temperature/],
    ['«-273.15 °C»', /lies above -273.15 °C/],
    ['-200 °C ± «80 °C»', /reach below -273.15 °C/],
    ['«-300»..20 °C', /lies above -273.15 °C/],
  ]);
});

describe('values that cannot be', () => {
  complaints('resistance', [
    ['«-1 Ω»', /A resistance is never negative/],
    ['«\u22121 Ω»', /never negative/],
    ['«-0.1»..2 Ω', /never negative/],
    ['«-1 Ω» ± 5 %', /never negative/],
    ['2 Ω ± «150 %»', /reach below zero/],
    ['2 Ω ± «2.01 Ω»', /reach below zero/],
    ['2 Ω ± «-0.3 Ω»', /tolerance is never negative/],
    ['2 Ω ± «-5 %»', /tolerance is never negative/],
    ['«2.3..1.7 Ω»', /runs backwards/],
    ['«2 Ω..500 mΩ»', /runs backwards/],
    ['«900..1.1 kΩ»', /runs backwards/],
    ['1.7..«2.3..2.0 Ω»', /runs backwards/],
    ['«2.0..1.7»..2.3 Ω', /runs backwards/],
  ]);
  complaints('temperature', [
    ['20 °C «± 5 %»', /in °C, not in percent/],
    ['«-10..-20 °C»', /runs backwards/],
  ]);
  complaints('time', [
    ['«-3 min»', /A time is never negative/],
    ['30 s «1 min»', /larger unit first/],
    ['1 min «1 min»', /larger unit first/],
    ['1 min «30»', /second value/],
  ]);
  complaints('length', [['«-1.2 m»', /A length is never negative/]]);
  complaints('capacitance', [['«-1 mF»', /A capacitance is never negative/]]);
  complaints('voltage', [['«-1 V»', /A voltage is never negative/]]);
  complaints('current', [['«-1 mA»', /A current is never negative/]]);
  complaints('power', [['«-1 W»', /A power is never negative/]]);
});

describe('shapes that are not expected', () => {
  complaints('resistance', [
    ['2 Ω «approx»', /does not stand here/],
    ['2 Ω «3 Ω»', /second value/],
    ['2 Ω «3 s»', /second value/],
    ['1 «000 Ω»', /beside each other/],
    ['4 kΩ «7»', /second value/],
    ['1.7«-2.3 Ω»', /two points/],
    ['1.7 «- 2.3 Ω»', /two points/],
    ['1.7«—»2.3 Ω', /two points/],
    ['1«...»2 Ω', /two points/],
    ['1..2 Ω «± 5 %»', /tolerance does not stand here/],
    ['2 Ω ± 5 % «± 1 Ω»', /tolerance does not stand here/],
    ['1..2..3«..4 Ω»', /range does not stand here/],
    ['3 Ω «+ 0.1 Ω»', /sum does not stand here/],
    ['2 Ω «±»', /value is missing at the end/],
    ['2 Ω«..»', /value is missing at the end/],
    ['«±» 5 %', /number is missing before this sign/],
    ['«..»5 Ω', /number is missing/],
    ['2 Ω ± «±» 5 %', /number is missing/],
    ['«below» 2 Ω', /not a number/],
    ['«<» 2 Ω', /Write `below`/],
    ['2 Ω «;»', /no meaning/],
  ]);
  complaints('wire-size', [['2 mm«^»2', /Write mm² or mm2/]]);
  complaints('temperature', [['«–»10 °C', /Write a minus as -/]]);
  complaints(
    'resistance',
    [
      ['2 Ω «± 5 %»', /tolerance does not stand here; expected a resistance, such as `0\.01 Ω`/],
      ['1«..2 Ω»', /range does not stand here/],
      ['«2»', /unit is missing/],
      ['«-2 Ω»', /never negative/],
    ],
    parseExact,
  );
});

test('a message stays short however long the text is', () => {
  for (const text of [`2 ${'x'.repeat(5000)}`, '1.'.repeat(5000) + '1 Ω', `2 Ω ${'y'.repeat(5000)}`]) {
    const result = parseSpan(text, 'resistance');
    expect(result.ok ? 0 : result.message.length).toBeGreaterThan(0);
    expect(result.ok ? Infinity : result.message.length).toBeLessThan(200);
  }
});

test('an empty text is complained about as a whole', () => {
  expect(parseSpan('', 'resistance')).toMatchObject({ ok: false, from: 0, to: 0 });
  expect(parseExact('', 'time')).toMatchObject({ ok: false, from: 0, to: 0 });
  expectComplaint('« \u00a0»', /Nothing is written here; expected a voltage/, (text) =>
    parseSpan(text, 'voltage'),
  );
});

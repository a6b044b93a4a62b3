import { describe, expect, test } from 'vitest';
import {
  parseAccuracy,
  parseLimit,
  parseRating,
  parseSpan,
  parseWire,
} from '../../server/src/quantity/quantity.ts';
import { expectComplaint } from './marked.ts';

describe('a limit', () => {
  test.each([
    ['below 1.0 Ω', { below: 1 }],
    ['above 4.5 Ω', { above: 4.5 }],
    ['below 5 kΩ', { below: 5000 }],
    ['above 1.1 mΩ', { above: 0.0011 }],
  ])('%s', (text, value) => {
    expect(parseLimit(text, 'resistance')).toEqual({ ok: true, value });
  });

  test('may lie below zero for a temperature', () => {
    expect(parseLimit('below -5 °C', 'temperature')).toEqual({ ok: true, value: { below: -5 } });
  });

  test.each([
    ['«1» Ω', /begins with `below` or `above`/],
    ['«Below» 1 Ω', /begins with `below` or `above`/],
    ['«<» 1 Ω', /Write `below`/],
    ['«>» 1 Ω', /Write `above`/],
    ['«below»', /missing at the end/],
    ['below «1»', /unit is missing/],
    ['below 1«..2 Ω»', /range/],
    ['below 1 Ω «± 5 %»', /tolerance/],
    ['below «-1 Ω»', /never negative/],
    ['below «above» 1 Ω', /not a number/],
    ['below 1 Ω «above 2 Ω»', /does not stand here/],
    ['below 1 «V»', /unit of voltage/],
  ] as const)('complains about %s', (marked, says) => {
    expectComplaint(marked, says, (text) => parseLimit(text, 'resistance'));
  });
});

describe('an accuracy', () => {
  test.each([
    ['3 % + 0.1 Ω', 0.03, 0.1, 0],
    ['0.8 % + 3 digits', 0.008, 0, 3],
    ['0.1 Ω', 0, 0.1, 0],
    ['2 %', 0.02, 0, 0],
    ['± 2 %', 0.02, 0, 0],
    ['±2%+1digit', 0.02, 0, 1],
    ['+/- 0.5 % + 2 digits', 0.005, 0, 2],
    ['3 digits + 0.8 %', 0.008, 0, 3],
    ['1 % + 5 mΩ + 2 digits', 0.01, 0.005, 2],
    ['0 Ω', 0, 0, 0],
  ])('%s', (text, fraction, constant, digits) => {
    expect(parseAccuracy(text, 'resistance')).toEqual({ ok: true, value: { fraction, constant, digits } });
  });

  test.each([
    ['3 % + «2 %»', /stated twice/],
    ['0.1 Ω + «0.1 Ω»', /stated twice/],
    ['3 % «0.1 Ω»', /second value/],
    ['3 % «- 0.1 Ω»', /minus does not stand here/],
    ['«3»', /unit is missing/],
    ['3 % «+»', /missing at the end/],
    ['«2.5 digits»', /counted whole/],
    ['«100 %»', /leaves nothing/],
    ['«-2 %»', /never negative/],
    ['3 % + 0.1 «V»', /unit of voltage; expected a resistance as an accuracy/],
    ['3 % + «0,1» Ω', /with a point/],
    ['1 %«..2 %»', /range does not stand here/],
    ['3 % + «±» 1 Ω', /number is missing/],
  ] as const)('complains about %s', (marked, says) => {
    expectComplaint(marked, says, (text) => parseAccuracy(text, 'resistance'));
  });

  test('of a temperature is never in percent', () => {
    expect(parseAccuracy('1 °C', 'temperature')).toMatchObject({ ok: true, value: { constant: 1 } });
    expectComplaint('«1 %» + 1 °C', /in °C, not in percent/, (text) => parseAccuracy(text, 'temperature'));
  });
});

describe('a wire size', () => {
  test.each([
    ['0.5 mm²', { squareMillimetres: 0.5 }],
    ['0.35mm2', { squareMillimetres: 0.35 }],
    ['AWG 20', { awg: 20 }],
    ['AWG20', { awg: 20 }],
    ['AWG 0', { awg: 0 }],
  ])('%s', (text, value) => {
    expect(parseWire(text)).toEqual({ ok: true, value });
  });

  test.each([
    ['«20 AWG»', /Write AWG 20/],
    ['«awg» 20', /capital letters/],
    ['«AWG»', /missing at the end/],
    ['AWG «2.5»', /whole, from 0 to 56/],
    ['AWG «57»', /whole, from 0 to 56/],
    ['AWG 20 «mm²»', /no unit/],
    ['AWG 20«..22»', /range does not stand here/],
    ['«0 mm²»', /above zero/],
    ['«-1 mm²»', /above zero/],
    ['«0.5»', /unit is missing/],
    ['0.5 «mm»', /unit of length; expected a wire size/],
    ['0.5 mm«^»2', /Write mm²/],
    ['0.5 mm² «± 5 %»', /tolerance does not stand here/],
  ] as const)('complains about %s', (marked, says) => {
    expectComplaint(marked, says, parseWire);
  });
});

describe('a rating', () => {
  test('names a voltage, then a power', () => {
    expect(parseRating('13.5 V 5 W')).toEqual({ ok: true, value: { volts: 13.5, watts: 5 } });
    expect(parseRating('24V 500mW')).toEqual({ ok: true, value: { volts: 24, watts: 0.5 } });
  });

  test.each([
    ['13.5 «V»', /missing at the end; expected a rating/],
    ['5 «W» 13.5 V', /unit of power/],
    ['13.5 V«,» 5 W', /no meaning/],
    ['13.5 V 5 W «3»', /second value/],
    ['«0 V» 5 W', /above zero/],
    ['13.5 V «-»5 W', /number is missing/],
  ] as const)('complains about %s', (marked, says) => {
    expectComplaint(marked, says, parseRating);
  });
});

// IEC 60062 colour code: the tolerance bands brown, red, gold and silver are 1, 2, 5 and 10 percent.
describe('resistors by their colour bands, IEC 60062', () => {
  test.each([
    ['brown black red gold', '1 kΩ ± 5 %', 950, 1000, 1050],
    ['yellow violet red gold', '4.7 kΩ ± 5 %', 4465, 4700, 4935],
    ['red red orange gold', '22 kΩ ± 5 %', 20_900, 22_000, 23_100],
    ['brown black black gold brown', '10.0 Ω ± 1 %', 9.9, 10, 10.1],
  ])('%s is %s', (_bands, text, least, nominal, most) => {
    expect(parseSpan(text, 'resistance')).toEqual({ ok: true, value: { least, nominal, most } });
  });
});

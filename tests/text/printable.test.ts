import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printable, turnsText, unseenIn, visible } from '../../server/src/model/printable.ts';

const from = (first: number, last: number): readonly number[] =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index);

// Unicode 15.0, PropList.txt: Bidi_Control (from memory).
const turning = [0x061c, 0x200e, 0x200f, ...from(0x202a, 0x202e), ...from(0x2066, 0x2069)];

// Unicode 15.0, DerivedCoreProperties.txt: Default_Ignorable_Code_Point (from memory), without the selectors and joiners;
// and controls, breaks, marks of annotations, surrogates, noncharacters.
const hidden = [
  ...[0x00ad, 0x034f, 0x115f, 0x1160, 0x17b4, 0x17b5, 0x180e, 0x200b, 0x3164, 0xfeff, 0xffa0],
  ...from(0x2060, 0x206f),
  ...from(0xfff0, 0xfffb),
  ...from(0x1bca0, 0x1bca3),
  ...from(0x1d173, 0x1d17a),
  ...from(0xe0000, 0xe00ff),
  ...from(0x00, 0x08),
  ...from(0x0b, 0x1f),
  ...from(0x7f, 0x9f),
  ...[0x2028, 0x2029, 0xd800, 0xdfff, 0xfdd0, 0xffff, 0x10ffff],
];

describe('what people see', () => {
  test('a character that is not seen, or turns text round, is printed by its number', () => {
    for (const point of [...turning, ...hidden]) {
      const name = `U+${point.toString(16).toUpperCase().padStart(4, '0')}`;
      expect(visible(`wait ${String.fromCodePoint(point)}3 min`)).toBe(`wait [${name}]3 min`);
    }
  });

  test('all that turns text round is known as such, and nothing else', () => {
    const all = from(0, 0x10ffff).filter((point) => turnsText(String.fromCodePoint(point)));
    expect(all).toEqual(turning);
  });

  test.each([
    'Loop 2.0 Ω ± 10 %, K30.monitor → "body"',
    'תקע את המחבר K30',
    'افصل البطارية، وانتظر ٣ دقائق',
    'نمی\u200cشود',
    'क्\u200dष',
    '冷却水温度 葛\u{E0100}',
    'Überprüfen\u00a0Sie — «да»',
    'a\u0301\u0308',
    '⚠\ufe0f 1\ufe0f\u20e3 👩🏽\u200d🔧 👨\u200d👩\u200d👧 🏳\ufe0f\u200d🌈',
    'one\n\ttwo',
  ])('what people write stays as it is: %s', (text) => {
    expect(visible(text)).toBe(text);
    expect(unseenIn(text)).toEqual([]);
  });

  test.each([
    ['a joiner where nothing joins', 'a \u200d b', 'a [U+200D] b'],
    ['one behind another', 'a\u200c\u200cb', 'a[U+200C][U+200C]b'],
    ['a selector behind nothing', '\ufe0f', '[U+FE0F]'],
    ['one behind another selector', '⚠\ufe0f\ufe01', '⚠\ufe0f[U+FE01]'],
  ])('what forms nothing is not seen: %s', (_name, text, shown) => {
    expect(visible(text)).toBe(shown);
  });

  test('one line, without what steers a terminal', () => {
    expect(printable('a\r\nb\nc\td\u0085e\u001b[2J\u009b1m')).toBe('a b c d e[U+001B][2J[U+009B]1m');
  });

  test('nothing is left that is not seen, whatever the text', () => {
    const piece = fc.oneof(
      fc.constantFrom(...[...turning, ...hidden].map((point) => String.fromCodePoint(point))),
      fc.constantFrom('a', 'م', '👩', '\ufe0f', '\u200d', '\u200c', ' ', '\n', '\u0301', '[', '\u180b'),
      fc.string({ unit: 'binary', maxLength: 3 }),
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 12 }), (pieces) => {
        const shown = visible(pieces.join(''));
        expect(unseenIn(shown)).toEqual([]);
        expect(visible(shown)).toBe(shown);
        expect(printable(pieces.join(''))).not.toMatch(/[\p{Cc}\p{Bidi_Control}]/u);
      }),
      { numRuns: 500 },
    );
  });
});

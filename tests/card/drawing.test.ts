import fc from 'fast-check';
import { expect, test } from 'vitest';
import { buildCard } from '../../server/src/card/build.ts';
import { drawLoop } from '../../server/src/card/drawing.ts';
import { wrapText } from '../../server/src/card/wrap.ts';
import type { LoopDrawing } from '../../server/src/card/model.ts';
import { input, procedure } from './halden.ts';
import { nestingProblems } from './well-formed.ts';

const loops = buildCard(input).drawings.loops;

function svgOf(loop: LoopDrawing): readonly string[] {
  return drawLoop(loop, 'x').map(({ markup }) => markup);
}

function textsOf(svg: string): readonly string[] {
  return [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text ?? '');
}

test.each(loops)(
  '$title shows every connector with both pins on both sides, every part, and the instrument',
  (loop) => {
    const texts = textsOf(svgOf(loop).join(''));
    const defined = procedure.loops.get(loop.loop);
    expect(texts).toContain(defined?.monitor);
    for (const { id } of defined?.elements ?? []) expect(texts).toContain(id);
    const wanted = [...(defined?.pins.values() ?? [])].flat().flatMap((pin) => [pin, pin]);
    expect(texts.filter((text) => /^\d+$/.test(text)).sort()).toEqual(wanted.sort());
    expect(texts.filter((text) => text === 'monitor')).toHaveLength(3);
    expect(texts.filter((text) => text === 'end')).toHaveLength(3);
  },
);

test('a live stage is marked as such, an inert one is not', () => {
  const [live = '', inert = ''] = loops.map((loop) => svgOf(loop).join(''));
  expect(textsOf(live)).toContain('LIVE');
  expect(textsOf(inert)).not.toContain('LIVE');
  expect(inert).toContain('taken as inert');
});

test('the shorting bar is named with its side and with what closes it', () => {
  const [first] = loops;
  if (first === undefined) throw new Error('no loop');
  const texts = textsOf(svgOf(first).join('')).join(' ');
  expect(texts).toContain('end side: shorting bar, closes when unlocked');
  expect(
    svgOf(first)
      .join('')
      .match(/class="d-bar"/g),
  ).toHaveLength(1);
});

test('each drawing has a title and says the same in words', () => {
  for (const loop of loops)
    for (const svg of svgOf(loop)) {
      expect(svg).toContain(`<title id="x-1-t">${loop.title}</title>`);
      expect(svg).toMatch(/<desc id="x-1-d">From the instrument outward: control-unit .*K30 \(/);
      expect(nestingProblems(svg)).toEqual([]);
    }
});

const longIds = Array.from(
  { length: 10 },
  (_, index) => `steering-column-intermediate-connector-number-${index}`,
);
const long: LoopDrawing = {
  loop: 'long-loop',
  title: 'long-loop',
  description: '',
  continues: 'goes on',
  continued: 'continued',
  elements: [
    { kind: 'monitor', id: 'control-unit', lines: [] },
    ...longIds.map((id) => ({
      kind: 'connector' as const,
      id,
      pins: ['A1', 'B22'] as const,
      sides: ['monitor side', 'end side'] as const,
      bar: { half: 'lower' as const, side: 'end' as const, words: 'shorting bar, closes when unplugged' },
      lines: ['connector, pins A1 and B22'],
    })),
    { kind: 'end', id: 'stage', live: 'LIVE', lines: [] },
  ],
};

test('a long loop is cut into parts that fit on A5, and nothing is lost', () => {
  const parts = svgOf(long);
  expect(parts.length).toBeGreaterThan(1);
  // A5 is 210 mm high (ISO 216).
  for (const part of parts) expect(Number(/height="([\d.]+)mm"/.exec(part)?.[1])).toBeLessThan(210 - 40);
  const joined = parts.flatMap(textsOf).join('');
  for (const id of longIds) expect(joined).toContain(id);
  expect(parts.slice(0, -1).every((part) => part.includes('goes on'))).toBe(true);
  expect(parts.slice(1).every((part) => part.includes('continued'))).toBe(true);
});

test('no label is wider than its place, in the widest of the usual faces', () => {
  // Mean width of a to z in em, measured on the font files: DejaVu Sans Bold 0.637, DejaVu Sans 0.562.
  const each = { 'd-name': 4.2 * 0.637, 'd-line': 3.4 * 0.562 };
  const [part = ''] = svgOf(long);
  const width = Number(/viewBox="0 0 ([\d.]+) /.exec(part)?.[1]);
  const labels = [
    ...svgOf(long)
      .join('')
      .matchAll(/<text class="(d-name|d-line)" x="([\d.]+)"[^>]*>([^<]*)</g),
  ];
  expect(labels.length).toBeGreaterThan(longIds.length);
  for (const [, kind, x, text = ''] of labels)
    expect(
      Number(x) + text.length * (kind === 'd-name' ? each['d-name'] : each['d-line']),
    ).toBeLessThanOrEqual(width);
});

test('breaking a text into lines loses nothing and keeps to the width', () => {
  const words = fc.array(fc.stringMatching(/^[A-Za-z0-9-]{1,30}$/), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(words, fc.integer({ min: 4, max: 30 }), (list, width) => {
      const text = list.join(' ');
      const lines = wrapText(text, width);
      expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
    }),
  );
});

test('a line of a drawing is never broken before a unit', () => {
  expect(wrapText('NTC, 2.2 kΩ at 25 °C, B 3500 K, ± 3 %, at coolant', 30)).toEqual([
    'NTC, 2.2 kΩ at 25 °C, B',
    '3500 K, ± 3 %, at coolant',
  ]);
});

test('a loop of very many elements is described once, with its first part', () => {
  const [first] = loops;
  const element = first?.elements.at(1);
  if (first === undefined || element === undefined) throw new Error('no loop');
  const drawn = (count: number): readonly string[] =>
    svgOf({ ...first, elements: Array.from({ length: count }, () => element) });
  const [less, more] = [drawn(300), drawn(600)];
  expect(more.length).toBeGreaterThan(less.length);
  for (const parts of [less, more]) {
    const whole = parts.filter((svg) => svg.includes(first.description.slice(0, 30)));
    expect(whole).toEqual(parts.slice(0, 1));
  }
});

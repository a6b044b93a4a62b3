import fc from 'fast-check';
import { parse } from 'marked';
import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { hover } from '../../server/src/editor/hover.ts';
import { codeBlock, markdown, markdownList, markdownText } from '../../server/src/editor/markdown.ts';
import { template } from '../../server/src/editor/template.ts';
import { printable } from '../../server/src/model/printable.ts';
import { atCursor } from './opened.ts';

/* Read by marked, which is what the editor reads its hovers with. */

const html = (text: string): string => parse(text, { async: false });

/** The names of all elements. */
const elements = (text: string): ReadonlySet<string> =>
  new Set(Array.from(html(text).matchAll(/<(\w+)/g), ([, name = '']) => name));

const characters: Readonly<Record<string, string>> = { lt: '<', gt: '>', quot: '"', '#39': "'", amp: '&' };

/** What a reader sees. */
const readOf = (text: string): string =>
  html(text)
    .replace(/<[^>]*>/g, '')
    .replace(/&([\w#]+);/g, (whole, name: string) => characters[name] ?? whole)
    .trim();

const shown = (text: string): string => printable(text).replace(/\s+/g, ' ').trim();

const hostile = [
  '[free](command:workbench.action.terminal.new)',
  '![](https://tracker.invalid/x.png)',
  '<img src=x onerror=y>',
  '<https://x.invalid>',
  'https://x.invalid/a_b*c',
  'HTTP://X.INVALID',
  'www.x.invalid',
  'WWW.x.invalid',
  'ftp://x.invalid',
  'a@b.invalid',
  '[x]: https://x.invalid',
  '# heading',
  '## heading',
  '#',
  '> quoted',
  '- item',
  '+ item',
  '* item',
  '1. item',
  '2) item',
  '---',
  '- - -',
  '===',
  '***',
  '```js',
  '~~~',
  '`code`',
  '**bold**, __bold__, *it*, _it_, ~~gone~~, ~gone~',
  '| a | b |\n| - | - |\n| c | d |',
  '&lt;b&gt; &copy; &#42;',
  'line\\\nbreak  \nbreak',
  '    indented',
  '\\*',
  '\u202eevil',
];

describe('what an author writes', () => {
  test.each(hostile)('stays a text in a paragraph: %s', (text) => {
    const written = markdownText(text);
    expect([...elements(written)]).toEqual(['p']);
    expect(readOf(written)).toBe(shown(text));
  });

  test('stays a text wherever it is put, whatever it is', () => {
    const piece = fc.oneof(
      fc.constantFrom(...hostile),
      fc.constantFrom(...Array.from('[]()<>!*_`~#+-=|&@:/.\\ \n\t1a:')),
      fc.string(),
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 6 }), (pieces) => {
        const text = pieces.join('');
        const alone = markdownText(text);
        expect([...elements(alone)]).toEqual(shown(text) === '' ? [] : ['p']);
        expect(readOf(alone)).toBe(shown(text));
        const behind = markdown`**id**: ${text}`.markdown;
        expect([...elements(behind)]).toEqual(['p', 'strong']);
        expect(readOf(behind).replace(/\s+/g, ' ')).toBe(`id: ${shown(text)}`.trim());
        expect([...elements(markdownList(['one', text]).markdown)]).toEqual(['ul', 'li']);
      }),
      { numRuns: 1000 },
    );
  });

  test('stays inside a block of code', () => {
    const block = codeBlock(['a ``` b', '````', '~~~', '\u202ex', '<b>']).markdown;
    expect([...elements(block)]).toEqual(['pre', 'code']);
    expect(readOf(block)).toBe('a ``` b\n````\n~~~\n[U+202E]x\n<b>');
  });

  test('is as it was where nothing in it has a meaning', () => {
    for (const text of [
      '2.0 Ω ± 10 %, at K30.end (stated in this file)',
      '-5..40 °C',
      '3 min; then prove it dead!',
    ])
      expect(markdownText(text)).toBe(text);
  });
});

test('no hover of a procedure with hostile texts links, shows or runs anything', () => {
  const link = '[free](command:evil) <b>x</b> https://x.invalid';
  const text = template
    .replace(/stop: .*/g, `stop: "${link}"`)
    .replace(/^title: .*/m, `title: "${link}"`)
    .replace(/outcomes: (?=\{)/g, `why: "${link}"\n    outcomes: `);
  const names = new Set<string>();
  let hovers = 0;
  let saying = 0;
  for (let index = 0; index < text.length; index += 7) {
    const { document, position } = atCursor(`${text.slice(0, index)}|${text.slice(index)}`);
    const contents = finish(hover(document, position))?.contents as { value: string } | undefined;
    if (contents === undefined) continue;
    hovers += 1;
    if (contents.value.includes('command:evil')) saying += 1;
    for (const name of elements(contents.value)) names.add(name);
  }
  expect([...names].sort()).toEqual(['code', 'li', 'p', 'pre', 'strong', 'ul']);
  expect(hovers).toBeGreaterThan(50);
  expect(saying).toBeGreaterThan(0);
});

import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { CompletionItem, TextEdit } from 'vscode-languageserver-types';
import { complete } from '../../server/src/editor/completion.ts';
import type { EditorDocument } from '../../server/src/editor/document.ts';
import { verbs } from '../../server/src/format/words.ts';
import { cursorPlace } from '../../server/src/text/cursor.ts';
import { applied, withHighVoltage } from './completion-taken.ts';
import { opened } from './opened.ts';

const shipped = readFileSync(
  new URL('../fixtures/driver-airbag-written-out.procedure.yaml', import.meta.url),
  'utf8',
);

const folder = new URL('../../procedures/', import.meta.url);
const all = readdirSync(folder)
  .filter((name) => name.endsWith('.procedure.yaml'))
  .map((name) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') }));

/** Items that do not keep to the line and the word under the cursor, or change what stands around it. */
function faults(document: EditorDocument, wanted: number, snippets: boolean): string[] {
  // Between the two characters of a line end there is no position.
  const position = document.text.positionAt(wanted);
  const offset = document.text.offsetAt(position);
  const text = document.text.getText();
  return complete(document, position, { snippets }).flatMap((item): string[] => {
    const { range, newText } = item.textEdit as TextEdit;
    const [from, to] = [document.text.offsetAt(range.start), document.text.offsetAt(range.end)];
    const replaced = text.slice(from, to);
    const inside = from <= offset && offset <= to && !/[\r\n]/.test(replaced);
    const onLine = range.start.line === position.line && range.end.line === position.line;
    const after = applied(document, item);
    const isKept = after.startsWith(text.slice(0, from)) && after.endsWith(text.slice(to));
    // A client filters by what stands between the start of the edit and the cursor; blanks at its start do not count.
    const oneWord = /^\s*[A-Za-z0-9.-]*$|^\d[\d.]*\s*[\p{L}°²%]*\s*$/u.test(replaced);
    const isPlain = snippets || !/\$\{|\$\d/.test(newText);
    return inside && onLine && isKept && oneWord && isPlain && newText !== ''
      ? []
      : [describeItem(item, replaced)];
  });
}

function describeItem({ label }: CompletionItem, replaced: string): string {
  return `${label} for ${JSON.stringify(replaced)}`;
}

describe('wherever the cursor stands, nothing is thrown, and an item replaces the word under it and nothing else', () => {
  const texts = { 'as it is': shipped, 'with carriage returns': shipped.replaceAll('\n', '\r\n') };
  test.each(Object.entries(texts))('in the shipped procedure %s', (_, text) => {
    const document = opened(text);
    for (let at = 0; at <= text.length; at++)
      expect([at, faults(document, at, at % 2 === 0)]).toEqual([at, []]);
  });

  test('at the end of every piece of it, cut at a line or within one', () => {
    const ends = [...shipped.matchAll(/\n/g)].flatMap(({ index }, at) => [
      index,
      index + 1,
      index - (at % 17),
    ]);
    for (const end of ends)
      expect([end, faults(opened(shipped.slice(0, end)), end, true)]).toEqual([end, []]);
  });

  test('behind a text that is broken: with brackets, quotes, colons or blanks too many or too few', () => {
    const breakers = [
      '{',
      '[',
      '}',
      ']',
      '"',
      "'",
      ':',
      '- ',
      '\t',
      '|',
      '&a',
      '*b',
      '? ',
      '---\n',
      '%',
      '\u0000',
    ];
    for (const [index, breaker] of breakers.entries())
      for (let at = 7 * index; at < shipped.length; at += 1511) {
        const text = shipped.slice(0, at) + breaker + shipped.slice(at);
        const document = opened(text);
        for (let cursor = at; cursor < text.length; cursor += 997)
          expect([breaker, at, faults(document, cursor, true)]).toEqual([breaker, at, []]);
      }
  });
});

describe('what stands in a shipped procedure', () => {
  // A writer makes these up.
  const ownWords =
    /^(?:applies-to|revision|purpose|requires\/\w+|(?:routines\/[^/]+\/)?steps\/\d+\/(?:section|id|note|why|do|inspect|stop|notice|caution|warning|danger)|.*\/resistance|.*\/pins\/.*\/\d|network\/\d+\/pin|connectors\/[^/]+\/sides\/\d)(?:\/\d+)?$/;
  // The examples of the format are taken from the first, but for its multimeter; the title and the figures of others are their own.
  const isOwn = (file: string, name: string, text: string): boolean =>
    (!file.startsWith('driver-airbag') || name.startsWith('instruments/hand-meter/')) &&
    (name === 'title' || /^(?:below |above )?\d.*[a-zΩ%]/i.test(text));
  const isNewId =
    /^(?:(?:entries|instruments|sources|loads|parts|connectors|assemblies|loops|routines)\/[^/]+|routines\/[^/]+\/needs\/[^/]+|steps\/\d+\/windows\/[^/]+)$/;

  test.each(all)(
    'is offered where it stands in $name, once it is taken out: every key, id and word',
    ({ name: file, text: written }) => {
      const { analysis } = opened(written);
      const seen = new Set<number>();
      const missing: string[] = [];
      for (let at = 0; at < written.length; at++) {
        const place = analysis.placeAt(at);
        const name = place?.path.join('/') ?? '';
        if (place?.text == null || seen.has(place.range.from)) continue;
        const { from, to } = place.range;
        seen.add(from);
        if (place.part === 'value' ? ownWords.test(name) : isNewId.test(name)) continue;
        if (place.part === 'value' && isOwn(file, name, place.text)) continue;
        const rest =
          place.part === 'value' ? written.slice(to) : written.slice(to).replace(/^:( [^,}\n]*)?/, '');
        const document = opened(written.slice(0, from) + rest);
        const items = complete(document, document.text.positionAt(from), { snippets: true });
        if (!items.some(({ label }) => label === place.text))
          missing.push(`${place.part} ${name} ${place.text}`);
      }
      expect(missing).toEqual([]);
      expect(seen.size).toBeGreaterThan(200);
    },
  );
});

describe('what is taken is YAML again', () => {
  const isWhole = (document: EditorDocument, item: CompletionItem): boolean =>
    opened(applied(document, item)).analysis.procedure().complete;

  test('as the value of any key and as any item, where one was taken out', () => {
    const { analysis } = opened(shipped);
    const values = new Map<number, number>();
    for (let at = 0; at < shipped.length; at++) {
      const place = analysis.placeAt(at);
      if (place?.part === 'value') values.set(place.range.from, place.range.to);
    }
    let count = 0;
    for (const [from, to] of [...values].filter((_, index) => index % 7 === 0)) {
      const document = opened(shipped.slice(0, from) + shipped.slice(to));
      for (const item of complete(document, document.text.positionAt(from), { snippets: true })) {
        expect([from, item.label, isWhole(document, item)]).toEqual([from, item.label, true]);
        count++;
      }
    }
    expect(count).toBeGreaterThan(200);
  });

  test('as a new step behind any step, however far the empty line is indented', () => {
    const written = withHighVoltage(shipped);
    const steps = opened(written).analysis.procedure().value.steps.length;
    const ends = [...written.matchAll(/\n(?=  - )/g)].map(({ index }) => index + 1);
    expect(ends.length).toBeGreaterThan(steps);
    for (const [number, end] of ends.entries()) {
      if (number === 0) continue;
      const indent = ' '.repeat(number % 6);
      const document = opened(`${written.slice(0, end)}${indent}\n${written.slice(end)}`);
      const position = document.text.positionAt(end + indent.length);
      const items = complete(document, position, { snippets: number % 2 === 0 });
      for (const verb of number === 9
        ? verbs.filter((one) => one !== 'run')
        : ['fit', 'reconnect', 'read', 'stop']) {
        const item = items.find(({ label, filterText }) => (filterText ?? label) === verb);
        const text = item === undefined ? '' : applied(document, item);
        const { complete: whole, value, findings } = opened(text).analysis.procedure();
        expect([number, verb, whole, value.steps.length, findings]).toEqual([
          number,
          verb,
          true,
          steps + 1,
          [],
        ]);
      }
    }
  });

  test('as a key of any entry or step, at the end of its lines', () => {
    const ends = [...shipped.matchAll(/^ {2}(?:- |  )[a-z-]+: [^{[\n]+\n(?! {5})/gm)].map(
      ({ index, 0: line }) => index + line.length,
    );
    expect(ends.length).toBeGreaterThan(50);
    let count = 0;
    for (const [number, end] of ends.entries()) {
      if (number % 4 !== 0) continue;
      const indent = ' '.repeat(3 + ((number / 4) % 4));
      const document = opened(`${shipped.slice(0, end)}${indent}\n${shipped.slice(end)}`);
      const items = complete(document, document.text.positionAt(end + indent.length), { snippets: true });
      count += items.length;
      for (const item of items)
        expect([end, item.label, isWhole(document, item)]).toEqual([end, item.label, true]);
    }
    expect(count).toBeGreaterThan(200);
  });
});

describe('the place that is read from the lines', () => {
  test('is the one that the parser finds, at every key and value of the shipped procedure', () => {
    const { analysis } = opened(shipped);
    let count = 0;
    for (let at = 0; at < shipped.length; at++) {
      const known = analysis.placeAt(at);
      if (known === null || at === known.range.to) continue;
      const isItem = typeof known.path.at(-1) === 'number';
      const path = known.path.map((step) => (typeof step === 'number' ? '#' : step));
      const place = cursorPlace(shipped, at);
      const found =
        place === null ? null : [place.part, ...place.path, ...(place.part === 'value' ? [place.key] : [])];
      const wanted =
        known.part === 'key'
          ? ['key', ...path.slice(0, -1)]
          : isItem
            ? ['item', ...path.slice(0, place?.inFlow === true ? -1 : undefined)]
            : ['value', ...path];
      expect([at, found]).toEqual([at, wanted]);
      count++;
    }
    expect(count).toBeGreaterThan(5000);
  });
});

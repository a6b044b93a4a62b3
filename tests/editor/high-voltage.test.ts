import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { hover } from '../../server/src/editor/hover.ts';
import { hintTexts, inlayHints } from '../../server/src/editor/inlay-hints.ts';
import { outline } from '../../server/src/editor/outline.ts';
import { labels, taken } from './completion-taken.ts';
import { atCursor, opened } from './opened.ts';

const file = new URL('../../procedures/interlock-open.procedure.yaml', import.meta.url);
const shipped = readFileSync(file, 'utf8');

function said(before: string, marked: string): string {
  const { document, position } = atCursor(shipped.replace(before, marked));
  const contents = finish(hover(document, position))?.contents;
  return contents === undefined ? '' : (contents as { value: string }).value;
}

describe('high voltage in the editor', () => {
  test('the hint behind a proof says what no voltage is, the one behind the disconnect the wait', () => {
    const document = opened(shipped);
    const { analysis } = document;
    const readings = finish(analysis.windows()).value;
    const texts = hintTexts(document, readings, finish(analysis.order()).value);
    const range = { start: { line: 0, character: 0 }, end: document.text.positionAt(shipped.length) };
    const hints = inlayHints(document, range, texts, new Map());
    const at = (line: RegExp): unknown =>
      hints.find(({ position }) => line.test(shipped.split('\n')[position.line] ?? ''))?.label;
    expect(at(/prove-dead/)).toBe('without voltage: between -59.5 V and +59.5 V');
    expect(at(/disconnect: traction/)).toBe('wait 5 min, then verify no voltage, before hands');
  });

  test('the hover of a source, a meter, a connector and a proof', () => {
    expect(said('- disconnect: traction', '- disconnect: tract|ion')).toContain(
      'high-voltage source, 320..410 V, live, isolated by S1; after it is off wait 5 min',
    );
    expect(said('- disconnect: traction', '- discon|nect: traction')).toContain(
      'wait 5 min before hands touch what it feeds, and verify that the circuit of traction is without voltage.',
    );
    expect(said('with: hand-meter', 'with: hand|-meter')).toContain('multimeter, DC 0..600 V');
    expect(said('- unplug: K7', '- unplug: K|7')).toContain('carries traction past its loops');
    expect(said('- prove-dead: traction', '- prove|-dead: traction')).toMatch(/Three measurements/);
  });

  test('completion offers for each key what can stand there', () => {
    const step = (line: string): string => `${shipped}  - ${line}`;
    expect(labels(step('prove-dead: |'))).toEqual(['traction']);
    expect(labels(step('prove-dead: traction\n    with: |'))).toEqual(['hand-meter']);
    expect(labels(step('prove-dead: traction\n    known: |'))).toEqual(['battery']);
    expect(labels(step('prove-dead: traction\n    at: |'))).toContain('K7.end');
    expect(labels(step('prove-dead: traction\n    outcomes: { |'))).toEqual(['dead', 'live']);
    expect(labels(step('unplug: |'))).toEqual(['K50', 'K7']);
    expect(labels(step('read-codes: |'))).toEqual(['vehicle-unit']);
    const inside = (key: string): string[] =>
      labels(shipped.replace(new RegExp(`${key}: (?:traction|S1)`), `${key}: |`));
    expect(inside('isolated-by')).toEqual(['K50', 'K7', 'S1']);
    expect(inside('carries')).toEqual(['battery', 'traction']);
  });

  test('new entries of the kinds are whole', () => {
    expect(taken('sources:\n  |', 'high-voltage')).toContain(
      'kind: high-voltage, voltage: 400 V, isolated-by: S1',
    );
    expect(taken('instruments:\n  |', 'multimeter')).toContain(
      'kind: multimeter, voltage: { range: 0..600 V',
    );
    expect(taken('parts:\n  |', 'hv-section')).toContain('live: true }');
  });

  test('the outline lists the meter with the instruments', () => {
    const instruments = outline(opened(shipped)).find(({ name }) => name === 'instruments');
    expect(instruments?.children?.map(({ name }) => name)).toEqual(['vehicle-unit', 'hand-meter']);
  });
});

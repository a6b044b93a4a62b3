import { expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { hover } from '../../server/src/editor/hover.ts';
import { hintTexts, inlayHints } from '../../server/src/editor/inlay-hints.ts';
import { coils } from '../readings/outer-bound.ts';
import { atCursor, opened } from './opened.ts';

test('a window that is an outer bound says so in the hint and in the hover, and no other does', () => {
  const document = opened(coils);
  const { analysis } = document;
  const texts = hintTexts(document, finish(analysis.windows()).value, finish(analysis.order()).value);
  const range = { start: { line: 0, character: 0 }, end: { line: 100, character: 0 } };
  const labels = inlayHints(document, range, texts, new Map()).map(({ label }) => label);
  expect(labels).toEqual([
    expect.stringMatching(/^reads \d\S+ V, an outer bound$/),
    expect.stringMatching(/^reads \d\S+ V$/),
  ]);
  const [first, second] = [
    'mea|sure: voltage\n    across: [middle',
    'mea|sure: voltage\n    across: [plus',
  ].map((marked) => {
    const { document: there, position } = atCursor(coils.replace(marked.replace('|', ''), marked));
    return (finish(hover(there, position))?.contents as { value: string }).value;
  });
  expect(first).toContain('(computed, an outer bound)');
  expect(second).toContain('(computed)');
  expect(second).not.toContain('outer bound');
});

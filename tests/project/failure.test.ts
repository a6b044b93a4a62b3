import { TextDocument } from 'vscode-languageserver-textdocument';
import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { codeActions, fixAllActions } from '../../server/src/editor/code-actions.ts';
import { complete } from '../../server/src/editor/completion.ts';
import { diagnosticsOf } from '../../server/src/editor/diagnostics.ts';
import type { EditorDocument } from '../../server/src/editor/document.ts';
import { hover } from '../../server/src/editor/hover.ts';
import { hintTexts, inlayHints } from '../../server/src/editor/inlay-hints.ts';
import { outline } from '../../server/src/editor/outline.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import type { Analysis } from '../../server/src/project/analysis.ts';
import { card } from '../../server/src/project/card.ts';
import { tryText } from '../../server/src/fixes/trial.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import manifest from '../../package.json' with { type: 'json' };
import {
  file,
  overflow,
  sound,
  text,
  throwing,
  withFailingBounds,
  withFailingParts,
  withFailingRule,
} from './failing.ts';

const rulesIn = (analysis: Analysis, upTo: 'text' | 'windows' | 'order' = 'order'): readonly string[] =>
  finish(analysis.findings(upTo)).map(({ rule }) => rule);

/** What is found where nothing fails, without what comes of the stages from one on. */
const before = (stage: 'windows' | 'order'): readonly string[] =>
  rulesIn(sound(), stage === 'order' ? 'windows' : 'text');

test('the text has findings of each stage, and nothing fails', () => {
  expect(rulesIn(sound(), 'text')).toEqual(['comment-swallows']);
  expect(rulesIn(sound(), 'windows')).toEqual(['comment-swallows', 'expect-excludes-good']);
  expect(rulesIn(sound())).toContain('live-touch');
  expect(sound().failure()).toBeNull();
});

describe('where the reading of the text fails', () => {
  const analysis = withFailingParts();
  const findings = finish(analysis.findings('order'));

  test('an error on the first line says so, with the reason, the version and what to do', () => {
    const [first] = findings;
    expect(first).toMatchObject({ rule: 'not-checked', severity: 'error', stage: 'text' });
    expect(analysis.range(first?.at ?? { file, path: [], part: 'key' })).toEqual({
      from: 0,
      to: 'format: 1'.length,
    });
    expect(first?.message).toBe(
      'Ohmwright failed while it read this file: Error: no disk. The file is not checked from there on, and what is not reported may still be wrong. ' +
        `Send the file and this message to the developers of Ohmwright (version ${manifest.version}). Nothing is sent by itself.`,
    );
  });

  test('what was found before stays, and nothing behind it is taken for checked', () => {
    expect(findings.map(({ rule }) => rule)).toEqual(['not-checked', 'comment-swallows']);
    expect(analysis.procedure().complete).toBe(false);
    expect(finish(analysis.windows())).toMatchObject({ findings: [], complete: false });
    expect(finish(analysis.order())).toMatchObject({ findings: [], complete: false });
  });
});

describe('where a rule fails', () => {
  test('findings of the stages before it and of the rules before it stay', () => {
    const inWindows = withFailingRule('windows', throwing(new Error('x')));
    expect(rulesIn(inWindows)).toEqual(['not-checked', ...before('order')]);
    const inOrder = withFailingRule('order', throwing(new Error('x')));
    expect(rulesIn(inOrder)).toEqual(['not-checked', ...rulesIn(sound())]);
  });

  test('the stage is not complete, nor what comes behind it', () => {
    const inWindows = withFailingRule('windows', throwing(new Error('x')));
    expect(finish(inWindows.order()).complete).toBe(false);
    expect(finish(inWindows.windows()).complete).toBe(false);
    expect(finish(inWindows.findings('order'))[0]?.stage).toBe('windows');
    const inOrder = withFailingRule('order', throwing(new Error('x')));
    expect(finish(inOrder.order()).complete).toBe(false);
    expect(finish(inOrder.windows()).complete).toBe(true);
    expect(rulesIn(withFailingRule('order', throwing(new Error('x'))), 'windows')).toEqual(before('order'));
  });

  test('an automaton that fails half way is one that fails', () => {
    const steps = withFailingRule('order', {
      watch: () => [
        function* () {
          yield { stage: 'order', done: 1 };
          throw new Error('half way');
        },
      ],
    });
    expect(finish(steps.findings('order'))[0]?.message).toContain(': Error: half way. ');
  });
});

test('a bound that fails leaves what the text says', () => {
  expect(rulesIn(withFailingBounds())).toEqual(['not-checked', ...before('windows')]);
  expect(finish(withFailingBounds().windows()).complete).toBe(false);
});

test('a full stack is a failure like any other', () => {
  const analysis = withFailingRule('order', { check: overflow });
  expect(finish(analysis.findings('order'))[0]?.message).toContain(
    'RangeError: Maximum call stack size exceeded',
  );
});

test.each([
  ['a text', 'out of paper.', 'out of paper'],
  ['nothing', undefined, 'undefined'],
  ['what cannot be made a text of', Object.create(null), 'something without a message was thrown'],
  ['many lines', new Error('one\n  two'), 'Error: one two'],
  ['very much', new Error('x'.repeat(5000)), `Error: ${'x'.repeat(193)}…`],
])('%s can be thrown', (_, error, said) => {
  const [first] = finish(withFailingRule('order', throwing(error)).findings('order'));
  expect(first?.message).toContain(`checked the order of this file: ${said}. The file`);
});

test('no waiver takes it', () => {
  const waived = `${text}waivers:\n  - { rule: not-checked, reason: It was late. }\n`;
  const found = finish(withFailingRule('order', throwing(new Error('x')), waived).findings('order'));
  expect(found[0]).toMatchObject({ rule: 'not-checked' });
  expect(found[0]?.waived).toBeUndefined();
  expect(found.map(({ rule }) => rule)).toContain('waiver-refused');
});

test('a waiver is not called unused where not everything was checked', () => {
  const waived = `${text}waivers:\n  - { rule: repeats, reason: On purpose. }\n`;
  expect(rulesIn(analyse(snapshotOf([{ id: file, text: waived }]), file))).toContain('unused-waiver');
  expect(rulesIn(withFailingRule('order', throwing(new Error('x')), waived))).not.toContain('unused-waiver');
});

test.each([
  ['the text', withFailingParts],
  ['a window', () => withFailingRule('windows', throwing(new Error('x')))],
  ['the order', () => withFailingRule('order', throwing(new Error('x')))],
])('there is no card where %s failed, and no draft', (_, made) => {
  for (const draft of [false, true])
    expect(finish(card(made(), { date: '2026-01-31', version: '0', draft }))).toMatchObject({
      isFailure: true,
      refused: expect.arrayContaining([expect.objectContaining({ rule: 'not-checked' })]) as unknown,
    });
  const asDraft = finish(card(sound(), { date: '2026-01-31', version: '0', draft: true }));
  expect(asDraft).toHaveProperty('card');
});

describe.each([
  ['the text', withFailingParts],
  ['the windows', withFailingBounds],
  ['a rule of the windows', () => withFailingRule('windows', throwing(new Error('x')))],
  ['a rule of order', () => withFailingRule('order', throwing(new Error('x')))],
])('where %s failed, the editor', (_, made) => {
  const analysis = made();
  const written = analysis.snapshot.files.get(file)?.text ?? '';
  const document: EditorDocument = { text: TextDocument.create(file, 'yaml', 1, written), analysis };
  const findings = finish(analysis.findings('order'));
  const diagnostics = diagnosticsOf(document, findings, { descriptionOf: () => null, related: true });

  test('shows an error on the first line', () => {
    expect(diagnostics[0]).toMatchObject({
      code: 'not-checked',
      severity: 1,
      range: { start: { line: 0, character: 0 }, end: { line: 0, character: 9 } },
    });
  });

  test('answers at every place', () => {
    for (let offset = 0; offset <= written.length; offset += 7) {
      const position = document.text.positionAt(offset);
      expect(() => finish(hover(document, position))).not.toThrow();
      expect(() => complete(document, position, { snippets: true })).not.toThrow();
    }
    expect(outline(document)).toBeInstanceOf(Array);
    const hints = hintTexts(document, finish(analysis.windows()).value, finish(analysis.order()).value);
    const whole = { start: { line: 0, character: 0 }, end: { line: 999, character: 0 } };
    expect(inlayHints(document, whole, hints, hints)).toBeInstanceOf(Array);
    expect(finish(analysis.explain(7, 'driver-loop'))).toSatisfy(
      (one) => one === null || typeof one === 'object',
    );
    expect(finish(codeActions(document, diagnostics))).toBeInstanceOf(Array);
    expect(finish(fixAllActions(document))).toBeInstanceOf(Array);
  });
});

test('a fix is no fix where its trial could not be checked', () => {
  const read = (): never => {
    throw new Error('no disk');
  };
  const analysis = analyse(snapshotOf([{ id: file, text }], { folders: [], read }), file);
  const touch = finish(analysis.findings('order')).find(({ rule }) => rule === 'live-touch');
  if (touch === undefined) throw new Error('hands are on a live stage');
  expect(finish(tryText(analysis, touch, text.replace('- unplug: K30', '- do: Nothing.'))).gone).toBe(true);
  expect(finish(tryText(analysis, touch, `uses: [b.parts.yaml]\n${text}`)).gone).toBe(false);
});

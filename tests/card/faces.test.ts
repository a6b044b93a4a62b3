import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { buildCard } from '../../server/src/card/build.ts';
import { cardHtml } from '../../server/src/card/html.ts';
import { input } from './halden.ts';
import { nestingProblems, readText } from './well-formed.ts';

const model = buildCard(input);
const draft = buildCard({ ...input, draft: true });
const paper = cardHtml(model);
const editor = cardHtml(model, { face: 'editor' });

const styleOf = (html: string): string => /<style>([\s\S]*?)<\/style>/.exec(html)?.[1] ?? '';
const policyOf = (html: string): string =>
  /<meta http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(html)?.[1] ?? '';

/** Names and functions of colour that CSS Color 4 lets a style sheet write, as far as one would come upon them. */
const writtenColour = /#[0-9a-f]{3,8}\b|\b(?:rgba?|hsla?)\(|:\s*(?:black|white|gr[ae]y|red)\b/i;

describe.each([
  ['paper', paper],
  ['editor', editor],
  ['paper, draft', cardHtml(draft)],
  ['editor, draft', cardHtml(draft, { face: 'editor' })],
  ['paper, A5', cardHtml(model, { paper: 'A5' })],
])('the face for %s', (_name, html) => {
  // Content Security Policy Level 3, 2.3.1 and 6.7.3.3 (from memory): the source is the base64 of the SHA-256 of the
  // element's text in UTF-8.
  test('lets in its own style sheet by its hash, and nothing else', () => {
    const hash = createHash('sha256').update(styleOf(html), 'utf8').digest('base64');
    expect(policyOf(html)).toBe(`default-src 'none'; style-src 'sha256-${hash}'`);
    expect(html.match(/<style\b/g)).toHaveLength(1);
  });

  // The policy keeps style attributes out as well: one that was written would do nothing.
  test('has no style attribute and no script', () => {
    expect(html).not.toMatch(/<[^>]*\sstyle\s*=|<script|\son[a-z]+\s*=/i);
    expect(nestingProblems(html)).toEqual([]);
  });
});

describe('the face in the editor', () => {
  test('says what the paper says', () => {
    expect(readText(editor)).toBe(readText(paper));
    expect(readText(cardHtml(draft, { face: 'editor' }))).toContain('DRAFT');
  });

  test('takes every colour from the theme of the editor', () => {
    const style = styleOf(editor);
    // What stands behind the comma is for a page without such variables.
    const rest = style.replaceAll(/var\(--vscode-[a-zA-Z-]+, #[0-9a-f]{3}\)/g, 'theme');
    expect(rest).not.toBe(style);
    expect(rest).not.toMatch(writtenColour);
    expect(style).toContain('var(--vscode-font-family');
  });

  test('has no pages', () => {
    expect(styleOf(editor)).not.toContain('@page');
  });
});

test('the face on paper knows nothing of an editor', () => {
  expect(paper).not.toContain('--vscode');
  expect(styleOf(paper)).toMatch(/@page/);
  expect(styleOf(paper)).toMatch(writtenColour);
});

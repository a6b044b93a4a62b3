import type { CompletionItem, DocumentSymbol, Position, TextEdit } from 'vscode-languageserver-types';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { finish } from '../../server/src/model/work.ts';
import { cardHtml } from '../../server/src/card/html.ts';
import { checkJson } from '../../server/src/cli/check-json.ts';
import { checkSarif } from '../../server/src/cli/check-sarif.ts';
import { checkText } from '../../server/src/cli/check-text.ts';
import { windowsJson } from '../../server/src/cli/windows-json.ts';
import { windowsText } from '../../server/src/cli/windows-text.ts';
import { codeActions, fixAllActions } from '../../server/src/editor/code-actions.ts';
import { complete } from '../../server/src/editor/completion.ts';
import { diagnosticsOf } from '../../server/src/editor/diagnostics.ts';
import type { EditorDocument } from '../../server/src/editor/document.ts';
import { hover } from '../../server/src/editor/hover.ts';
import { hintTexts, inlayHints } from '../../server/src/editor/inlay-hints.ts';
import { outline } from '../../server/src/editor/outline.ts';
import { card } from '../../server/src/project/card.ts';
import { isStandingError } from '../../server/src/model/finding.ts';
import type { Finding } from '../../server/src/model/finding.ts';
import { nestingProblems } from '../card/well-formed.ts';
import { fakeTerminal } from '../cli/fake-terminal.ts';
import type { Chance } from '../oracle/chance.ts';
import { opened, partsUri, uri } from './input.ts';
import type { Input } from './input.ts';
import { unread } from './unread.ts';

/*
 * All that is ever asked of a text, and what must hold of the answers whatever the text is. What is wrong comes back in
 * words; a throw is left to whoever asked.
 */

export type Wrong = (what: string) => void;

/** `asks`: how many places of the file the editor is asked about. */
export function wholeAnswer(input: Input, chance: Chance, asks: number): readonly string[] {
  const problems = new Set<string>();
  const wrong: Wrong = (what) => void problems.add(what);
  const document = opened(input);
  const findings = finish(document.analysis.findings('order'));
  const said = saidBy(input, wrong);
  checkFindings(document, findings, said, wrong);
  checkTwice(input, findings, wrong);
  for (const what of unread(document.analysis.procedure().value, findings)) wrong(what);
  checkCard(document, findings, said, wrong);
  checkPrinted(document, findings, said, wrong);
  checkEditor(document, findings, said, wrong);
  for (let left = asks; left > 0; left -= 1) checkPlace(document, findings, chance, said, wrong);
  const parts = opened(input, partsUri);
  checkFindings(parts, finish(parts.analysis.findings('order')), said, wrong);
  return [...problems];
}

type Said = (where: string, text: string) => void;

/** Words of the machine in a text for people, unless the author wrote them. */
function saidBy({ text, parts }: Input, wrong: Wrong): Said {
  const written = `${text}\n${parts}`;
  const strange = ['undefined', '[object Object]', 'NaN', 'Infinity', 'null'].filter(
    (word) => !written.includes(word),
  );
  return (where, said) => {
    // The name of a rule.
    const printed = said.replaceAll('window-undefined', '');
    for (const word of strange)
      if (printed.includes(word)) wrong(`${where} says ${word}: ${around(printed, word)}`);
  };
}

function around(text: string, word: string): string {
  const at = text.indexOf(word);
  return JSON.stringify(text.slice(Math.max(0, at - 60), at + 60));
}

function checkFindings(
  { analysis, text: document }: EditorDocument,
  findings: readonly Finding[],
  said: Said,
  wrong: Wrong,
): void {
  const keys = new Set<string>();
  for (const finding of findings) {
    const { rule, message, at, related, waived, key } = finding;
    said(`the finding ${rule}`, message);
    if (!/\S{3}/.test(message)) wrong(`the finding ${rule} says nothing`);
    if (keys.has(key)) wrong(`two findings have the key ${key.slice(0, 80)}`);
    keys.add(key);
    const places = [at, ...related.map((one) => one.at), ...(waived === undefined ? [] : [waived.at])];
    for (const place of places) {
      const text = place.file === document.uri ? document.getText() : textOf(analysis, place.file);
      const { from, to } = analysis.range(place);
      if (!(from >= 0 && from <= to && to <= text.length))
        wrong(`the finding ${rule} stands at ${from}..${to} of ${text.length}`);
      else if (/[\r\n]/.test(text.slice(from, to))) wrong(`the finding ${rule} runs over lines`);
      else if (from === to && text.trim() !== '') wrong(`the finding ${rule} marks nothing`);
    }
  }
}

function textOf(analysis: EditorDocument['analysis'], file: string): string {
  return analysis.snapshot.files.get(file)?.text ?? '';
}

/** The same text gives the same answer, also where nothing is remembered. */
function checkTwice(input: Input, findings: readonly Finding[], wrong: Wrong): void {
  const again = finish(opened(input).analysis.findings('order'));
  const [one, other] = [findings, again].map((all) =>
    all.map(({ key, message, severity, trace }) => [key, message, severity, trace?.length ?? 0]),
  );
  if (JSON.stringify(one) !== JSON.stringify(other)) wrong('a second run finds something else');
}

function checkCard(
  { analysis }: EditorDocument,
  findings: readonly Finding[],
  said: Said,
  wrong: Wrong,
): void {
  const options = { date: '2031-04-17', version: '0.0.0' };
  const draft = finish(card(analysis, { ...options, draft: true }));
  if ('refused' in draft) wrong('a draft of the card is refused');
  else {
    const html = cardHtml(draft.card);
    for (const problem of nestingProblems(html).slice(0, 3)) wrong(`the card is not well formed: ${problem}`);
    said('the card', html);
  }
  const final = finish(card(analysis, { ...options, draft: false }));
  const standing = findings.some(isStandingError);
  if ('card' in final && standing) wrong('a card is printed although there are errors');
}

function checkPrinted(
  { analysis }: EditorDocument,
  findings: readonly Finding[],
  said: Said,
  wrong: Wrong,
): void {
  const checked = { analysis, findings, complete: finish(analysis.order()).complete };
  const exit = findings.some(isStandingError) ? 1 : 0;
  const sarif = { checked: [checked], problems: [], exit, folder: '/workshop' } as const;
  parsed('JSON', [...checkJson([checked])].join(''), wrong);
  parsed('SARIF', [...checkSarif(sarif)].join(''), wrong);
  const { terminal } = fakeTerminal();
  const printed = [...checkText(terminal, [checked])].join('');
  said('the terminal', printed);
  if (steering.test(printed)) wrong('the terminal gets what steers it');
  const { value: readings, complete: all } = finish(analysis.windows());
  const asked = {
    steps: new Set(readings.readings.map(({ index }) => index)),
    entered: new Map<string, number>(),
    explanation: () => null,
  };
  parsed('windows as JSON', windowsJson(analysis, readings, all, asked), wrong);
  said('the windows', windowsText(terminal, analysis, readings, findings, asked));
}

const steering = /[\u0000-\u0008\u000B-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069]/;

function parsed(what: string, text: string, wrong: Wrong): void {
  try {
    JSON.parse(text);
  } catch (error) {
    wrong(`${what} cannot be parsed: ${String(error)}`);
  }
}

function checkEditor(document: EditorDocument, findings: readonly Finding[], said: Said, wrong: Wrong): void {
  const { text, analysis } = document;
  for (const related of [true, false])
    for (const { message, range } of diagnosticsOf(document, findings, {
      related,
      descriptionOf: () => null,
    })) {
      said('a diagnostic', typeof message === 'string' ? message : message.value);
      if (range.start.line !== range.end.line) wrong('a diagnostic runs over lines');
    }
  const now = hintTexts(document, finish(analysis.windows()).value, finish(analysis.order()).value);
  const whole = { start: { line: 0, character: 0 }, end: { line: text.lineCount, character: 0 } };
  for (const { label, position } of inlayHints(document, whole, now, now)) {
    said('a hint', typeof label === 'string' ? label : label.map(({ value }) => value).join(''));
    if (position.line >= text.lineCount) wrong('a hint stands behind the end');
  }
  checkSymbols(outline(document), text, said, wrong);
}

function checkSymbols(
  symbols: readonly DocumentSymbol[],
  text: TextDocument,
  said: Said,
  wrong: Wrong,
): void {
  for (const { name, range, selectionRange, children = [] } of symbols) {
    said('the outline', name);
    if (name === '') wrong('the outline has an entry without a name');
    // Editors refuse the whole outline where this does not hold.
    if (!inside(selectionRange.start, range) || !inside(selectionRange.end, range))
      wrong('in the outline a name stands outside of its range');
    if (range.end.line >= text.lineCount && text.lineCount > 1) wrong('the outline runs behind the end');
    checkSymbols(children, text, said, wrong);
  }
}

function inside(at: Position, { start, end }: DocumentSymbol['range']): boolean {
  return !isBefore(at, start) && !isBefore(end, at);
}

function isBefore(one: Position, other: Position): boolean {
  return one.line < other.line || (one.line === other.line && one.character < other.character);
}

/** What is asked where the cursor stands. */
export function checkPlace(
  document: EditorDocument,
  findings: readonly Finding[],
  chance: Chance,
  said: Said,
  wrong: Wrong,
): void {
  const { text } = document;
  const position = text.positionAt(chance.whole(0, text.getText().length));
  const snippets = chance.happens(0.5);
  for (const item of complete(document, position, { snippets })) checkItem(item, document, position, wrong);
  const shown = finish(hover(document, position));
  if (shown !== null) said('the hover', JSON.stringify(shown.contents).replaceAll('null', ''));
  if (findings.length > 0) checkFixes(document, chance.pick(findings), findings, wrong);
}

/** An item replaces what stands around the cursor on its line, and nothing else. */
function checkItem(item: CompletionItem, { text }: EditorDocument, position: Position, wrong: Wrong): void {
  const { range, newText } = item.textEdit as TextEdit;
  const isHere = range.start.line === position.line && range.end.line === position.line;
  if (!isHere || isBefore(position, range.start) || isBefore(range.end, position))
    wrong(`the item ${item.label} replaces what is not under the cursor`);
  if (newText === '' || item.label === '') wrong('an item is empty');
  if (range.end.character > text.getText().length) wrong(`the item ${item.label} ends behind the line`);
}

/** A fix has been tried: after it there is less of what it mends. */
function checkFixes(
  document: EditorDocument,
  finding: Finding,
  findings: readonly Finding[],
  wrong: Wrong,
): void {
  const [diagnostic] = diagnosticsOf(document, [finding], { related: true, descriptionOf: () => null });
  if (diagnostic === undefined || finding.waived !== undefined) return;
  for (const { edit, title } of finish(codeActions(document, [diagnostic]))) {
    const after = afterEdits(document, edit?.changes?.[uri] ?? []);
    const left = after.filter((one) => isAlike(one, finding)).length;
    const before = findings.filter((one) => isAlike(one, finding)).length;
    if (left >= before) wrong(`the fix "${title}" leaves ${finding.rule} as it is`);
  }
}

function isAlike(one: Finding, { rule, subject, severity }: Finding): boolean {
  return (
    one.rule === rule && one.subject === subject && one.severity === severity && one.waived === undefined
  );
}

/** All that has a sure way, mended at once: there is less of something then, although what could be read may hold more. */
export function checkFixAll(input: Input): readonly string[] {
  const document = opened(input);
  const [action] = finish(fixAllActions(document));
  if (action === undefined) return [];
  const before = finish(document.analysis.findings('order'));
  const after = afterEdits(document, action.edit?.changes?.[uri] ?? []);
  const isLess = (one: Finding): boolean =>
    after.filter((other) => isAlike(other, one)).length <
    before.filter((other) => isAlike(other, one)).length;
  return before.some(isLess) ? [] : ['all fixes at once mend nothing'];
}

function afterEdits({ text, analysis }: EditorDocument, edits: readonly TextEdit[]): readonly Finding[] {
  const changed = TextDocument.applyEdits(text, [...edits]);
  const parts = textOf(analysis, partsUri);
  return finish(opened({ text: changed, parts }).analysis.findings('order'));
}

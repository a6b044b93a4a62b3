import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type {
  CodeAction,
  Command,
  CompletionItem,
  Diagnostic,
  DocumentSymbol,
  InlayHint,
  Position,
  Range,
  TextEdit,
} from 'vscode-languageserver-protocol/node';
import {
  CodeActionRequest,
  CompletionRequest,
  DiagnosticSeverity,
  DocumentSymbolRequest,
  ExitNotification,
  HoverRequest,
  InlayHintRequest,
  InsertTextFormat,
} from 'vscode-languageserver-protocol/node';
import { firstFinding, printedWindows } from '../workbench/program.ts';
import type { Session } from './stdio-client.ts';
import {
  edited,
  exitStatus,
  lineOf,
  minimal,
  program,
  rich,
  shippedText,
  startSession,
  without,
} from './stdio-client.ts';

/*
 * The server as every editor meets it: a process of its own and the messages of the Language Server Protocol 3.17 over
 * its standard input and output. Windows are held against what the program prints of the same file.
 */

const uri = 'file:///workshop/shipped.procedure.yaml';
const off = '  - disconnect: battery';
const unsafeText = without(shippedText, off);
const windows = printedWindows(shippedText);

async function sessionWith(text: string, capabilities = rich): Promise<Session> {
  const session = await startSession(capabilities);
  await session.open(uri, text);
  return session;
}

const wholeOf = (text: string): Range => ({
  start: { line: 0, character: 0 },
  end: { line: text.split('\n').length, character: 0 },
});

async function hints(session: Session, range: Range): Promise<readonly InlayHint[]> {
  return (
    (await session.connection.sendRequest(InlayHintRequest.type, { textDocument: { uri }, range })) ?? []
  );
}

const hintText = ({ label }: InlayHint): string =>
  typeof label === 'string' ? label : label.map(({ value }) => value).join('');

async function hover(session: Session, position: Position): Promise<string> {
  const answer = await session.connection.sendRequest(HoverRequest.type, { textDocument: { uri }, position });
  const { contents } = answer ?? { contents: '' };
  if (typeof contents === 'object' && !Array.isArray(contents)) return contents.value;
  throw new Error('a hover is marked up');
}

/** The place of the mark `|`, and the text without it. */
function marked(text: string): { readonly text: string; readonly position: Position } {
  const before = text.slice(0, text.indexOf('|')).split('\n');
  return {
    text: text.replace('|', ''),
    position: { line: before.length - 1, character: (before.at(-1) ?? '').length },
  };
}

/** The shipped file with one line put behind the line that starts with `after`; `|` is the cursor. */
function typed(after: string, line: string): { readonly text: string; readonly position: Position } {
  const lines = shippedText.split('\n');
  return marked(lines.toSpliced(lineOf(shippedText, after) + 1, 0, line).join('\n'));
}

async function completions(
  session: Session,
  { text, position }: { readonly text: string; readonly position: Position },
): Promise<readonly CompletionItem[]> {
  await session.change(uri, text);
  const answer = await session.connection.sendRequest(CompletionRequest.type, {
    textDocument: { uri },
    position,
  });
  return Array.isArray(answer) ? answer : (answer?.items ?? []);
}

const labels = (items: readonly CompletionItem[]): readonly string[] =>
  items.map(({ label }) => label).sort();

async function codeActions(
  session: Session,
  diagnostic: Diagnostic,
): Promise<readonly (CodeAction | Command)[]> {
  const actions = await session.connection.sendRequest(CodeActionRequest.type, {
    textDocument: { uri },
    range: diagnostic.range,
    context: { diagnostics: [diagnostic] },
  });
  return actions ?? [];
}

function editsOf(action: CodeAction | Command | undefined): readonly TextEdit[] {
  if (action === undefined || !('edit' in action)) return [];
  const { changes = {}, documentChanges = [] } = action.edit;
  const versioned = documentChanges.flatMap((change) => ('edits' in change ? change.edits : []));
  return [...(changes[uri] ?? []), ...versioned].filter((edit): edit is TextEdit => 'newText' in edit);
}

const errorsIn = (items: readonly Diagnostic[]): readonly Diagnostic[] =>
  items.filter(({ severity }) => severity === DiagnosticSeverity.Error);

function touch(items: readonly Diagnostic[]): Diagnostic {
  const found = items.find(({ code }) => code === 'live-touch');
  if (found === undefined) throw new Error(`no live-touch among ${JSON.stringify(items)}`);
  return found;
}

describe('a client that can do much', () => {
  let session: Session;
  beforeAll(async () => {
    session = await sessionWith(shippedText);
  });
  afterAll(async () => {
    expect(await session.end()).toBe(0);
  });

  test('is told what the server can do', () => {
    const { capabilities, serverInfo } = session.initialized;
    expect(serverInfo?.name).toBeTruthy();
    expect(capabilities.diagnosticProvider).toBeDefined();
    expect(capabilities.inlayHintProvider).toBeTruthy();
    expect(capabilities.hoverProvider).toBeTruthy();
    expect(capabilities.completionProvider).toBeDefined();
    expect(capabilities.documentSymbolProvider).toBeTruthy();
    expect(capabilities.codeActionProvider).toBeTruthy();
  });

  test('finds nothing in the shipped file', async () => {
    await session.change(uri, shippedText);
    expect(await session.findings(uri)).toEqual([]);
  });

  test('finds the unsafe touch where it happens, with the steps of the path to it and the meaning of the rule', async () => {
    await session.change(uri, unsafeText);
    const found = touch(await session.findings(uri));
    const printed = firstFinding(unsafeText, 'live-touch');
    expect(found).toMatchObject({
      severity: DiagnosticSeverity.Error,
      range: printed.range,
      message: printed.message,
    });
    expect(wordAt(unsafeText, found.range)).toMatch(/stage-1|K30/);
    expect(found.source).toBeTruthy();
    expect(found.message).toContain('stage-1');
    expect(described(found)).toContain('live-touch');
    const related = found.relatedInformation ?? [];
    expect(related.map(({ location }) => location.uri)).toEqual(related.map(() => uri));
    const lines = related.map(({ location }) => location.range.start.line);
    // The way there: the ignition comes on, the first reading is out of its window, the ignition goes off.
    for (const step of ['  - ignition: on', '  - read: stage-1-loop', '  - ignition: off'])
      expect(lines).toContain(lineOf(unsafeText, step));
    expect(lines).toEqual([...lines].sort((a, b) => a - b));
    expect(related.every(({ message }) => message.length > 0)).toBe(true);
  });

  test('is offered one preferred fix, and after it nothing is wrong', async () => {
    await session.change(uri, unsafeText);
    const found = touch(await session.findings(uri));
    const actions = await codeActions(session, found);
    const preferred = actions.filter((action) => 'isPreferred' in action && action.isPreferred);
    expect(preferred).toHaveLength(1);
    const mended = edited(uri, unsafeText, editsOf(preferred[0]));
    expect(mended.split(off).length).toBe(shippedText.split(off).length);
    await session.change(uri, mended);
    expect(errorsIn(await session.findings(uri))).toEqual([]);
  });

  test('sees at every reading the window that the program prints', async () => {
    await session.change(uri, shippedText);
    const seen = await hints(session, wholeOf(shippedText));
    expect(windows.length).toBeGreaterThan(3);
    for (const { line, printed } of windows) {
      const there = seen.filter(({ position }) => position.line === line).map(hintText);
      expect(there.join(' ')).toContain(`reads ${printed}`);
    }
  });

  test('sees the wait that is owed where power goes off', async () => {
    await session.change(uri, shippedText);
    const line = lineOf(shippedText, off);
    const there = (await hints(session, wholeOf(shippedText))).filter((hint) => hint.position.line === line);
    expect(there.map(hintText).join(' ')).toContain('3 min');
  });

  test('gets hints for the lines that it asks for and for no others', async () => {
    await session.change(uri, shippedText);
    const [first, second] = windows;
    if (first === undefined || second === undefined) throw new Error('two readings are needed');
    const range = { start: { line: second.line, character: 0 }, end: { line: second.line, character: 200 } };
    const seen = await hints(session, range);
    expect(seen.map(({ position }) => position.line)).toEqual([second.line]);
    expect(first.line).not.toBe(second.line);
  });

  test('keeps the windows while a line is half typed, as those of an earlier text', async () => {
    await session.change(uri, shippedText);
    const before = await hints(session, wholeOf(shippedText));
    const line = lineOf(shippedText, '  - section: Make safe');
    const broken = shippedText.split('\n').with(line, '  - unplug: [K30').join('\n');
    await session.change(uri, broken);
    const after = await hints(session, wholeOf(broken));
    const readings = (all: readonly InlayHint[]): readonly (readonly [number, string])[] =>
      all
        .map((hint) => [hint.position.line, hintText(hint)] as const)
        .filter(([, text]) => text.includes('reads'));
    expect(readings(after)).toEqual(readings(before).map(([at, text]) => [at, `earlier: ${text}`]));
    expect(readings(before)).not.toEqual([]);
  });

  test('can switch the hints off and on', async () => {
    await session.change(uri, shippedText);
    const whole = wholeOf(shippedText);
    await session.settle({ ohmwright: { inlayHints: { enabled: false } } });
    expect(await hints(session, whole)).toEqual([]);
    await session.settle({ ohmwright: { inlayHints: { enabled: true } } });
    expect(await hints(session, whole)).not.toEqual([]);
  });

  test('is not asked for its settings again at every keystroke', async () => {
    await session.change(uri, shippedText);
    await hints(session, wholeOf(shippedText));
    const before = session.settingsAsked();
    for (let stroke = 1; stroke <= 8; stroke += 1) {
      await session.change(uri, `${shippedText}${'#'.repeat(stroke)}\n`);
      await session.findings(uri);
      await hints(session, wholeOf(shippedText));
    }
    expect(session.settingsAsked()).toBe(before);
    expect(before).toBeLessThan(10);
  });

  test('reads in a hover what a reading should show', async () => {
    await session.change(uri, shippedText);
    for (const { line, printed } of windows.slice(0, 2))
      expect(await hover(session, { line, character: '  - read: st'.length })).toContain(printed);
  });

  test('reads in a hover what the schema says of a key', async () => {
    await session.change(uri, shippedText);
    const schema = readFileSync(new URL('../../schemas/procedure.schema.json', import.meta.url), 'utf8');
    const meaning = 'From which state of the connector on the bar is closed.';
    expect(schema).toContain(meaning);
    const line = lineOf(shippedText, '  K30: ');
    const character = (shippedText.split('\n')[line] ?? '').indexOf('closes') + 2;
    expect(await hover(session, { line, character })).toContain(meaning);
  });

  test('reads in a hover what an id stands for', async () => {
    await session.change(uri, shippedText);
    const line = lineOf(shippedText, '  - unplug: K30');
    const said = await hover(session, { line, character: '  - unplug: K'.length });
    expect(said).toContain('K30');
    expect(said).toMatch(/connector/i);
  });

  test('sees the circuit and the sections of the procedure in the outline, each within what it belongs to', async () => {
    await session.change(uri, shippedText);
    const answer = await session.connection.sendRequest(DocumentSymbolRequest.type, {
      textDocument: { uri },
    });
    const symbols = (answer ?? []) as readonly DocumentSymbol[];
    const names: string[] = [];
    const holds = (outer: Range, inner: Range): boolean =>
      before(outer.start, inner.start) && before(inner.end, outer.end);
    const walk = (symbol: DocumentSymbol): void => {
      names.push(symbol.name);
      expect(holds(symbol.range, symbol.selectionRange), `selection of ${symbol.name}`).toBe(true);
      for (const child of symbol.children ?? []) {
        expect(holds(symbol.range, child.range), `${child.name} in ${symbol.name}`).toBe(true);
        walk(child);
      }
    };
    symbols.forEach(walk);
    const sections = [...shippedText.matchAll(/^ {2}- section: (.*)$/gm)].map(([, name = '']) => name);
    expect(names).toEqual(expect.arrayContaining([...sections, 'K30', 'bench-lamp', 'stage-1-loop']));
  });

  test('completes verbs as snippets', async () => {
    const items = await completions(session, typed('  - section: Make safe', '  - |'));
    expect(labels(items)).toEqual(
      expect.arrayContaining(['disconnect', 'ignition', 'read', 'unplug', 'wait']),
    );
    const unplug = items.find(({ label }) => label === 'unplug');
    expect(unplug?.insertTextFormat).toBe(InsertTextFormat.Snippet);
    expect(unplug?.textEdit?.newText ?? unplug?.insertText).toMatch(/\$(\d|\{\d)/);
  });

  test('completes the keys of a step and not those of another', async () => {
    const items = labels(await completions(session, typed('  - fit: bench-lamp', '    |')));
    expect(items).toEqual(expect.arrayContaining(['warning', 'id']));
    expect(items).not.toContain('outcomes');
    expect(items).not.toContain('shorting-bar');
  });

  test('completes the ids that fit the place', async () => {
    const unplug = labels(await completions(session, typed('  - section: Make safe', '  - unplug: |')));
    expect(unplug).toEqual(['K10', 'K21', 'K30', 'K31']);
    const fit = labels(await completions(session, typed('  - section: Make safe', '  - fit: |')));
    expect(fit).toEqual(['bench-lamp']);
    const go = labels(await completions(session, typed('  - section: Make safe', '  - go: |')));
    expect(go).toEqual(expect.arrayContaining(['make-safe', 'close-unit', 'sound']));
    expect(go).not.toContain('K30');
  });

  test('completes units', async () => {
    const items = await completions(session, typed('  - section: Make safe', '  - wait: 3 |'));
    const units = labels(items).map((label) => label.replace(/^3 /, ''));
    expect(units).toEqual(expect.arrayContaining(['min', 's']));
    expect(units).not.toContain('Ω');
  });

  test('never sees a finding longer than a line, however the text is cut', async () => {
    let seen = 0;
    for (let length = 150; length < shippedText.length; length += 450) {
      await session.change(uri, shippedText.slice(0, length));
      for (const { range, message } of await session.findings(uri)) {
        seen += 1;
        expect([range.start.line, message]).toEqual([range.end.line, message]);
      }
    }
    expect(seen).toBeGreaterThan(10);
  });
});

describe('a client that can do nothing beyond what all can', () => {
  let session: Session;
  beforeAll(async () => {
    session = await sessionWith(shippedText, minimal);
  });
  afterAll(async () => {
    expect(await session.end()).toBe(0);
  });

  test('is sent what is found, without what it cannot show', async () => {
    expect(await session.findings(uri)).toEqual([]);
    await session.change(uri, unsafeText);
    const found = touch(await session.findings(uri));
    expect(found.range).toEqual(firstFinding(unsafeText, 'live-touch').range);
    expect(found).not.toHaveProperty('relatedInformation');
    expect(found).not.toHaveProperty('codeDescription');
    await session.change(uri, shippedText);
    expect(await session.findings(uri)).toEqual([]);
  });

  test('is never asked for settings', () => {
    expect(session.settingsAsked()).toBe(0);
  });

  test('completes verbs as plain text', async () => {
    const items = await completions(session, typed('  - section: Make safe', '  - |'));
    expect(labels(items)).toEqual(expect.arrayContaining(['disconnect', 'unplug']));
    for (const { insertTextFormat, insertText, textEdit } of items) {
      expect(insertTextFormat ?? InsertTextFormat.PlainText).toBe(InsertTextFormat.PlainText);
      expect(`${insertText ?? ''}${textEdit?.newText ?? ''}`).not.toMatch(/\$/);
    }
  });

  test('gets the outline as a flat list', async () => {
    await session.change(uri, shippedText);
    const symbols = await session.connection.sendRequest(DocumentSymbolRequest.type, {
      textDocument: { uri },
    });
    expect(symbols?.length).toBeGreaterThan(10);
    for (const symbol of symbols ?? []) {
      expect(symbol).toHaveProperty('location.uri', uri);
      expect(symbol).not.toHaveProperty('children');
    }
  });

  test('is not given code actions as literals, which it did not say that it reads', async () => {
    await session.change(uri, unsafeText);
    const found = touch(await session.findings(uri));
    for (const action of await codeActions(session, found)) expect(typeof action.command).toBe('string');
  });
});

describe('the process', () => {
  test('ends with 1 where the client leaves without the word before', async () => {
    const session = await sessionWith(shippedText);
    const status = exitStatus(session.server);
    await session.connection.sendNotification(ExitNotification.type);
    expect(await status).toBe(1);
  });

  test('ends by itself where the client is gone', async () => {
    const session = await sessionWith(shippedText);
    const status = exitStatus(session.server);
    session.connection.dispose();
    session.server.stdin?.end();
    expect(await status).not.toBeNull();
  });

  test('answers what it does not know with an error and goes on', async () => {
    const session = await sessionWith(shippedText);
    await expect(session.connection.sendRequest('workshop/coffee', {})).rejects.toMatchObject({
      code: -32601,
    });
    expect(await session.findings(uri)).toEqual([]);
    expect(await session.end()).toBe(0);
  });

  test('says on the command line how it is started', () => {
    const { status, stdout } = spawnSync(process.execPath, [program, '--help'], { encoding: 'utf8' });
    expect([status, stdout]).toEqual([0, expect.stringContaining('serve')]);
  });
});

/** The line of the page of rules that the code of a diagnostic leads to. */
function described({ codeDescription }: Diagnostic): string | undefined {
  const place = new URL(codeDescription?.href ?? 'about:blank');
  const line = Number(/^#L(\d+)$/.exec(place.hash)?.[1]);
  place.hash = '';
  return readFileSync(place, 'utf8').split('\n')[line - 1];
}

function wordAt(text: string, { start, end }: Range): string {
  return (text.split('\n')[start.line] ?? '').slice(start.character, end.character);
}

function before(one: Position, other: Position): boolean {
  return one.line < other.line || (one.line === other.line && one.character <= other.character);
}

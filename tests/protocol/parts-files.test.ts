import { afterEach, describe, expect, test } from 'vitest';
import type { Diagnostic } from 'vscode-languageserver-types';
import { parse } from 'yaml';
import { example, makeSafe } from '../../server/src/rules/examples.ts';
import { inMemory } from './in-memory.ts';
import type { InMemory, Surroundings } from './in-memory.ts';

/* A parts file that is changed, in the editor or on disk, changes what is said of the procedure that uses it. */

const uri = 'file:///vans/a.procedure.yaml';
const parts = 'file:///vans/shared/k.parts.yaml';
const languageId = 'ohmwright-procedure';

const { text } = example(
  '',
  `${makeSafe}
- unplug: K30
  warning: Stay clear of the front of the airbag.
- stop: Hand over to the workshop lead.
  leaves: [battery, K30, codes, repair]
`,
);
const section = /sources:\n(?: .*\n)+/.exec(text)?.[0] ?? '';
const usingAt = (name: string): string => text.replace(section, `uses: ['${name}']\n`);
const using = usingAt('shared/k.parts.yaml');
const partsText = (wait: string): string => `format: 1\n${section.replace('3 min', wait)}`;

const pulling = { textDocument: { diagnostic: {} } };

let opened: InMemory | undefined;
afterEach(() => {
  opened?.close();
  opened = undefined;
});

const send = async (method: string, params: object): Promise<void> => {
  await opened?.client.sendNotification(method, params);
};

const open = (at: string, content: string): Promise<void> =>
  send('textDocument/didOpen', { textDocument: { uri: at, languageId, version: 1, text: content } });

async function found(at = uri): Promise<readonly Diagnostic[]> {
  const report = await opened?.client.sendRequest('textDocument/diagnostic', { textDocument: { uri: at } });
  return (report as { items: Diagnostic[] }).items;
}

const rulesFound = async (at = uri): Promise<readonly unknown[]> => (await found(at)).map(({ code }) => code);

async function openBoth(files: ReadonlyMap<string, string>, surroundings?: Surroundings): Promise<void> {
  opened = await inMemory(pulling, undefined, files, surroundings);
  await open(uri, using);
}

test('as it stands on disk, and again when that is changed', async () => {
  const files = new Map<string, string>();
  await openBoth(files);
  expect(await rulesFound()).toEqual(['parts-file']);
  files.set(parts, partsText('3 min'));
  const changed = { changes: [{ uri: parts, type: 1 }] };
  await send('workspace/didChangeWatchedFiles', changed);
  expect(await rulesFound()).toEqual([]);
  files.set(parts, partsText('5 min'));
  await send('workspace/didChangeWatchedFiles', changed);
  expect(await rulesFound()).toEqual(['short-wait']);
});

test('as it stands in the editor, before it is saved', async () => {
  await openBoth(new Map([[parts, partsText('3 min')]]));
  expect(await rulesFound()).toEqual([]);
  await open(parts, partsText('4 min'));
  expect(await rulesFound()).toEqual(['short-wait']);
  await send('textDocument/didClose', { textDocument: { uri: parts } });
  expect(await rulesFound()).toEqual([]);
});

test('a parts file is one file, however the editor spells its address', async () => {
  opened = await inMemory({ textDocument: { diagnostic: {} } }, undefined, new Map());
  const open = (address: string, version: number, written: string) =>
    opened?.client.sendNotification('textDocument/didOpen', {
      textDocument: { uri: address, languageId: 'ohmwright-procedure', version, text: written },
    });
  const spelled = 'file:///C:/my%20vans/a.procedure.yaml';
  const found = async (): Promise<readonly unknown[]> => {
    const document = { textDocument: { uri: spelled } };
    const report = await opened?.client.sendRequest('textDocument/diagnostic', document);
    return (report as { items: Diagnostic[] }).items.map(({ code }) => code);
  };
  await open(spelled, 1, using.replace('k.parts.yaml', './/k (1).parts.json'));
  expect(await found()).toEqual(['parts-file']);
  await open(
    'file:///c%3A/my%20vans/shared/k%20%281%29.parts.json',
    1,
    JSON.stringify(parse(partsText('4 min'))),
  );
  expect(await found()).toEqual(['short-wait']);
});

test('of which the extension is told, and hints and findings are asked for anew', async () => {
  const introduction = { initializationOptions: { figures: true } };
  const refreshing = { inlayHint: { refreshSupport: true }, diagnostics: { refreshSupport: true } };
  opened = await inMemory({ ...pulling, workspace: refreshing }, undefined, undefined, { introduction });
  const { client } = opened;
  const heard: unknown[] = [];
  client.onNotification('ohmwright/stale', (stale) => {
    heard.push(stale);
  });
  client.onRequest('workspace/inlayHint/refresh', () => void heard.push('hints'));
  client.onRequest('workspace/diagnostic/refresh', () => void heard.push('findings'));
  await open(uri, using);
  await open('file:///vans/b.procedure.yaml', text);
  expect(await rulesFound()).toEqual(['parts-file']);
  expect(await rulesFound('file:///vans/b.procedure.yaml')).toEqual([]);
  expect(heard).toEqual([]);
  await open(parts, partsText('3 min'));
  expect(await rulesFound()).toEqual([]);
  expect(heard).toEqual([{ uris: [uri] }, 'findings', 'hints']);
  // A text that nobody uses changes nothing elsewhere.
  await open('file:///vans/c.parts.yaml', partsText('3 min'));
  expect(await rulesFound()).toEqual([]);
  expect(heard).toHaveLength(3);
});

describe('a client that does not watch files', () => {
  test('is answered as they stand on disk when it asks', async () => {
    const files = new Map([[parts, partsText('3 min')]]);
    await openBoth(files);
    expect(await rulesFound()).toEqual([]);
    files.set(parts, partsText('5 min'));
    expect(await rulesFound()).toEqual(['short-wait']);
    files.delete(parts);
    expect(await rulesFound()).toEqual(['parts-file']);
  });

  test('is told of a change that it does not ask about', async () => {
    const files = new Map([[parts, partsText('3 min')]]);
    // A clock of which the test says when it goes on.
    const waiting = new Set<() => void>();
    const after = (_: number, task: () => void): (() => void) => {
      waiting.add(task);
      return () => waiting.delete(task);
    };
    const goOn = (): void => {
      const due = [...waiting];
      waiting.clear();
      for (const task of due) task();
    };
    opened = await inMemory({}, undefined, files, { host: { time: { after } } });
    const { client } = opened;
    const published = (): Promise<readonly unknown[]> =>
      new Promise((resolve) => {
        client.onNotification(
          'textDocument/publishDiagnostics',
          ({ diagnostics }: { diagnostics: Diagnostic[] }) => {
            resolve(diagnostics.map(({ code }) => code));
          },
        );
      });
    await open(uri, using);
    // What was sent is heard once this is answered.
    await client.sendRequest('ohmwright/template');
    const first = published();
    goOn();
    expect(await first).toEqual([]);
    files.set(parts, partsText('5 min'));
    const next = published();
    // The first round reads the file again, the second is the pause before something is pushed.
    goOn();
    goOn();
    expect(await next).toEqual(['short-wait']);
  });
});

describe('a file is known by its URI, however that is spelled', () => {
  const own = 'file:///c%3A/v%C3%A4ns/a.procedure.yaml';
  const cases: readonly (readonly [string, string])[] = [
    ['file:///C:/v%C3%A4ns/shared%20parts/k.parts.yaml', 'shared parts/k.parts.yaml'],
    ['file:///c:/v%c3%a4ns/shared%20parts/k.parts.yaml', 'shared parts/k.parts.yaml'],
    ['file:///c%3a/väns/shared parts/k.parts.yaml', './shared parts/k.parts.yaml'],
    [
      'file:///C%3A/x/../v%C3%A4ns/./shared%20parts//k%2Eparts.yaml',
      'shared parts/../shared parts/k.parts.yaml',
    ],
  ];

  test.each(cases)('the open %s is what is used as %s', async (spelled, name) => {
    opened = await inMemory(pulling);
    await open(own, usingAt(name));
    await open(spelled, partsText('5 min'));
    expect(await rulesFound(own)).toEqual(['short-wait']);
  });

  test('it is asked for under another spelling, and answered under that of the client', async () => {
    const [[spelled, name] = ['', '']] = cases;
    opened = await inMemory({
      textDocument: {
        diagnostic: { relatedInformation: true },
        codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: [''] } } },
      },
    });
    await open(own, usingAt(name));
    await open(spelled, partsText('5 min'));
    const other = 'file:///C:/väns/a.procedure.yaml';
    const placesOf = (all: readonly Diagnostic[]): ReadonlySet<string> =>
      new Set(
        all.flatMap(({ relatedInformation = [] }) => relatedInformation.map(({ location }) => location.uri)),
      );
    const diagnostics = await found(other);
    expect(placesOf(diagnostics)).toEqual(new Set([own]));
    const actions = await opened.client.sendRequest('textDocument/codeAction', {
      textDocument: { uri: other },
      range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
      context: { diagnostics },
    });
    const edited = (actions as { edit: { changes: object } }[]).flatMap(({ edit }) =>
      Object.keys(edit.changes),
    );
    expect(new Set(edited)).toEqual(new Set([own]));
    await send('textDocument/didChange', {
      textDocument: { uri: spelled, version: 2 },
      contentChanges: [{ text: partsText('3 min').replace(', wait: 3 min', '') }],
    });
    const [noWait] = await found(other);
    expect([noWait?.code, placesOf(noWait === undefined ? [] : [noWait])]).toEqual([
      'no-wait',
      new Set([spelled]),
    ]);
  });

  test('it is changed and closed under another spelling', async () => {
    opened = await inMemory(pulling, undefined, new Map([[parts, partsText('3 min')]]));
    await open(uri, using);
    await open(parts, partsText('3 min'));
    const other = 'file:///vans/./shared/k%2Eparts.yaml';
    await send('textDocument/didChange', {
      textDocument: { uri: other, version: 2 },
      contentChanges: [{ text: partsText('5 min') }],
    });
    expect(await rulesFound()).toEqual(['short-wait']);
    await send('textDocument/didClose', { textDocument: { uri: other } });
    expect(await rulesFound()).toEqual([]);
  });
});

describe('folders of the workspace', () => {
  const outside = 'file:///shared/k.parts.yaml';
  const folders = (...uris: readonly string[]): readonly object[] =>
    uris.map((one) => ({ uri: one, name: one }));

  test('that come later let their files be used, and those that go no longer', async () => {
    const introduction = { workspaceFolders: folders('file:///vans') };
    opened = await inMemory(
      { ...pulling, workspace: { workspaceFolders: true } },
      undefined,
      new Map([[outside, partsText('3 min')]]),
      { introduction },
    );
    await open(uri, usingAt('../shared/k.parts.yaml'));
    expect((await found()).map(({ message }) => message)).toEqual([
      expect.stringContaining('lies outside the workspace'),
    ]);
    // The procedure lies in the new folder too.
    const event = { added: folders('file:///./'), removed: [] };
    await send('workspace/didChangeWorkspaceFolders', { event });
    expect(await rulesFound()).toEqual([]);
    await send('workspace/didChangeWorkspaceFolders', { event: { added: [], removed: event.added } });
    expect(await rulesFound()).toEqual(['parts-file']);
  });
});

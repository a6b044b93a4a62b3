import type { ChildProcess } from 'node:child_process';
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type {
  ClientCapabilities,
  Diagnostic,
  InitializeResult,
  ProtocolConnection,
  TextEdit,
} from 'vscode-languageserver-protocol/node';
import {
  ConfigurationRequest,
  createProtocolConnection,
  DiagnosticRefreshRequest,
  DidChangeConfigurationNotification,
  DidChangeTextDocumentNotification,
  DidOpenTextDocumentNotification,
  DocumentDiagnosticReportKind,
  DocumentDiagnosticRequest,
  ExitNotification,
  InitializedNotification,
  InitializeRequest,
  InlayHintRefreshRequest,
  PublishDiagnosticsNotification,
  RegistrationRequest,
  ShutdownRequest,
  StreamMessageReader,
  StreamMessageWriter,
  WorkDoneProgressCreateRequest,
} from 'vscode-languageserver-protocol/node';
import { languageId } from '../../server/src/protocol/messages.ts';

const root = new URL('../../', import.meta.url);

export const program = fileURLToPath(new URL('dist/cli.js', root));

export const shippedText = readFileSync(
  new URL('tests/fixtures/driver-airbag-written-out.procedure.yaml', root),
  'utf8',
);

/** Line numbers start at 0, as in the protocol. */
export function lineOf(text: string, start: string): number {
  const line = text.split('\n').findIndex((each) => each.startsWith(start));
  if (line === -1) throw new Error(`no line starts with ${start}`);
  return line;
}

/** The text without one line. */
export function without(text: string, start: string): string {
  return text.split('\n').toSpliced(lineOf(text, start), 1).join('\n');
}

/** A client that can do nothing but what every client can. */
export const minimal: ClientCapabilities = {};

/** A client that can do what the large editors can. */
export const rich: ClientCapabilities = {
  general: { positionEncodings: ['utf-16'] },
  textDocument: {
    synchronization: { dynamicRegistration: true, didSave: true },
    diagnostic: { dynamicRegistration: true, relatedDocumentSupport: true },
    publishDiagnostics: {
      relatedInformation: true,
      codeDescriptionSupport: true,
      dataSupport: true,
      versionSupport: true,
      tagSupport: { valueSet: [1, 2] },
    },
    hover: { contentFormat: ['markdown', 'plaintext'] },
    completion: {
      completionItem: { snippetSupport: true, documentationFormat: ['markdown', 'plaintext'] },
      contextSupport: true,
    },
    documentSymbol: { hierarchicalDocumentSymbolSupport: true },
    codeAction: {
      codeActionLiteralSupport: { codeActionKind: { valueSet: ['', 'quickfix', 'refactor', 'source'] } },
      isPreferredSupport: true,
      dataSupport: true,
      resolveSupport: { properties: ['edit'] },
    },
    inlayHint: { dynamicRegistration: true, resolveSupport: { properties: ['tooltip'] } },
  },
  workspace: {
    applyEdit: true,
    configuration: true,
    didChangeConfiguration: { dynamicRegistration: true },
    workspaceEdit: { documentChanges: true },
    diagnostics: { refreshSupport: true },
    inlayHint: { refreshSupport: true },
    workspaceFolders: true,
  },
  window: { workDoneProgress: true },
};

/** Settings as a client holds them, nested as in JSON: `{ ohmwright: { a: { b: false } } }`. */
export type ClientSettings = Readonly<Record<string, unknown>>;

/** The server as a process of its own, spoken to over its standard input and output and by nothing else. */
export interface Session {
  readonly connection: ProtocolConnection;
  readonly server: ChildProcess;
  readonly initialized: InitializeResult;
  /** How often the server has asked for settings so far. */
  readonly settingsAsked: () => number;
  /** Changes the settings and tells the server, as an editor does. */
  readonly settle: (settings: ClientSettings) => Promise<void>;
  readonly open: (uri: string, text: string) => Promise<void>;
  /** Replaces the whole text. */
  readonly change: (uri: string, text: string) => Promise<void>;
  /** What the server finds in the text as it is now: asked for where the server can be asked, else waited for. */
  readonly findings: (uri: string) => Promise<readonly Diagnostic[]>;
  /** Ends the session in order and gives the status of the process. */
  readonly end: () => Promise<number | null>;
}

export async function startSession(
  capabilities: ClientCapabilities,
  settingsAtFirst: ClientSettings = {},
): Promise<Session> {
  const server = spawn(process.execPath, [program, 'serve', '--stdio'], { stdio: ['pipe', 'pipe', 'pipe'] });
  const complaints: string[] = [];
  server.stderr.on('data', (data: Buffer) => complaints.push(String(data)));
  const connection = createProtocolConnection(
    new StreamMessageReader(server.stdout),
    new StreamMessageWriter(server.stdin),
  );
  let settings = settingsAtFirst;
  let asked = 0;
  connection.onRequest(ConfigurationRequest.type, ({ items }) => {
    asked += 1;
    return items.map(({ section }) => valueAt(settings, section));
  });
  connection.onRequest(RegistrationRequest.type, () => undefined);
  connection.onRequest(WorkDoneProgressCreateRequest.type, () => undefined);
  connection.onRequest(DiagnosticRefreshRequest.type, () => undefined);
  connection.onRequest(InlayHintRefreshRequest.type, () => undefined);

  const published = new Map<string, readonly Diagnostic[]>();
  const listeners = new Set<() => void>();
  const versions = new Map<string, number>();
  connection.onNotification(PublishDiagnosticsNotification.type, ({ uri, version, diagnostics }) => {
    // What was found in an older text says nothing of the present one.
    if (version !== undefined && version !== versions.get(uri)) return;
    published.set(uri, diagnostics);
    for (const listener of listeners) listener();
  });
  connection.listen();

  const initialized = await answered(
    connection.sendRequest(InitializeRequest.type, {
      processId: process.pid,
      clientInfo: { name: 'test' },
      // eslint-disable-next-line @typescript-eslint/no-deprecated -- the protocol still requires it
      rootUri: null,
      workspaceFolders: null,
      capabilities,
    }),
    server,
    complaints,
  );
  await connection.sendNotification(InitializedNotification.type, {});
  const pulls = initialized.capabilities.diagnosticProvider !== undefined;

  const nextPublished = (uri: string): Promise<readonly Diagnostic[]> =>
    new Promise((resolve, reject) => {
      const late = setTimeout(() => {
        reject(new Error(`The server published nothing for ${uri}. It said: ${complaints.join('')}`));
      }, 20_000);
      const look = (): void => {
        const items = published.get(uri);
        if (items === undefined) return;
        clearTimeout(late);
        listeners.delete(look);
        resolve(items);
      };
      listeners.add(look);
      look();
    });

  return {
    connection,
    server,
    initialized,
    settingsAsked: () => asked,
    settle: async (next) => {
      settings = next;
      await connection.sendNotification(DidChangeConfigurationNotification.type, { settings });
    },
    open: async (uri, text) => {
      versions.set(uri, 1);
      await connection.sendNotification(DidOpenTextDocumentNotification.type, {
        textDocument: { uri, languageId, version: 1, text },
      });
    },
    change: async (uri, text) => {
      const version = (versions.get(uri) ?? 0) + 1;
      versions.set(uri, version);
      published.delete(uri);
      await connection.sendNotification(DidChangeTextDocumentNotification.type, {
        textDocument: { uri, version },
        contentChanges: [{ text }],
      });
    },
    findings: async (uri) => {
      if (!pulls) return nextPublished(uri);
      const report = await connection.sendRequest(DocumentDiagnosticRequest.type, { textDocument: { uri } });
      if (report.kind === DocumentDiagnosticReportKind.Full) return report.items;
      throw new Error('A first answer cannot be `unchanged`.');
    },
    end: async () => {
      const exited = exitStatus(server);
      await connection.sendRequest(ShutdownRequest.type);
      await connection.sendNotification(ExitNotification.type);
      const status = await exited;
      connection.dispose();
      return status;
    },
  };
}

/** The status of a process once it has ended; null where it had to be ended by force. */
export function exitStatus(server: ChildProcess): Promise<number | null> {
  if (server.exitCode !== null) return Promise.resolve(server.exitCode);
  return new Promise((resolve) => {
    const force = setTimeout(() => server.kill('SIGKILL'), 10_000);
    server.once('exit', (status) => {
      clearTimeout(force);
      resolve(status);
    });
  });
}

/** The text after the edits of a code action, by a reference implementation. */
export function edited(uri: string, text: string, edits: readonly TextEdit[]): string {
  return TextDocument.applyEdits(TextDocument.create(uri, languageId, 1, text), [...edits]);
}

function valueAt(settings: ClientSettings, section: string | undefined): unknown {
  let value: unknown = settings;
  for (const name of section === undefined ? [] : section.split('.')) {
    if (typeof value !== 'object' || value === null) return null;
    value = new Map<string, unknown>(Object.entries(value)).get(name) ?? null;
  }
  return value;
}

/** The answer, or why none will come. */
async function answered<Answer>(
  answer: Promise<Answer>,
  server: ChildProcess,
  complaints: readonly string[],
): Promise<Answer> {
  const gone = once(server, 'exit').then(() => {
    throw new Error(`The server ended before it answered. It said: ${complaints.join('')}`);
  });
  gone.catch(() => undefined);
  return Promise.race([answer, gone]);
}

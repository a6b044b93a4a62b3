import type { CancellationToken, Connection, Diagnostic } from 'vscode-languageserver';
import { CancellationTokenSource, DocumentDiagnosticReportKind } from 'vscode-languageserver';
import { isStandingError } from '../text/finding.ts';
import type { Work } from '../bench/work.ts';
import { diagnosticsOf } from '../editor/diagnostics.ts';
import type { DescriptionOf } from '../editor/diagnostics.ts';
import type { EditorDocument } from '../editor/document.ts';
import type { Abilities } from './abilities.ts';
import { figuresNotification } from './messages.ts';
import type { Figures } from './messages.ts';
import type { OpenDocuments } from './open-documents.ts';
import { safely } from './safely.ts';
import { inSlices } from './slices.ts';
import type { Time } from './slices.ts';

/** After a keystroke the server waits this many milliseconds for the next one before it pushes diagnostics. */
const typingPause = 100;

export interface DiagnosticsHost {
  readonly connection: Connection;
  readonly documents: OpenDocuments;
  readonly abilities: Abilities;
  readonly descriptionOf: DescriptionOf;
  readonly time: Time;
}

/** Diagnostics as the client can take them: it asks, or they are pushed when the writer pauses. */
export function registerDiagnostics(host: DiagnosticsHost): Refreshing {
  return host.abilities.pullsDiagnostics ? answerPulls(host) : pushOnChange(host);
}

/** Makes the diagnostics of these documents new, although their text has not changed. */
export type Refreshing = (uris: readonly string[]) => void;

function answerPulls(host: DiagnosticsHost): Refreshing {
  const { connection, documents } = host;
  connection.languages.diagnostics.on((params, token) =>
    safely(
      connection.console,
      'Diagnostics',
      { kind: DocumentDiagnosticReportKind.Full, items: [] },
      token,
      async () => {
        const document = documents.get(params.textDocument.uri);
        const items = document === undefined ? [] : await compute(host, document, token);
        return { kind: DocumentDiagnosticReportKind.Full, items };
      },
    ),
  );
  return () => {
    if (host.abilities.refreshesDiagnostics) void connection.languages.diagnostics.refresh();
  };
}

function pushOnChange(host: DiagnosticsHost): Refreshing {
  const { connection, documents, time } = host;
  const pending = new Map<string, () => void>();
  const drop = (uri: string): void => {
    pending.get(uri)?.();
    pending.delete(uri);
  };
  const push = (uri: string): void => {
    drop(uri);
    const source = new CancellationTokenSource();
    const stopWaiting = time.after(typingPause, () => {
      void safely(connection.console, 'Diagnostics', undefined, source.token, async () => {
        const document = documents.get(uri);
        if (document === undefined) return;
        const diagnostics = await compute(host, document, source.token);
        await connection.sendDiagnostics({ uri, version: document.text.version, diagnostics });
      }).catch(() => undefined);
    });
    pending.set(uri, () => {
      stopWaiting();
      source.cancel();
    });
  };
  documents.texts.onDidChangeContent(({ document: { uri } }) => {
    push(uri);
  });
  documents.texts.onDidClose(({ document: { uri } }) => {
    drop(uri);
    void connection.sendDiagnostics({ uri, diagnostics: [] });
  });
  return (uris) => {
    for (const uri of uris) push(uri);
  };
}

async function compute(
  host: DiagnosticsHost,
  document: EditorDocument,
  token: CancellationToken,
): Promise<Diagnostic[]> {
  const { abilities, connection, time } = host;
  const findings = await inSlices(document.analysis.findings('order'), token, time);
  if (abilities.hearsFigures) {
    const figures = await inSlices(figuresOf(document), token, time);
    void connection.sendNotification(figuresNotification, figures);
  }
  const descriptionOf = abilities.showsDescriptions ? host.descriptionOf : () => null;
  return diagnosticsOf(document, findings, { descriptionOf, related: abilities.showsRelated });
}

function* figuresOf({ analysis, text }: EditorDocument): Work<Figures> {
  const findings = yield* analysis.findings('order');
  const { value: readings } = yield* analysis.windows();
  const { complete } = yield* analysis.order();
  return {
    uri: text.uri,
    version: text.version,
    errors: findings.filter(isStandingError).length,
    warnings: findings.filter(({ severity, waived }) => severity === 'warning' && waived === undefined)
      .length,
    steps: analysis.procedure().value.steps.length,
    readings: new Set(readings.readings.map(({ index }) => index)).size,
    complete,
  };
}

import type { CancellationToken, Connection, Diagnostic } from 'vscode-languageserver';
import { CancellationTokenSource, DocumentDiagnosticReportKind } from 'vscode-languageserver';
import type { Work } from '../model/work.ts';
import { diagnosticsOf, notChecked } from '../editor/diagnostics.ts';
import type { DescriptionOf } from '../editor/diagnostics.ts';
import type { EditorDocument } from '../editor/document.ts';
import { isStandingError, isShown } from '../model/finding.ts';
import type { Finding } from '../model/finding.ts';
import type { Abilities } from './abilities.ts';
import type { Answering } from './answering.ts';
import type { Asking } from './asking.ts';
import { failureNotification, figuresNotification } from './messages.ts';
import type { Failure, Figures } from './messages.ts';
import type { OpenTexts } from './open-texts.ts';
import type { Time } from './slices.ts';

/** After a keystroke the server waits this many milliseconds for the next one before it pushes diagnostics. */
const typingPause = 100;

export interface DiagnosticsHost {
  readonly connection: Connection;
  readonly texts: OpenTexts;
  readonly abilities: Abilities;
  readonly answering: Answering;
  readonly ask: Asking;
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
  const { connection, abilities, ask } = host;
  connection.languages.diagnostics.on(async ({ textDocument: { uri } }, token) => {
    const { items } = await report(host, uri, token);
    return { kind: DocumentDiagnosticReportKind.Full, items };
  });
  return () => {
    if (abilities.refreshesDiagnostics)
      ask('Findings anew', () => connection.languages.diagnostics.refresh());
  };
}

function pushOnChange(host: DiagnosticsHost): Refreshing {
  const { connection, texts, time } = host;
  const pending = new Map<string, () => void>();
  const drop = (uri: string): void => {
    pending.get(uri)?.();
    pending.delete(uri);
  };
  const push = (uri: string): void => {
    drop(uri);
    const source = new CancellationTokenSource();
    const stopWaiting = time.after(typingPause, () => {
      report(host, uri, source.token).then(
        ({ version, items }) => {
          const of = version === null ? { uri } : { uri, version };
          host.ask('Findings', () => connection.sendDiagnostics({ ...of, diagnostics: items }));
        },
        // It was cancelled: the next one is on its way, or the file is closed.
        () => undefined,
      );
    });
    pending.set(uri, () => {
      stopWaiting();
      source.cancel();
    });
  };
  texts.onChange(({ uri }) => {
    push(uri);
  });
  texts.onClose(({ uri }) => {
    drop(uri);
    host.ask('Findings', () => connection.sendDiagnostics({ uri, diagnostics: [] }));
  });
  return (uris) => {
    for (const uri of uris) push(uri);
  };
}

interface Report {
  /** Of the text; null where it is not known. */
  readonly version: number | null;
  readonly items: Diagnostic[];
  /** null: it could not be checked. */
  readonly figures: Figures | null;
}

/** The findings of a document. That it could not be checked is an error among them, for an empty list is a promise. */
async function report(host: DiagnosticsHost, uri: string, token: CancellationToken): Promise<Report> {
  const { connection, texts, abilities, answering } = host;
  const made = await answering<Report>({
    feature: 'Diagnostics',
    uri,
    token,
    answer: (document) => reportOn(host, document),
    notOpen: () => unchecked(texts.isLost(uri) ? lost : 'The editor has not opened it.'),
    changed: 'again',
    failed: (why) => unchecked(`Something went wrong inside Ohmwright: ${why}`),
  });
  if (abilities.hearsFigures)
    host.ask('Figures', () =>
      made.figures === null
        ? connection.sendNotification(failureNotification, { uri } satisfies Failure)
        : connection.sendNotification(figuresNotification, made.figures),
    );
  return made;
}

const lost = 'A change that the editor sent cannot be read. Close the file and open it again.';

function unchecked(why: string): Report {
  return { version: null, items: [notChecked(why)], figures: null };
}

function* reportOn(
  { texts, abilities, descriptionOf }: DiagnosticsHost,
  document: EditorDocument,
): Work<Report> {
  const findings = yield* document.analysis.findings('order');
  const items = diagnosticsOf(document, findings, {
    descriptionOf: abilities.showsDescriptions ? descriptionOf : () => null,
    related: abilities.showsRelated,
    uriOf: (file) => texts.get(file)?.uri ?? file,
  });
  return { version: document.text.version, items, figures: yield* figuresOf(document, findings) };
}

function* figuresOf({ analysis, text }: EditorDocument, findings: readonly Finding[]): Work<Figures> {
  const { value: readings } = yield* analysis.windows();
  const { complete } = yield* analysis.order();
  return {
    uri: text.uri,
    version: text.version,
    errors: findings.filter(isStandingError).length,
    warnings: findings.filter((one) => one.severity === 'warning' && one.waived === undefined && isShown(one))
      .length,
    steps: analysis.procedure().value.steps.length,
    readings: new Set(readings.readings.map(({ index }) => index)).size,
    complete,
  };
}

import { CodeActionKind } from 'vscode-languageserver';
import type {
  CancellationToken,
  CodeAction,
  CodeActionContext,
  Connection,
  DocumentSymbol,
  InlayHint,
  Range,
  SymbolInformation,
} from 'vscode-languageserver';
import type { Work } from '../model/work.ts';
import { cardHtml } from '../card/html.ts';
import { codeActions, fixAllActions, fixAllKind, isAskedFor } from '../editor/code-actions.ts';
import { complete } from '../editor/completion.ts';
import type { EditorDocument } from '../editor/document.ts';
import { hover } from '../editor/hover.ts';
import { inlayHints } from '../editor/inlay-hints.ts';
import { outline } from '../editor/outline.ts';
import { template } from '../editor/template.ts';
import { card } from '../project/card.ts';
import { isStandingError } from '../model/finding.ts';
import type { Abilities } from './abilities.ts';
import type { Answering } from './answering.ts';
import { cardRequest, templateRequest } from './messages.ts';
import type { CardParams, CardResult, TemplateResult } from './messages.ts';
import type { OpenDocuments } from './open-documents.ts';
import type { Session } from './session.ts';
import type { SettingsStore } from './settings.ts';
import { checkPlace } from './unchecked.ts';

export interface Handling {
  readonly connection: Connection;
  readonly documents: OpenDocuments;
  readonly abilities: Abilities;
  readonly answering: Answering;
  readonly session: Session;
  readonly settings: SettingsStore;
  /** Of this program, for the stamp of a card. */
  readonly version: string;
}

/** Every request but diagnostics: find the document, ask the feature, answer. */
export function registerHandlers(handling: Handling): void {
  const { connection, documents, abilities, answering, session, settings, version } = handling;

  connection.languages.inlayHint.on(async ({ textDocument: { uri }, range }, token) => {
    session.check();
    checkPlace(range);
    const { enabled } = (await settings.of(uri)).inlayHints;
    if (!enabled) return [];
    const answer = (document: EditorDocument) => hintsIn(documents, document, range);
    return answering({ feature: 'Hints', uri, token, answer, notOpen: () => [], changed: 'refuse' });
  });

  connection.onHover(({ textDocument: { uri }, position }, token) => {
    checkPlace(position);
    const answer = (document: EditorDocument) => hover(document, position);
    return answering({ feature: 'Hover', uri, token, answer, notOpen: () => null, changed: 'refuse' });
  });

  connection.onCompletion(({ textDocument: { uri }, position }, token) => {
    checkPlace(position);
    const { snippets } = abilities;
    const answer = atOnce((document) => complete(document, position, { snippets }));
    return answering({ feature: 'Completion', uri, token, answer, notOpen: () => [], changed: 'cannot' });
  });

  connection.onDocumentSymbol(({ textDocument: { uri } }, token) => {
    const answer = atOnce<DocumentSymbol[] | SymbolInformation[]>((document) =>
      abilities.nestedSymbols ? outline(document) : flat(outline(document), uri),
    );
    return answering({ feature: 'Outline', uri, token, answer, notOpen: () => [], changed: 'cannot' });
  });

  connection.onCodeAction(({ textDocument: { uri }, context }, token) => {
    if (!abilities.codeActionLiterals) return [];
    const answer = (document: EditorDocument) => actionsIn(document, context);
    return answering({ feature: 'Fixes', uri, token, answer, notOpen: () => [], changed: 'refuse' });
  });

  connection.onRequest(cardRequest, (params: CardParams, token: CancellationToken) =>
    answering<CardResult>({
      feature: 'Card',
      uri: params.uri,
      token,
      answer: (document) => cardOf(document, params, version),
      notOpen: () => ({ kind: 'unknown-document' }),
      changed: 'again',
      failed: () => ({ kind: 'failed' }),
    }),
  );

  connection.onRequest(templateRequest, (): TemplateResult => {
    session.check();
    return { text: template };
  });
}

/** What is computed in one go. */
function atOnce<T>(compute: (document: EditorDocument) => T): (document: EditorDocument) => Work<T> {
  return function* (document) {
    return compute(document);
  };
}

function* hintsIn(documents: OpenDocuments, document: EditorDocument, range: Range): Work<InlayHint[]> {
  const { now, earlier } = yield* documents.hints(document);
  return inlayHints(document, range, now, earlier);
}

function* actionsIn(document: EditorDocument, { only, diagnostics }: CodeActionContext): Work<CodeAction[]> {
  const fixes = isAskedFor(CodeActionKind.QuickFix, only) ? yield* codeActions(document, diagnostics) : [];
  const all = isAskedFor(fixAllKind, only) ? yield* fixAllActions(document) : [];
  return [...fixes, ...all];
}

function* cardOf(
  { analysis }: EditorDocument,
  { face, date, draft }: CardParams,
  version: string,
): Work<CardResult> {
  const errors = (yield* analysis.findings('order')).filter(isStandingError).length;
  const { complete: isComplete } = yield* analysis.order();
  const asDraft = draft && (errors > 0 || !isComplete);
  const made = yield* card(analysis, { date, version, draft: asDraft });
  if ('refused' in made) return made.isFailure ? { kind: 'not-checked' } : { kind: 'refused', errors };
  return { kind: 'card', html: cardHtml(made.card, { face }), draft: asDraft };
}

/** For clients that know no symbols below symbols. */
function flat(symbols: readonly DocumentSymbol[], uri: string, containerName?: string): SymbolInformation[] {
  return symbols.flatMap(({ name, kind, range, children = [] }) => [
    { name, kind, location: { uri, range }, ...(containerName === undefined ? {} : { containerName }) },
    ...flat(children, uri, name),
  ]);
}

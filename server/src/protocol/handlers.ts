import { CodeActionKind } from 'vscode-languageserver';
import type { CancellationToken, Connection, DocumentSymbol, SymbolInformation } from 'vscode-languageserver';
import { cardHtml } from '../card/html.ts';
import { codeActions, fixAllActions, fixAllKind, isAskedFor } from '../editor/code-actions.ts';
import { complete } from '../editor/completion.ts';
import { hover } from '../editor/hover.ts';
import { inlayHints } from '../editor/inlay-hints.ts';
import { outline } from '../editor/outline.ts';
import { template } from '../editor/template.ts';
import { card } from '../project/card.ts';
import { isStandingError } from '../text/finding.ts';
import type { Abilities } from './abilities.ts';
import { cardRequest, templateRequest } from './messages.ts';
import type { CardParams, CardResult } from './messages.ts';
import type { OpenDocuments } from './open-documents.ts';
import { safely } from './safely.ts';
import type { SettingsStore } from './settings.ts';
import { inSlices } from './slices.ts';
import type { Time } from './slices.ts';

export interface Handling {
  readonly connection: Connection;
  readonly documents: OpenDocuments;
  readonly abilities: Abilities;
  readonly settings: SettingsStore;
  readonly time: Time;
  /** Of this program, for the stamp of a card. */
  readonly version: string;
}

/** Every request but diagnostics: find the document, ask the feature, answer. */
export function registerHandlers({
  connection,
  documents,
  abilities,
  settings,
  time,
  version,
}: Handling): void {
  const { console, languages } = connection;

  languages.inlayHint.on(({ textDocument: { uri }, range }, token) =>
    safely(console, 'Hints', [], token, async () => {
      const { inlayHints: wanted } = await settings.of(uri);
      const document = documents.get(uri);
      if (document === undefined || !wanted.enabled) return [];
      const { now, earlier } = await inSlices(documents.hints(document), token, time);
      return inlayHints(document, range, now, earlier);
    }),
  );

  connection.onHover(({ textDocument: { uri }, position }, token) =>
    safely(console, 'Hover', null, token, () => {
      const document = documents.get(uri);
      return document === undefined ? null : inSlices(hover(document, position), token, time);
    }),
  );

  connection.onCompletion(({ textDocument: { uri }, position }, token) =>
    safely(console, 'Completion', [], token, () => {
      const document = documents.get(uri);
      return document === undefined ? [] : complete(document, position, { snippets: abilities.snippets });
    }),
  );

  connection.onDocumentSymbol(({ textDocument: { uri } }, token) =>
    safely<DocumentSymbol[] | SymbolInformation[]>(console, 'Outline', [], token, () => {
      const document = documents.get(uri);
      if (document === undefined) return [];
      return abilities.nestedSymbols ? outline(document) : flat(outline(document), uri);
    }),
  );

  connection.onCodeAction(({ textDocument: { uri }, context }, token) =>
    safely(console, 'Fixes', [], token, async () => {
      const document = documents.get(uri);
      if (document === undefined || !abilities.codeActionLiterals) return [];
      const { only, diagnostics } = context;
      const fixes = isAskedFor(CodeActionKind.QuickFix, only)
        ? await inSlices(codeActions(document, diagnostics), token, time)
        : [];
      const all = isAskedFor(fixAllKind, only) ? await inSlices(fixAllActions(document), token, time) : [];
      return [...fixes, ...all];
    }),
  );

  connection.onRequest(cardRequest, ({ uri, face, date, draft }: CardParams, token: CancellationToken) =>
    safely<CardResult>(console, 'Card', { kind: 'failed' }, token, async () => {
      const document = documents.get(uri);
      if (document === undefined) return { kind: 'unknown-document' };
      const errors = (await inSlices(document.analysis.findings('order'), token, time)).filter(
        isStandingError,
      ).length;
      const { complete: isComplete } = await inSlices(document.analysis.order(), token, time);
      const asDraft = draft && (errors > 0 || !isComplete);
      const made = await inSlices(card(document.analysis, { date, version, draft: asDraft }), token, time);
      if ('refused' in made) return made.isFailure ? { kind: 'not-checked' } : { kind: 'refused', errors };
      return { kind: 'card', html: cardHtml(made.card, { face }), draft: asDraft };
    }),
  );

  connection.onRequest(templateRequest, () => ({ text: template }));
}

/** For clients that know no symbols below symbols. */
function flat(symbols: readonly DocumentSymbol[], uri: string, containerName?: string): SymbolInformation[] {
  return symbols.flatMap(({ name, kind, range, children = [] }) => [
    { name, kind, location: { uri, range }, ...(containerName === undefined ? {} : { containerName }) },
    ...flat(children, uri, name),
  ]);
}

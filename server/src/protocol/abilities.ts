import type { InitializeParams } from 'vscode-languageserver';

/** What the client can do, as far as the server asks. */
export interface Abilities {
  /** Asks for diagnostics itself. */
  readonly pullsDiagnostics: boolean;
  readonly refreshesDiagnostics: boolean;
  readonly refreshesHints: boolean;
  /** Answers questions about settings. */
  readonly hasSettings: boolean;
  readonly registersSettings: boolean;
  readonly registersWatchers: boolean;
  readonly showsRelated: boolean;
  readonly showsDescriptions: boolean;
  readonly snippets: boolean;
  readonly nestedSymbols: boolean;
  /** Takes edits with a code action, and not commands only. */
  readonly codeActionLiterals: boolean;
  /** Wants to hear the figures of documents. */
  readonly hearsFigures: boolean;
}

export function abilitiesOf({ capabilities, initializationOptions }: InitializeParams): Abilities {
  const { textDocument, workspace } = capabilities;
  const options = initializationOptions as { readonly figures?: unknown } | null | undefined;
  return {
    pullsDiagnostics: textDocument?.diagnostic !== undefined,
    refreshesDiagnostics: workspace?.diagnostics?.refreshSupport === true,
    refreshesHints: workspace?.inlayHint?.refreshSupport === true,
    hasSettings: workspace?.configuration === true,
    registersSettings: workspace?.didChangeConfiguration?.dynamicRegistration === true,
    registersWatchers: workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
    showsRelated:
      (textDocument?.diagnostic?.relatedInformation ??
        textDocument?.publishDiagnostics?.relatedInformation) === true,
    showsDescriptions:
      (textDocument?.diagnostic?.codeDescriptionSupport ??
        textDocument?.publishDiagnostics?.codeDescriptionSupport) === true,
    snippets: textDocument?.completion?.completionItem?.snippetSupport === true,
    nestedSymbols: textDocument?.documentSymbol?.hierarchicalDocumentSymbolSupport === true,
    codeActionLiterals: textDocument?.codeAction?.codeActionLiteralSupport !== undefined,
    hearsFigures: options?.figures === true,
  };
}

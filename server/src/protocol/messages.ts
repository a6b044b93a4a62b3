/*
 * What the server and the extension say to each other beside the language server protocol. The extension imports the
 * types and names of this file, and of the server nothing else but `writeTextFile`.
 */

/* Functions of which there shall be one. */
export { nameWithoutKind } from '../format/file-kinds.ts';
export { visible } from '../model/printable.ts';

export const languageId = 'ohmwright-procedure';

/** Request: the card of a document as it stands in the editor, as a draft while there are errors. */
export const cardRequest = 'ohmwright/card';
export interface CardParams {
  readonly uri: string;
  /** `editor`: in the colours of the editor's theme, for the preview. `paper`: as it is printed. */
  readonly face: 'editor' | 'paper';
  /** As it is to be printed. */
  readonly date: string;
  /** Whether errors make it a draft; else it is refused while there are errors. */
  readonly draft: boolean;
}
export type CardResult =
  | { readonly kind: 'card'; readonly html: string; readonly draft: boolean }
  | { readonly kind: 'refused'; readonly errors: number }
  | { readonly kind: 'unknown-document' }
  /** Something went wrong while the document was checked: a finding says what, and there is no draft either. */
  | { readonly kind: 'not-checked' }
  /** Something went wrong inside the server; its log says what. */
  | { readonly kind: 'failed' };

/** Request: the text of a new procedure, complete and without a finding. */
export const templateRequest = 'ohmwright/template';
export interface TemplateResult {
  readonly text: string;
}

/** Notification to the extension: the figures of a document, each time they were computed. */
export const figuresNotification = 'ohmwright/figures';
export interface Figures {
  readonly uri: string;
  readonly version: number;
  readonly errors: number;
  readonly warnings: number;
  readonly steps: number;
  /** Steps that read a loop. */
  readonly readings: number;
  /** False where a bound was met, so that not everything was checked. */
  readonly complete: boolean;
}

/** Notification to the extension: a document could not be checked, because something went wrong inside the server. */
export const failureNotification = 'ohmwright/failure';
export interface Failure {
  readonly uri: string;
}

/** Notification to the extension: what was said of these documents no longer holds, for a file that they use has changed. */
export const staleNotification = 'ohmwright/stale';
export interface Stale {
  readonly uris: readonly string[];
}

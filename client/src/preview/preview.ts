import type { Uri } from 'vscode';
import { ViewColumn, window, workspace } from 'vscode';
import type { CardResult } from '../../../server/src/protocol/messages.ts';
import { dateText, failed, notChecked, notOpen, procedureName, refusal } from '../card-words.ts';
import type { Server } from '../server.ts';
import { messagePage } from './message-page.ts';

/** How long the text must be at rest before the card is made again, in milliseconds. */
const rest = 300;

export interface Preview {
  /** Of the procedure, as it is named now. */
  readonly uri: () => Uri;
  /** Makes the card again, once nothing has changed for a moment. */
  readonly renew: () => void;
  /** The procedure has another name. */
  readonly follow: (uri: Uri) => void;
  readonly reveal: () => void;
  readonly hasFocus: () => boolean;
  readonly dispose: () => void;
}

/** Shows the card of a procedure beside it and keeps it up to date, until the user closes it. */
export function openPreview(server: Server, at: Uri, onClosed: () => void): Preview {
  const panel = window.createWebviewPanel(
    'ohmwright.card',
    titleOf(at, false),
    { viewColumn: ViewColumn.Beside, preserveFocus: true },
    { enableScripts: false, enableForms: false, localResourceRoots: [], enableFindWidget: true },
  );
  let uri = at;
  let closed = false;
  let latest = 0;
  let shown = '';
  let timer: ReturnType<typeof setTimeout> | undefined;

  const render = async (): Promise<void> => {
    const turn = ++latest;
    const { html, draft } = await pageOf(server, uri);
    // A later text overtakes an earlier one.
    if (closed || turn !== latest) return;
    panel.title = titleOf(uri, draft);
    // Setting the same page again would only make it flicker.
    if (html === shown) return;
    shown = html;
    panel.webview.html = html;
  };
  const renew = (): void => {
    clearTimeout(timer);
    timer = setTimeout(() => void render(), rest);
  };
  const listeners = [
    workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
      if (contentChanges.length > 0 && document.uri.toString() === uri.toString()) renew();
    }),
    // What was not saved is gone; what is on disk, if anything, is what counts now.
    workspace.onDidCloseTextDocument((document) => {
      if (document.uri.toString() !== uri.toString()) return;
      if (document.isUntitled) panel.dispose();
      else renew();
    }),
  ];
  panel.onDidDispose(() => {
    closed = true;
    clearTimeout(timer);
    for (const one of listeners) one.dispose();
    onClosed();
  });
  void render();
  return {
    uri: () => uri,
    renew,
    follow: (to) => {
      uri = to;
      renew();
    },
    reveal: () => {
      panel.reveal(undefined, true);
    },
    hasFocus: () => panel.active,
    dispose: () => {
      panel.dispose();
    },
  };
}

interface Page {
  readonly html: string;
  readonly draft: boolean;
}

async function pageOf(server: Server, uri: Uri): Promise<Page> {
  let result: CardResult;
  try {
    // The server knows the documents that the editor has open.
    await workspace.openTextDocument(uri);
    result = await server.card({
      uri: uri.toString(),
      face: 'editor',
      date: dateText(new Date()),
      draft: true,
    });
  } catch (error) {
    return cannotShow(error instanceof Error ? error.message : String(error));
  }
  switch (result.kind) {
    case 'card':
      return result;
    case 'refused':
      return cannotShow(refusal(result.errors));
    case 'unknown-document':
      return cannotShow(notOpen);
    case 'not-checked':
      return cannotShow(notChecked);
    case 'failed':
      return cannotShow(failed);
  }
}

function cannotShow(why: string): Page {
  return { html: messagePage('The card cannot be shown', why), draft: false };
}

function titleOf(uri: Uri, draft: boolean): string {
  return `${draft ? 'Draft card' : 'Card'}: ${procedureName(uri.path)}`;
}

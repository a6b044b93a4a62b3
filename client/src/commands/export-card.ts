import type { SaveDialogOptions } from 'vscode';
import { commands, Uri, window, workspace } from 'vscode';
import type { CardResult } from '../../../server/src/protocol/messages.ts';
import {
  dateText,
  failed,
  notChecked,
  notOpen,
  notWritten,
  procedureName,
  refusal,
  written,
} from '../card-words.ts';
import type { Server } from '../server.ts';
import { writeWhole } from './write-whole.ts';

const showProblems = 'Show Problems';
const exportDraft = 'Export as Draft';

/** Writes the card as it is printed to a file that the user names; while there are errors only as a draft. */
export async function exportCard(server: Server, uri: Uri): Promise<void> {
  // The server knows the documents that the editor has open; this opens one that was chosen in the explorer.
  await workspace.openTextDocument(uri);
  const card = await askFor(server, uri);
  if (card === undefined) return;
  const to = await window.showSaveDialog({
    ...proposal(uri),
    filters: { HTML: ['html'] },
    title: card.draft ? 'Export Draft of the Card' : 'Export Card',
    saveLabel: 'Export',
  });
  if (to === undefined) return;
  const problem = await writeWhole(to, card.html);
  if (problem !== null) await window.showErrorMessage(notWritten(to.fsPath, problem));
  else await window.showInformationMessage(written(to.fsPath, card.draft));
}

type Card = Extract<CardResult, { readonly kind: 'card' }>;

async function askFor(server: Server, uri: Uri): Promise<Card | undefined> {
  const ask = (draft: boolean): Promise<CardResult> =>
    server.card({ uri: uri.toString(), face: 'paper', date: dateText(new Date()), draft });
  const result = await ask(false);
  if (result.kind !== 'refused') return cardOf(result);
  const choice = await window.showErrorMessage(refusal(result.errors), showProblems, exportDraft);
  if (choice === showProblems) await commands.executeCommand('workbench.actions.view.problems');
  return choice === exportDraft ? cardOf(await ask(true)) : undefined;
}

async function cardOf(result: CardResult): Promise<Card | undefined> {
  switch (result.kind) {
    case 'card':
      return result;
    case 'refused':
      await window.showErrorMessage(refusal(result.errors));
      return undefined;
    case 'unknown-document':
      await window.showErrorMessage(notOpen);
      return undefined;
    case 'not-checked':
      await window.showErrorMessage(notChecked);
      return undefined;
    case 'failed':
      await window.showErrorMessage(failed);
      return undefined;
  }
}

/** Beside the procedure; one that was never saved goes to the first folder. */
function proposal(uri: Uri): Pick<SaveDialogOptions, 'defaultUri'> {
  const name = `${procedureName(uri.path)}.card.html`;
  if (uri.scheme !== 'untitled') return { defaultUri: Uri.joinPath(uri, '..', name) };
  const folder = workspace.workspaceFolders?.[0];
  return folder === undefined ? {} : { defaultUri: Uri.joinPath(folder.uri, name) };
}

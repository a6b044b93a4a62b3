import { window, workspace } from 'vscode';
import { languageId } from '../../../server/src/protocol/messages.ts';
import type { Server } from '../server.ts';

/** Opens a complete new procedure, not saved yet. */
export async function newProcedure(server: Server): Promise<void> {
  const { text } = await server.template();
  const document = await workspace.openTextDocument({ language: languageId, content: text });
  await window.showTextDocument(document);
}

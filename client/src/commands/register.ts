import type { Disposable } from 'vscode';
import { commands, Uri, window } from 'vscode';
import { languageId } from '../../../server/src/protocol/messages.ts';
import type { CardPreviews } from '../preview/previews.ts';
import type { Server } from '../server.ts';
import { exportCard } from './export-card.ts';
import { newProcedure } from './new-procedure.ts';

export function registerCommands(server: Server, previews: CardPreviews): readonly Disposable[] {
  /** Menus hand the file over; from the palette it is the procedure, or the card of one, that has the focus. */
  const chosen = (given: unknown): Uri | undefined => {
    if (given instanceof Uri) return given;
    const document = window.activeTextEditor?.document;
    return previews.active() ?? (document?.languageId === languageId ? document.uri : undefined);
  };
  const onProcedure = (act: (uri: Uri) => unknown) => async (given: unknown) => {
    const uri = chosen(given);
    if (uri !== undefined) await act(uri);
    else await window.showInformationMessage('Open a procedure first: a file named NAME.procedure.yaml.');
  };
  return [
    commands.registerCommand('ohmwright.openCard', onProcedure(previews.show)),
    commands.registerCommand(
      'ohmwright.exportCard',
      onProcedure((uri) => exportCard(server, uri)),
    ),
    commands.registerCommand('ohmwright.newProcedure', () => newProcedure(server)),
  ];
}

import type { Uri } from 'vscode';
import { workspace } from 'vscode';
import type { Server } from '../server.ts';
import { movedTo } from './moved.ts';
import type { Preview } from './preview.ts';
import { openPreview } from './preview.ts';

export interface CardPreviews {
  /** Opens the card of a procedure beside it, or brings it to the front. */
  readonly show: (uri: Uri) => void;
  /** Makes the cards of these procedures anew. */
  readonly renew: (uris: readonly string[]) => void;
  /** The procedure whose card has the focus. */
  readonly active: () => Uri | undefined;
  readonly dispose: () => void;
}

/** All cards that are shown, one for each procedure. */
export function cardPreviews(server: Server): CardPreviews {
  const open = new Set<Preview>();
  const of = (uri: string): Preview | undefined => [...open].find((one) => one.uri().toString() === uri);
  const renames = workspace.onDidRenameFiles(({ files }) => {
    for (const preview of [...open]) {
      const uri = movedTo(preview.uri(), files);
      if (uri === null) continue;
      of(uri.toString())?.dispose();
      preview.follow(uri);
    }
  });
  return {
    show: (uri) => {
      const shown = of(uri.toString());
      if (shown !== undefined) shown.reveal();
      else {
        const preview = openPreview(server, uri, () => open.delete(preview));
        open.add(preview);
      }
    },
    renew: (uris) => {
      for (const uri of uris) of(uri)?.renew();
    },
    active: () => [...open].find((preview) => preview.hasFocus())?.uri(),
    dispose: () => {
      renames.dispose();
      for (const preview of [...open]) preview.dispose();
    },
  };
}

import type { Uri } from 'vscode';
import type { Server } from '../server.ts';
import type { Preview } from './preview.ts';
import { openPreview } from './preview.ts';

export interface CardPreviews {
  /** Opens the card of a procedure beside it, or brings it to the front. */
  readonly show: (uri: Uri) => void;
  /** The procedure whose card has the focus. */
  readonly active: () => Uri | undefined;
  readonly dispose: () => void;
}

/** All cards that are shown, one for each procedure. */
export function cardPreviews(server: Server): CardPreviews {
  const open = new Map<string, Preview>();
  return {
    show: (uri) => {
      const key = uri.toString();
      const shown = open.get(key);
      if (shown !== undefined) shown.reveal();
      else
        open.set(
          key,
          openPreview(server, uri, () => open.delete(key)),
        );
    },
    active: () => [...open.values()].find((preview) => preview.hasFocus())?.uri,
    dispose: () => {
      for (const preview of [...open.values()]) preview.dispose();
    },
  };
}

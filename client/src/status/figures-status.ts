import { languages, LanguageStatusSeverity, window, workspace } from 'vscode';
import type { Figures } from '../../../server/src/protocol/messages.ts';
import { languageId } from '../../../server/src/protocol/messages.ts';
import type { Hearing } from '../server.ts';
import { servedDocuments } from '../served.ts';
import { figuresText } from './figures-text.ts';

export interface FiguresStatus extends Hearing {
  readonly dispose: () => void;
}

/** The figures of the procedure that is edited, in the language status of the editor: those of its present text. */
export function figuresStatus(): FiguresStatus {
  const known = new Map<string, Figures | 'failed'>();
  let isRunning = true;
  const item = languages.createLanguageStatusItem('ohmwright.figures', servedDocuments());
  item.name = 'Ohmwright';

  const show = (): void => {
    const document = window.activeTextEditor?.document;
    if (document?.languageId !== languageId) return;
    const last = known.get(document.uri.toString());
    const isOld = last !== undefined && last !== 'failed' && last.version !== document.version;
    const figures = !isRunning ? 'stopped' : isOld ? undefined : last;
    item.busy = figures === undefined;
    const { text, detail, grade } = figuresText(figures);
    item.text = text;
    item.detail = detail;
    item.severity = LanguageStatusSeverity[grade];
    item.accessibilityInformation = { label: `Ohmwright: ${text}. ${detail}` };
    item.command = { title: 'Open Card', command: 'ohmwright.openCard', arguments: [document.uri] };
  };
  const forget = (uri: string): void => {
    known.delete(uri);
    show();
  };
  show();

  const listeners = [
    window.onDidChangeActiveTextEditor(show),
    workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
      const uri = document.uri.toString();
      if (contentChanges.length > 0 && known.has(uri)) forget(uri);
    }),
    workspace.onDidCloseTextDocument(({ uri }) => {
      forget(uri.toString());
    }),
  ];
  return {
    figures: (figures) => {
      known.set(figures.uri, figures);
      show();
    },
    failure: ({ uri }) => {
      known.set(uri, 'failed');
      show();
    },
    stale: ({ uris }) => {
      uris.forEach(forget);
    },
    running: (now) => {
      isRunning = now;
      known.clear();
      show();
    },
    dispose: () => {
      for (const one of [item, ...listeners]) one.dispose();
    },
  };
}

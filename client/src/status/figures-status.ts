import type { TextDocument } from 'vscode';
import { languages, LanguageStatusSeverity, window, workspace } from 'vscode';
import type { Figures } from '../../../server/src/protocol/messages.ts';
import { languageId } from '../../../server/src/protocol/messages.ts';
import { figuresText } from './figures-text.ts';

export interface FiguresStatus {
  readonly hear: (figures: Figures) => void;
  readonly dispose: () => void;
}

/** The figures of the procedure that is edited, in the language status of the editor. */
export function figuresStatus(): FiguresStatus {
  const known = new Map<string, Figures>();
  const item = languages.createLanguageStatusItem('ohmwright.figures', { language: languageId });
  item.name = 'Ohmwright';

  const show = (document: TextDocument | undefined): void => {
    if (document?.languageId !== languageId) return;
    const figures = known.get(document.uri.toString());
    item.busy = figures === undefined;
    const { text, detail, grade } = figuresText(figures);
    item.text = text;
    item.detail = detail;
    item.severity = LanguageStatusSeverity[grade];
    item.accessibilityInformation = { label: `Ohmwright: ${text}. ${detail}` };
    item.command = { title: 'Open Card', command: 'ohmwright.openCard', arguments: [document.uri] };
  };
  show(window.activeTextEditor?.document);

  const listeners = [
    window.onDidChangeActiveTextEditor((editor) => {
      show(editor?.document);
    }),
    workspace.onDidCloseTextDocument(({ uri }) => {
      known.delete(uri.toString());
    }),
  ];
  return {
    hear: (figures) => {
      known.set(figures.uri, figures);
      show(window.activeTextEditor?.document);
    },
    dispose: () => {
      for (const one of [item, ...listeners]) one.dispose();
    },
  };
}

import { vi } from 'vitest';

/* As much of the editor's interface as the client's own logic needs to be seen at work. */

export class Uri {
  readonly scheme: string;
  readonly path: string;

  constructor(scheme: string, path: string) {
    this.scheme = scheme;
    this.path = path;
  }

  static joinPath(base: Uri, ...parts: readonly string[]): Uri {
    const whole = new URL(parts.join('/'), `file://${base.path.replace(/\/?$/, '/')}`);
    return new Uri(base.scheme, whole.pathname);
  }

  get fsPath(): string {
    return this.path;
  }

  toString(): string {
    return `${this.scheme}:${this.path}`;
  }
}

export const file = (path: string): Uri => new Uri('file', path);
export const elsewhere = (path: string): Uri => new Uri('vans', path);

type Change = (event: {
  readonly document: { readonly uri: Uri };
  readonly contentChanges: readonly unknown[];
}) => void;

/** The panel that was opened last, and what the user does to it. */
export interface Panel {
  title: string;
  readonly webview: { html: string };
  active: boolean;
  readonly options: Readonly<Record<string, unknown>>;
  readonly reveal: () => void;
  readonly onDidDispose: (hear: () => void) => void;
  readonly dispose: () => void;
}

const changes = new Set<Change>();
export const panels: Panel[] = [];

/** The user types into a document. */
export function type(uri: Uri): void {
  for (const hear of [...changes]) hear({ document: { uri }, contentChanges: [{}] });
}

export const listeners = (): number => changes.size;

export const answers = {
  /** The button that the user takes on the next messages, in order. */
  buttons: [] as string[],
  /** Where the user saves; undefined where the dialog is left. */
  save: undefined as Uri | undefined,
};

export const seen = {
  messages: [] as string[],
  proposed: undefined as Uri | undefined,
  written: new Map<string, string>(),
  commands: [] as string[],
};

const message = (text: string): Promise<string | undefined> => {
  seen.messages.push(text);
  return Promise.resolve(answers.buttons.shift());
};

export const api = {
  Uri,
  ViewColumn: { Beside: -2 },
  FileType: { Unknown: 0, File: 1, Directory: 2, SymbolicLink: 64 },
  commands: {
    executeCommand: (name: string) => {
      seen.commands.push(name);
      return Promise.resolve();
    },
  },
  window: {
    showErrorMessage: message,
    showInformationMessage: message,
    showSaveDialog: ({ defaultUri }: { readonly defaultUri?: Uri }) => {
      seen.proposed = defaultUri;
      return Promise.resolve(answers.save);
    },
    createWebviewPanel: (
      _kind: string,
      title: string,
      _place: unknown,
      options: Readonly<Record<string, unknown>>,
    ) => {
      let closed: () => void = () => undefined;
      const panel: Panel = {
        title,
        webview: { html: '' },
        active: true,
        options,
        reveal: vi.fn(),
        onDidDispose: (hear) => {
          closed = hear;
        },
        dispose: () => {
          closed();
        },
      };
      panels.push(panel);
      return panel;
    },
  },
  workspace: {
    workspaceFolders: undefined as readonly { readonly uri: Uri }[] | undefined,
    openTextDocument: (uri: Uri): Promise<unknown> =>
      uri.path.includes('missing') ? Promise.reject(new Error(`no <${uri.path}>`)) : Promise.resolve({}),
    onDidChangeTextDocument: (hear: Change) => {
      changes.add(hear);
      return { dispose: () => changes.delete(hear) };
    },
    /* A file system that an extension provides, in a memory of its own. */
    fs: {
      stat: (uri: Uri): Promise<{ readonly type: number }> => {
        if (uri.path.endsWith('/folder.html')) return Promise.resolve({ type: 2 });
        if (uri.path.endsWith('/link.html')) return Promise.resolve({ type: 64 + 1 });
        return seen.written.has(uri.path)
          ? Promise.resolve({ type: 1 })
          : Promise.reject(new Error('not found'));
      },
      writeFile: (to: Uri, bytes: Uint8Array) => {
        if (to.path.includes('locked')) return Promise.reject(new Error('the disk is locked'));
        const text = new TextDecoder().decode(bytes);
        const isFull = to.path.includes('full');
        seen.written.set(to.path, isFull ? text.slice(0, 3) : text);
        return isFull ? Promise.reject(new Error('the disk is full')) : Promise.resolve();
      },
      rename: (from: Uri, to: Uri, options: { readonly overwrite: boolean }) => {
        if (to.path.includes('fixed')) return Promise.reject(new Error('Files cannot be renamed here.'));
        if (seen.written.has(to.path) && !options.overwrite) return Promise.reject(new Error('it exists'));
        seen.written.set(to.path, seen.written.get(from.path) ?? '');
        seen.written.delete(from.path);
        return Promise.resolve();
      },
      delete: (uri: Uri) => {
        if (!seen.written.delete(uri.path)) return Promise.reject(new Error('not found'));
        return Promise.resolve();
      },
    },
  },
};

export function clear(): void {
  changes.clear();
  panels.length = 0;
  answers.buttons.length = 0;
  answers.save = undefined;
  seen.messages.length = 0;
  seen.proposed = undefined;
  seen.written.clear();
  seen.commands.length = 0;
  api.workspace.workspaceFolders = undefined;
}

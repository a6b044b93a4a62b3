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

  with({ path }: { readonly path: string }): Uri {
    return new Uri(this.scheme, path);
  }

  toString(): string {
    return `${this.scheme}:${this.path}`;
  }
}

export const file = (path: string): Uri => new Uri('file', path);
export const elsewhere = (path: string): Uri => new Uri('vans', path);

/** A document as the editor has it open. */
export interface Document {
  readonly uri: Uri;
  readonly languageId: string;
  version: number;
  readonly isUntitled: boolean;
}

export const documentAt = (uri: Uri): Document => ({
  uri,
  languageId: 'ohmwright-procedure',
  version: 1,
  isUntitled: uri.scheme === 'untitled',
});

interface Change {
  readonly document: Document;
  readonly contentChanges: readonly unknown[];
}

interface Renames {
  readonly files: readonly { readonly oldUri: Uri; readonly newUri: Uri }[];
}

/** What the extension can listen to, and those that listen. */
function event<T>() {
  const hearers = new Set<(happened: T) => void>();
  return {
    hearers,
    on: (hear: (happened: T) => void) => {
      hearers.add(hear);
      return { dispose: () => hearers.delete(hear) };
    },
    happens: (happened: T): void => {
      for (const hear of [...hearers]) hear(happened);
    },
  };
}

const changes = event<Change>();
const closings = event<Document>();
const renames = event<Renames>();
const activations = event<unknown>();

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

export const panels: Panel[] = [];

/** The user types into a document. */
export function type(uri: Uri, document = documentAt(uri)): void {
  document.version += 1;
  changes.happens({ document, contentChanges: [{}] });
}

/** The editor has a document no longer open. */
export function close(uri: Uri): void {
  closings.happens(documentAt(uri));
}

export function rename(oldUri: Uri, newUri: Uri): void {
  renames.happens({ files: [{ oldUri, newUri }] });
}

/** The user goes to a document. */
export function activate(document: Document): void {
  api.window.activeTextEditor = { document };
  activations.happens(undefined);
}

/** Those that listen to what happens to documents. */
export const listeners = (): number => changes.hearers.size + closings.hearers.size;

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
  /** The language status. */
  status: { name: '', text: '', detail: '', severity: 0, busy: false, dispose: () => undefined },
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
  LanguageStatusSeverity: { Information: 0, Warning: 1, Error: 2 },
  languages: {
    createLanguageStatusItem: () => seen.status,
  },
  window: {
    activeTextEditor: undefined as { readonly document: Document } | undefined,
    onDidChangeActiveTextEditor: activations.on,
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
    onDidChangeTextDocument: changes.on,
    onDidCloseTextDocument: closings.on,
    onDidRenameFiles: renames.on,
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
  for (const { hearers } of [changes, closings, renames, activations]) hearers.clear();
  panels.length = 0;
  answers.buttons.length = 0;
  answers.save = undefined;
  seen.messages.length = 0;
  seen.proposed = undefined;
  seen.written.clear();
  seen.commands.length = 0;
  api.workspace.workspaceFolders = undefined;
  api.window.activeTextEditor = undefined;
}

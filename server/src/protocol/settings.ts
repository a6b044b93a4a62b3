import type { Connection } from 'vscode-languageserver';
import { DidChangeConfigurationNotification } from 'vscode-languageserver';
import type { Abilities } from './abilities.ts';

export interface Settings {
  readonly inlayHints: { readonly enabled: boolean };
}

const section = 'ohmwright';
const defaults = read(undefined);

/** What is not there, or is not what it should be, is as by default. */
function read(value: unknown): Settings {
  const enabled = at(at(value, 'inlayHints'), 'enabled');
  return { inlayHints: { enabled: typeof enabled === 'boolean' ? enabled : true } };
}

function at(value: unknown, key: string): unknown {
  return typeof value === 'object' && value !== null
    ? (value as Readonly<Record<string, unknown>>)[key]
    : undefined;
}

export interface SettingsStore {
  /** The settings of a document, asked for once and then remembered until the client says that they changed. */
  readonly of: (uri: string) => Promise<Settings>;
  readonly forget: (uri: string) => void;
}

/** Settings by pull where the client answers questions, else as it pushes them, else the defaults. */
export function settingsStore(
  connection: Connection,
  abilities: Abilities,
  onChange: () => void,
): SettingsStore {
  const known = new Map<string, Promise<Settings>>();
  let pushed = defaults;
  const ask = async (uri: string): Promise<Settings> =>
    read(await connection.workspace.getConfiguration({ scopeUri: uri, section }));
  connection.onDidChangeConfiguration(({ settings }) => {
    known.clear();
    const own = (settings as Readonly<Record<string, unknown>> | null)?.[section];
    pushed = read(own);
    onChange();
  });
  return {
    of: (uri) => {
      if (!abilities.hasSettings) return Promise.resolve(pushed);
      const asked = known.get(uri) ?? ask(uri).catch(() => defaults);
      known.set(uri, asked);
      return asked;
    },
    forget: (uri) => {
      known.delete(uri);
    },
  };
}

/** Asks to be told of changes, where the client can. */
export async function registerForSettings(connection: Connection, abilities: Abilities): Promise<void> {
  if (!abilities.registersSettings) return;
  await connection.client.register(DidChangeConfigurationNotification.type, { section });
}

import type { Connection } from 'vscode-languageserver';
import { DidChangeConfigurationNotification } from 'vscode-languageserver';
import * as z from 'zod';
import type { Abilities } from './abilities.ts';

const schema = z.object({
  inlayHints: z.object({ enabled: z.boolean().catch(true) }).catch({ enabled: true }),
});

export type Settings = z.infer<typeof schema>;

const section = 'ohmwright';
const defaults = read(undefined);

function read(value: unknown): Settings {
  return schema.catch({ inlayHints: { enabled: true } }).parse(value ?? {});
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

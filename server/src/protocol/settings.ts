import type { Connection } from 'vscode-languageserver';
import { DidChangeConfigurationNotification } from 'vscode-languageserver';
import type { Abilities } from './abilities.ts';
import type { Asking } from './asking.ts';
import type { Time } from './slices.ts';
import { at } from './unchecked.ts';

export interface Settings {
  readonly inlayHints: { readonly enabled: boolean };
}

const section = 'ohmwright';
const defaults = read(undefined);

/** A client that has not answered after so many milliseconds is not waited for: the defaults stand until it does. */
const patience = 2000;

/** What is not there, or is not what it should be, is as by default. */
function read(value: unknown): Settings {
  const enabled = at(at(value, 'inlayHints'), 'enabled');
  return { inlayHints: { enabled: typeof enabled === 'boolean' ? enabled : true } };
}

export interface SettingsStore {
  /** The settings of a document, asked for once and then remembered until the client says that they changed. */
  readonly of: (uri: string) => Promise<Settings>;
  readonly forget: (uri: string) => void;
}

export interface SettingsHost {
  readonly connection: Connection;
  readonly abilities: Abilities;
  readonly time: Time;
  readonly onChange: () => void;
}

/** Settings by pull where the client answers questions, else as it pushes them, else the defaults. */
export function settingsStore({ connection, abilities, time, onChange }: SettingsHost): SettingsStore {
  const known = new Map<string, Promise<Settings>>();
  let pushed = defaults;
  const ask = (uri: string): Promise<Settings> => {
    const answer = connection.workspace
      .getConfiguration({ scopeUri: uri, section })
      .then(read, () => defaults);
    const asked = new Promise<Settings>((resolve) => {
      const stop = time.after(patience, () => {
        resolve(defaults);
      });
      void answer.then((settings) => {
        stop();
        resolve(settings);
      });
    });
    void answer.then(async (settings) => {
      if ((await asked) === settings || known.get(uri) !== asked) return;
      known.set(uri, answer);
      onChange();
    });
    return asked;
  };
  connection.onDidChangeConfiguration(({ settings }) => {
    known.clear();
    const own = (settings as Readonly<Record<string, unknown>> | null)?.[section];
    pushed = read(own);
    onChange();
  });
  return {
    of: (uri) => {
      if (!abilities.hasSettings) return Promise.resolve(pushed);
      const asked = known.get(uri) ?? ask(uri);
      known.set(uri, asked);
      return asked;
    },
    forget: (uri) => {
      known.delete(uri);
    },
  };
}

/** Asks to be told of changes, where the client can. */
export function registerForSettings(
  connection: Connection,
  { registersSettings }: Abilities,
  ask: Asking,
): void {
  if (!registersSettings) return;
  ask('Changes of settings', () =>
    connection.client.register(DidChangeConfigurationNotification.type, { section }),
  );
}

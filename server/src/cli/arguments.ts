import { parseArgs } from 'node:util';

export interface Arguments {
  readonly command: string | undefined;
  readonly rest: readonly string[];
  readonly options: {
    readonly format?: string | undefined;
    readonly name?: string | undefined;
    readonly output?: string | undefined;
    readonly date?: string | undefined;
    readonly paper?: string | undefined;
    readonly step?: string | undefined;
    readonly entry?: readonly string[] | undefined;
    readonly why?: boolean | undefined;
    readonly strict?: boolean | undefined;
    readonly draft?: boolean | undefined;
    readonly stdio?: boolean | undefined;
    readonly help?: boolean | undefined;
    readonly version?: boolean | undefined;
  };
}

/** In which form something is written: for people, or for programs. */
export type Format = 'text' | 'json' | 'sarif';

type OptionName = keyof Arguments['options'];

/** Reads the words after the program's name; what is wrong with them comes back as one line. */
export function readArguments(words: readonly string[]): Arguments | { readonly wrong: string } {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      allowPositionals: true,
      options: {
        format: { type: 'string' },
        name: { type: 'string' },
        output: { type: 'string', short: 'o' },
        date: { type: 'string' },
        paper: { type: 'string' },
        step: { type: 'string' },
        entry: { type: 'string', multiple: true },
        why: { type: 'boolean' },
        strict: { type: 'boolean' },
        draft: { type: 'boolean' },
        stdio: { type: 'boolean' },
        help: { type: 'boolean', short: 'h' },
        version: { type: 'boolean' },
      },
    });
    const [command, ...rest] = positionals;
    return { command, rest, options: values };
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    return { wrong: message.split(/[.\n]/)[0] ?? message };
  }
}

/** The first option given that a command does not take. */
export function strayOption({ options }: Arguments, taken: readonly OptionName[]): OptionName | undefined {
  const given = Object.keys(options) as OptionName[];
  return given.find((name) => !taken.includes(name));
}

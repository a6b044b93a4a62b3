import { readArguments, strayOption } from './arguments.ts';
import type { Arguments, Format } from './arguments.ts';
import { card } from './card.ts';
import { check } from './check.ts';
import { help } from './help.ts';
import { rules } from './rules.ts';
import { schema } from './schema.ts';
import { serve } from './serve.ts';
import { cannotRun, guarded } from './terminal.ts';
import type { Exit, Terminal } from './terminal.ts';
import { OutputFailed } from '../host/terminal.ts';
import { messageOf } from '../project/net.ts';
import { version } from '../project/version.ts';
import { windows } from './windows.ts';

interface Command {
  readonly options: readonly (keyof Arguments['options'])[];
  readonly run: (terminal: Terminal, given: Arguments) => Exit | 'serving';
}

const commands: Readonly<Record<string, Command>> = {
  check: {
    options: ['format', 'strict', 'name'],
    run: (terminal, { rest, options }) => {
      const format = formatOf(options, ['text', 'json', 'sarif']);
      if ('wrong' in format) return cannotRun(terminal, format.wrong);
      return check(terminal, rest, { ...format, strict: options.strict === true, ...named(options) });
    },
  },
  windows: {
    options: ['format', 'name', 'step', 'entry', 'why'],
    run: (terminal, { rest, options }) => {
      const format = formatOf(options, ['text', 'json']);
      if ('wrong' in format) return cannotRun(terminal, format.wrong);
      return windows(terminal, rest, {
        ...format,
        why: options.why === true,
        entered: options.entry ?? [],
        ...(options.step === undefined ? {} : { step: options.step }),
        ...named(options),
      });
    },
  },
  card: {
    options: ['output', 'draft', 'date', 'paper', 'name'],
    run: (terminal, { rest, options }) =>
      card(terminal, rest, {
        draft: options.draft === true,
        ...(options.output === undefined ? {} : { to: options.output }),
        ...(options.date === undefined ? {} : { date: options.date }),
        ...(options.paper === undefined ? {} : { paper: options.paper }),
        ...named(options),
      }),
  },
  rules: {
    options: [],
    run: (terminal, { rest }) =>
      rest.length > 1 ? cannotRun(terminal, 'rules takes one name') : rules(terminal, rest[0]),
  },
  schema: {
    options: [],
    run: (terminal, { rest }) =>
      rest.length > 0 ? cannotRun(terminal, 'schema takes no words') : schema(terminal),
  },
  serve: {
    options: ['stdio'],
    run: (terminal, { options }) => serve(terminal, options.stdio === true, terminal.server),
  },
};

/** Commands that come later: they say so and do nothing. */
const later = ['faults', 'draft'];

/** Runs the program. What is thrown all the same is told in one line: a status of 1 would speak of the files. */
export function runOrSay(terminal: Terminal, words: readonly string[]): Exit | 'serving' {
  try {
    return run(terminal, words);
  } catch (error) {
    if (error instanceof OutputFailed) return notDelivered(terminal, error.message);
    const request = `Send the command and its files to the developers of Ohmwright (version ${version}).`;
    return cannotRun(terminal, `the program itself failed: ${messageOf(error)}. ${request}`);
  }
}

/** What was found has not reached anybody, whatever it was. */
function notDelivered(terminal: Terminal, why: string): Exit {
  try {
    return cannotRun(terminal, `cannot write the output: ${why}`);
  } catch {
    // Nor can standard error be written: the status alone says it.
    return 2;
  }
}

/** Runs the program with the words after its name. `serving`: it goes on until its client ends it. */
export function run(given: Terminal, words: readonly string[]): Exit | 'serving' {
  return runOn(guarded(given), words);
}

function runOn(terminal: Terminal, words: readonly string[]): Exit | 'serving' {
  const given = readArguments(words);
  if ('wrong' in given) return cannotRun(terminal, `${given.wrong}; see \`ohmwright --help\``);
  const { command: name, options } = given;
  if (options.version === true) return printed(terminal, `${version}\n`);
  if (options.help === true || name === 'help') return printed(terminal, help);
  if (name === undefined) return cannotRun(terminal, 'no command given; see `ohmwright --help`');
  if (later.includes(name)) return cannotRun(terminal, `\`${name}\` comes in a later version`);
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (command === undefined)
    return cannotRun(terminal, `there is no command ${name}; see \`ohmwright --help\``);
  const stray = strayOption(given, command.options);
  if (stray !== undefined)
    return cannotRun(terminal, `\`${name}\` takes no --${stray}; see \`ohmwright --help\``);
  return command.run(terminal, given);
}

/** The form that was asked for, one of those that the command has; text where none was. */
function formatOf<T extends Format>(
  { format = 'text' }: Arguments['options'],
  has: readonly T[],
): { readonly format: T } | { readonly wrong: string } {
  const found = has.find((one) => one === format);
  return found === undefined
    ? { wrong: `there is no format ${format}: ${has.join(', ')}` }
    : { format: found };
}

function named(options: Arguments['options']): { readonly name?: string } {
  return options.name === undefined ? {} : { name: options.name };
}

function printed(terminal: Terminal, text: string): Exit {
  terminal.out(text);
  return 0;
}

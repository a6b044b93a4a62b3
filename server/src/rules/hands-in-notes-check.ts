import { connectorsProbed, isolatedBy } from '../bench/hazards.ts';
import { isVerb } from '../format/words.ts';
import type { Verb } from '../format/words.ts';
import { thingsAt } from '../text/mentioned.ts';
import type { Id, Procedure, Step } from '../text/procedure.ts';
import type { Command, Handled } from './doing-words.ts';
import type { Seen } from './rule.ts';

/* Commands beside a step: a note that says to unplug something is done by its reader and checked by nobody. */

const keys = ['note', 'why', 'caution', 'warning', 'danger', 'see'] as const;

/** What gives the commands in a text; the same text often stands beside many steps. */
export type CommandsIn = (text: string) => readonly Command[];

export function handsInNotes(
  procedure: Procedure,
  step: Step,
  index: number,
  commandsIn: CommandsIn,
): readonly Seen[] {
  const texts = keys.flatMap((key): [string, string][] => {
    const text = step[key];
    return text === undefined ? [] : [[key, text]];
  });
  if (step.verb === 'stop') texts.unshift(['stop', step.text]);
  if (texts.length === 0) return [];
  const own = new Set(namedBy(step));
  return texts.flatMap(([key, text]) =>
    commandsIn(text)
      .filter(({ name, to }) => !own.has(name) && to.some((kind) => procedure[kind].has(name)))
      .map((command): Seen => {
        const message = `This ${key} says to ${command.word} ${command.name}, but only steps are checked: ${adviceTo(procedure, command)}, or leave the name out.`;
        return { index, issue: { rule: 'hands-in-text', subject: command.name, underline: [key], message } };
      }),
  );
}

/** What the step itself acts on: a note may say how. */
export function namedBy(step: Step): readonly Id[] {
  switch (step.verb) {
    case 'disconnect':
    case 'reconnect':
      return step.connector === null ? [step.source] : [step.source, step.connector];
    case 'prove-dead':
      return [step.source, step.known, ...connectorsProbed(step.at)];
    case 'unlock':
    case 'unplug':
    case 'plug':
      return [step.connector];
    case 'fit':
      return [step.load, step.at.connector];
    case 'move':
      return [step.load, step.to.connector];
    case 'remove':
      return [step.load];
    case 'inspect':
    case 'do':
      return thingsAt(step.at).flatMap(({ id, members }) => [id, ...members]);
    case 'replace':
      return step.what.flatMap(({ id, members }) => [id, ...members]);
    case 'ignition':
    case 'wait':
    case 'read':
    case 'measure':
    case 'read-codes':
    case 'clear-codes':
    case 'conclude':
    case 'go':
    case 'stop':
    case 'run':
    case 'broken':
      return [];
  }
}

/** What a verb can be written for where a text gives it as a command; nothing where that is no work of hands. */
const handledBy: Readonly<Record<Verb, readonly Handled[]>> = {
  ignition: [],
  disconnect: ['sources'],
  reconnect: ['sources'],
  wait: [],
  'prove-dead': [],
  unlock: ['connectors'],
  unplug: ['connectors'],
  plug: ['connectors'],
  fit: ['loads'],
  move: ['loads'],
  remove: ['loads'],
  read: [],
  measure: [],
  'read-codes': [],
  'clear-codes': [],
  inspect: [],
  do: [],
  replace: ['connectors', 'parts', 'monitors', 'assemblies'],
  conclude: [],
  go: [],
  stop: [],
  run: [],
};

/** How to write a command as a step. */
export function adviceTo(procedure: Procedure, { word, name }: Command): string {
  const source = isolatedBy(procedure, name);
  if (source !== null && (word === 'unlock' || word === 'unplug'))
    return `write a step \`disconnect: ${source}\``;
  if (source !== null && word === 'plug') return `write a step \`reconnect: ${source}\``;
  const handled = isVerb(word) ? handledBy[word] : [];
  return handled.some((kind) => procedure[kind].has(name))
    ? `write a step \`${word}: ${name}\``
    : `write it as a \`do\` with \`at: ${name}\``;
}

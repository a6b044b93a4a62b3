import { isMeant, thingsAt } from '../text/mentioned.ts';
import type { Id, Procedure, Step } from '../text/procedure.ts';
import { commandsIn } from './doing-words.ts';
import type { Command } from './doing-words.ts';
import { handsInHeadings } from './hands-in-headings-check.ts';
import { handsInNotes } from './hands-in-notes-check.ts';
import type { Context, Finder, Seen } from './rule.ts';

/* Hands hidden in a sentence: what a `do` or `inspect` names and does not say that it touches, and what a text
 * beside a step tells the reader to do. */

export const handsInTextFinder: Finder = { check: handsInText };

function handsInText({ procedure, graph }: Context): readonly Seen[] {
  const { connectors, parts, monitors, assemblies, sources, loads } = procedure;
  const groups = [connectors, parts, monitors, assemblies, sources, loads];
  const known = new Map(groups.flatMap((group) => [...group.keys()]).map((id, at) => [id, at]));
  const texts = new Map<string, readonly Command[]>();
  const commands = (text: string): readonly Command[] => {
    const found = texts.get(text) ?? commandsIn(text);
    texts.set(text, found);
    return found;
  };
  const ofSteps = graph.steps.flatMap((step, index) => [
    ...handsInDeeds(procedure, step, index, known),
    ...handsInNotes(procedure, step, index, commands),
  ]);
  return [...ofSteps, ...handsInHeadings(procedure, graph.steps, commands)];
}

function handsInDeeds(
  procedure: Procedure,
  step: Step,
  index: number,
  known: ReadonlyMap<Id, number>,
): readonly Seen[] {
  if (!('text' in step)) return [];
  switch (step.verb) {
    case 'do':
    case 'inspect':
      return named(procedure, known, step).map((id): Seen => {
        const message = `The text names ${id}, ${advice(procedure, id)}.`;
        return { index, issue: { rule: 'hands-in-text', subject: id, message } };
      });
    case 'stop':
      // It is read like a note beside the step.
      return [];
  }
}

/** What the text names, by whole words, and `at` does not; in the order of the file. */
function named(
  { assemblies }: Procedure,
  known: ReadonlyMap<Id, number>,
  step: Step & { verb: 'do' | 'inspect' },
): readonly Id[] {
  const words = [...new Set(step.text.match(/[A-Za-z0-9-]+/gu) ?? [])];
  const at = [...thingsAt(step.at), ...step.of];
  const isTouched = (id: Id): boolean =>
    isMeant(at, id) || assemblies.get(id)?.members.every((member) => isMeant(at, member)) === true;
  const named = words.filter((word) => known.has(word) && !isTouched(word));
  return named.sort((a, b) => (known.get(a) ?? 0) - (known.get(b) ?? 0));
}

function advice({ sources, loads }: Procedure, id: Id): string {
  if (sources.has(id))
    return `but a sentence switches nothing: write \`disconnect: ${id}\` or \`reconnect: ${id}\` instead`;
  if (loads.has(id)) return `but a sentence fits nothing: write \`fit: ${id}\` or \`remove: ${id}\` instead`;
  return `but \`at\` does not say that hands touch it: add \`at: ${id}\`, or leave the name out`;
}

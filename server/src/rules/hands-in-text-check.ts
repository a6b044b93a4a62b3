import { isMeant } from '../text/mentioned.ts';
import type { Id, Procedure, Step } from '../text/procedure.ts';
import { commandsIn } from './doing-words.ts';
import type { Command } from './doing-words.ts';
import { handsInNotes } from './hands-in-notes-check.ts';
import type { Context, Finder, Seen } from './rule.ts';

/* Hands hidden in a sentence: what a `do` or `inspect` names and does not say that it touches, and what a text
 * beside a step tells the reader to do. */

export const handsInTextFinder: Finder = { check: handsInText };

function handsInText({ procedure, graph }: Context): readonly Seen[] {
  const { connectors, parts, monitors, sources, loads } = procedure;
  const known = [connectors, parts, monitors, sources, loads].flatMap((group) => [...group.keys()]);
  const texts = new Map<string, readonly Command[]>();
  const commands = (text: string): readonly Command[] => {
    const found = texts.get(text) ?? commandsIn(text);
    texts.set(text, found);
    return found;
  };
  return graph.steps.flatMap((step, index) => [
    ...handsInDeeds(procedure, step, index, known),
    ...handsInNotes(procedure, step, index, commands),
  ]);
}

function handsInDeeds(
  procedure: Procedure,
  step: Step,
  index: number,
  known: readonly Id[],
): readonly Seen[] {
  if (step.verb !== 'do' && step.verb !== 'inspect') return [];
  return named(known, step).map((id): Seen => {
    const message = `The text names ${id}, ${advice(procedure, id)}.`;
    return { index, issue: { rule: 'hands-in-text', subject: id, message } };
  });
}

/** What the text names, by whole words, and `at` does not. */
function named(known: readonly Id[], step: Step & { verb: 'do' | 'inspect' }): readonly Id[] {
  const words = new Set(step.text.match(/[A-Za-z0-9-]+/gu) ?? []);
  return known.filter((id) => words.has(id) && !isMeant(step.at, id));
}

function advice({ sources, loads }: Procedure, id: Id): string {
  if (sources.has(id))
    return `but a sentence switches nothing: write \`disconnect: ${id}\` or \`reconnect: ${id}\` instead`;
  if (loads.has(id)) return `but a sentence fits nothing: write \`fit: ${id}\` or \`remove: ${id}\` instead`;
  return `but \`at\` does not say that hands touch it: add \`at: ${id}\`, or leave the name out`;
}

import { isMeant } from '../text/mentioned.ts';
import type { Id, Procedure, Step } from '../text/procedure.ts';
import type { Context, Finder, Seen } from './rule.ts';

/* Hands hidden in a sentence: a `do` or `inspect` that names something of the file without saying that it is touched. */

export const handsInTextFinder: Finder = { check: handsInText };

function handsInText({ procedure, graph }: Context): readonly Seen[] {
  return graph.steps.flatMap((step, index) => {
    if (step.verb !== 'do' && step.verb !== 'inspect') return [];
    return named(procedure, step).map((id): Seen => {
      const message = `The text names ${id}, ${advice(procedure, id)}.`;
      return { index, issue: { rule: 'hands-in-text', subject: id, message } };
    });
  });
}

/** What the text names, by whole words, and `at` does not. */
function named(procedure: Procedure, step: Step & { verb: 'do' | 'inspect' }): readonly Id[] {
  const { connectors, parts, monitors, sources, loads } = procedure;
  const known = [connectors, parts, monitors, sources, loads].flatMap((group) => [...group.keys()]);
  const words = new Set(step.text.match(/[A-Za-z0-9-]+/gu) ?? []);
  return known.filter((id) => words.has(id) && !isMeant(step.at, id));
}

function advice({ sources, loads }: Procedure, id: Id): string {
  if (sources.has(id))
    return `but a sentence switches nothing: write \`disconnect: ${id}\` or \`reconnect: ${id}\` instead`;
  if (loads.has(id)) return `but a sentence fits nothing: write \`fit: ${id}\` or \`remove: ${id}\` instead`;
  return `but \`at\` does not say that hands touch it: add \`at: ${id}\`, or leave the name out`;
}

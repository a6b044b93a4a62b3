import type { Id, Procedure, Step } from '../text/procedure.ts';
import type { Context, Finder, Seen } from './rule.ts';

/* Hands hidden in a sentence: a `do` or `inspect` that names something of the file without saying that it is touched. */

export const handsInTextFinder: Finder = { check: handsInText };

function handsInText({ procedure, graph }: Context): readonly Seen[] {
  const ids = touchable(procedure);
  return graph.steps.flatMap((step, index) =>
    hidden(step, ids).map((id): Seen => ({
      index,
      issue: {
        rule: 'hands-in-text',
        subject: id,
        message: `The text names ${id}, but no \`at\` says whether hands touch it: add \`at: ${id}\`, or leave the name out.`,
      },
    })),
  );
}

function touchable(procedure: Procedure): readonly Id[] {
  return [...procedure.connectors.keys(), ...procedure.parts.keys(), ...procedure.monitors.keys()];
}

function hidden(step: Step, ids: readonly Id[]): readonly Id[] {
  if ((step.verb !== 'do' && step.verb !== 'inspect') || step.at.length > 0) return [];
  const words = new Set(step.text.match(/[A-Za-z0-9-]+/gu) ?? []);
  return ids.filter((id) => words.has(id));
}

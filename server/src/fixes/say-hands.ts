import { sentencesOf } from '../rules/hands/sentences.ts';
import type { Id, Procedure } from '../model/procedure.ts';
import { stepNumber } from '../model/where.ts';
import { stepOf } from './along-trace.ts';
import type { Candidate, Mender } from './candidate.ts';

/** What hands touch is for the author to say: what the text names, or nothing. */
export const sayHands: Mender = (analysis, finding) => {
  const procedure = analysis.procedure().value;
  const step = stepOf(procedure, finding);
  if (step?.verb !== 'do' && step?.verb !== 'inspect') return [];
  const { index, text, of } = step;
  const named = namedIn(procedure, text);
  const touched = named.filter((id) => !procedure.sources.has(id) && !procedure.loads.has(id));
  const unsaid = named.filter((id) => !of.some((one) => one.id === id));
  const way = (...lines: readonly string[]): Candidate => ({
    title: `Add ${lines.map((line) => `\`${line}\``).join(' and ')} to step ${stepNumber(step)}`,
    changes: lines.map((line) => ({ kind: 'key', index, line })),
    isChoice: true,
  });
  return [
    ...(touched.length > 0 ? [way(`at: ${written(touched)}`)] : []),
    unsaid.length > 0 && of.length === 0 ? way('at: nothing', `of: ${written(unsaid)}`) : way('at: nothing'),
  ];
};

/** The things that a text names by their ids, or as the only one of what people call so. */
function namedIn(procedure: Procedure, text: string): readonly Id[] {
  const { names } = sentencesOf(procedure)(text);
  const ids = names.flatMap(({ meaning }) =>
    meaning.as === 'id' || meaning.ids.length === 1 ? meaning.ids : [],
  );
  return [...new Set(ids)];
}

function written(ids: readonly Id[]): string {
  const [first = ''] = ids;
  return ids.length === 1 ? first : `[${ids.join(', ')}]`;
}

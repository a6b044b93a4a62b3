import { CompletionItemKind } from 'vscode-languageserver-types';
import type { CompletionItem } from 'vscode-languageserver-types';
import { verbs } from '../format/words.ts';
import { properties } from '../format/walker.ts';
import { definitionSchema, fileSchema } from '../text/schema.ts';
import { schemaForTyping } from '../text/schema-for.ts';
import { verbSnippet } from './completion-snippets.ts';
import { withoutPlaces } from './completion-places.ts';
import { aligned, documented, indentTo, isKeyed, snippet, sorted } from './completion-target.ts';
import type { Target } from './completion-target.ts';

/** Every verb with its usual keys, and the heading, for a step whose dash stands there. */
export function verbsBehindDash(at: Target): CompletionItem[] {
  const { beside, inFlow, column } = at.place;
  const { from, blanks } = aligned(at, column);
  const indent = indentTo(at, isBareDash(at) ? column + 1 : column, column);
  return steps(at, (verb, lines) => {
    if (isKeyed(at)) return snippet(at, verb, verb);
    const missing = lines.filter((line) => !beside.has(line.slice(0, line.indexOf(':'))));
    return snippet(at, verb, blanks + missing.join(inFlow ? ', ' : `\n${indent}`), from);
  });
}

function isBareDash({ before }: Target): boolean {
  return /^\s*-$/.test(before);
}

/** The same for an empty line among the steps: the dash comes with it, at the column of the others. */
export function newSteps(at: Target, rank: number): CompletionItem[] {
  const { path, section } = at.place;
  const column = section?.column ?? 2;
  const { from, blanks } = aligned(at, column);
  const indent = indentTo(at, column + 2, column);
  return steps(
    at,
    (verb, lines) => {
      const label = path.length === 1 ? verb : `- ${verb}`;
      return {
        ...snippet(at, label, `${blanks}- ${lines.join(`\n${indent}`)}`, from),
        filterText: verb,
      };
    },
    rank,
  );
}

function steps(
  at: Target,
  itemFor: (verb: string, lines: readonly string[]) => CompletionItem,
  rank = 0,
): CompletionItem[] {
  const procedure = at.document.analysis.procedure().value;
  // Without a routine there is nothing to run.
  const offered = verbs.filter((verb) => verb !== 'run' || at.ids.routines.length > 0);
  return [...offered, 'section' as const].map((verb, order) => {
    const lines = verbSnippet(verb, procedure, at.ids);
    const schema =
      verb === 'section'
        ? definitionSchema('section')
        : schemaForTyping(['steps', '#'], new Map<string, string>([[verb, '']]));
    const own = schema === null ? undefined : properties(schema, fileSchema).get(verb);
    return {
      ...itemFor(verb, lines),
      kind: CompletionItemKind.Function,
      detail: lines.map(withoutPlaces).join(', '),
      ...sorted(rank, order),
      ...(own === undefined ? {} : documented(own)),
    };
  });
}

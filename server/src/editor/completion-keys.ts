import { CompletionItemKind } from 'vscode-languageserver-types';
import type { CompletionItem } from 'vscode-languageserver-types';
import { isKindSection, kindsOf, sections, verbs } from '../format/words.ts';
import { properties, typesOf, wordsOf } from '../format/walker.ts';
import type { Schema } from '../format/walker.ts';
import { fileSchema } from '../text/schema.ts';
import { schemaForTyping } from '../text/schema-for.ts';
import { connectorsOnPath } from './completion-examples.ts';
import { choice, withoutPlaces } from './completion-places.ts';
import { newEntries } from './completion-snippets.ts';
import { newSteps, verbsBehindDash } from './completion-steps.ts';
import { aligned, documented, indentTo, isKeyed, snippet, sorted } from './completion-target.ts';
import type { Target } from './completion-target.ts';

/** Keys of the map that the cursor is in; on an empty line also what can start there in the section around. */
export function keys(at: Target): CompletionItem[] {
  const { path, isAlone, section, columnBelow } = at.place;
  const own = keysHere(at);
  // What stands below and further in would fall to what is new.
  if (!isAlone || section === null || columnBelow > section.column || isKeyed(at)) return own;
  const rank = own.length === 0 ? 0 : 2;
  if (section.name === 'steps')
    return path.length > 2 || isNewStep(at) ? own : [...own, ...newSteps(at, rank)];
  return path.length > 1 ? own : [...own, ...entries(at, section.name, section.column, rank)];
}

function isStep({ place: { path } }: Target): boolean {
  return path.length === 2 && path[0] === 'steps';
}

function isNewStep(at: Target): boolean {
  const { beside } = at.place;
  return isStep(at) && !beside.has('section') && !verbs.some((verb) => beside.has(verb));
}

function keysHere(at: Target): CompletionItem[] {
  const { path, beside, entry, inFlow } = at.place;
  if (isNewStep(at)) return verbsBehindDash(at);
  if (isStep(at) && beside.has('section')) return [];
  if (path.length === 1 && inFlow && sections.some((one) => one === path[0]))
    return entries(at, path[0] ?? '', 0, 0);
  const schema = schemaForTyping(path, path.length === 2 ? beside : entry);
  if (path.includes('outcomes')) return outcomes(at, schema);
  if (path.at(-1) === 'given') return given(at);
  if (path[0] === 'loops' && path.at(-1) === 'pins') return pins(at);
  return schema === null ? [] : keysOf(at, schema);
}

function keysOf(at: Target, schema: Schema): CompletionItem[] {
  const required = new Set(Array.isArray(schema.required) ? (schema.required as unknown[]) : ['kind']);
  const isVerb = (key: string): boolean => isStep(at) && verbs.some((verb) => verb === key);
  const own = [...properties(schema, fileSchema)].filter(
    ([key]) => !at.place.beside.has(key) && !isVerb(key),
  );
  return own.map(([key, value], order) => ({
    ...keyItem(at, key, written(at, key, value)),
    kind: CompletionItemKind.Property,
    ...sorted(required.has(key) ? 0 : 1, order),
    ...documented(value),
  }));
}

/** Where the key stands there already, its name alone is replaced. */
function keyItem(at: Target, key: string, text: string): CompletionItem {
  if (isKeyed(at)) return snippet(at, key, key);
  const { from, blanks } = aligned(at, at.place.column);
  return snippet(at, key, blanks + text, from);
}

/** A key, with the few words that can follow it, or with the start of the map or list that it holds. */
function written(at: Target, key: string, schema: Schema): string {
  const { inFlow, path } = at.place;
  const types = typesOf(schema, fileSchema);
  const words = types.has('boolean')
    ? ['true', 'false']
    : key === 'kind'
      ? kindsIn(at)
      : wordsOf(schema, fileSchema);
  if (words.length > 1 && at.snippets) return `${key}: ${choice(1, words, '')}`;
  if (words.length > 0 || [...types].some((type) => type !== 'object' && type !== 'array')) return `${key}: `;
  const indent = indentTo(at, at.place.column + 2, at.place.column);
  if (types.has('array') && path.length === 0) return `${key}:\n${indent}- `;
  if (types.has('object') && !inFlow) return `${key}:\n${indent}`;
  if (types.size === 0 || !at.snippets) return `${key}: `;
  return types.has('object') ? `${key}: { $1 }` : `${key}: [$1]`;
}

function kindsIn({ place: { path } }: Target): readonly string[] {
  const section = path[0] ?? '';
  return isKindSection(section) ? kindsOf(section) : [];
}

function entries(at: Target, section: string, column: number, rank: number): CompletionItem[] {
  if (isKeyed(at)) return [];
  const { from, blanks } = aligned(at, column);
  const offered = newEntries(section, at.document.analysis.procedure().value, at.ids);
  return [...offered].map(([label, { id, body }], order) => ({
    ...snippet(at, label, `${blanks}${choice(1, [], id)}: ${body}`, from),
    kind: CompletionItemKind.Struct,
    detail: `${id}: ${withoutPlaces(body)}`,
    ...sorted(rank, order),
  }));
}

function outcomes(at: Target, schema: Schema | null): CompletionItem[] {
  const { entry, path, beside } = at.place;
  const named = schema === null ? [] : [...properties(schema, fileSchema)];
  const read = entry.get('read') ?? '';
  const loops = path.at(-1) === 'outcomes' && read.startsWith('[') ? read.split(/[^A-Za-z0-9-]+/) : [];
  const known = new Set(at.ids.loops);
  const ofLoops = loops.filter((id) => known.has(id));
  const names = [...named, ...[...ofLoops, ...windowsOf(entry)].map((name) => [name, null] as const)];
  return names
    .filter(([key]) => !beside.has(key))
    .map(([key, value], order) => ({
      ...keyItem(at, key, `${key}: ${known.has(key) && at.snippets ? '{ $1 }' : ''}`),
      kind: CompletionItemKind.EnumMember,
      ...sorted(0, order),
      ...(value === null ? {} : documented(value)),
    }));
}

/** The names of the windows of a step, as far as they stand on one line. */
function windowsOf(entry: Target['place']['entry']): readonly string[] {
  const written = entry.get('windows') ?? '';
  return [...written.matchAll(/(?<![A-Za-z0-9-])([A-Za-z][A-Za-z0-9-]*)\s*:/g)].flatMap(
    ([, name]) => name ?? [],
  );
}

/** What the routine that is run needs. */
function given(at: Target): CompletionItem[] {
  const { entry, beside } = at.place;
  const { routines } = at.document.analysis.procedure().value;
  const needs = [...(routines.get(entry.get('run') ?? '')?.needs ?? [])];
  return needs
    .filter(([need]) => !beside.has(need))
    .map(([need, kind], order) => ({
      ...keyItem(at, need, `${need}: `),
      kind: CompletionItemKind.Reference,
      detail: kind,
      ...sorted(0, order),
    }));
}

function pins(at: Target): CompletionItem[] {
  const { entry, beside } = at.place;
  return connectorsOnPath(entry, at.ids.connectors)
    .filter((id) => !beside.has(id))
    .map((id, order) => ({
      ...keyItem(at, id, `${id}: [\${1:1}, \${2:2}]`),
      kind: CompletionItemKind.Reference,
      ...sorted(0, order),
    }));
}

import { CompletionItemKind } from 'vscode-languageserver-types';
import type { CompletionItem } from 'vscode-languageserver-types';
import { isKindSection, kindsOf, sections } from '../format/words.ts';
import { properties, typesOf, wordsOf } from '../format/walker.ts';
import type { Schema } from '../format/walker.ts';
import { fileSchema } from '../text/schema.ts';
import { schemaForTyping } from '../text/schema-for.ts';
import {
  connectorsOnPath,
  outcomesWithPlaces,
  pinsWithPlaces,
  writtenExamples,
} from './completion-examples.ts';
import { idsThatFit, whereWrongLeads } from './completion-ids.ts';
import { literal, withoutPlaces } from './completion-places.ts';
import { newEntries } from './completion-snippets.ts';
import { documented, snippet, sorted, word } from './completion-target.ts';
import type { Target } from './completion-target.ts';
import { formsOf, isQuantity } from './completion-units.ts';

/** What can stand behind a key. */
export function values(at: Target): CompletionItem[] {
  const { path, key, entry, beside, typed, inFlow, opensBlock } = at.place;
  if (opensBlock && !inFlow) return [];
  const ids = idItems(at);
  if (ids.length > 0) return ids;
  const [section = ''] = path;
  if (path.length === 1 && sections.some((one) => one === section)) return bodies(at, section);
  if (path.length === 2 && key === 'kind') return kindWords(at, section);
  const schema = schemaForTyping([...path, key], path.length === 2 ? beside : entry);
  if (schema === null) return [];
  const expected = typeof schema['x-expected'] === 'string' ? schema['x-expected'] : '';
  if (isQuantity(expected) && /\d/.test(typed)) return quantities(at, expected);
  if (!isWhole(at)) return [];
  const types = typesOf(schema, fileSchema);
  const listed = [...wordsOf(schema, fileSchema), ...(types.has('boolean') ? ['true', 'false'] : [])];
  if (listed.length > 0) return listed.map((one, order) => wordItem(at, one, order, schema));
  return typed.trim() === '' || isQuantity(expected) ? examples(at, schema) : [];
}

/** What can be an item of a list, or the value of a key: ids, and the words that stand beside them. */
export function idItems(at: Target): CompletionItem[] {
  const { ids, place, document } = at;
  if (!isWhole(at)) return [];
  const fitting = idsThatFit(document.analysis.procedure().value, ids, place) ?? [];
  // A path is a list from its first id on.
  const opens = place.path[0] === 'loops' && place.part === 'value';
  return fitting.map(({ word: id, detail }, order) => ({
    ...(opens ? snippet(at, id, `[${id}, $1]`) : word(at, id, id)),
    kind: CompletionItemKind.Reference,
    ...sorted(0, order),
    ...(detail === undefined ? {} : { detail }),
  }));
}

/** The word is all of the value: nothing but quotes stands before and behind it. */
function isWhole({ place, cursor, from, behind }: Target): boolean {
  const before = place.typed.slice(0, Math.max(0, place.typed.length - (cursor - from)));
  return /^["']?$/.test(before.trim()) && /^["']?\s*(?:$|[,\]}#])/.test(behind);
}

/** For an id of a section behind which nothing stands yet. */
function bodies(at: Target, section: string): CompletionItem[] {
  if (at.place.typed.trim() !== '' || !isWhole(at)) return [];
  const offered = newEntries(section, at.document.analysis.procedure().value, at.ids);
  return [...offered].map(([label, { body }], order) => ({
    ...snippet(at, label, body),
    kind: CompletionItemKind.Struct,
    detail: withoutPlaces(body),
    ...sorted(0, order),
  }));
}

function kindWords(at: Target, section: string): CompletionItem[] {
  if (!isKindSection(section) || !isWhole(at)) return [];
  return kindsOf(section).map((kind, order) => {
    const schema = schemaForTyping([section, '', 'kind'], new Map([['kind', kind]]));
    return wordItem(at, kind, order, schema ?? {});
  });
}

function wordItem(at: Target, one: string, order: number, schema: Schema): CompletionItem {
  return {
    ...word(at, one, one),
    kind: CompletionItemKind.EnumMember,
    ...sorted(0, order),
    ...documented(schema),
  };
}

/** From the number on, so that a client still finds the item when more is typed. */
function quantities(at: Target, expected: string): CompletionItem[] {
  const { cursor, place } = at;
  const behind = at.line.slice(at.column);
  const unit = /^[\p{L}²°]*/u.exec(behind)?.[0].length ?? 0;
  if (!/^\s*(?:$|[,\]}#])/.test(behind.slice(unit))) return [];
  return formsOf(place.typed, expected).map(({ label, detail, replaces, written }, order) => ({
    ...snippet({ ...at, to: cursor + unit }, label.trim(), written, cursor - replaces),
    filterText: withoutPlaces(written),
    kind: CompletionItemKind.Unit,
    detail,
    ...sorted(0, order),
  }));
}

function examples(at: Target, schema: Schema): CompletionItem[] {
  return examplesFor(at, schema).map((text, order) => ({
    ...snippet(at, withoutPlaces(text), text),
    kind: CompletionItemKind.Value,
    detail: 'an example',
    ...sorted(0, order),
  }));
}

function examplesFor({ place, ids, document }: Target, schema: Schema): readonly string[] {
  const { path, key, entry } = place;
  if (key === 'outcomes' || path.includes('outcomes')) {
    const steps = whereWrongLeads(document.analysis.procedure().value, ids);
    return [outcomesWithPlaces([...properties(schema, fileSchema).keys()], steps)];
  }
  if (path.length === 2 && path[0] === 'loops' && key === 'pins') {
    const connectors = connectorsOnPath(entry, ids.connectors);
    if (connectors.length > 0) return [pinsWithPlaces(connectors)];
  }
  // An id is given once.
  const isTaken = (text: string): boolean => key === 'id' && ids.steps.includes(text);
  return writtenExamples(schema, place)
    .filter((text) => !isTaken(text))
    .map(literal);
}

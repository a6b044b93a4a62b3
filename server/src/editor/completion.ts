import { CompletionItemKind, InsertTextFormat, MarkupKind } from 'vscode-languageserver-types';
import type { CompletionItem, Position, Range } from 'vscode-languageserver-types';
import { kinds, verbs } from '../format/definitions.ts';
import { properties, typesOf, wordsOf } from '../format/walker.ts';
import type { Schema } from '../format/walker.ts';
import { cursorPlace } from '../text/cursor.ts';
import type { CursorPlace } from '../text/cursor.ts';
import { fileSchema } from '../text/schema.ts';
import { schemaForTyping } from '../text/schema-for.ts';
import { idsThatFit } from './completion-ids.ts';
import { entrySnippets, verbSnippet, withoutPlaces } from './completion-snippets.ts';
import { unitsAfter } from './completion-units.ts';
import type { EditorDocument } from './document.ts';
import { toRange } from './document.ts';

export interface CompletionOptions {
  /** Whether the client fills in places of a snippet. */
  readonly snippets: boolean;
}

/** What can be typed where the cursor stands, also in a text that is half typed. */
export function complete(
  document: EditorDocument,
  position: Position,
  options: CompletionOptions,
): CompletionItem[] {
  const offset = document.text.offsetAt(position);
  const text = document.text.getText();
  const place = cursorPlace(text, offset);
  if (place === null) return [];
  const replaced = wordAround(text, offset);
  const at: Target = { document, place, options, range: toRange(document, replaced), replaced };
  switch (place.part) {
    case 'key':
      return keys(at);
    case 'value':
      return values(at);
    case 'item':
      return idItems(at);
  }
}

interface Target {
  readonly document: EditorDocument;
  readonly place: CursorPlace;
  readonly options: CompletionOptions;
  /** Of the word that the cursor touches. */
  readonly range: Range;
  readonly replaced: { readonly from: number; readonly to: number };
}

/** `coil-coupling` and `K30.monitor` are one word. */
function wordAround(text: string, offset: number): { from: number; to: number } {
  const before =
    /[A-Za-z0-9][A-Za-z0-9.-]*$/.exec(text.slice(Math.max(0, offset - 200), offset))?.[0].length ?? 0;
  const after = /^[A-Za-z0-9.-]*/.exec(text.slice(offset, offset + 200))?.[0].length ?? 0;
  return { from: offset - before, to: offset + after };
}

function keys(at: Target): CompletionItem[] {
  const { path, beside } = at.place;
  const isNewStep = path.length === 2 && path[0] === 'steps' && !verbs.some((verb) => beside.has(verb));
  if (isNewStep || (path.length === 1 && path[0] === 'steps')) return newSteps(at);
  if (path.length === 1 && path[0] !== undefined && Object.hasOwn(entrySnippets, path[0]))
    return newEntries(at, path[0]);
  if (path.includes('outcomes')) return outcomeNames(at);
  const schema = schemaForTyping(path, path.length === 2 ? beside : at.place.entry);
  return schema === null ? [] : keysOf(at, schema);
}

function keysOf(at: Target, schema: Schema): CompletionItem[] {
  const required = new Set(Array.isArray(schema.required) ? (schema.required as unknown[]) : []);
  const own = [...properties(schema, fileSchema)].filter(
    ([key]) => !at.place.beside.has(key) && !isVerb(at, key),
  );
  return own.map(([key, value]) => {
    const nests = ['object', 'array'].some((type) => typesOf(value, fileSchema).has(type as 'object'));
    const opens = nests && !typesOf(value, fileSchema).has('string') && at.place.path.length === 0;
    return {
      ...plain(at, key, opens ? `${key}:\n  ` : `${key}: `),
      kind: CompletionItemKind.Property,
      sortText: `${required.has(key) ? '0' : '1'}${key}`,
      ...documented(value),
    };
  });
}

/** A step has one verb: beside it the others are not offered. */
function isVerb({ place }: Target, key: string): boolean {
  return place.path[0] === 'steps' && place.path.length === 2 && verbs.some((verb) => verb === key);
}

function newSteps(at: Target): CompletionItem[] {
  const procedure = at.document.analysis.procedure().value;
  const { onBlankLine, column, path } = at.place;
  // On an empty line the dash comes with the verb, unless the cursor is inside a step.
  const needsDash = onBlankLine && path.length === 1;
  return [...verbs, 'section'].map((verb, order): CompletionItem => {
    const lines = verbSnippet(verb, procedure);
    const indent = needsDash ? '  ' : ' '.repeat(Math.max(0, column - columnOfLine(at)));
    const snippet = (needsDash ? '- ' : '') + lines.join(`\n${indent}`);
    const schema = schemaForTyping(['steps', '#'], new Map([[verb, '']]));
    const own = schema === null ? undefined : properties(schema, fileSchema).get(verb);
    return {
      ...inserted(at, verb, snippet),
      kind: CompletionItemKind.Function,
      sortText: `0${String(order).padStart(2, '0')}`,
      ...(own === undefined ? {} : documented(own)),
    };
  });
}

/** Editors indent the lines of a snippet like the line that it is put into. */
function columnOfLine({ document, range }: Target): number {
  const { line } = range.start;
  const text = document.text.getText({
    start: { line, character: 0 },
    end: { line: line + 1, character: 0 },
  });
  return /^ */.exec(text)?.[0].length ?? 0;
}

function newEntries(at: Target, section: string): CompletionItem[] {
  return Object.entries(entrySnippets[section] ?? {}).map(([kind, snippet]) => ({
    ...inserted(at, kind, snippet),
    kind: CompletionItemKind.Struct,
    detail: withoutPlaces(snippet),
  }));
}

function outcomeNames(at: Target): CompletionItem[] {
  const { entry, path } = at.place;
  const inner = path.slice(path.indexOf('outcomes'));
  const schema = schemaForTyping(['steps', '#', ...inner], entry);
  const known = schema === null ? [] : [...properties(schema, fileSchema)];
  const loops = entry.get('read')?.startsWith('[') === true && inner.length === 1;
  const ids = loops ? [...at.document.analysis.procedure().value.loops.keys()] : [];
  return [...known.map(([key, value]) => ({ key, value })), ...ids.map((key) => ({ key, value: null }))]
    .filter(({ key }) => !at.place.beside.has(key))
    .map(({ key, value }) => ({
      ...plain(at, key, `${key}: `),
      kind: CompletionItemKind.EnumMember,
      ...(value === null ? {} : documented(value)),
    }));
}

function values(at: Target): CompletionItem[] {
  const { path, key, beside, entry, typed } = at.place;
  const ids = idItems(at);
  if (ids.length > 0) return ids;
  const [section] = path;
  if (key === 'kind' && section !== undefined && Object.hasOwn(kinds, section))
    return words(at, kinds[section as keyof typeof kinds], CompletionItemKind.EnumMember);
  const schema = schemaForTyping([...path, key], path.length <= 2 && beside.size > 0 ? beside : entry);
  if (schema === null) return [];
  const units = unitsAfter(typed, schema);
  if (units.length > 0) return units.map((unit, order) => unitItem(at, unit, order));
  const types = typesOf(schema, fileSchema);
  const listed = [...wordsOf(schema, fileSchema), ...(types.has('boolean') ? ['true', 'false'] : [])];
  if (listed.length > 0) return words(at, listed, CompletionItemKind.EnumMember);
  return typed.trim() === '' ? examples(at, schema) : [];
}

function examples(at: Target, schema: Schema): CompletionItem[] {
  const listed = Array.isArray(schema.examples) ? (schema.examples as unknown[]) : [];
  return words(
    at,
    listed.filter((example) => typeof example === 'string'),
    CompletionItemKind.Value,
  );
}

function unitItem(at: Target, unit: string, order: number): CompletionItem {
  const position = at.document.text.positionAt(at.replaced.to);
  return {
    label: unit.trim(),
    kind: CompletionItemKind.Unit,
    sortText: `0${order}`,
    filterText: at.document.text.getText(at.range) + unit,
    textEdit: { range: { start: position, end: position }, newText: unit },
  };
}

function idItems(at: Target): CompletionItem[] {
  const fitting = idsThatFit(at.document.analysis.procedure().value, at.place) ?? [];
  return fitting.map(({ word, detail }, order) => ({
    ...plain(at, word, word),
    kind: CompletionItemKind.Reference,
    sortText: `0${String(order).padStart(4, '0')}`,
    ...(detail === undefined ? {} : { detail }),
  }));
}

function words(at: Target, listed: readonly string[], kind: CompletionItemKind): CompletionItem[] {
  return listed.map((word, order) => ({
    ...plain(at, word, word),
    kind,
    sortText: `0${String(order).padStart(2, '0')}`,
  }));
}

function plain({ range }: Target, label: string, newText: string): CompletionItem {
  return { label, textEdit: { range, newText } };
}

function inserted(at: Target, label: string, snippet: string): CompletionItem {
  const { snippets } = at.options;
  return {
    ...plain(at, label, snippets ? snippet : withoutPlaces(snippet)),
    insertTextFormat: snippets ? InsertTextFormat.Snippet : InsertTextFormat.PlainText,
  };
}

function documented({ description }: Schema): Pick<CompletionItem, 'documentation'> {
  return typeof description === 'string'
    ? { documentation: { kind: MarkupKind.Markdown, value: description } }
    : {};
}

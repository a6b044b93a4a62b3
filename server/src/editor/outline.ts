import { SymbolKind } from 'vscode-languageserver-types';
import type { DocumentSymbol } from 'vscode-languageserver-types';
import { grouped } from '../model/remembered.ts';
import { sectionAndId } from '../model/where.ts';
import type { Path } from '../model/where.ts';
import type { Step } from '../model/procedure.ts';
import { rangeOf } from './document.ts';
import type { EditorDocument } from './document.ts';
import { printable } from '../model/printable.ts';
import { stepInWords } from '../model/step-in-words.ts';

/** The circuit by what it is made of, and the steps below their headings. */
export function outline(document: EditorDocument): DocumentSymbol[] {
  const { value } = document.analysis.procedure();
  const groups: readonly [string, SymbolKind, Iterable<{ readonly id: string; readonly path: Path }>][] = [
    ['entries', SymbolKind.Variable, value.entries.values()],
    ['sources', SymbolKind.Event, [...value.sources.values(), ...value.regulated.values()]],
    ['instruments', SymbolKind.Interface, [...value.monitors.values(), ...value.multimeters.values()]],
    ['loads', SymbolKind.Constant, value.loads.values()],
    ['parts', SymbolKind.Field, value.parts.values()],
    ['connectors', SymbolKind.Property, value.connectors.values()],
    ['assemblies', SymbolKind.Package, value.assemblies.values()],
    ['loops', SymbolKind.Class, value.loops.values()],
  ];
  const circuit = groups.flatMap(([section, kind, entries]) => {
    const own = [...entries].filter(({ path }) => !value.elsewhere.has(sectionAndId(path)));
    const below = own.map(({ id, path }) => symbol(document, id, kind, path)).sort(byPlace);
    return below.length === 0 ? [] : [parent(document, section, SymbolKind.Namespace, [section], below)];
  });
  const own = value.steps.filter(({ calls }) => calls.length === 0);
  return [
    ...circuit,
    ...networkSymbols(document),
    ...routineSymbols(document),
    ...stepSymbols(document, own),
  ];
}

function byPlace(
  { range: { start: one } }: DocumentSymbol,
  { range: { start: other } }: DocumentSymbol,
): number {
  return one.line - other.line || one.character - other.character;
}

/** What stands between the nodes, in the order of the file. */
function networkSymbols(document: EditorDocument): DocumentSymbol[] {
  const { elements } = document.analysis.procedure().value.network;
  const below = elements.map(({ id, between: [from, second, third], path }) => {
    const to = third === undefined ? second : `${third}, wiper ${second}`;
    return symbol(document, `${id} from ${from} to ${to}`, SymbolKind.Class, path);
  });
  return below.length === 0 ? [] : [parent(document, 'network', SymbolKind.Namespace, ['network'], below)];
}

/** The routines of the file, each with its steps as the first call does them. */
function routineSymbols(document: EditorDocument): DocumentSymbol[] {
  const { routines, steps, elsewhere } = document.analysis.procedure().value;
  const own = [...routines.values()].filter(({ path }) => !elsewhere.has(sectionAndId(path)));
  if (own.length === 0) return [];
  const byRoutine = grouped(steps.map((step) => [step.routine, step] as const));
  const below = own.map(({ id, path }) => {
    const inside = new Map((byRoutine.get(id) ?? []).map((step) => [step.path.join('/'), step]));
    const symbols = [...inside.values()].map((step) => stepSymbol(document, step));
    return parent(document, id, SymbolKind.Method, path, symbols);
  });
  return [parent(document, 'routines', SymbolKind.Namespace, ['routines'], below)];
}

function stepSymbols(document: EditorDocument, steps: readonly Step[]): DocumentSymbol[] {
  if (steps.length === 0) return [];
  const sections: { name: string; steps: Step[] }[] = [];
  for (const step of steps) {
    const name = step.section ?? '';
    const last = sections.at(-1);
    if (last?.name === name) last.steps.push(step);
    else sections.push({ name, steps: [step] });
  }
  const below = sections.flatMap(({ name, steps: inside }) => {
    const symbols = inside.map((step) => stepSymbol(document, step));
    const [first] = inside;
    if (name === '' || first === undefined) return symbols;
    return [parent(document, name, SymbolKind.Module, first.path, symbols)];
  });
  return [parent(document, 'steps', SymbolKind.Namespace, ['steps'], below)];
}

function stepSymbol(document: EditorDocument, step: Step): DocumentSymbol {
  const id = step.id === undefined ? '' : `  ${step.id}`;
  return symbol(document, `${step.number} ${stepInWords(step)}${id}`, SymbolKind.Function, step.path);
}

function symbol(document: EditorDocument, name: string, kind: SymbolKind, path: Path): DocumentSymbol {
  const range = rangeOf(document, { file: document.analysis.file, path, part: 'key' });
  // Editors refuse the whole outline where one name is empty, as it is while a key is being typed.
  const shown = name === '' ? '(no name)' : printable(name);
  return { name: shown, kind, range, selectionRange: range };
}

/** Spans what stands below it, so that the place of the cursor is found in it. */
function parent(
  document: EditorDocument,
  name: string,
  kind: SymbolKind,
  path: Path,
  children: DocumentSymbol[],
): DocumentSymbol {
  const own = symbol(document, name, kind, path);
  const end = children.at(-1)?.range.end ?? own.range.end;
  return { ...own, range: { start: own.range.start, end }, children };
}

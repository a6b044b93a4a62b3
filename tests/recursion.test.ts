import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

/*
 * A stack is full after some thousand calls, and a file may nest or chain more than that. So functions that lead back to
 * themselves are listed, each with what bounds it. Seen are named functions and whatever names them, by their name within
 * a file or through an import: methods of objects are not.
 */

const root = 'server/src';

/** By file and name; a circle of several is listed by each of them. */
const bounded: Readonly<Record<string, string>> = {
  'card/escape.ts#render': 'lists in lists, as the forms write them',
  'circuit/voltage-corner.ts#search': '`mostUndecided`',
  'editor/completion-examples.ts#written': 'examples of the format',
  'fixes/fix.ts#mend': '`mostRounds`',
  'fixes/fix.ts#mendRest': '`mostRounds`',
  'host/standard-streams.ts#lose': 'it takes `take` away, and does not call it',
  'host/standard-streams.ts#take': 'as `lose`',
  'paths/run.ts#renewed': 'it is called later, not in itself',
  'project/snapshot.ts#snapshotOf': 'it is called later, not in itself',
  'protocol/handlers.ts#flat': 'the outline: sections, steps and entries',
  'protocol/serving.ts#readOn': 'it is called later, not in itself',
  'protocol/slices.ts#go': 'it is called later, not in itself',
  'text/document.ts#entriesOf': '`deepest` in tokens.ts',
  'text/document.ts#toNode': '`deepest` in tokens.ts',
  'text/expand.ts#innerOf': 'calls nest as deep as the call graph lets them',
  'text/expand.ts#lay': 'calls nest as deep as the call graph lets them',
  'text/expand.ts#listOf': 'calls nest as deep as the call graph lets them',
  'text/given.ts#replaced': '`deepest` in tokens.ts',
  'text/place-at.ts#inEntry': '`deepest` in tokens.ts',
  'text/place-at.ts#within': '`deepest` in tokens.ts',
  'text/values.ts#toData': '`deepest` in tokens.ts',
};

interface Module {
  /** By name in this file the function that it stands for, as `file#name`. */
  readonly names: Map<string, string>;
  readonly functions: Map<string, ts.Node[]>;
}

function modules(): ReadonlyMap<string, Module> {
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter(
    (file) => file.endsWith('.ts') && !file.includes('generated'),
  );
  return new Map(files.map((file) => [normalize(file), moduleOf(normalize(file))]));
}

function moduleOf(file: string): Module {
  const text = readFileSync(join(root, file), 'utf8');
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const module: Module = { names: new Map(), functions: new Map() };
  const waiting: ts.Node[] = [source];
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    if (ts.isImportDeclaration(node)) addImports(file, node, module);
    const name = functionName(node);
    if (name !== null) {
      module.names.set(name, `${file}#${name}`);
      module.functions.set(name, [...(module.functions.get(name) ?? []), node]);
    }
    ts.forEachChild(node, (child) => void waiting.push(child));
  }
  return module;
}

function addImports(file: string, node: ts.ImportDeclaration, { names }: Module): void {
  const from = (node.moduleSpecifier as ts.StringLiteral).text;
  const bindings = node.importClause?.namedBindings;
  if (!from.startsWith('.') || bindings === undefined || !ts.isNamedImports(bindings)) return;
  for (const { name, propertyName } of bindings.elements)
    names.set(name.text, `${join(dirname(file), from)}#${(propertyName ?? name).text}`);
}

function functionName(node: ts.Node): string | null {
  if (ts.isFunctionDeclaration(node)) return node.name?.text ?? null;
  if (!ts.isVariableDeclaration(node) || !ts.isIdentifier(node.name)) return null;
  const made = node.initializer;
  return made !== undefined && (ts.isArrowFunction(made) || ts.isFunctionExpression(made))
    ? node.name.text
    : null;
}

/** What the body of a function names. */
function namedIn(nodes: readonly ts.Node[], { names }: Module): ReadonlySet<string> {
  const found = new Set<string>();
  const own = new Set<string>();
  const waiting: ts.Node[] = [];
  for (const node of nodes) ts.forEachChild(node, (child) => void waiting.push(child));
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    const { parent } = node;
    // The name of something of its own: of a key, a property, a declaration.
    const isOther =
      !ts.isShorthandPropertyAssignment(parent) &&
      (('name' in parent && parent.name === node) ||
        ('propertyName' in parent && parent.propertyName === node));
    const meant = ts.isIdentifier(node) && !isOther ? names.get(node.text) : undefined;
    if (meant !== undefined) found.add(meant);
    if (isOwnValue(node)) own.add(node.name.getText());
    ts.forEachChild(node, (child) => void waiting.push(child));
  }
  return new Set([...found].filter((meant) => !own.has(meant.split('#')[1] ?? '')));
}

/** A parameter or variable that is no function and may have the name of one. */
function isOwnValue(
  node: ts.Node,
): node is ts.ParameterDeclaration | ts.VariableDeclaration | ts.BindingElement {
  const isNamed = ts.isParameter(node) || ts.isVariableDeclaration(node) || ts.isBindingElement(node);
  return isNamed && functionName(node) === null;
}

function leadingBack(all: ReadonlyMap<string, Module>): readonly string[] {
  const calls = new Map<string, ReadonlySet<string>>();
  for (const [file, module] of all)
    for (const [name, nodes] of module.functions) calls.set(`${file}#${name}`, namedIn(nodes, module));
  return [...calls.keys()].filter((start) => {
    const seen = new Set<string>();
    const waiting = [...(calls.get(start) ?? [])];
    for (let one = waiting.pop(); one !== undefined; one = waiting.pop()) {
      if (one === start) return true;
      if (seen.has(one)) continue;
      seen.add(one);
      waiting.push(...(calls.get(one) ?? []));
    }
    return false;
  });
}

describe('functions that lead back to themselves', () => {
  it('are those that are listed, each with what bounds it', () => {
    expect(leadingBack(modules()).toSorted()).toEqual(Object.keys(bounded).toSorted());
  });
});

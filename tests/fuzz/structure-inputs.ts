import { parse, stringify } from 'yaml';
import { kindsOf } from '../../server/src/format/words.ts';
import { alternatives } from '../../server/src/format/walker.ts';
import type { Schema } from '../../server/src/format/walker.ts';
import { fileSchema } from '../../server/src/text/schema.ts';
import type { Chance } from '../oracle/chance.ts';
import { corpusText } from './corpus.ts';
import { parts } from './everything.ts';
import type { Input } from './input.ts';
import { special } from './text-inputs.ts';

const allKinds = [...kindsOf('sources'), ...kindsOf('instruments'), ...kindsOf('loads'), ...kindsOf('parts')];

/* YAML that is well formed: drawn from the schema of the format, and trees of the corpus with branches changed. */

export type Tree = string | number | boolean | null | Tree[] | { [key: string]: Tree };

export function structureInput(chance: Chance): Input {
  const base = corpusText(chance.whole(0, 1e9));
  const tree = chance.happens(0.25)
    ? drawn(chance)
    : mutant(base, chance, chance.happens(0.5) ? gentle : change);
  return { text: written(tree, chance), parts };
}

/** A procedure that can be read, most of the time. */
export function gentleInput(chance: Chance): Input {
  return { text: written(mutant(corpusText(chance.whole(0, 1e9)), chance, gentle), chance), parts };
}

/** The same tree may be written in lines or in brackets. */
export function written(tree: Tree, chance: Chance): string {
  const options = { lineWidth: 0, aliasDuplicateObjects: false } as const;
  return chance.happens(0.2)
    ? stringify(tree, { ...options, collectionStyle: 'flow' })
    : stringify(tree, { ...options, nullStr: chance.pick(['', 'null', '~']) });
}

const sections = [
  'sources',
  'entries',
  'instruments',
  'loads',
  'parts',
  'connectors',
  'assemblies',
  'loops',
  'routines',
] as const;

/** By section the few ids that everything drawn names. */
const pool: Readonly<Record<string, readonly string[]>> = {
  sources: ['battery', 'traction', 'supply'],
  entries: ['coolant'],
  instruments: ['unit', 'meter'],
  loads: ['lamp', 'plug'],
  parts: ['stage', 'wire', 'sensor', 'section-1'],
  connectors: ['K1', 'K2', 'K3', 'S1'],
  assemblies: ['box'],
  loops: ['first', 'second'],
  routines: ['make-safe', 'look'],
  steps: ['here', 'there', 'end-of-it'],
  nodes: ['plus', 'a', 'b', 'ground', 'K1.monitor.1', 'K1.end.1', 'K2.end.2'],
};

function drawn(chance: Chance): Tree {
  const root: Record<string, Tree> = { format: 1, title: 'Drawn' };
  const properties = fileSchema.properties as Readonly<Record<string, Schema>>;
  for (const [key, schema] of Object.entries(properties)) {
    if (key === 'format' || key === 'title' || (key === 'uses' && !chance.happens(0.1))) continue;
    const isSection = sections.some((one) => one === key);
    if (!chance.happens(isSection || key === 'steps' ? 0.9 : 0.3)) continue;
    root[key] = isSection ? section(key, schema, chance) : draw(schema, chance, key, 0);
  }
  return root;
}

function section(name: string, schema: Schema, chance: Chance): Tree {
  const ids = (pool[name] ?? []).filter(() => chance.happens(0.85));
  const below = schema.additionalProperties as Schema;
  return Object.fromEntries(ids.map((id) => [id, draw(below, chance, name, 1)]));
}

function draw(schema: Schema, chance: Chance, key: string, depth: number): Tree {
  if (chance.happens(0.004)) return odd(chance);
  const choices = alternatives(schema, fileSchema);
  const one = choices.length === 0 ? schema : chance.pick(choices);
  if (one.const !== undefined) return one.const as Tree;
  if (Array.isArray(one.enum)) return chance.pick(one.enum as Tree[]);
  switch (one.type) {
    case 'object':
      return object(one, chance, depth);
    case 'array': {
      const least = (one.minItems as number | undefined) ?? 0;
      const most = (one.maxItems as number | undefined) ?? (key === 'steps' ? 14 : 3);
      const items = one.items as Schema;
      return Array.from({ length: chance.whole(least, Math.max(least, most)) }, () =>
        draw(items, chance, key, depth + 1),
      );
    }
    case 'boolean':
      return chance.happens(0.5);
    case 'number':
    case 'integer':
      return chance.pick([0, 1, 2, -1, 0.5, 1e9]);
    default:
      return text({ ...schema, ...one }, chance, key);
  }
}

function object(schema: Schema, chance: Chance, depth: number): Tree {
  const needed = new Set((schema.required as string[] | undefined) ?? []);
  const result: Record<string, Tree> = {};
  for (const [key, below] of Object.entries((schema.properties as Record<string, Schema> | undefined) ?? {}))
    if (needed.has(key) ? chance.happens(0.985) : chance.happens(0.35))
      result[key] = draw(below, chance, key, depth + 1);
  if (typeof schema.additionalProperties === 'object' && schema.additionalProperties !== null) {
    const names = chance.pick([pool.connectors ?? [], pool.loops ?? [], ['where', 'what', 'cold', 'hot']]);
    for (const name of chance.some(names, 0.5))
      result[name] = draw(schema.additionalProperties as Schema, chance, name, depth + 1);
  }
  return result;
}

/** Which ids are meant, by what the schema says in words. */
const meant: readonly (readonly [RegExp, string])[] = [
  [/node/, 'nodes'],
  [/terminal/, 'nodes'],
  [/step id/, 'steps'],
  [/routine/, 'routines'],
  [/connector id|a side of the|carries/, 'connectors'],
  [/source/, 'sources'],
  [/instrument|monitor/, 'instruments'],
  [/load/, 'loads'],
  [/loop/, 'loops'],
  [/part id/, 'parts'],
];

function text(schema: Schema, chance: Chance, key: string): Tree {
  const expected = typeof schema['x-expected'] === 'string' ? schema['x-expected'] : '';
  if (expected === 'a side of a connector' || (expected.includes('side') && chance.happens(0.5)))
    return `${chance.pick(pool.connectors ?? [])}.${chance.pick(['monitor', 'end', 'end', 'front'])}`;
  if (key === 'at' || key === 'side')
    return chance.pick(['monitor', 'end', 'K1', 'K2.end', 'stage', 'K1.end.1']);
  if (key === 'id')
    return chance.pick([...(pool.steps ?? []), chance.whole(0, 1e6).toString(36).replace(/^\d/, 'x')]);
  const [, name] = meant.find(([pattern]) => pattern.test(expected)) ?? [];
  if (name !== undefined)
    return chance.pick(name === 'steps' ? ['next', ...(pool.steps ?? [])] : (pool[name] ?? []));
  if (/\bids?\b/.test(expected)) return chance.pick(Object.values(pool).flat());
  if (key === 'pin' || expected.includes('pin')) return chance.pick(['1', '2', 'A1', 1]);
  const examples = Array.isArray(schema.examples)
    ? schema.examples.filter((one) => typeof one === 'string')
    : [];
  if (examples.length === 0) return chance.pick(['Look at K1.', 'x', 'Unplug K1 and then stop.']);
  const example = chance.pick(examples);
  return /\d/.test(example) ? quantity(example, chance) : example;
}

/** A quantity with other numbers: small and great, turned round, at the limits of what is read. */
export function quantity(example: string, chance: Chance): string {
  if (chance.happens(0.5)) return example;
  return example.replaceAll(/\d+(?:\.\d+)?/g, (number) =>
    chance.happens(0.5)
      ? number
      : chance.pick([
          '0',
          '1',
          '2',
          '0.001',
          '1000',
          '60',
          '1e-100',
          '1e100',
          '1e-30',
          '1e30',
          String(Number(number) * 10),
          String(Number(number) / 3),
          '0.00',
        ]),
  );
}

function odd(chance: Chance): Tree {
  return chance.pick<Tree>([
    null,
    '',
    ' ',
    true,
    0,
    -1,
    [],
    {},
    [[]],
    [null],
    { '': 1 },
    { a: { b: {} } },
    'multi\nline',
    chance.pick(special),
  ]);
}

type Path = readonly (string | number)[];

/** A text of the corpus as a tree, with some branches changed. */
function mutant(source: string, chance: Chance, by: (tree: Tree, chance: Chance) => void): Tree {
  let tree: Tree;
  try {
    tree = parse(source) as Tree;
  } catch {
    return source;
  }
  for (let left = chance.pick([1, 1, 2, 3, 5]); left > 0; left -= 1) by(tree, chance);
  return tree;
}

interface Branch {
  readonly parent: Tree[] | Record<string, Tree>;
  readonly key: string | number;
  readonly value: Tree;
  readonly path: Path;
}

export function branchesOf(tree: Tree, path: Path = []): readonly Branch[] {
  if (typeof tree !== 'object' || tree === null) return [];
  const entries: [string | number, Tree][] = Array.isArray(tree) ? [...tree.entries()] : Object.entries(tree);
  return entries.flatMap(([key, value]) => [
    { parent: tree, key, value, path: [...path, key] },
    ...branchesOf(value, [...path, key]),
  ]);
}

function set({ parent, key }: Branch, value: Tree): void {
  if (Array.isArray(parent)) parent[Number(key)] = value;
  else parent[key] = value;
}

function drop({ parent, key }: Branch): void {
  if (Array.isArray(parent)) parent.splice(Number(key), 1);
  else Reflect.deleteProperty(parent, key);
}

/** A step more, less or elsewhere, another way out of a step, another thing of the same section, another number. */
function gentle(tree: Tree, chance: Chance): void {
  const branches = branchesOf(tree);
  const steps = branches.filter(({ parent, path }) => Array.isArray(parent) && path.at(-2) === 'steps');
  if (steps.length === 0) return;
  const step = chance.pick(steps);
  switch (chance.whole(0, 7)) {
    case 0:
      drop(step);
      return;
    case 1:
      drop(step);
      put(chance.pick(steps), step.value);
      return;
    case 2: {
      const copied = structuredClone(step.value);
      if (typeof copied === 'object' && copied !== null && !Array.isArray(copied)) delete copied.id;
      put(chance.pick(steps), copied);
      return;
    }
    case 3:
      retarget(branches, chance);
      return;
    case 4:
    case 5: {
      const quantities = branches.filter(
        ({ value }) => typeof value === 'string' && /\d (?:m?Ω|V|min|s|°C|%)/.test(value),
      );
      if (quantities.length > 0) nudge(chance.pick(quantities), chance);
      return;
    }
    case 6: {
      // Something of the same section.
      const ids = Object.entries(tree as object).flatMap(([, value]: [string, Tree]) =>
        typeof value === 'object' && value !== null && !Array.isArray(value) ? [Object.keys(value)] : [],
      );
      const uses = branches.filter(
        ({ value, path }) => path[0] === 'steps' && ids.flat().some((id) => id === value),
      );
      if (uses.length === 0) return;
      const use = chance.pick(uses);
      set(use, chance.pick(ids.find((group) => group.some((id) => id === use.value)) ?? []));
      return;
    }
    default: {
      const optional = branches.filter(({ key }) =>
        /^(?:outcomes|expect|warning|danger|note|wait|reserve|leaves|pins|at|live)$/.test(String(key)),
      );
      if (optional.length > 0) drop(chance.pick(optional));
    }
  }
}

function put({ parent, key }: Branch, value: Tree): void {
  if (Array.isArray(parent)) parent.splice(Number(key), 0, value);
}

/** One number of a quantity, a little or a lot. */
function nudge(branch: Branch, chance: Chance): void {
  const written = typeof branch.value === 'string' ? branch.value : '';
  const numbers = [...written.matchAll(/\d+(?:\.\d+)?/g)];
  if (numbers.length === 0) return;
  const { index, 0: number } = chance.pick(numbers);
  const times = chance.pick([0.5, 0.9, 1.1, 2, 10, 0.01]);
  const other = String(Number((Number(number) * times).toPrecision(4)));
  set(branch, written.slice(0, index) + other + written.slice(index + number.length));
}

function retarget(branches: readonly Branch[], chance: Chance): void {
  const jumps = branches.filter(
    ({ key, value, path }) => typeof value === 'string' && (key === 'go' || path.includes('outcomes')),
  );
  const ids = branches.filter(({ key }) => key === 'id').map(({ value }) => value);
  if (jumps.length > 0) set(chance.pick(jumps), chance.pick(['next', ...ids]));
}

function change(tree: Tree, chance: Chance): void {
  const branches = branchesOf(tree);
  if (branches.length === 0) return;
  const branch = chance.pick(branches);
  const other = chance.pick(branches);
  const copy = (value: Tree): Tree => structuredClone(value);
  switch (chance.whole(0, 11)) {
    case 0:
      drop(branch);
      return;
    case 1: {
      const [one, two] = [copy(branch.value), copy(other.value)];
      set(branch, two);
      set(other, one);
      return;
    }
    case 2:
      set(branch, copy(other.value));
      return;
    case 3:
      set(branch, odd(chance));
      return;
    case 4:
      duplicate(branch, chance);
      return;
    case 5: {
      // A branch moves to another place.
      drop(branch);
      if (Array.isArray(other.parent)) other.parent.splice(Number(other.key), 0, copy(branch.value));
      else other.parent[String(branch.key)] = copy(branch.value);
      return;
    }
    case 6:
      rename(branch, chance);
      return;
    case 7:
      retarget(branches, chance);
      return;
    case 8: {
      const quantities = branches.filter(({ value }) => typeof value === 'string' && /\d/.test(value));
      if (quantities.length === 0) return;
      const one = chance.pick(quantities);
      if (typeof one.value === 'string') set(one, quantity(one.value, chance));
      return;
    }
    case 9:
      // Steps in another order.
      if (Array.isArray(branch.parent)) branch.parent.sort(() => chance.draw() - 0.5);
      return;
    case 10: {
      const ofKinds = branches.filter(({ key }) => key === 'kind');
      if (ofKinds.length > 0) set(chance.pick(ofKinds), chance.pick(allKinds));
      return;
    }
    default:
      // One value for a list of it, and the other way round.
      set(branch, Array.isArray(branch.value) ? (branch.value[0] ?? null) : [copy(branch.value)]);
  }
}

function duplicate({ parent, key, value }: Branch, chance: Chance): void {
  if (Array.isArray(parent)) parent.splice(chance.whole(0, parent.length), 0, structuredClone(value));
  else parent[`${key}${chance.pick(['2', '-2', 'x', ''])}`] = structuredClone(value);
}

function rename({ parent, key, value }: Branch, chance: Chance): void {
  if (Array.isArray(parent)) return;
  Reflect.deleteProperty(parent, key);
  parent[
    chance.pick([
      `${key}x`,
      String(key).toUpperCase(),
      '__proto__',
      'constructor',
      'next',
      '',
      ' ',
      '1',
      'a.b',
      'a/b',
      'a~b',
      chance.pick(special),
    ])
  ] = value;
}

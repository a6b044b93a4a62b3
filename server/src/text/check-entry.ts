import type { DefinitionName, definitions } from '../format/definitions.ts';
import { expectedIn, properties } from '../format/walker.ts';
import type { z } from 'zod';
import type { EntryRules } from './entry-rules.ts';
import { validators } from './generated/validators.js';
import { nothingWritten } from './problems/empty.ts';
import { pointer, problemsFrom, unknownKey } from './problems/schema-errors.ts';
import { keyAt } from './problem.ts';
import type { Problem } from './problem.ts';
import { definitionSchema, fileSchema } from './schema.ts';
import { withEntries } from './tree.ts';
import type { Entry, MapNode } from './tree.ts';
import { toData } from './values.ts';
import type { Path } from '../model/where.ts';

type Values<N extends DefinitionName> = Partial<z.infer<(typeof definitions)[N]>>;

/** An entry as far as it could be read. */
export interface CheckedEntry<T> {
  /** The keys that passed, typed. */
  readonly values: T;
  /** The keys with a finding at or below them, needed keys that are absent, and unknown keys. */
  readonly bad: ReadonlySet<string>;
}

/** Checks one entry against the definition that was chosen for it, so that one mistake gives one problem. */
export function checkEntry<N extends DefinitionName>(
  name: N,
  node: MapNode,
  path: Path,
  rules: EntryRules,
  report: (problem: Problem) => void,
): CheckedEntry<Values<N>> {
  const schema = definitionSchema(name);
  const bad = new Set<string>();
  const settled = new Set<string>();
  const told = (problem: Problem, at: Path) => {
    report(problem);
    mark(at);
  };
  const mark = (at: Path) => {
    settled.add(pointer(at));
    if (at[0] !== undefined) bad.add(String(at[0]));
  };
  const later = node.entries.filter(({ key }) => rules.later?.has(key) === true);
  for (const { key } of later)
    told({ rule: 'not-yet', at: keyAt([...path, key]), message: notYet(key), subject: key }, [key]);
  const usesLater = later.length > 0;
  const data = toData(usesLater ? without(node, later) : node, schema, [], {
    root: fileSchema,
    isOpen: rules.isOpen ?? (() => false),
    onUnreadable: mark,
    onEmpty: (at, below, empty) => {
      const unknown = at.length === 1 && below === null;
      const expected = below === null ? 'a value' : expectedIn(below, fileSchema);
      if (!unknown) told(nothingWritten([...path, ...at], empty, expected), at);
      else told(unknownKey(at, { schema, path, rules }), at);
    },
  });
  const validate = validators[name];
  const errors = validate(data) ? [] : (validate.errors ?? []);
  if (errors.length > 0) {
    const found = problemsFrom(errors, { schema, data, path, rules, settled, usesLater });
    for (const { problem, at } of found) told(problem, at);
  }
  // What the validator lets pass is what the definition says.
  if (errors.length === 0 && bad.size === 0) return { values: data as Values<N>, bad };
  const failed = new Set([...bad, ...errors.map(({ instancePath }) => topKey(instancePath))]);
  const known = properties(schema, fileSchema);
  const passed = Object.entries(data as object).filter(([key]) => !failed.has(key) && known.has(key));
  return { values: Object.fromEntries(passed) as Values<N>, bad };
}

function without(node: MapNode, entries: readonly Entry[]): MapNode {
  return withEntries(
    node,
    node.entries.filter((entry) => !entries.includes(entry)),
  );
}

function notYet(word: string): string {
  return `\`${word}\` comes in a later version of Ohmwright.`;
}

/** The key of the entry that an error of the validator is at or below; empty where it is about the entry as a whole. */
function topKey(instancePath: string): string {
  return (instancePath.split('/')[1] ?? '').replaceAll('~1', '/').replaceAll('~0', '~');
}

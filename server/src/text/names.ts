import { sections } from '../format/words.ts';
import type { Section } from '../format/words.ts';
import { didYouMean } from './nearest.ts';
import { keyAt } from './problem.ts';
import type { Problem, Spot } from './problem.ts';
import { entryOf, textOf } from './tree.ts';
import type { Node } from './tree.ts';
import type { Path } from './where.ts';

/** What an id names, whether or not its entry can be read. */
export interface Named {
  /** null: something of a later version. */
  readonly section: Section | null;
  readonly path: Path;
}

/** All ids of the shared name space, and those of the steps with their place in the list of the file. */
export interface Names {
  readonly things: ReadonlyMap<string, Named>;
  readonly steps: ReadonlyMap<string, number>;
  /** False where ids may be defined that are not seen here: then an unknown one is no finding. */
  readonly complete: boolean;
}

const laterSections = ['assemblies'];

export function namesIn(root: Node | null, report: (problem: Problem) => void): Names {
  const things = new Map<string, Named>();
  for (const section of [...sections, ...laterSections]) {
    const entry = entryOf(root, section);
    if (entry?.value.kind !== 'map') continue;
    for (const { key } of entry.value.entries) {
      const path = [section, key];
      const earlier = things.get(key);
      if (earlier === undefined)
        things.set(key, { section: sections.find((one) => one === section) ?? null, path });
      else report(duplicate(key, keyAt(path), keyAt(earlier.path)));
    }
  }
  const complete = entryOf(root, 'uses') === undefined && entryOf(root, 'network') === undefined;
  return { things, steps: stepNames(root, report), complete };
}

function stepNames(root: Node | null, report: (problem: Problem) => void): ReadonlyMap<string, number> {
  const names = new Map<string, number>();
  const list = entryOf(root, 'steps')?.value;
  if (list?.kind !== 'list') return names;
  for (const [index, item] of list.items.entries()) {
    const id = textOf(entryOf(item, 'id')?.value);
    if (id === undefined || id === '') continue;
    const earlier = names.get(id);
    const at = (step: number): Spot => ({ path: ['steps', step, 'id'], part: 'value' });
    if (earlier === undefined) names.set(id, index);
    else report(duplicate(id, at(index), at(earlier)));
  }
  return names;
}

function duplicate(id: string, at: Spot, first: Spot): Problem {
  return {
    rule: 'duplicate-id',
    at,
    message: `\`${id}\` is the name of something else already. Every name is given once.`,
    subject: id,
    related: [{ at: first, message: 'The first one.' }],
  };
}

const articles: Readonly<Record<Section, string>> = {
  sources: 'a source',
  entries: 'an entry',
  instruments: 'an instrument',
  loads: 'a load',
  parts: 'a part',
  connectors: 'a connector',
  loops: 'a loop',
};

/** `a part, a connector or an instrument`. */
function anyOf(wanted: readonly Section[]): string {
  const words = wanted.map((section) => articles[section]);
  const last = words.slice(-1).join('');
  return words.length === 1 ? last : `${words.slice(0, -1).join(', ')} or ${last}`;
}

/** The section of an id, if it is one of those wanted; otherwise the problem has been reported. */
export function lookUp(
  names: Names,
  id: string,
  wanted: readonly Section[],
  at: Spot,
  report: (problem: Problem) => void,
  alsoKnown: readonly string[] = [],
): Section | null {
  const named = names.things.get(id);
  if (named === undefined) {
    if (!names.complete) return null;
    const known = [...names.things].filter(([, { section }]) => section !== null && wanted.includes(section));
    const guess = didYouMean(id, [...known.map(([word]) => word), ...alsoKnown]);
    const message = `Nothing is named \`${id}\`; expected ${anyOf(wanted)}.${guess}`;
    report({ rule: 'unknown-id', at, message, subject: id });
    return null;
  }
  if (named.section === null) return null;
  if (wanted.includes(named.section)) return named.section;
  const message = `\`${id}\` is ${articles[named.section]}; expected ${anyOf(wanted)}.`;
  report({
    rule: 'wrong-id',
    at,
    message,
    subject: id,
    related: [{ at: keyAt(named.path), message: `\`${id}\` is named here.` }],
  });
  return null;
}

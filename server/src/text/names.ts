import { sections } from '../format/words.ts';
import type { Section } from '../format/words.ts';
import { guesser } from './guess.ts';
import type { Guesser } from './guess.ts';
import { keyAt } from './problem.ts';
import type { Problem, Spot } from './problem.ts';
import { thingsOf } from './things.ts';
import type { Named, Things } from './things.ts';
import { entryOf, nodeAt, textOf } from './tree.ts';
import type { Node } from './tree.ts';
import type { Path } from '../model/where.ts';

/** All ids of the shared name space, those of the routines, and those of the steps of one list with their place in it. */
export interface Names {
  readonly things: Things;
  readonly routines: ReadonlySet<string>;
  readonly steps: ReadonlyMap<string, number>;
  /** False where ids may be defined that are not seen here: then an unknown one is no finding. */
  readonly complete: boolean;
  /** At what a word that names nothing was meant to be. */
  readonly guess: Guesser;
}

/** `complete`: whether all parts files that the file uses are there. */
export function namesIn(root: Node | null, complete: boolean, report: (problem: Problem) => void): Names {
  const things = new Map<string, Named>();
  for (const section of sections) {
    const entry = entryOf(root, section);
    if (entry?.value.kind !== 'map') continue;
    for (const { key } of entry.value.entries) {
      const path = [section, key];
      const earlier = things.get(key);
      if (earlier === undefined) things.set(key, { section, path });
      else report(duplicate(key, keyAt(path), keyAt(earlier.path)));
    }
  }
  const routines = entryOf(root, 'routines')?.value;
  return {
    things: thingsOf(things),
    routines: new Set(routines?.kind === 'map' ? routines.byKey.keys() : []),
    steps: stepNames(root, ['steps'], report),
    complete,
    guess: guesser(),
  };
}

/** The ids of the steps of one list: those of a routine are its own. */
export function stepNames(
  root: Node | null,
  path: Path,
  report: (problem: Problem) => void,
): ReadonlyMap<string, number> {
  const names = new Map<string, number>();
  const list = nodeAt(root, path);
  if (list?.kind !== 'list') return names;
  for (const [index, item] of list.items.entries()) {
    const id = textOf(entryOf(item, 'id')?.value);
    if (id === undefined || id === '') continue;
    const earlier = names.get(id);
    const at = (step: number): Spot => ({ path: [...path, step, 'id'], part: 'value' });
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
  assemblies: 'an assembly',
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
    const known = sections.filter((section) => wanted.includes(section));
    const guess = names.guess(id, () => [...known.flatMap(names.things.idsIn), ...alsoKnown]);
    const message = `Nothing is named \`${id}\`; expected ${anyOf(wanted)}.${guess.sentence}`;
    report({ rule: 'unknown-id', at, message, subject: id, ...guess.meant });
    return null;
  }
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

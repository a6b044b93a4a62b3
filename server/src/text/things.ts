import type { Section } from '../format/words.ts';
import { grouped } from '../model/remembered.ts';
import type { Path } from '../model/where.ts';

/** What an id names, whether or not its entry can be read. */
export interface Named {
  readonly section: Section;
  readonly path: Path;
}

/** All that has a name in the shared name space. */
export interface Things {
  readonly get: (id: string) => Named | undefined;
  readonly has: (id: string) => boolean;
  /** In written order. */
  readonly idsIn: (section: Section) => readonly string[];
}

export function thingsOf(named: ReadonlyMap<string, Named>): Things {
  const bySection = grouped([...named].map(([id, { section }]) => [section, id] as const));
  return {
    get: (id) => named.get(id),
    has: (id) => named.has(id),
    idsIn: (section) => bySection.get(section) ?? [],
  };
}

/** With more names, which stand before those of the file: what a routine needs. */
export function withMore(more: ReadonlyMap<string, Named>, things: Things): Things {
  if (more.size === 0) return things;
  const own = thingsOf(more);
  return {
    get: (id) => own.get(id) ?? things.get(id),
    has: (id) => own.has(id) || things.has(id),
    idsIn: (section) => [...things.idsIn(section), ...own.idsIn(section)],
  };
}

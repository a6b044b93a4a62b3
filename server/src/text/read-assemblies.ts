import { lookUp } from './names.ts';
import { valueAt } from './problem.ts';
import type { Assembly, Id } from '../model/procedure.ts';
import { ids } from './read-sources.ts';
import type { LoopElements } from './read-loops.ts';
import type { Reader } from './reader.ts';
import type { Path } from '../model/where.ts';

/** Assemblies by id; one of which a member could not be read is left out. */
export function readAssemblies(
  written: ReadonlyMap<Id, string | readonly string[]>,
  reader: Reader,
  { parts, connectors }: LoopElements,
): ReadonlyMap<Id, Assembly> {
  const found = new Map<Id, Assembly>();
  for (const [id, one] of written) {
    const path: Path = ['assemblies', id];
    const members = ids(one, path).map(({ id: member, path: at }) =>
      lookUp(reader.names, member, ['parts', 'connectors'], valueAt(at), reader.report) !== null &&
      (parts.has(member) || connectors.has(member))
        ? member
        : null,
    );
    const known = members.filter((member) => member !== null);
    if (known.length === members.length) found.set(id, { id, path, members: [...new Set(known)] });
  }
  return found;
}

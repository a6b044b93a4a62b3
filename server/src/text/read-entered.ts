import { checkEntry } from './check-entry.ts';
import type { Entry, Id } from '../model/procedure.ts';
import { positive, range } from './quantities.ts';
import { byId, entriesIn } from './read-entries.ts';
import type { Reader } from './reader.ts';

/** The temperatures that are measured and entered: the section `entries`. */
export function readEntered(reader: Reader): ReadonlyMap<Id, Entry> {
  const { report } = reader;
  return byId(
    entriesIn('entries', reader).map(({ id, path, node }): Entry => {
      const { values } = checkEntry('entry', node, path, { named: `The entry \`${id}\`` }, report);
      return {
        id,
        path,
        ask: values.ask ?? '',
        range: range(values.range, 'temperature', [...path, 'range'], report),
        accuracy: positive(values.accuracy, 'temperature', [...path, 'accuracy'], report),
      };
    }),
  );
}

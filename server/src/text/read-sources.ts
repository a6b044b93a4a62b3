import { checkEntry } from './check-entry.ts';
import { lookUp } from './names.ts';
import { valueAt } from './problem.ts';
import type { Battery, Id, Reserve } from './procedure.ts';
import { aboveZero, exact, span } from './quantities.ts';
import { byId, entriesIn, kindOf } from './read-entries.ts';
import type { Reader } from './reader.ts';
import { entryOf } from './tree.ts';
import type { Path } from './where.ts';

export function readSources(reader: Reader, readable: (id: Id) => boolean): ReadonlyMap<Id, Battery> {
  const { report } = reader;
  return byId(
    entriesIn('sources', reader).flatMap((entry): Battery[] => {
      const { id, path, node } = entry;
      if (kindOf('sources', entry, report) === null) return [];
      const { values } = checkEntry('battery', node, path, { named: `The source \`${id}\`` }, report);
      const written = values.feeds === undefined ? [] : ids(values.feeds, [...path, 'feeds']);
      const feeds = written.flatMap(({ id: fed, path: at }) => {
        const section = lookUp(
          reader.names,
          fed,
          ['instruments', 'parts', 'connectors'],
          valueAt(at),
          report,
        );
        return section !== null && readable(fed) ? [fed] : [];
      });
      const states = (key: string) => entryOf(node, key) !== undefined;
      return [
        {
          id,
          path,
          kind: 'battery',
          voltage: span(values.voltage, 'voltage', [...path, 'voltage'], report),
          feeds: [...new Set(feeds)],
          feedsComplete: values.feeds !== undefined && feeds.length === written.length,
          wait: states('wait') ? exact(values.wait, 'time', [...path, 'wait'], report) : 'unstated',
          reserve: states('reserve') ? readReserve(values.reserve, [...path, 'reserve'], report) : 'unstated',
        },
      ];
    }),
  );
}

interface RawReserve {
  readonly capacitance: string;
  readonly 'charged-to': string;
  readonly bleed: string;
  readonly 'safe-below': string;
}

function readReserve(raw: RawReserve | undefined, path: Path, report: Reader['report']): Reserve | null {
  const capacitance = span(raw?.capacitance, 'capacitance', [...path, 'capacitance'], report);
  const chargedTo = span(raw?.['charged-to'], 'voltage', [...path, 'charged-to'], report);
  const bleed = span(raw?.bleed, 'resistance', [...path, 'bleed'], report);
  // No capacitor ever falls to 0 V.
  const safeBelow = aboveZero(raw?.['safe-below'], 'voltage', [...path, 'safe-below'], report);
  if (capacitance === null || chargedTo === null || bleed === null || safeBelow === null) return null;
  return { capacitance, chargedTo, bleed, safeBelow };
}

export interface WrittenId {
  readonly id: string;
  readonly path: Path;
}

/** One id or a list of ids, each with its place. */
export function ids(written: string | readonly string[], path: Path): readonly WrittenId[] {
  if (typeof written === 'string') return [{ id: written, path }];
  return written.map((id, index) => ({ id, path: [...path, index] }));
}

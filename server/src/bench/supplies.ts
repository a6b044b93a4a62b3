import { grouped, remembered } from '../model/remembered.ts';
import type { Id, Procedure, Regulated } from '../model/procedure.ts';
import { isHighVoltage, isolatorOf } from '../model/source-kinds.ts';
import { fragmentsOf } from './fragments.ts';
import type { FragmentIndex } from './fragments.ts';
import { hardwareAtStart } from './hardware.ts';
import { owedBy } from './owed.ts';

/** One source that powers a fragment while it is on. */
export interface Supply {
  /** Of a battery, a high-voltage source or a regulated supply. */
  readonly source: Id;
  /**
   * What it goes off with: `itself`, by its own switch; a regulated supply with the source that it comes from;
   * `never`, where it hangs on its own side of the connector that isolates it.
   */
  readonly offWith: 'itself' | 'never' | Regulated;
  /** What it feeds there, where it is not drawn; null: it stands in the network. */
  readonly fed: Id | null;
  /** Whether what it feeds is a control unit. */
  readonly feedsMonitor: boolean;
  /** How long what it powered stays charged, in seconds: the longer of the stated wait and that of the reserve. */
  readonly wait: number;
  /** Its greatest voltage; 0 where it could not be read. */
  readonly volts: number;
  readonly isHighVoltage: boolean;
}

/** Fragments that may come to hang together, with all that can power them. */
export interface Zone {
  readonly fragments: readonly FragmentIndex[];
  readonly supplies: ReadonlyMap<FragmentIndex, readonly Supply[]>;
  /** The sources that are switched by themselves, also as what a regulated supply comes from. */
  readonly sources: readonly Id[];
  /** The supplies that need the ignition. */
  readonly running: readonly Regulated[];
  /** The connectors with a terminal there. */
  readonly connectors: ReadonlySet<Id>;
}

/** All zones of a procedure; ground joins nothing. */
export const zonesOf: (procedure: Procedure) => readonly Zone[] = remembered(makeZones);

function makeZones(procedure: Procedure): readonly Zone[] {
  const fragments = fragmentsOf(procedure);
  const suppliesAt = suppliesByFragment(procedure);
  const indices = fragments.all.map((_, index) => index);
  const zones = grouped(
    indices.map((index): [FragmentIndex, FragmentIndex] => [fragments.reach[index] ?? index, index]),
  );
  return [...zones.values()].map((inside) => {
    const supplies = new Map(inside.map((index) => [index, suppliesAt(index)]));
    const all = [...supplies.values()].flat();
    const regulated = all.flatMap(({ offWith }) => (typeof offWith === 'string' ? [] : [offWith]));
    const own = all.flatMap(({ source, offWith }) => (typeof offWith === 'string' ? [source] : []));
    const members = inside.flatMap((index) => [...(fragments.all[index]?.members ?? [])]);
    return {
      fragments: inside,
      supplies,
      sources: [...new Set([...own, ...regulated.flatMap(({ from }) => from ?? [])])],
      running: [...new Set(regulated.filter(({ needsIgnition }) => needsIgnition))],
      connectors: new Set(members.filter((id) => procedure.connectors.has(id))),
    };
  });
}

/** What powers each piece that something powers, with all mated. */
export function poweredAsBuilt(procedure: Procedure): readonly (readonly Supply[])[] {
  const asBuilt = fragmentsOf(procedure).pieces(hardwareAtStart);
  const found = zonesOf(procedure).flatMap(({ supplies }) =>
    [...supplies].map(([index, some]): [FragmentIndex, readonly Supply[]] => [asBuilt[index] ?? index, some]),
  );
  return [...grouped(found).values()].map((some) => some.flat()).filter((some) => some.length > 0);
}

/** The sources whose going off leaves the pieces of these fragments, as built, without power. */
export function sourcesAsBuilt(procedure: Procedure, some: readonly FragmentIndex[]): readonly Id[] {
  const asBuilt = fragmentsOf(procedure).pieces(hardwareAtStart);
  const wanted = new Set(some.map((index) => asBuilt[index]));
  const found = zonesOf(procedure).flatMap(({ supplies }) =>
    [...supplies].flatMap(([index, powering]) => (wanted.has(asBuilt[index]) ? powering : [])),
  );
  const roots = found.flatMap(({ source, offWith }) => {
    if (typeof offWith !== 'string') return offWith.from ?? [];
    return offWith === 'itself' ? source : [];
  });
  return [...new Set(roots)];
}

/**
 * What is drawn decides: where the circuit of something, as built, holds the source that feeds it, it is powered through
 * what is drawn alone. The supply of a control unit itself is never drawn.
 */
function suppliesByFragment(procedure: Procedure): (index: FragmentIndex) => readonly Supply[] {
  const { sources, regulated, monitors } = procedure;
  const fragments = fragmentsOf(procedure);
  const asBuilt = fragments.pieces(hardwareAtStart);
  const hangTogether = (one: Id, other: Id): boolean => {
    const pieces = new Set(fragments.of(one).map((index) => asBuilt[index]));
    return fragments.of(other).some((index) => pieces.has(asBuilt[index]));
  };
  const drawn = (id: Id): readonly Supply[] => {
    const supply = regulated.get(id);
    const source = sources.get(id);
    const known = { source: id, fed: null, feedsMonitor: false, isHighVoltage: isHighVoltage(source) };
    const volts = (supply ?? source)?.voltage?.most ?? 0;
    if (supply !== undefined) return [{ ...known, offWith: supply, wait: 0, volts }];
    if (source === undefined) return [];
    const isolator = isolatorOf(source);
    const staysOn = isolator !== null && hangTogether(id, isolator);
    return [{ ...known, offWith: staysOn ? 'never' : 'itself', wait: owedBy(source).seconds, volts }];
  };
  const feeding = grouped(
    [...sources.values()].flatMap((source) =>
      source.feeds.flatMap((fed): [Id, Supply][] => {
        const feedsMonitor = monitors.has(fed);
        if (!feedsMonitor && hangTogether(source.id, fed)) return [];
        const { id, voltage } = source;
        const [wait, volts] = [owedBy(source).seconds, voltage?.most ?? 0];
        const supply = { source: id, offWith: 'itself', fed, feedsMonitor, wait, volts } as const;
        return [[fed, { ...supply, isHighVoltage: isHighVoltage(source) }]];
      }),
    ),
  );
  return (index) => {
    const fragment = fragments.all[index];
    if (fragment === undefined) return [];
    return [
      ...fragment.sources.flatMap(drawn),
      ...[...fragment.members].flatMap((id) => feeding.get(id) ?? []),
    ];
  };
}

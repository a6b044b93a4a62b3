import type { Id, Probed, Procedure } from '../model/procedure.ts';
import { remembered } from '../model/remembered.ts';
import { isHighVoltage, isolatorOf } from '../model/source-kinds.ts';
import { carriersOf, halfKey, halvesShown, halvesTouched, isOpen, isParted } from './carried.ts';
import type { Half, HalfKey } from './carried.ts';
import { fragmentsOf, provenAt } from './fragments.ts';
import type { FragmentIndex } from './fragments.ts';
import { hardwareAtStart } from './hardware.ts';
import type { Hardware } from './hardware.ts';
import type { Touch } from './touch.ts';

/*
 * What is proven to be without voltage, and what never is. A proof holds for the piece in which it was taken, as that stood then: what was
 * cut off before needs its own.
 */

/** A fragment; or the poles that a half of a connector leads past the pins of its circuits, which no file draws. */
export type Proved = FragmentIndex | HalfKey;

/** By high-voltage source, what is proven dead of it. */
export type Proofs = ReadonlyMap<Id, ReadonlySet<Proved>>;

export const noProofs: Proofs = new Map();

/** Where a high-voltage source leads. */
interface Reach {
  /** What hangs together as built with the source or with what it feeds. */
  readonly fragments: ReadonlySet<FragmentIndex>;
  /** Where the source itself stands, on its own side of the connector that isolates it: never dead. */
  readonly never: ReadonlySet<FragmentIndex>;
}

const reachOf: (procedure: Procedure) => ReadonlyMap<Id, Reach> = remembered((procedure: Procedure) => {
  const fragments = fragmentsOf(procedure);
  const asBuilt = fragments.pieces(hardwareAtStart);
  const piecesOf = (ids: readonly Id[]): ReadonlySet<FragmentIndex | undefined> =>
    new Set(ids.flatMap((id) => fragments.of(id).map((index) => asBuilt[index])));
  const inside = (pieces: ReadonlySet<FragmentIndex | undefined>): ReadonlySet<FragmentIndex> =>
    new Set(fragments.all.flatMap((_, index) => (pieces.has(asBuilt[index]) ? [index] : [])));
  const found = [...procedure.sources.values()].filter(isHighVoltage).map((source): [Id, Reach] => {
    const isolator = isolatorOf(source);
    const own = fragments.of(source.id);
    const around = piecesOf([source.id]);
    const isParted = isolator !== null && fragments.of(isolator).some((index) => around.has(asBuilt[index]));
    return [
      source.id,
      { fragments: inside(piecesOf([source.id, ...source.feeds])), never: new Set(isParted ? own : []) },
    ];
  });
  return new Map(found);
});

/** The connectors around what a high-voltage source leads to, and those that carry it. */
export function connectorsAround(procedure: Procedure, source: Id): readonly Id[] {
  const { all } = fragmentsOf(procedure);
  const reached = reachOf(procedure).get(source)?.fragments ?? new Set<FragmentIndex>();
  const members = [...reached].flatMap((index) => [...(all[index]?.members ?? [])]);
  return [
    ...new Set([...members.filter((id) => procedure.connectors.has(id)), ...carriersOf(procedure, source)]),
  ];
}

/** The proofs after one of a source at a place on this bench. */
export function withProof(
  procedure: Procedure,
  proofs: Proofs,
  source: Id,
  at: Probed,
  hardware: Hardware,
): Proofs {
  const shown = [
    ...shownAt(procedure, source, at, hardware),
    ...halvesShown(procedure, source, at, hardware).map(halfKey),
  ];
  return new Map(proofs).set(source, new Set([...(proofs.get(source) ?? []), ...shown]));
}

/** What hangs together with a place of a proof on this bench, of what a source leads to. */
function shownAt(procedure: Procedure, source: Id, at: Probed, hardware: Hardware): readonly FragmentIndex[] {
  const fragments = fragmentsOf(procedure);
  const pieces = fragments.pieces(hardware);
  const wanted = new Set(provenAt(fragments, at).map((index) => pieces[index]));
  const reached = reachOf(procedure).get(source)?.fragments ?? [];
  return [...reached].filter((index) => wanted.has(pieces[index]));
}

/** The parts for which a proof at a place holds, on this bench. */
export function joinedTo(procedure: Procedure, source: Id, at: Probed, hardware: Hardware): readonly Id[] {
  const { all } = fragmentsOf(procedure);
  const shown = shownAt(procedure, source, at, hardware);
  return [...new Set(shown.flatMap((index) => all[index]?.parts ?? []))];
}

export function withoutProof(proofs: Proofs, sources: readonly Id[]): Proofs {
  if (!sources.some((source) => proofs.has(source))) return proofs;
  return new Map([...proofs].filter(([source]) => !sources.includes(source)));
}

export function proofsKey(proofs: Proofs): string {
  return [...proofs]
    .map(([source, proven]) => `${source}:${[...proven].sort().join('+')}`)
    .sort()
    .join();
}

/** What hands come to of a source: fragments of its pieces on this bench; none where it is only carried there. */
function comeTo(
  procedure: Procedure,
  source: Id,
  touch: Pick<Touch, 'id' | 'side'>,
  hardware: Hardware,
): readonly FragmentIndex[] {
  const fragments = fragmentsOf(procedure);
  const { id, side } = touch;
  const touched = side === undefined ? fragments.of(id) : fragments.onSide(id, side);
  const pieces = fragments.pieces(hardware);
  const wanted = new Set(touched.map((index) => pieces[index]));
  const reached = reachOf(procedure).get(source)?.fragments ?? [];
  return [...reached].filter((index) => wanted.has(pieces[index]));
}

/** Whether all that hands come to of a source, on this bench, is proven dead. */
export function isProven(
  procedure: Procedure,
  proofs: Proofs,
  source: Id,
  touch: Pick<Touch, 'id' | 'side'>,
  hardware: Hardware,
): boolean {
  const proven = proofs.get(source);
  if (proven === undefined) return false;
  return (
    comeTo(procedure, source, touch, hardware).every((index) => proven.has(index)) &&
    halvesUnproven(procedure, proofs, source, touch, hardware).length === 0
  );
}

/** The halves with carried poles that hands come to on this bench and that no proof has shown. */
function halvesUnproven(
  procedure: Procedure,
  proofs: Proofs,
  source: Id,
  touch: Pick<Touch, 'id' | 'side'>,
  hardware: Hardware,
): readonly Half[] {
  const proven = proofs.get(source);
  return halvesTouched(procedure, source, touch, hardware).filter(
    (half) => proven?.has(halfKey(half)) !== true,
  );
}

/** Where proofs are still to be taken before hands come to carried poles; none where any place shows them all. */
export function halvesToProve(
  procedure: Procedure,
  proofs: Proofs,
  source: Id,
  touch: Pick<Touch, 'id' | 'side'>,
  hardware: Hardware,
): readonly Half[] {
  if (!isParted(procedure, source, hardware)) return [];
  const unproven = halvesUnproven(procedure, proofs, source, touch, hardware);
  return isOpen(hardware, touch.id) ? unproven : unproven.slice(-1);
}

/**
 * Whether hands are at the seat of the connector that isolates a source which no network draws: nobody knows which of its
 * contacts stay connected to the source. Where the source is drawn, the network says so.
 */
export function isSeatOf(procedure: Procedure, source: Id, { id }: Pick<Touch, 'id'>): boolean {
  return isolatorOf(procedure.sources.get(source)) === id && fragmentsOf(procedure).of(source).length === 0;
}

/** Whether what hands come to hangs together with the source itself on this bench, whatever was proven. */
export function isNeverDead(
  procedure: Procedure,
  source: Id,
  touch: Pick<Touch, 'id' | 'side'>,
  hardware: Hardware,
): boolean {
  const never = reachOf(procedure).get(source)?.never ?? new Set<FragmentIndex>();
  return comeTo(procedure, source, touch, hardware).some((index) => never.has(index));
}

import type { Id, Loop, Procedure, Source } from '../text/procedure.ts';
import { carriedHazards } from './hazards.ts';
import type { Hazard } from './hazards.ts';

/** A loop as built: what feeds it, and whether it holds a live stage. */
export interface Circuit {
  readonly loop: Loop;
  readonly liveParts: readonly Id[];
  /** Ids of the sources that feed it, in the order of the file. */
  readonly sources: readonly Id[];
}

export interface Circuits {
  readonly all: readonly Circuit[];
  /** Those that hold a live part. */
  readonly live: readonly Circuit[];
  /** All that must be dead before hands go there. */
  readonly hazards: readonly Hazard[];
  /** Those that hands on this connector, part or monitor concern. */
  readonly hazardsAt: (id: Id) => readonly Hazard[];
  /** The circuits that a connector, part or monitor stands in. */
  readonly holding: (id: Id) => readonly Circuit[];
  /** The sources that feed a monitor. */
  readonly feeding: (monitor: Id) => readonly Id[];
}

export function circuitsOf(procedure: Procedure): Circuits {
  const all = [...procedure.loops.values()].map((loop) => circuitOf(procedure, loop));
  const holding = remember((id) => all.filter(({ loop }) => stands(loop, id)));
  const live = all.filter(isLive);
  const hazards = [...live.map(hazardOf), ...carriedHazards(procedure)];
  const hazardsAt = remember((id) => {
    const near = procedure.parts.has(id) ? neighbouringConnectors(procedure, id) : [];
    const ids = [id, ...near];
    return hazards.filter(({ touches }) => ids.some(touches));
  });
  const feeding = remember((id) =>
    [...procedure.sources.values()].filter((source) => source.feeds.includes(id)).map((source) => source.id),
  );
  return { all, live, hazards, hazardsAt, holding, feeding };
}

export function isLive(circuit: Circuit): boolean {
  return circuit.liveParts.length > 0;
}

export function connectorsOf(loop: Loop): readonly Id[] {
  return loop.elements.filter((element) => element.kind === 'connector').map((element) => element.id);
}

function circuitOf(procedure: Procedure, loop: Loop): Circuit {
  const liveParts = loop.elements
    .map((element) => element.id)
    .filter((id) => procedure.parts.get(id)?.live === true);
  const sources = [...procedure.sources.values()]
    .filter((source) => feeds(source, loop))
    .map((source) => source.id);
  return { loop, liveParts, sources };
}

/** A source feeds every loop of a monitor it feeds, and every loop of a part or connector it feeds. */
function feeds(source: Source, loop: Loop): boolean {
  return source.feeds.some((id) => stands(loop, id));
}

function hazardOf({ loop, liveParts, sources }: Circuit): Hazard {
  return {
    id: loop.id,
    sources,
    live: liveParts,
    connectors: connectorsOf(loop),
    loop: loop.id,
    touches: (id) => stands(loop, id),
  };
}

function stands(loop: Loop, id: Id): boolean {
  return loop.monitor === id || loop.elements.some((element) => element.id === id);
}

function neighbouringConnectors(procedure: Procedure, part: Id): readonly Id[] {
  const near: Id[] = [];
  for (const { elements } of procedure.loops.values())
    for (const [index, element] of elements.entries()) {
      if (element.id !== part) continue;
      for (const beside of [elements[index - 1], elements[index + 1]])
        if (beside?.kind === 'connector') near.push(beside.id);
    }
  return near;
}

/** Computes once for each id. */
export function remember<T>(compute: (id: Id) => T): (id: Id) => T {
  const known = new Map<Id, T>();
  return (id) => {
    const value = known.get(id) ?? compute(id);
    known.set(id, value);
    return value;
  };
}

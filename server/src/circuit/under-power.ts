import type { Span } from '../quantity/quantity.ts';
import { hotToCold } from './lamp.ts';
import type { Element, Network } from './network.ts';
import { voltageBetween } from './operating-point.ts';
import type { Drive } from './operating-point.ts';
import type { ConstantModel, PartModel } from './parts.ts';
import type { Edge } from './solver.ts';

/* What parts are while current flows through them: filaments and heaters are hot. */

export type Filament = Extract<ConstantModel, { readonly kind: 'lamp-rating' }>;

/** A filament at its place in a network. */
export interface FilamentAt {
  readonly at: number;
  readonly element: Element;
  readonly rated: Filament;
}

/** Those of a network whose resistance follows the voltage across them. */
export function filamentsIn(network: Network): readonly FilamentAt[] {
  return network.flatMap((element, at) =>
    element.part.kind === 'lamp-rating' ? [{ at, element, rated: element.part }] : [],
  );
}

/** A network under power: every part that has a hot value has that. Filaments stay what they are. */
export function poweredNetwork(network: Network): Network {
  return network.map((element) => ({ ...element, part: poweredPart(element.part) }));
}

function poweredPart(part: PartModel): PartModel {
  if (part.kind !== 'stated' || part.hot === undefined) return part;
  return { kind: 'stated', resistance: part.hot === 'unstated' ? anywhereHot(part.resistance) : part.hot };
}

/** From cold to as hot as a filament that glows: what is known where only the cold resistance is stated. */
function anywhereHot({ least, nominal, most }: Span): Span {
  return { least, nominal: nominal * hotToCold.least, most: most * hotToCold.most };
}

/** The edge at a place of a network is a filament, with so many ohms at a voltage across it. */
export interface LitEdge {
  readonly at: number;
  readonly ohms: (volts: number) => number;
}

/** So many rounds bring every filament to rest: each takes away half of what is left, mostly far more. */
const mostRounds = 100;

/** Relative: from here on nothing more is told apart. */
const atRest = 1e-13;

/**
 * As `voltageBetween`, with filaments at their own operating points: each takes on the resistance of its voltage, until
 * none changes any more.
 */
export function litVoltageBetween(
  edges: readonly Edge[],
  lit: readonly LitEdge[],
  drives: readonly Drive[],
  nodes: number,
  from: number,
  to: number,
): number {
  let current = edges;
  for (let round = 0; round < mostRounds && lit.length > 0; round += 1) {
    let moved = 0;
    const next = [...current];
    for (const { at, ohms } of lit) {
      const edge = current[at];
      if (edge === undefined) continue;
      const volts = voltageBetween(current, drives, nodes, edge.a, edge.b);
      const now = ohms(Number.isNaN(volts) ? 0 : volts);
      moved = Math.max(moved, Math.abs(now / edge.ohms - 1));
      next[at] = { ...edge, ohms: now };
    }
    current = next;
    if (moved <= atRest) break;
  }
  return voltageBetween(current, drives, nodes, from, to);
}

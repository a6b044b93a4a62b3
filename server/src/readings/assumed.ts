import { dependenceOf } from '../circuit/circuit.ts';
import type { Network } from '../circuit/circuit.ts';
import { formatAccuracy, formatQuantity, formatSpan } from '../quantity/quantity.ts';
import type { Procedure, Quantity } from '../model/procedure.ts';
import { basisOf, hotBasisOf } from './basis.ts';
import type { ReadBy } from './instruments.ts';
import { ownerOf } from './loop-network.ts';
import { quantityFacts } from '../model/quantity-kinds.ts';

/** Something that a window rests on and that the circuit itself does not say. */
export interface Assumed {
  readonly what: string;
  readonly value: string;
  readonly source: string;
}

/** What the window of a reading assumes: temperatures, instrument, materials, and how values spread. */
export function assumedOf(procedure: Procedure, network: Network, readBy: ReadBy): readonly Assumed[] {
  return [
    ambient(procedure),
    ...entered(procedure, network),
    ...instrument(readBy),
    ...materials(network, readBy.quantity),
    ...spreads,
  ];
}

const inFile = 'stated in this file';

function ambient({ ambient: { assumed, ...span } }: Procedure): Assumed {
  return {
    what: 'ambient temperature',
    value: formatSpan(span, 'temperature'),
    source: assumed ? 'not stated; standard atmospheric range of IEC 60068-1' : inFile,
  };
}

function entered({ entries }: Procedure, network: Network): readonly Assumed[] {
  const followed = entriesFollowed(network);
  return [...entries.values()].flatMap(({ id, range, accuracy }): readonly Assumed[] => {
    if (!followed.has(id) || range === null || accuracy === null) return [];
    const off = formatQuantity(accuracy, 'temperature');
    return [{ what: id, value: `${formatSpan(range, 'temperature')}, measured to ± ${off}`, source: inFile }];
  });
}

/** The entries that a part of a network follows, by id. */
export function entriesFollowed(network: Network): ReadonlySet<string> {
  const followed = network.flatMap(({ part }) => {
    const on = dependenceOf(part)?.on ?? 'ambient';
    return typeof on !== 'string' && 'entry' in on ? [on.entry] : [];
  });
  return new Set(followed);
}

function instrument({ id, quantity, accuracy, range, leads }: ReadBy): readonly Assumed[] {
  if (accuracy === null || range === null) return [];
  return [
    {
      what: `error of ${id}`,
      value: `at most ${formatAccuracy(accuracy, quantityFacts[quantity].dimension)}, ${quantityFacts[quantity].beyond} beyond ${formatQuantity(range.most, quantityFacts[quantity].dimension)}`,
      source: inFile,
    },
    ...(leads === null
      ? []
      : [{ what: `leads of ${id}`, value: formatSpan(leads, 'resistance'), source: inFile }]),
  ];
}

function materials(network: Network, quantity: Quantity): readonly Assumed[] {
  const found = new Map<string, Assumed>();
  for (const element of network) {
    const hot = quantity === 'voltage' ? hotBasisOf(element.part) : null;
    const basis = hot ?? basisOf(element.part);
    if (basis !== null) found.set(ownerOf(element), { what: ownerOf(element), ...basis });
  }
  return [...found.values()];
}

const spreads: readonly Assumed[] = [
  {
    what: 'root sum of squares',
    value: 'each value lies evenly in its range; the conductors of one part vary together',
    source: 'JCGM 100, k = 2',
  },
];

import type { Element, Network } from './network.ts';
import type { Edge } from './solver.ts';

/** A network with numbers in place of node names, ready for the solver once its elements have values. */
export interface Numbered {
  readonly nodes: number;
  readonly from: number;
  readonly to: number;
  /** Of a node that an element, a probe or one of the other pairs ends at. */
  readonly numberOf: (node: string) => number;
  /** In the order of the elements. */
  readonly edgesWith: (ohms: (element: Element, index: number) => number) => readonly Edge[];
}

/** Gives every node a number; a probe that touches nothing is a node of its own. `others` end at nodes too. */
export function numbered(
  network: Network,
  from: string,
  to: string,
  others: readonly { readonly between: readonly [string, string] }[] = [],
): Numbered {
  const numbers = new Map<string, number>();
  const numberOf = (node: string): number => {
    const known = numbers.get(node);
    if (known !== undefined) return known;
    numbers.set(node, numbers.size);
    return numbers.size - 1;
  };
  const start = numberOf(from);
  const end = numberOf(to);
  const joints = network.map(({ between: [a, b] }) => ({ a: numberOf(a), b: numberOf(b) }));
  for (const { between } of others) between.forEach(numberOf);
  return {
    nodes: numbers.size,
    numberOf,
    from: start,
    to: end,
    edgesWith: (ohms) =>
      network.map((element, index) => {
        const { a, b } = joints[index] ?? { a: start, b: start };
        return { a, b, ohms: ohms(element, index) };
      }),
  };
}

import fc from 'fast-check';
import type { Edge } from '../../server/src/circuit/circuit.ts';

/** A network of resistors with two probes on it. */
export interface Probed {
  readonly edges: readonly Edge[];
  readonly nodes: number;
  readonly from: number;
  readonly to: number;
}

/** Resistances spread evenly over decades: `decades(-3, 5)` runs from 1 mΩ to 100 kΩ. */
export function decades(from: number, to: number): fc.Arbitrary<number> {
  return fc.double({ min: from, max: to, noNaN: true }).map((power) => 10 ** power);
}

/** Any nodes joined by any resistors: meshes, dead ends, loose pieces, resistors side by side or back on one node. */
export function meshes(ohms: fc.Arbitrary<number>, mostNodes = 12): fc.Arbitrary<Probed> {
  return fc.integer({ min: 2, max: mostNodes }).chain((nodes) => {
    const node = fc.integer({ min: 0, max: nodes - 1 });
    const edge = fc.record({ a: node, b: node, ohms });
    return fc.record({
      edges: fc.array(edge, { minLength: nodes, maxLength: 3 * nodes }),
      nodes: fc.constant(nodes),
      from: fc.constant(0),
      to: fc.constant(nodes - 1),
    });
  });
}

type Tree =
  | { readonly kind: 'resistor'; readonly ohms: number }
  | { readonly kind: 'series' | 'parallel'; readonly members: readonly Tree[] };

/** Networks made by putting things in series and side by side, with the resistance that the two school rules give. */
export function seriesAndParallel(
  ohms: fc.Arbitrary<number>,
): fc.Arbitrary<Probed & { readonly byRule: number }> {
  const { tree } = fc.letrec<{ tree: Tree }>((tie) => ({
    tree: fc.oneof(
      { maxDepth: 4, depthSize: 'medium' },
      ohms.map((value): Tree => ({ kind: 'resistor', ohms: value })),
      fc.record({
        kind: fc.constantFrom('series' as const, 'parallel' as const),
        members: fc.array(tie('tree'), { minLength: 2, maxLength: 4 }),
      }),
    ),
  }));
  return tree.map((whole) => ({ ...built(whole), byRule: byRule(whole) }));
}

function built(whole: Tree): Probed {
  const edges: Edge[] = [];
  let nodes = 2;
  const lay = (tree: Tree, a: number, b: number): void => {
    if (tree.kind === 'resistor') {
      edges.push({ a, b, ohms: tree.ohms });
      return;
    }
    let start = a;
    for (const [index, member] of tree.members.entries()) {
      const end = tree.kind === 'parallel' || index === tree.members.length - 1 ? b : nodes++;
      lay(member, start, end);
      if (tree.kind === 'series') start = end;
    }
  };
  lay(whole, 0, 1);
  return { edges, nodes, from: 0, to: 1 };
}

function byRule(tree: Tree): number {
  switch (tree.kind) {
    case 'resistor':
      return tree.ohms;
    case 'series':
      return tree.members.reduce((sum, member) => sum + byRule(member), 0);
    case 'parallel':
      return 1 / tree.members.reduce((sum, member) => sum + 1 / byRule(member), 0);
  }
}

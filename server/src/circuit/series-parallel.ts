import type { Interval } from './interval.ts';

/** Elements that act on the rest of a network as one: their resistance rises with each of them. */
export interface Branch {
  readonly a: number;
  readonly b: number;
  /** By number. */
  readonly elements: readonly number[];
  /** Of the whole branch, in ohms, from the resistance of each element. */
  readonly ohms: (of: (element: number) => number) => number;
}

/**
 * Puts together what stands in series or side by side until nothing more does. `kept` nodes stay, since something else
 * ends there. What leads nowhere, and what has both ends on one node, is left out.
 */
export function branchesOf(
  elements: readonly { readonly a: number; readonly b: number; readonly element: number }[],
  kept: ReadonlySet<number>,
): readonly Branch[] {
  let branches: readonly Branch[] = elements.map(({ a, b, element }) => ({
    a,
    b,
    elements: [element],
    ohms: (of) => of(element),
  }));
  for (;;) {
    const before = branches.length;
    branches = withoutDeadEnds(inSeries(sideBySide(branches), kept), kept);
    if (branches.length === before) return branches;
  }
}

/** Of a branch whose elements may be anything within their intervals. */
export function ohmsWithin({ ohms }: Branch, of: readonly Interval[]): Interval {
  return {
    low: ohms((element) => of[element]?.low ?? NaN),
    high: ohms((element) => of[element]?.high ?? NaN),
  };
}

function sideBySide(branches: readonly Branch[]): readonly Branch[] {
  const byNodes = new Map<string, Branch>();
  for (const branch of branches) {
    const { a, b } = branch;
    if (a === b) continue;
    const key = a < b ? `${a} ${b}` : `${b} ${a}`;
    const beside = byNodes.get(key);
    byNodes.set(
      key,
      beside === undefined
        ? branch
        : {
            a,
            b,
            elements: [...beside.elements, ...branch.elements],
            ohms: (of) => parallel(beside.ohms(of), branch.ohms(of)),
          },
    );
  }
  return [...byNodes.values()];
}

function parallel(one: number, other: number): number {
  return one === 0 || other === 0 ? 0 : 1 / (1 / one + 1 / other);
}

/** Takes out one node after the other that joins exactly two branches. */
function inSeries(branches: readonly Branch[], kept: ReadonlySet<number>): readonly Branch[] {
  const current = new Set(branches);
  const at = new Map<number, Set<Branch>>();
  const enter = (branch: Branch): void => {
    for (const node of [branch.a, branch.b]) at.set(node, (at.get(node) ?? new Set()).add(branch));
  };
  for (const branch of branches) enter(branch);
  for (const [node, there] of at) {
    const [one, other] = there;
    if (kept.has(node) || there.size !== 2 || one === undefined || other === undefined) continue;
    const [a, b] = [one, other].map((branch) => (branch.a === node ? branch.b : branch.a));
    if (a === undefined || b === undefined || a === b) continue;
    for (const branch of [one, other]) {
      current.delete(branch);
      at.get(branch.a)?.delete(branch);
      at.get(branch.b)?.delete(branch);
    }
    const joined: Branch = {
      a,
      b,
      elements: [...one.elements, ...other.elements],
      ohms: (of) => one.ohms(of) + other.ohms(of),
    };
    current.add(joined);
    enter(joined);
  }
  return [...current];
}

function withoutDeadEnds(branches: readonly Branch[], kept: ReadonlySet<number>): readonly Branch[] {
  const ends = new Map<number, number>();
  for (const { a, b } of branches) for (const node of [a, b]) ends.set(node, (ends.get(node) ?? 0) + 1);
  const leadsOn = (node: number): boolean => kept.has(node) || (ends.get(node) ?? 0) > 1;
  return branches.filter(({ a, b }) => a !== b && leadsOn(a) && leadsOn(b));
}

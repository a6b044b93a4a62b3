/** Elements that act on the rest of a network as one: their resistance rises with each of them. */
export interface Branch {
  readonly a: number;
  readonly b: number;
  readonly piece: number;
}

/** What is left of a network when all that stands in series or side by side is put together. */
export interface Branches {
  readonly branches: readonly Branch[];
  /** By number. */
  readonly elementsOf: (branch: Branch) => readonly number[];
  /** Of each branch, in ohms, from the resistance of each element. */
  readonly ohms: (of: (element: number) => number) => readonly number[];
}

/** A piece is an element, or two earlier pieces. One after the other they are reckoned without recursion. */
type Piece =
  | { readonly kind: 'element'; readonly element: number }
  | { readonly kind: 'series' | 'parallel'; readonly one: number; readonly other: number };

/**
 * Puts together what stands in series or side by side until nothing more does. `kept` nodes stay, since something else
 * ends there. What leads nowhere, and what has both ends on one node, is left out.
 */
export function branchesOf(
  elements: readonly { readonly a: number; readonly b: number; readonly element: number }[],
  kept: ReadonlySet<number>,
): Branches {
  const pieces: Piece[] = [];
  const made = (piece: Piece): number => pieces.push(piece) - 1;
  /** By node its neighbours, with the piece that leads there. */
  const beside = new Map<number, Map<number, number>>();
  const at = (node: number): Map<number, number> => {
    const known = beside.get(node) ?? new Map<number, number>();
    beside.set(node, known);
    return known;
  };
  const add = (a: number, b: number, piece: number): void => {
    if (a === b) return;
    const there = at(a).get(b);
    const whole = there === undefined ? piece : made({ kind: 'parallel', one: there, other: piece });
    at(a).set(b, whole);
    at(b).set(a, whole);
  };
  const remove = (a: number, b: number): void => {
    at(a).delete(b);
    at(b).delete(a);
  };
  for (const { a, b, element } of elements) add(a, b, made({ kind: 'element', element }));

  const waiting = [...beside.keys()];
  for (const node of waiting) {
    const [first, second, third] = at(node);
    if (kept.has(node) || first === undefined || third !== undefined) continue;
    remove(node, first[0]);
    waiting.push(first[0]);
    if (second === undefined) continue;
    remove(node, second[0]);
    waiting.push(second[0]);
    add(first[0], second[0], made({ kind: 'series', one: first[1], other: second[1] }));
  }

  const branches = [...beside].flatMap(([a, neighbours]) =>
    [...neighbours].flatMap(([b, piece]) => (a < b ? [{ a, b, piece }] : [])),
  );
  return {
    branches,
    elementsOf: ({ piece }) => elementsIn(pieces, piece),
    ohms: (of) => {
      const ohms = reckoned(pieces, of);
      return branches.map(({ piece }) => ohms[piece] ?? NaN);
    },
  };
}

function reckoned(pieces: readonly Piece[], of: (element: number) => number): Float64Array {
  const ohms = new Float64Array(pieces.length);
  for (const [number, piece] of pieces.entries()) {
    if (piece.kind === 'element') ohms[number] = of(piece.element);
    else {
      const [one, other] = [ohms[piece.one] ?? NaN, ohms[piece.other] ?? NaN];
      ohms[number] = piece.kind === 'series' ? one + other : parallel(one, other);
    }
  }
  return ohms;
}

function elementsIn(pieces: readonly Piece[], whole: number): readonly number[] {
  const elements: number[] = [];
  const waiting = [whole];
  for (let number = waiting.pop(); number !== undefined; number = waiting.pop()) {
    const piece = pieces[number];
    if (piece?.kind === 'element') elements.push(piece.element);
    else if (piece !== undefined) waiting.push(piece.other, piece.one);
  }
  return elements;
}

function parallel(one: number, other: number): number {
  return one === 0 || other === 0 ? 0 : 1 / (1 / one + 1 / other);
}

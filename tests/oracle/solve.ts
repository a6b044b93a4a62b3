/* Resistances and potentials of small networks by taking one node out after the other (star to mesh). */

export interface Link {
  readonly a: string;
  readonly b: string;
  /** 0: the two nodes are one. */
  readonly ohms: number;
}

/** Siemens between two nodes, both ways. */
type Mesh = Map<string, Map<string, number>>;

function add(mesh: Mesh, a: string, b: string, siemens: number): void {
  if (a === b || siemens === 0) return;
  for (const [one, other] of [
    [a, b],
    [b, a],
  ] as const) {
    const row = mesh.get(one) ?? new Map<string, number>();
    mesh.set(one, row.set(other, (row.get(other) ?? 0) + siemens));
  }
}

function joined(links: readonly Link[]): (node: string) => string {
  const into = new Map<string, string>();
  const of = (node: string): string => {
    const next = into.get(node);
    return next === undefined ? node : of(next);
  };
  for (const { a, b, ohms } of links) if (ohms === 0 && of(a) !== of(b)) into.set(of(a), of(b));
  return of;
}

/** The mesh between the nodes that are kept, and by what name each of them stands there. */
function reduced(links: readonly Link[], kept: readonly string[]) {
  const of = joined(links);
  const mesh: Mesh = new Map();
  for (const { a, b, ohms } of links) if (ohms > 0) add(mesh, of(a), of(b), 1 / ohms);
  const keep = kept.map(of);
  for (const node of [...mesh.keys()].filter((each) => !keep.includes(each))) {
    const row = [...(mesh.get(node) ?? [])];
    const all = row.reduce((sum, [, siemens]) => sum + siemens, 0);
    for (const [other] of row) mesh.get(other)?.delete(node);
    mesh.delete(node);
    for (const [at, [one, first]] of row.entries())
      for (const [other, second] of row.slice(at + 1)) add(mesh, one, other, (first * second) / all);
  }
  return { mesh, of };
}

/** Ohms between two nodes, infinite where nothing leads from one to the other. */
export function ohmsBetween(links: readonly Link[], from: string, to: string): number {
  const { mesh, of } = reduced(links, [from, to]);
  if (of(from) === of(to)) return 0;
  const siemens = mesh.get(of(from))?.get(of(to)) ?? 0;
  return siemens === 0 ? Infinity : 1 / siemens;
}

/** Volts of a node, the mean of the potentials that are held, by what leads there. null: nothing does. */
export function potentialOf(
  links: readonly Link[],
  held: ReadonlyMap<string, number>,
  node: string,
): number | null {
  const { mesh, of } = reduced(links, [...held.keys(), node]);
  const volts = new Map([...held].map(([at, potential]) => [of(at), potential]));
  const own = volts.get(of(node));
  if (own !== undefined) return own;
  const row = [...(mesh.get(of(node)) ?? [])];
  const all = row.reduce((sum, [, siemens]) => sum + siemens, 0);
  if (all === 0) return null;
  return row.reduce((sum, [at, siemens]) => sum + siemens * (volts.get(at) ?? 0), 0) / all;
}

/** Sets of nodes, numbered from 0, that grow together. */
export interface NodeGroups {
  /** One node that stands for the whole set. */
  readonly of: (node: number) => number;
  /** false: they were in one set already. */
  readonly join: (a: number, b: number) => boolean;
}

export function nodeGroups(nodes: number): NodeGroups {
  const parent = Int32Array.from({ length: nodes }, (_, node) => node);
  const of = (node: number): number => {
    let at = node;
    for (;;) {
      const above = parent[at] ?? at;
      if (above === at) return at;
      parent[at] = parent[above] ?? above;
      at = above;
    }
  };
  const join = (a: number, b: number): boolean => {
    const [one, other] = [of(a), of(b)];
    parent[one] = other;
    return one !== other;
  };
  return { of, join };
}

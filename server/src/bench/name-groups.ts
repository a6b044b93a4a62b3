/** Sets of names that grow together. */
export interface NameGroups {
  /** One name that stands for the whole set. */
  readonly of: (name: string) => string;
  readonly join: (one: string, other: string) => void;
}

export function nameGroups(
  pairs: readonly { readonly between: readonly [string, string] }[] = [],
): NameGroups {
  const parent = new Map<string, string>();
  const of = (name: string): string => {
    let root = name;
    for (let above = parent.get(root); above !== undefined; above = parent.get(root)) root = above;
    // All on the way come nearer, that no long chain is gone along again.
    for (let at = name; at !== root;) {
      const above = parent.get(at) ?? root;
      parent.set(at, root);
      at = above;
    }
    return root;
  };
  const join = (one: string, other: string): void => {
    const [from, to] = [of(one), of(other)];
    if (from !== to) parent.set(from, to);
  };
  for (const { between } of pairs) join(between[0], between[1]);
  return { of, join };
}

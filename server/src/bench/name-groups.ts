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
    let at = name;
    for (let above = parent.get(at); above !== undefined; above = parent.get(at)) at = above;
    if (at !== name) parent.set(name, at);
    return at;
  };
  const join = (one: string, other: string): void => {
    const [from, to] = [of(one), of(other)];
    if (from !== to) parent.set(from, to);
  };
  for (const { between } of pairs) join(...between);
  return { of, join };
}

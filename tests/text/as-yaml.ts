import { isAlias, isMap, isScalar, isSeq, parseAllDocuments, Scalar } from 'yaml';
import type { Document, Node, Pair, YAMLMap } from 'yaml';

/*
 * A text as the YAML library reads it, walked without any code of the reader: what a reading must account for, and what
 * it must refuse.
 */

/** A run of letters and digits in a key or a value. */
export interface Word {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** What leads to it, without what differs from file to file: `parts/*(lamp)/resistance`. */
  readonly place: string;
}

export interface AsYaml {
  readonly words: readonly Word[];
  /** What a file of this format must not have, in words; none of it may pass without an error. */
  readonly unfit: readonly string[];
  /** Whether the value at a path is written, not empty. */
  readonly has: (path: readonly (string | number)[]) => boolean;
  /** The keys of the map at a path, or how many items its list has. */
  readonly keys: (path: readonly (string | number)[]) => readonly string[];
}

export function asYaml(text: string, vocabulary: ReadonlySet<string>): AsYaml {
  const documents = parseAllDocuments(text, {
    schema: 'failsafe',
    prettyErrors: false,
    uniqueKeys: false,
    resolveKnownTags: false,
  });
  const list = Array.isArray(documents) ? documents : [];
  const words: Word[] = [];
  const unfit: string[] = [];
  if (list.length !== 1) unfit.push(`${list.length} documents`);
  for (const { errors, warnings } of list as Document[])
    for (const { code } of [...errors, ...warnings]) unfit.push(code);
  const walker = { text, vocabulary, words, unfit };
  const root = (list[0]?.contents ?? null) as Node | null;
  if (!isMap(root)) unfit.push('no map');
  walk(root, '', walker);
  return {
    words,
    unfit,
    has: (path) => !isNothing(at(root, path)),
    keys: (path) => {
      const node = at(root, path);
      if (isSeq(node)) return node.items.map((_, index) => String(index));
      return isMap(node) ? node.items.map(({ key }) => (isScalar(key) ? String(key.value) : '?')) : [];
    },
  };
}

interface Walker {
  readonly text: string;
  readonly vocabulary: ReadonlySet<string>;
  readonly words: Word[];
  readonly unfit: string[];
}

function walk(node: Node | null, place: string, walker: Walker): void {
  if (isNothing(node)) walker.unfit.push(`nothing at ${place}`);
  if (isAlias(node)) walker.unfit.push(`alias at ${place}`);
  else if (node?.tag !== undefined || node?.anchor !== undefined)
    walker.unfit.push(`tag or anchor at ${place}`);
  if (isScalar(node)) addWords(node, place, walker);
  if (isSeq(node)) for (const item of node.items) walk(item as Node | null, `${place}/#`, walker);
  if (isMap(node)) walkMap(node, place, walker);
}

function walkMap(map: YAMLMap, place: string, walker: Walker): void {
  const here = `${place}${kindOf(map, walker.vocabulary)}`;
  const seen = new Set<string>();
  for (const { key, value } of map.items as Pair<Node | null, Node | null>[]) {
    if (!isScalar(key) || isNothing(key)) {
      walker.unfit.push(`no key in ${here}`);
      walk(value, `${here}/?`, walker);
      continue;
    }
    const name = String(key.value);
    if (seen.has(name)) walker.unfit.push(`${name} twice in ${here}`);
    seen.add(name);
    const below = `${here}/${walker.vocabulary.has(name) ? name : '*'}`;
    addWords(key, `${below}:`, walker);
    walk(value, below, walker);
  }
}

/** The kind of an entry, or the first word of the format in a map: that of a step is its verb. */
function kindOf(map: YAMLMap, vocabulary: ReadonlySet<string>): string {
  const kind: unknown = map.get('kind');
  if (typeof kind === 'string') return `(${kind})`;
  const names = map.items.map(({ key }) => (isScalar(key) ? String(key.value) : ''));
  const first = names.find((name) => vocabulary.has(name));
  return first === undefined ? '' : `(${first})`;
}

function addWords(node: Scalar, place: string, { text, words }: Walker): void {
  const [start = 0, end = 0] = node.range ?? [];
  // Behind the sign of a block only a comment can stand.
  const isBlock = node.type === Scalar.BLOCK_LITERAL || node.type === Scalar.BLOCK_FOLDED;
  const from = isBlock ? text.indexOf('\n', start) : start;
  for (const [index, match] of [...text.slice(from, end).matchAll(/[\p{L}\p{N}]+/gu)].entries()) {
    const at = from + match.index;
    words.push({
      from: at,
      to: at + match[0].length,
      text: match[0],
      place: `${place} ${Math.min(index, 1)}`,
    });
  }
}

function isNothing(node: unknown): boolean {
  if (node === null || node === undefined) return true;
  if (isMap(node) || isSeq(node)) return node.items.length === 0;
  return isScalar(node) && String(node.value).trim() === '';
}

function at(root: Node | null, path: readonly (string | number)[]): unknown {
  let node: unknown = root;
  for (const step of path) {
    if (isSeq(node)) node = node.items[Number(step)];
    else if (isMap(node))
      node = node.items.find(({ key }) => isScalar(key) && String(key.value) === String(step))?.value;
    else return undefined;
  }
  return node;
}

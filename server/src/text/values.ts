import { itemOf, propertyOf, typesOf } from '../format/walker.ts';
import type { Schema } from '../format/walker.ts';
import { isEmpty } from './tree.ts';
import type { Node, ScalarNode } from './tree.ts';
import type { Path } from '../model/where.ts';

export interface Conversion {
  readonly root: Schema;
  /** Called for every key or item after which nothing stands. */
  readonly onEmpty: (path: Path, schema: Schema | null, node: ScalarNode) => void;
  /** Called for everything that a finding has been made about already. */
  readonly onUnreadable: (path: Path) => void;
  /** Whether the value there is looked at by somebody else. */
  readonly isOpen: (path: Path) => boolean;
}

const number = /^[-+]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][-+]?\d+)?$/;

/**
 * The value of a node as the schema wants it: a plain `true` or `3` becomes a boolean or a number only where the schema
 * takes one and no string, so ids and pins stay as they are written. Absent where nothing can be said.
 */
export function toData(node: Node, schema: Schema | null, path: Path, conversion: Conversion): unknown {
  if (conversion.isOpen(path)) return null;
  if (node.kind === 'unreadable') {
    conversion.onUnreadable(path);
    return undefined;
  }
  if (node.kind === 'scalar' && isEmpty(node)) {
    conversion.onEmpty(path, schema, node);
    return undefined;
  }
  if (node.kind === 'scalar') return scalarData(node, schema, conversion.root);
  if (node.kind === 'list') {
    const item = schema === null ? null : itemOf(schema, conversion.root);
    return node.items.map((one, index) => toData(one, item, [...path, index], conversion));
  }
  const data: Record<string, unknown> = {};
  for (const { key, value } of node.entries) {
    const below = schema === null ? null : propertyOf(schema, key, conversion.root);
    const found = toData(value, below, [...path, key], conversion);
    if (found === undefined) continue;
    // A key named like a property of every object must not reach its prototype.
    if (key !== '__proto__') data[key] = found;
    else
      Object.defineProperty(data, key, {
        value: found,
        enumerable: true,
        writable: true,
        configurable: true,
      });
  }
  return data;
}

function scalarData(node: ScalarNode, schema: Schema | null, root: Schema): unknown {
  if (schema === null || !node.plain) return node.text;
  const types = typesOf(schema, root);
  if (types.has('string')) return node.text;
  if (types.has('boolean') && (node.text === 'true' || node.text === 'false')) return node.text === 'true';
  if ((types.has('number') || types.has('integer')) && number.test(node.text)) {
    const value = Number(node.text);
    return Number.isFinite(value) ? value : node.text;
  }
  return node.text;
}

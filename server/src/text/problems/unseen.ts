import type { Problem } from '../problem.ts';
import { hasUnseen, nameOf, turnsText, unseenIn, unseenInValue } from '../../model/printable.ts';
import type { Node } from '../tree.ts';
import type { Range } from '../../model/where.ts';

/**
 * Characters of keys and values that are not seen, or that turn text round: of each that a key or a value holds the
 * first. Comments may hold them, and values with letters from right to left their marks of direction.
 */
export function checkUnseen(root: Node | null, text: string): readonly Problem[] {
  // Nearly always it ends here, at every keystroke.
  if (!hasUnseen(text) && !text.includes('\\')) return [];
  return stretchesOf(root).flatMap(({ range, value, isKey }) => {
    if (!hasUnseen(value)) return [];
    const unseen = isKey ? unseenIn(value) : unseenInValue(value);
    const written = text.slice(range.from, range.to);
    const places = [...asThemselves(written), ...asEscapes(written)];
    return [...new Set(unseen.map(({ character }) => character))].map((character) => {
      const first = places.find((place) => place.character === character);
      // Two escapes can make one character.
      const { at, length } = first ?? { at: 0, length: written.length };
      return problemOf(character, { from: range.from + at, to: range.from + at + length });
    });
  });
}

interface Stretch {
  readonly range: Range;
  readonly value: string;
  readonly isKey: boolean;
}

/** All keys and values, in the order of the file. */
function stretchesOf(root: Node | null): readonly Stretch[] {
  const found: Stretch[] = [];
  const waiting: Node[] = root === null ? [] : [root];
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    switch (node.kind) {
      case 'scalar':
        found.push({ range: node.range, value: node.text, isKey: false });
        break;
      case 'map':
        for (const { key, keyRange, value } of node.entries) {
          found.push({ range: keyRange, value: key, isKey: true });
          waiting.push(value);
        }
        break;
      case 'list':
        for (const item of node.items) waiting.push(item);
        break;
      case 'unreadable':
        break;
    }
  }
  return found;
}

interface Place {
  /** Of the stretch, in UTF-16 units. */
  readonly at: number;
  readonly length: number;
  readonly character: string;
}

function asThemselves(written: string): readonly Place[] {
  return unseenIn(written).map(({ at, character }) => ({ at, length: character.length, character }));
}

/** In double quotes YAML has escapes by number, and a few by letter. */
const escape = /\\(?:x([0-9a-fA-F]{2})|u([0-9a-fA-F]{4})|U([0-9a-fA-F]{8})|[\s\S])/g;

const byLetter: Readonly<Record<string, string>> = {
  '0': '\u0000',
  a: '\u0007',
  b: '\b',
  v: '\v',
  f: '\f',
  r: '\r',
  e: '\u001B',
  N: '\u0085',
  L: '\u2028',
  P: '\u2029',
};

function asEscapes(written: string): readonly Place[] {
  if (!written.startsWith('"')) return [];
  return Array.from(written.matchAll(escape)).flatMap(({ index, 0: whole, 1: two, 2: four, 3: eight }) => {
    const digits = two ?? four ?? eight;
    const character = digits === undefined ? byLetter[whole.slice(1)] : characterOf(parseInt(digits, 16));
    if (character === undefined || unseenIn(character).length === 0) return [];
    return [{ at: index, length: whole.length, character }];
  });
}

function characterOf(point: number): string | undefined {
  return point <= 0x10ffff ? String.fromCodePoint(point) : undefined;
}

function problemOf(character: string, range: Range): Problem {
  const name = nameOf(character);
  return turnsText(character)
    ? {
        rule: 'turned-text',
        at: { range },
        message: `This text holds ${name}, which turns the direction of writing round. It reads otherwise than it is. Delete the character.`,
        subject: name,
      }
    : {
        rule: 'hidden-character',
        at: { range },
        message: `This text holds ${name}, which cannot be seen. Names that look alike can differ. Delete the character.`,
        subject: name,
      };
}

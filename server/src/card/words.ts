import { decimalFromNumber, plainText } from '../quantity/decimal.ts';
import type { Id, Procedure } from '../model/procedure.ts';
import type { Piece, Words } from './model.ts';

/** `a`, `a and b`, `a, b and c`. */
export function listed(items: readonly Words[], joint: 'and' | 'or'): Words {
  return items.flatMap((item, index): Words => {
    if (index === 0) return item;
    return [index === items.length - 1 ? ` ${joint} ` : ', ', ...item];
  });
}

export function listedIds(ids: readonly Id[], joint: 'and' | 'or'): Words {
  return listed(
    ids.map((id) => [{ id }]),
    joint,
  );
}

/** Steps by number: `step 3`, `steps 3, 5 and 9`. */
export function listedSteps(numbers: readonly string[]): Words {
  return [
    numbers.length === 1 ? 'step ' : 'steps ',
    ...listed(
      numbers.map((step): Words => [{ step }]),
      'and',
    ),
  ];
}

/** `the battery` where the id is the trade's word already, else `the battery aux-battery`. */
export function sourceWords(procedure: Procedure, id: Id): Words {
  const kind = procedure.sources.get(id)?.kind;
  switch (kind) {
    case 'high-voltage':
      return ['the high-voltage source ', { id }];
    case 'battery':
      return kind === id ? ['the ', { id }] : ['the battery ', { id }];
    case undefined:
      return ['the ', { id }];
  }
}

/** An id with the word for what it is where that helps: `connector K30`, but `coil-coupling`. */
export function thingWords(procedure: Procedure, id: Id): Words {
  if (procedure.connectors.has(id)) return ['connector ', { id }];
  const assembly = procedure.assemblies.get(id);
  if (assembly !== undefined) return [{ id }, ' (', ...listedIds(assembly.members, 'and'), ')'];
  if (procedure.sources.has(id)) return sourceWords(procedure, id);
  return [{ id }];
}

/** Begins a sentence with a capital, unless it begins with an id. */
export function sentence(words: Words): Words {
  const [first, ...rest] = words;
  return typeof first === 'string' ? [first.charAt(0).toUpperCase() + first.slice(1), ...rest] : words;
}

/** The words without their marking, for forms and places that know plain text only. */
export function plainWords(words: Words): string {
  return words.map(plainPiece).join('');
}

function plainPiece(piece: Piece): string {
  if (typeof piece === 'string') return piece;
  if ('id' in piece) return piece.id;
  if ('said' in piece) return piece.said;
  return 'step' in piece ? piece.step : piece.strong;
}

/** An author's sentence, closed with a full stop where it has no mark of its own. */
/** A loop, a side, or one point to another. */
export function subjectWords(of: string): Words {
  const [one = of, other] = of.split('..');
  return other === undefined ? [{ id: of }] : [{ id: one }, ' to ', { id: other }];
}

export function closed(text: string): string {
  const trimmed = text.trim();
  return /[.!?:;…]$/.test(trimmed) || trimmed === '' ? trimmed : `${trimmed}.`;
}

/** A display step in the unit that the display shows: `0.01 Ω`, never `10 mΩ`. */
export function digitText(value: number, unit: 'Ω' | 'V' | 'A' = 'Ω'): string {
  return `${plainText(decimalFromNumber(value))} ${unit}`;
}

import type { Probed, Procedure, Step } from '../model/procedure.ts';
import type { Said } from './sentences.ts';
import type { CardProof, Words } from './model.ts';
import { listedIds, sourceWords } from './words.ts';

type Proof = Extract<Step, { readonly verb: 'prove-dead' }>;

/**
 * The three measurements of a proof: a meter that fails in between must not pass for a circuit without voltage. What is
 * said is about the circuit, for the source itself never loses its voltage.
 */
export function sayProof(procedure: Procedure, step: Proof, proof: CardProof | undefined): Said {
  const known = sourceWords(procedure, step.known);
  const shown = proof?.known ?? null;
  const must: Words = shown === null ? ['must show its voltage'] : ['must show ', { strong: shown }];
  return {
    kind: 'read',
    action: [
      'Verify with ',
      { id: step.with },
      ', on DC volts, that the circuit of ',
      ...sourceWords(procedure, step.source),
      ' is without voltage. Do all three measurements:',
    ],
    details: [
      [{ strong: '1. Known source: ' }, 'measure ', ...known, '. It ', ...must, '.'],
      [{ strong: '2. Circuit: ' }, ...placeWords(step.at), '. ', ...expectedWords(proof)],
      [{ strong: '3. Known source again: ' }, 'measure ', ...known, '. It ', ...must, ' as before.'],
      ...holdsWords(proof?.parts ?? []),
    ],
    blanks: ['Known source', 'Pole to pole', 'Pole 1 to ground', 'Pole 2 to ground', 'Known source again'],
  };
}

function expectedWords(proof: CardProof | undefined): Words {
  const residual = proof?.residual ?? null;
  const limit = proof?.limit ?? null;
  const left = residual === null ? [] : [` (at most ${residual.most} left after ${residual.after})`];
  const stop: Words =
    limit === null
      ? ['The limit is not known: stop.']
      : ['Stop unless every reading is ', { strong: `between -${limit} and +${limit}` }, '.'];
  return ['Expected: near 0 V', ...left, '. ', ...stop];
}

/** Each pole to ground too: with one pole earthed by a fault the poles alone do not tell (NFPA 70E-2018, 120.5, from memory). */
function placeWords(at: Probed): Words {
  if ('connector' in at)
    return [
      'at the test points of ',
      { id: at.connector },
      `, ${at.side} side: pole to pole, then each pole to ground`,
    ];
  const [one, other] = at.map(({ connector, side, pin }): Words => [
    { id: connector },
    `, ${side} side, pin ${pin}`,
  ]);
  return [
    'at the test points of ',
    ...(one ?? []),
    ' and of ',
    ...(other ?? []),
    ': one to the other, then each of them to ground',
  ];
}

/** What holds for every proof of a card, so it is printed once, before the steps. */
export function proofExplanation({ steps }: Procedure): readonly string[] {
  if (!steps.some(({ verb }) => verb === 'prove-dead')) return [];
  return [
    "Absence of voltage: probe only at the test points that the maker's service information gives. A mated connector has no contacts to probe. The result holds only for what is joined to these points then. Verify each branch that can hold its own charge at its own test points.",
  ];
}

/** Parts of what connectors only carry are not drawn. */
function holdsWords(parts: readonly string[]): readonly Words[] {
  return parts.length === 0
    ? []
    : [['Valid only for ', ...listedIds(parts, 'and'), ', joined as they are now.']];
}

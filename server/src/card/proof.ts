import { connectorsProbed } from '../bench/hazards.ts';
import type { Probed, Procedure, Step } from '../text/procedure.ts';
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
      [{ strong: '2. Circuit: ' }, 'measure ', ...placeWords(step.at), '. ', ...expectedWords(proof)],
      [{ strong: '3. Known source again: ' }, 'measure ', ...known, '. It ', ...must, ' as before.'],
      probeWords(step.at),
      holdsWords(proof?.parts ?? []),
    ],
    blanks: [
      'Known source',
      'Pole to pole',
      'First pole to ground',
      'Second pole to ground',
      'Known source again',
    ],
  };
}

function expectedWords(proof: CardProof | undefined): Words {
  const residual = proof?.residual ?? null;
  const limit = proof?.limit ?? null;
  const left =
    residual === null
      ? []
      : [' (after ', residual.after, ' the stated reserve leaves ', residual.most, ' at most)'];
  const stop: Words =
    limit === null
      ? ['The limit is not known: stop.']
      : [
          'Every reading must be ',
          { strong: `between -${limit} and +${limit}` },
          '. Stop at a reading of ',
          `-${limit}, of +${limit}, and beyond: there is voltage.`,
        ];
  return ['Expected: near 0 V', ...left, '. ', ...stop];
}

/** Each pole to ground too: with one pole earthed by a fault the poles alone do not tell (NFPA 70E-2018, 120.5, from memory). */
function placeWords(at: Probed): Words {
  if ('connector' in at)
    return ['at ', { id: at.connector }, `, ${at.side} side, pole to pole, then each pole to ground`];
  const [one, other] = at.map(({ connector, side, pin }): Words => [
    { id: connector },
    `, ${side} side, pin ${pin}`,
  ]);
  return ['between ', ...(one ?? []), ' and ', ...(other ?? []), ', then each of them to ground'];
}

function probeWords(at: Probed): Words {
  return [
    { strong: 'Where to probe: ' },
    "at the test points that the maker's service information gives for ",
    ...listedIds([...new Set(connectorsProbed(at))], 'and'),
    '. A mated connector has no contacts to probe.',
  ];
}

function holdsWords(parts: readonly string[]): Words {
  const named: Words = parts.length === 0 ? [] : [': ', ...listedIds(parts, 'and')];
  return [
    { strong: 'Valid only for what is joined to these points now' },
    ...named,
    '. Verify each branch that can hold its own charge, behind an open contactor, fuse or connector, at its own test points.',
  ];
}

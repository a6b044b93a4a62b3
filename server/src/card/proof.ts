import type { Probed, Procedure, Step } from '../text/procedure.ts';
import type { Said } from './sentences.ts';
import type { CardProof, Words } from './model.ts';
import { sourceWords } from './words.ts';

type Proof = Extract<Step, { readonly verb: 'prove-dead' }>;

/** The three measurements of a proof: a meter that fails in between must not pass for a dead circuit. */
export function sayProof(procedure: Procedure, step: Proof, proof: CardProof | undefined): Said {
  const known = sourceWords(procedure, step.known);
  const shown = proof?.known ?? null;
  const limit = proof?.limit ?? null;
  const must: Words = shown === null ? ['must show its voltage'] : ['must show ', { strong: shown }];
  const dead: Words = limit === null ? ['a limit that is not known'] : [{ strong: limit }];
  return {
    kind: 'read',
    action: [
      'Prove with ',
      { id: step.with },
      ', on DC volts, that ',
      ...sourceWords(procedure, step.source),
      ' is dead. Do all three:',
    ],
    details: [
      [{ strong: '1. Known source: ' }, 'measure ', ...known, '. It ', ...must, '.'],
      [
        { strong: '2. Here: ' },
        'measure ',
        ...placeWords(step.at),
        '. Dead is ',
        ...dead,
        ' each time, whatever the sign.',
      ],
      [{ strong: '3. Known source again: ' }, 'measure ', ...known, '. It ', ...must, ' as before.'],
    ],
    blanks: ['Known source', 'Between the two', 'First to ground', 'Second to ground', 'Known source again'],
  };
}

/** Each pole to ground too: with one pole earthed by a fault the poles alone do not tell (NFPA 70E-2018, 120.5, from memory). */
function placeWords(at: Probed): Words {
  if ('connector' in at)
    return [
      'at ',
      { id: at.connector },
      `, ${at.side} side, between the two poles, then from each of them to ground`,
    ];
  const [one, other] = at.map(({ connector, side, pin }): Words => [
    { id: connector },
    `, ${side} side, pin ${pin}`,
  ]);
  return ['between ', ...(one ?? []), ' and ', ...(other ?? []), ', then from each of them to ground'];
}

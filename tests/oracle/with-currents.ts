import { chanceFrom } from './chance.ts';
import type { Chance } from './chance.ts';
import type { PlainProcedure, PlainStep } from './plain-procedure.ts';

/*
 * A procedure that is drawn already, in some of which currents are measured as well, by a clamp or in the place of a
 * contact, mostly of a connector that was unplugged for it. The draws are of a sequence of their own.
 */

/** Where a current may be measured, and what is measured after it of what it may have powered. */
export interface Carrying {
  /** Parts of the network. */
  readonly parts: readonly string[];
  /** Both terminals of a pin. */
  readonly pins: readonly (readonly [string, string])[];
  readonly measured: () => PlainStep;
  /** Ground is a node of the network. */
  readonly hasGround: boolean;
}

/** Of a range that nothing drawn here leaves: what currents are is no matter of order. */
const ammeter = {
  kind: 'multimeter',
  current: { range: '0..1000 kA', accuracy: '1 %', resolution: '1 mA', burden: '20..50 mΩ' },
  clamp: { range: '0..1000 kA', accuracy: '2 %', resolution: '10 mA' },
};

function current(chance: Chance, { parts, pins, measured, hasGround }: Carrying): PlainStep[] {
  const measure = { measure: 'current', with: 'ammeter' };
  if (chance.happens(0.25)) return [{ ...measure, around: chance.pick(parts) }];
  const [one, other] = chance.pick(pins);
  const [connector = ''] = one.split('.');
  // What it joins is measured on one side of it, or something else is.
  const side = { measure: 'resistance', across: [chance.pick([one, other]), 'ground'], with: 'meter' };
  return [
    ...(chance.happens(0.7) ? [connector === 'S1' ? { disconnect: 'traction' } : { unplug: connector }] : []),
    ...(chance.happens(0.6) ? [{ wait: '5 min' }] : []),
    { ...measure, in: chance.happens(0.5) ? [one, other] : [other, one] },
    ...(chance.happens(0.3) ? [{ wait: chance.pick(['30 s', '60 s', '2 min']) }] : []),
    hasGround && chance.happens(0.7) ? side : measured(),
  ];
}

/** `share` of the procedures have any. */
export function withCurrents<T extends Pick<PlainProcedure, 'instruments' | 'steps'>>(
  seed: number,
  share: number,
  carrying: Carrying,
  procedure: T,
): T {
  const chance = chanceFrom(seed + 284_000);
  if (!chance.happens(share)) return procedure;
  const steps = [...procedure.steps];
  // At the start everything is on.
  const at = chance.happens(0.6) ? 0 : chance.whole(0, steps.length);
  steps.splice(at, 0, ...current(chance, carrying));
  return { ...procedure, instruments: { ...procedure.instruments, ammeter }, steps };
}

import type { Part, PartKind } from './procedure.ts';

/** What is so for every part of a kind, whatever a file says of it. */
interface PartFacts {
  readonly form: Part['form'];
  /** What it can do to people while it is live; null: it is never live. */
  readonly danger: 'fires' | 'high-voltage' | null;
  /** What has to be off before it is replaced: it is made to be changed with the ignition off, or its supply is. */
  readonly changedWith: 'ignition off' | 'supply off';
}

export const partFacts: Readonly<Record<PartKind, PartFacts>> = {
  cable: { form: 'two-conductor', danger: null, changedWith: 'supply off' },
  'rotary-coupling': { form: 'two-conductor', danger: null, changedWith: 'supply off' },
  series: { form: 'two-conductor', danger: null, changedWith: 'supply off' },
  initiator: { form: 'end', danger: 'fires', changedWith: 'supply off' },
  'hv-section': { form: 'end', danger: 'high-voltage', changedWith: 'supply off' },
  resistor: { form: 'end', danger: null, changedWith: 'supply off' },
  heater: { form: 'end', danger: null, changedWith: 'supply off' },
  switch: { form: 'end', danger: null, changedWith: 'supply off' },
  coil: { form: 'end', danger: null, changedWith: 'supply off' },
  thermistor: { form: 'end', danger: null, changedWith: 'supply off' },
  rtd: { form: 'end', danger: null, changedWith: 'supply off' },
  lamp: { form: 'end', danger: null, changedWith: 'ignition off' },
  consumer: { form: 'end', danger: null, changedWith: 'supply off' },
  fuse: { form: 'end', danger: null, changedWith: 'ignition off' },
};

/** Whether it is a pyrotechnic stage, live or inert. */
export function isStage(part: Part | undefined): boolean {
  return part !== undefined && partFacts[part.kind].danger === 'fires';
}

import type { Part, PartKind } from './procedure.ts';

/** What is so for every part of a kind, whatever a file says of it. */
interface PartFacts {
  readonly form: Part['form'];
  /** What it can do to people while it is live; null: it is never live. */
  readonly danger: 'fires' | 'high-voltage' | null;
}

export const partFacts: Readonly<Record<PartKind, PartFacts>> = {
  cable: { form: 'two-conductor', danger: null },
  'rotary-coupling': { form: 'two-conductor', danger: null },
  series: { form: 'two-conductor', danger: null },
  initiator: { form: 'end', danger: 'fires' },
  'hv-section': { form: 'end', danger: 'high-voltage' },
  resistor: { form: 'end', danger: null },
  heater: { form: 'end', danger: null },
  switch: { form: 'end', danger: null },
  coil: { form: 'end', danger: null },
  thermistor: { form: 'end', danger: null },
  rtd: { form: 'end', danger: null },
  lamp: { form: 'end', danger: null },
};

/** Whether it is a pyrotechnic stage, live or inert. */
export function isStage(part: Part | undefined): boolean {
  return part !== undefined && partFacts[part.kind].danger === 'fires';
}

import type { Part, PartKind } from './procedure.ts';

/** What is so for every part of a kind, whatever a file says of it. */
interface PartFacts {
  readonly form: Part['form'];
  /** What it can do to people while it is live; null: it is never live. */
  readonly danger: 'fires' | 'high-voltage' | null;
  /** What has to be off before it is replaced: it is made to be changed with the ignition off, or its supply is. */
  readonly changedWith: 'ignition off' | 'supply off';
  /** Whether resistance is added in it by age; a sensor drifts instead. */
  readonly addsResistance: boolean;
  /** Whether its resistance says how much added is a fault: it is what the circuit is made for. */
  readonly sizesFaults: boolean;
}

export const partFacts: Readonly<Record<PartKind, PartFacts>> = {
  cable: {
    form: 'two-conductor',
    danger: null,
    changedWith: 'supply off',
    addsResistance: true,
    sizesFaults: false,
  },
  'rotary-coupling': {
    form: 'two-conductor',
    danger: null,
    changedWith: 'supply off',
    addsResistance: true,
    sizesFaults: false,
  },
  series: {
    form: 'two-conductor',
    danger: null,
    changedWith: 'supply off',
    addsResistance: true,
    sizesFaults: false,
  },
  initiator: {
    form: 'end',
    danger: 'fires',
    changedWith: 'supply off',
    addsResistance: true,
    sizesFaults: true,
  },
  'hv-section': {
    form: 'end',
    danger: 'high-voltage',
    changedWith: 'supply off',
    addsResistance: true,
    sizesFaults: true,
  },
  resistor: { form: 'end', danger: null, changedWith: 'supply off', addsResistance: true, sizesFaults: true },
  heater: { form: 'end', danger: null, changedWith: 'supply off', addsResistance: true, sizesFaults: true },
  switch: { form: 'end', danger: null, changedWith: 'supply off', addsResistance: true, sizesFaults: false },
  coil: { form: 'end', danger: null, changedWith: 'supply off', addsResistance: true, sizesFaults: true },
  thermistor: {
    form: 'end',
    danger: null,
    changedWith: 'supply off',
    addsResistance: false,
    sizesFaults: true,
  },
  rtd: { form: 'end', danger: null, changedWith: 'supply off', addsResistance: false, sizesFaults: true },
  lamp: { form: 'end', danger: null, changedWith: 'ignition off', addsResistance: true, sizesFaults: true },
  fuse: { form: 'end', danger: null, changedWith: 'ignition off', addsResistance: true, sizesFaults: false },
  consumer: {
    form: 'end',
    danger: null,
    changedWith: 'supply off',
    addsResistance: false,
    sizesFaults: false,
  },
  potentiometer: {
    form: 'end',
    danger: null,
    changedWith: 'supply off',
    addsResistance: false,
    sizesFaults: true,
  },
};

/** Whether it is a pyrotechnic stage, live or inert. */
export function isStage(part: Part | undefined): boolean {
  return part !== undefined && partFacts[part.kind].danger === 'fires';
}

import * as circuit from './circuit.ts';
import * as instruments from './instruments.ts';
import * as parts from './parts.ts';
import { shell } from './procedure.ts';
import * as sources from './sources.ts';
import * as steps from './steps.ts';

/** Every definition that an entry of a file is checked against, by the name it has in the JSON Schema. */
export const definitions = {
  shell,
  battery: sources.battery,
  'high-voltage': sources.highVoltage,
  monitor: instruments.monitor,
  multimeter: instruments.multimeter,
  'lamp-load-by-resistance': parts.lampLoadByResistance,
  'lamp-load-by-rating': parts.lampLoadByRating,
  'resistor-load': parts.resistorLoad,
  'cable-by-size': parts.cableBySize,
  'cable-by-resistance': parts.cableByResistance,
  'rotary-coupling': parts.rotaryCoupling,
  series: parts.series,
  initiator: parts.initiator,
  'hv-section': parts.hvSection,
  resistor: parts.resistorPart,
  heater: parts.heater,
  switch: parts.switchPart,
  coil: parts.coil,
  'thermistor-by-beta': parts.thermistorByBeta,
  'thermistor-by-coefficients': parts.thermistorByCoefficients,
  rtd: parts.rtd,
  'lamp-by-resistance': parts.lampByResistance,
  'lamp-by-rating': parts.lampByRating,
  connector: circuit.connector,
  loop: circuit.loop,
  entry: circuit.entry,
  section: steps.section,
  'step-ignition': steps.ignitionStep,
  'step-disconnect': steps.disconnectStep,
  'step-reconnect': steps.reconnectStep,
  'step-wait': steps.waitStep,
  'step-prove-dead': steps.proveDeadStep,
  'step-unlock': steps.unlockStep,
  'step-unplug': steps.unplugStep,
  'step-plug': steps.plugStep,
  'step-fit': steps.fitStep,
  'step-remove': steps.removeStep,
  'step-move': steps.moveStep,
  'step-read': steps.readOneStep,
  'step-read-several': steps.readSeveralStep,
  'step-read-codes': steps.readCodesStep,
  'step-clear-codes': steps.clearCodesStep,
  'step-inspect': steps.inspectStep,
  'step-do': steps.doStep,
  'step-replace': steps.replaceStep,
  'step-conclude': steps.concludeStep,
  'step-go': steps.goStep,
  'step-stop': steps.stopStep,
} as const;

export type DefinitionName = keyof typeof definitions;

export const verbs = [
  'ignition',
  'disconnect',
  'reconnect',
  'wait',
  'prove-dead',
  'unlock',
  'unplug',
  'plug',
  'fit',
  'remove',
  'move',
  'read',
  'read-codes',
  'clear-codes',
  'inspect',
  'do',
  'replace',
  'conclude',
  'go',
  'stop',
] as const;

export type Verb = (typeof verbs)[number];

/** The kinds that each section knows. */
export const kinds = {
  sources: ['battery', 'high-voltage'],
  instruments: ['monitor', 'multimeter'],
  loads: ['lamp', 'resistor'],
  parts: [
    'cable',
    'rotary-coupling',
    'series',
    'initiator',
    'hv-section',
    'resistor',
    'heater',
    'switch',
    'coil',
    'thermistor',
    'rtd',
    'lamp',
  ],
} as const;

export type KindSection = keyof typeof kinds;

export function isKindSection(section: string): section is KindSection {
  return Object.hasOwn(kinds, section);
}

/** One way of stating the resistance of a kind: its definition, and the keys that only this way has. */
export interface Form {
  readonly definition: DefinitionName;
  readonly keys: readonly string[];
}

/** Kinds with more than one form. */
const forms: Readonly<Partial<Record<KindSection, Readonly<Record<string, readonly Form[]>>>>> = {
  loads: {
    lamp: [
      { definition: 'lamp-load-by-resistance', keys: ['resistance'] },
      { definition: 'lamp-load-by-rating', keys: ['rated'] },
    ],
  },
  parts: {
    cable: [
      { definition: 'cable-by-size', keys: ['wire', 'length'] },
      { definition: 'cable-by-resistance', keys: ['resistance'] },
    ],
    thermistor: [
      { definition: 'thermistor-by-beta', keys: ['r25', 'beta'] },
      { definition: 'thermistor-by-coefficients', keys: ['coefficients'] },
    ],
    lamp: [
      { definition: 'lamp-by-resistance', keys: ['resistance'] },
      { definition: 'lamp-by-rating', keys: ['rated'] },
    ],
  },
};

/** The forms of a kind, at least one; none where the kind is not known. */
export function formsOf(section: KindSection, kind: string): readonly Form[] {
  const several = forms[section]?.[kind];
  if (several !== undefined) return several;
  const name = section === 'loads' ? `${kind}-load` : kind;
  const known = kinds[section].some((one) => one === kind) && Object.hasOwn(definitions, name);
  return known ? [{ definition: name as DefinitionName, keys: [] }] : [];
}

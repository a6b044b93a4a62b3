import * as circuit from './circuit.ts';
import { partsShell, routineShell, shell, waiver } from './procedure.ts';
import * as steps from './steps.ts';

/** Every definition that an entry of a file is checked against, by the name it has in the JSON Schema. */
export const definitions = {
  shell,
  'parts-shell': partsShell,
  battery: circuit.battery,
  monitor: circuit.monitor,
  'lamp-load': circuit.lampLoad,
  'resistor-load': circuit.resistorLoad,
  'cable-by-size': circuit.cableBySize,
  'cable-by-resistance': circuit.cableByResistance,
  'rotary-coupling': circuit.rotaryCoupling,
  series: circuit.series,
  initiator: circuit.initiator,
  resistor: circuit.resistorPart,
  lamp: circuit.lampPart,
  connector: circuit.connector,
  loop: circuit.loop,
  routine: routineShell,
  waiver,
  section: steps.section,
  'step-ignition': steps.ignitionStep,
  'step-disconnect': steps.disconnectStep,
  'step-reconnect': steps.reconnectStep,
  'step-wait': steps.waitStep,
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
  'step-run': steps.runStep,
} as const;

export type DefinitionName = keyof typeof definitions;

export const verbs = [
  'ignition',
  'disconnect',
  'reconnect',
  'wait',
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
  'run',
] as const;

export type Verb = (typeof verbs)[number];

/** The kinds that each section knows. */
export const kinds = {
  sources: ['battery'],
  instruments: ['monitor'],
  loads: ['lamp', 'resistor'],
  parts: ['cable', 'rotary-coupling', 'series', 'initiator', 'resistor', 'lamp'],
} as const;

export type KindSection = keyof typeof kinds;

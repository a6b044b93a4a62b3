import * as circuit from './circuit.ts';
import * as instruments from './instruments.ts';
import * as parts from './parts.ts';
import { partsShell, routineShell, shell, waiver } from './procedure.ts';
import * as sources from './sources.ts';
import * as steps from './steps.ts';

/** Every definition that an entry of a file is checked against, by the name it has in the JSON Schema. */
export const definitions = {
  shell,
  'parts-shell': partsShell,
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
  routine: routineShell,
  waiver,
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
  'step-run': steps.runStep,
} as const;

export type DefinitionName = keyof typeof definitions;
